// One athlete's body as a chain of rigid links: lengths, masses, mass centres and inertias, each with its origin.
//
//     length = share of stature x stature, or as taped       mass   = share of body mass x body mass
//     centre = centre share x length                          inertia = mass x (radius share x length)^2
//
// Rows used [DeLeva1996]: Foot, Thigh, Shank2 (knee to ankle joint centre), Trunk3 (middle of the shoulders to middle of
// the hips), Head2, UpperArm, Forearm, Hand; the head sits on the trunk's line, its own base Trunk2 - Trunk3 above the
// shoulders. [Winter2009]: Foot, Thigh, Leg, TrunkHeadNeck (one rigid part), UpperArm, Forearm, Hand.
// Assumptions of this project, no source: ankle joint 0.039 of stature above the floor (the length is DrillisContini1966's),
// a quarter of the foot's length ahead of the heel.
// A taped length moves centre and inertia with it, never mass.
// Error of a length (one standard deviation): taped 0.5 cm; scaled 1.5 % (both proposals), or half of what the two tables
// differ by when that is more: 7 % for a woman's thigh, 0.212 of stature in one table and 0.245 in the other.
// Units: stature 1.0 to 2.4 m, body mass 15 to 250 kg; a taped length within 0.6 to 1.5 times the table's.
// Refusals: out_of_range with the field ("stature", "body_mass", "thigh", ...).
// What it cannot tell: where a joint centre really is under the skin; growth; how mass sits on this athlete.
// Example: a man of 1.80 m and 80 kg: thigh 0.436508 m, 11.328 kg, 0.233630 kg m2
#pragma once

#include "body_mechanics/planar.h"
#include "body_mechanics/segment_tables.h"
#include "values/quantity.h"
#include "values/refusal.h"

namespace amentum {

enum class Segment { foot, shank, thigh, trunk, upper_arm, forearm, hand };
template <>
inline constexpr std::array<std::pair<Segment, std::string_view>, 7> words_of<Segment>{
    {{Segment::foot, "foot"},
     {Segment::shank, "shank"},
     {Segment::thigh, "thigh"},
     {Segment::trunk, "trunk"},
     {Segment::upper_arm, "upper_arm"},
     {Segment::forearm, "forearm"},
     {Segment::hand, "hand"}}};

struct BodyGiven {
    BodyTable table;
    Sex sex; // of the table
    Length stature;
    Mass mass;
    std::vector<std::pair<Segment, Length>> taped = {};
};

// One row as a person reads it: a table row of this body. Centre from the first-named end.
struct BodyPart {
    std::string row; // of the source table
    std::string ends;
    std::optional<Segment> segment; // whose length it is; none for the head
    Length length;
    Mass mass; // one side
    Length centre;
    Length radius;
    bool taped;          // the length; otherwise scaled by stature
    Length length_error; // one standard deviation
};

struct BodyLink { // SI numbers, for the mechanics
    double length;
    double mass;    // one side
    double centre;  // from the hip (trunk), the hip, knee, shoulder, elbow or wrist (limbs)
    double inertia; // about the centre
    double length_error = 0;
};

struct Body {
    BodyGiven given;
    std::vector<BodyPart> parts;
    BodyLink shank, thigh, upper_arm, forearm, hand;
    BodyLink trunk;      // with head and neck; length is hip to shoulder
    double head_top;     // above the hip, along the trunk
    double ankle_height; // of the ankle joint over the sole
    double foot_length;  // heel to toe
    double foot_mass;    // one
    double foot_inertia; // about its centre
    Vector2 foot_centre; // from the ankle, sole on the floor
    double mass() const { return given.mass.kilograms(); }
    double arm_length() const { return upper_arm.length + forearm.length + hand.length; } // to the grip
    double arm_mass() const { return upper_arm.mass + forearm.mass + hand.mass; }         // one
    double leg_mass() const { return thigh.mass + shank.mass + foot_mass; }               // one
    // Of all parts: body mass within the table's rounding. The mechanics weighs the parts.
    double mass_of_parts() const { return trunk.mass + 2 * (arm_mass() + leg_mass()); }
    double heel() const { return -0.25 * foot_length; } // ahead of the ankle
    double toe() const { return 0.75 * foot_length; }
};

Result<Body> scale_body(const SegmentTables& tables, const BodyGiven& given);

// Of head, arms and trunk, from the hip toward the shoulder, the arms hanging beside an upright trunk.
double centre_of_head_arms_trunk(const Body& body);

} // namespace amentum
