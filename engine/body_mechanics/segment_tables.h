// What do the parts of a body weigh, and where? Published tables, as read from data/segments_*.csv.
//
//   de_leva  masses, lengths, centres and radii of 100 men and 15 women [DeLeva1996, table 4]; lengths of a man of
//            1.741 m and a woman of 1.735 m, here as shares of stature
//   winter   masses, centres, radii [Winter2009, table 4.1]; lengths as shares of stature [DrillisContini1966]
// Centres are shares of the length from the first-named end; radii shares of the length about the centre, for turning
// about the axis through both sides of the body (de Leva's "transverse").
// What it cannot tell: this athlete. Both are averages of adults; a child's parts differ.
#pragma once

#include "values/athlete.h"
#include "values/refusal.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

enum class BodyTable { de_leva, winter };
template <>
inline constexpr std::array<std::pair<BodyTable, std::string_view>, 2> words_of<BodyTable>{
    {{BodyTable::de_leva, "de_leva"}, {BodyTable::winter, "winter"}}};

struct SegmentRow {
    std::string row;  // name of the row in the table: "Shank2"
    std::string ends; // "KJC-AJC"
    double mass_share;
    std::optional<double> length_share; // of stature; winter gives none for some rows
    double centre_share;                // from the first-named end
    double radius_share;
};

struct SegmentTables {
    std::vector<SegmentRow> de_leva_male;
    std::vector<SegmentRow> de_leva_female;
    std::vector<SegmentRow> winter; // both sexes

    const std::vector<SegmentRow>& of(BodyTable table, Sex sex) const;
};

// A table without a row that a body is made of, or that row without a length, is refused (missing_field).
std::optional<Refusal> check_segment_rows(const SegmentTables& tables);

const SegmentRow* segment_row(const std::vector<SegmentRow>& rows, std::string_view row); // null: no such row

} // namespace amentum
