// Tables of limits as answers show them and requests give them.
#pragma once

#include "operations/inside/inside.h"
#include "operations/pitch_rules.h"

namespace amentum {

std::vector<ShownPitchTable> shown_pitch_tables(const ReferenceTables&, const FacilityView&, Date today);

PitchRow shown_row(const PitchRule&);

// One row of a request; `mark` stands before field names ("rows[2]."). Only words and the number of bands are checked here:
// the table as a whole is throwing_workload/check_pitch_table.h's.
Result<PitchRule> rule_from(const PitchRow&, const std::string& organisation, Sport, int year,
                            const std::string& mark);

// "MM-DD" of a day every year has; empty: the birthday itself.
Result<std::optional<std::pair<int, int>>> age_day_given(const std::string& field,
                                                         const std::optional<std::string>&);

} // namespace amentum
