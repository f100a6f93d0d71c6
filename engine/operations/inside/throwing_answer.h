// What the throw log says of one athlete: the account, its words, and the guard rails' findings.
#pragma once

#include "operations/athlete_record.h"
#include "operations/inside/inside.h"
#include "throwing_workload/throw_account.h"

namespace amentum {

ThrowAccount throws_of(const FacilityView&, const Athlete&, Date today);
std::string setting_words(ThrowSetting); // "flat ground"
std::string hard_throw_words(const ThrowAccount&);
std::string throwing_words(const ThrowAccount&); // with this week's and last week's throws
std::vector<ShownFinding> throwing_findings(const Workplace::Inside&, const FacilityView&, const Athlete&,
                                            Date today);
std::vector<std::string> stop_and_refer_words(const ReferenceTables&);

} // namespace amentum
