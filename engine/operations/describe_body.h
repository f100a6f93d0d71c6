// describe_body: this athlete's body as a chain of links: every length, mass, centre and radius, and where it came from.
//
// Stature: the athlete's own, or the one given; body mass: the latest held. Lengths are scaled by stature from a published
// table (body_mechanics/body.h) unless taped: the latest held reading of thigh_length and the like, or one given here.
// per_centimetre: what one centimetre more of a length changes in a lift named by its settings (a rear-foot-raised split
// squat with the athlete's own body mass on the bar, unless another lift was asked for by solve_setup).
// Without an athlete: sex, stature and body mass describe one. Refuses unknown athletes, missing stature or body mass, two
// units of one quantity, and lengths no such body has.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

// Whose body, and what of it is given here instead of held. Shared by every operation on posture.
struct BodyRequest {
    std::optional<std::string> athlete; // name or id; left out: sex, stature and body mass are needed
    std::optional<std::string> sex;     // of the reference table: female, male
    std::optional<std::string> table;   // de_leva (when left out) or winter
    std::optional<double> stature_cm, stature_in;
    std::optional<double> body_mass_kg, body_mass_lb;
    std::optional<double> thigh_cm, thigh_in; // taped, between joint centres
    std::optional<double> shank_cm, shank_in;
    std::optional<double> trunk_cm, trunk_in;
    std::optional<double> upper_arm_cm, upper_arm_in;
    std::optional<double> forearm_cm, forearm_in;
    std::optional<double> foot_cm, foot_in;
};
BOOST_DESCRIBE_STRUCT(BodyRequest, (),
                      (athlete, sex, table, stature_cm, stature_in, body_mass_kg, body_mass_lb, thigh_cm,
                       thigh_in, shank_cm, shank_in, trunk_cm, trunk_in, upper_arm_cm, upper_arm_in,
                       forearm_cm, forearm_in, foot_cm, foot_in))

struct DescribeBodyRequest : BodyRequest {};
BOOST_DESCRIBE_STRUCT(DescribeBodyRequest, (BodyRequest), ())

struct ShownBodyPart {
    std::string row;  // of the source table
    std::string name; // "thigh", "head and neck"
    std::string ends; // in words: "hip to knee joint centre"
    double length;    // in length_unit
    double mass;      // of one side, in mass_unit
    double centre;    // in length_unit, from the first end
    double radius;    // in length_unit, about the centre
    std::string from; // "0.2425 of stature [DeLeva1996]", "taped 2026-05-06, 0.5 cm"
    bool taped;
};
BOOST_DESCRIBE_STRUCT(ShownBodyPart, (), (row, name, ends, length, mass, centre, radius, from, taped))

struct ShownLengthEffect { // of one centimetre (or inch, as length_unit says) more
    std::string length;    // "thigh"
    double knee;           // N m of the lead leg
    double hip;
    std::optional<double> hip_share; // percentage points
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ShownLengthEffect, (), (length, knee, hip, hip_share, words))

struct ShownBody {
    std::string athlete; // id, or empty
    std::string name;
    std::string table;
    double stature;           // in length_unit
    double mass;              // in mass_unit
    std::string length_unit;  // cm or in
    std::string mass_unit;    // kg or lb
    std::string stature_from; // "held", "taped 2026-04-02", "given"
    std::string mass_from;
};
BOOST_DESCRIBE_STRUCT(ShownBody, (),
                      (athlete, name, table, stature, mass, length_unit, mass_unit, stature_from, mass_from))

struct DescribeBodyAnswer {
    ShownBody body;
    std::vector<ShownBodyPart> parts;
    double ankle_height;   // in length_unit
    double mass_of_parts;  // both sides, in mass_unit: the body mass again, within the table's rounding
    std::string effect_of; // the lift the effects are for, in words
    std::vector<ShownLengthEffect> per_centimetre;
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::vector<std::string> tape_next; // the lengths whose error moves the answer most
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(DescribeBodyAnswer, (),
                      (body, parts, ankle_height, mass_of_parts, effect_of, per_centimetre, words, cautions,
                       tape_next, sources))

Result<DescribeBodyAnswer> describe_body(Workplace&, const DescribeBodyRequest&);

} // namespace amentum
