#include "body_mechanics/segment_tables.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

constexpr std::array de_leva_needs{"Foot",  "Shank2",   "Thigh",   "Trunk3", "Trunk2",
                                   "Head2", "UpperArm", "Forearm", "Hand"};
constexpr std::array winter_needs{"Foot", "Leg", "Thigh", "TrunkHeadNeck", "UpperArm", "Forearm", "Hand"};

template <std::size_t N>
std::optional<Refusal> first_gap(const std::vector<SegmentRow>& rows,
                                 const std::array<const char*, N>& needed, const std::string& file) {
    for (const char* name : needed)
        if (const SegmentRow* row = segment_row(rows, name); !row || !row->length_share)
            return refuse_missing(file + ", " + name, "a row with a length, which every body needs");
    return std::nullopt;
}

} // namespace

const std::vector<SegmentRow>& SegmentTables::of(BodyTable table, Sex sex) const {
    if (table == BodyTable::winter)
        return winter;
    return sex == Sex::male ? de_leva_male : de_leva_female;
}

const SegmentRow* segment_row(const std::vector<SegmentRow>& rows, std::string_view row) {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const auto& each) { return each.row == row; });
    return found == rows.end() ? nullptr : &*found;
}

std::optional<Refusal> check_segment_rows(const SegmentTables& tables) {
    for (const auto* rows : {&tables.de_leva_male, &tables.de_leva_female})
        if (auto gap = first_gap(*rows, de_leva_needs, "segments_de_leva.csv"))
            return gap;
    return first_gap(tables.winter, winter_needs, "segments_winter.csv");
}

} // namespace amentum
