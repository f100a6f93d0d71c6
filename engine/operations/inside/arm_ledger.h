// The days of one arm as the arm page draws them, a day a column, and its weeks.
#pragma once

#include "operations/check_arm.h"
#include "operations/inside/arm_case.h"
#include "reports/shown_units.h"
#include "throwing_workload/throw_account.h"

namespace amentum {

std::vector<ArmDay> arm_ledger(const ArmCase&, const ThrowAccount&, const Facility&, Date today, int days);
std::vector<ArmWeek> arm_weeks(const ThrowAccount&, int days);

// This week against the own last six, days since a hard throw, days of nobody's word.
std::vector<std::string> account_words(const ThrowAccount&);

extern const std::string why_no_ratio_words;

} // namespace amentum
