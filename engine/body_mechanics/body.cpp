#include "body_mechanics/body.h"

#include <algorithm>
#include <cassert>
#include <tuple>

namespace amentum {
namespace {

constexpr double scaled_error_share = 0.015, taped_error_m = 0.005; // one standard deviation (proposals)
constexpr double ankle_height_share = 0.039;                        // of stature [DrillisContini1966]

struct Named {
    Segment segment;
    const char* row;
};
using RowsUsed = std::array<Named, 7>;
constexpr RowsUsed de_leva_rows{{{Segment::foot, "Foot"},
                                 {Segment::shank, "Shank2"},
                                 {Segment::thigh, "Thigh"},
                                 {Segment::trunk, "Trunk3"},
                                 {Segment::upper_arm, "UpperArm"},
                                 {Segment::forearm, "Forearm"},
                                 {Segment::hand, "Hand"}}};
constexpr RowsUsed winter_rows{{{Segment::foot, "Foot"},
                                {Segment::shank, "Leg"},
                                {Segment::thigh, "Thigh"},
                                {Segment::trunk, "TrunkHeadNeck"},
                                {Segment::upper_arm, "UpperArm"},
                                {Segment::forearm, "Forearm"},
                                {Segment::hand, "Hand"}}};

Result<Done> check_given(const BodyGiven& given) {
    if (!(given.stature >= Length::metres(1.0) && given.stature <= Length::metres(2.4)))
        return refuse_range("stature", given.stature.metres(), 1.0, 2.4, "m");
    if (!(given.mass >= Mass::kilograms(15) && given.mass <= Mass::kilograms(250)))
        return refuse_range("body_mass", given.mass.kilograms(), 15, 250, "kg");
    return Done{};
}

// other_share: the other table's length of the same segment, as a share of stature.
Result<BodyPart> part_of(const SegmentRow& row, double other_share, std::optional<Segment> segment,
                         const BodyGiven& given) {
    assert(row.length_share);
    const Length by_stature = *row.length_share * given.stature;
    const double error =
        std::max(scaled_error_share * *row.length_share, std::abs(*row.length_share - other_share) / 2);
    BodyPart part{row.row,    row.ends,   segment, by_stature,           row.mass_share * given.mass,
                  by_stature, by_stature, false,   error * given.stature};
    for (const auto& [taped, length] : given.taped) {
        if (taped != segment)
            continue;
        if (!(length >= 0.6 * by_stature && length <= 1.5 * by_stature))
            return refuse_range(std::string(word(taped)), length.metres(), 0.6 * by_stature.metres(),
                                1.5 * by_stature.metres(), "m",
                                "The table has " + row.ends + " for this stature.");
        part.length = length;
        part.taped = true;
        part.length_error = Length::metres(taped_error_m);
    }
    part.centre = row.centre_share * part.length;
    part.radius = row.radius_share * part.length;
    return part;
}

BodyLink link_of(const BodyPart& part) {
    const double radius = part.radius.metres(), mass = part.mass.kilograms();
    return {part.length.metres(), mass, part.centre.metres(), mass * radius * radius,
            part.length_error.metres()};
}

// The trunk's rows count from the shoulders down (de Leva) or from the hip up (Winter).
BodyLink trunk_of(const BodyPart& part, BodyTable table) {
    BodyLink trunk = link_of(part);
    if (table == BodyTable::de_leva)
        trunk.centre = trunk.length - trunk.centre;
    return trunk;
}

BodyLink joined(const BodyLink& trunk, double head_mass, double head_centre, double head_inertia) {
    const double mass = trunk.mass + head_mass;
    const double centre = (trunk.mass * trunk.centre + head_mass * head_centre) / mass;
    const double a = trunk.centre - centre, b = head_centre - centre;
    return {trunk.length, mass, centre, trunk.inertia + trunk.mass * a * a + head_inertia + head_mass * b * b,
            trunk.length_error};
}

} // namespace

Result<Body> scale_body(const SegmentTables& tables, const BodyGiven& given) {
    if (const auto checked = check_given(given); !checked)
        return checked.refusal();
    const auto& rows = tables.of(given.table, given.sex);
    const bool de_leva = given.table == BodyTable::de_leva;
    const auto& other_rows = tables.of(de_leva ? BodyTable::winter : BodyTable::de_leva, given.sex);
    const RowsUsed &used = de_leva ? de_leva_rows : winter_rows,
                   &others = de_leva ? winter_rows : de_leva_rows;
    std::vector<BodyPart> parts;
    for (std::size_t i = 0; i < used.size(); ++i) {
        const SegmentRow *row = segment_row(rows, used[i].row),
                         *other = segment_row(other_rows, others[i].row);
        assert(row && other);
        auto part = part_of(*row, *other->length_share, used[i].segment, given);
        if (!part)
            return part.refusal();
        parts.push_back(*std::move(part));
    }
    const auto link = [&](Segment segment) { return link_of(parts[static_cast<std::size_t>(segment)]); };
    const BodyLink foot = link(Segment::foot);
    const double stature = given.stature.metres(), ankle_height = ankle_height_share * stature;
    // De Leva's foot counts from the heel; Winter's from the ankle to the ball of the foot, taken as half the foot.
    const double foot_ahead = de_leva ? foot.centre - 0.25 * foot.length : foot.centre / 2;
    const double foot_inertia = de_leva ? foot.inertia : foot.inertia / 4;
    BodyLink trunk = trunk_of(parts[static_cast<std::size_t>(Segment::trunk)], given.table);
    const double legs = ankle_height + link(Segment::shank).length + link(Segment::thigh).length;
    if (de_leva) {
        const SegmentRow& head_row = *segment_row(rows, "Head2");
        const auto head = part_of(head_row, *head_row.length_share, std::nullopt, given);
        assert(head);
        const double neck =
            *segment_row(rows, "Trunk2")->length_share - *segment_row(rows, "Trunk3")->length_share;
        const BodyLink h = link_of(*head);
        trunk = joined(trunk, h.mass, trunk.length + neck * stature + h.length - h.centre, h.inertia);
        parts.push_back(*head);
    }
    Body body{given,
              {},
              link(Segment::shank),
              link(Segment::thigh),
              link(Segment::upper_arm),
              link(Segment::forearm),
              link(Segment::hand),
              trunk,
              std::max(stature - legs, 1.2 * trunk.length), // for drawing: standing height is stature
              ankle_height,
              foot.length,
              foot.mass,
              foot_inertia,
              {foot_ahead, -ankle_height / 2}};
    body.parts = std::move(parts); // after the links were read from them
    return body;
}

double centre_of_head_arms_trunk(const Body& body) {
    const auto& [upper_arm, forearm, hand] = std::tie(body.upper_arm, body.forearm, body.hand);
    const double elbow = body.trunk.length - upper_arm.length, wrist = elbow - forearm.length;
    const double arms = 2 * (upper_arm.mass * (body.trunk.length - upper_arm.centre) +
                             forearm.mass * (elbow - forearm.centre) + hand.mass * (wrist - hand.centre));
    return (body.trunk.mass * body.trunk.centre + arms) / (body.trunk.mass + 2 * body.arm_mass());
}

} // namespace amentum
