// The rules behind check_throwing and check_planned_throwing, one subject a file.
#pragma once

#include "guard_rails/check_throwing.h"
#include "throwing_workload/arm_tables.h"
#include "throwing_workload/pitch_allowance.h"

#include <string>

namespace amentum {

// Of one athlete: entries ascending in date, none after `today`.
struct ThrowLog {
    const ThrowingCase& arm;
    std::vector<ThrowEntry> entries;
    std::vector<PitchingDay> days;
};

ThrowLog throw_log(const ThrowingCase& arm);

std::vector<Finding> check_soreness(const std::vector<ThrowEntry>& entries, Date today);
std::vector<Finding> check_pitch_rules(const ThrowLog& log);
std::vector<Finding> check_arm_pain(const ThrowLog& log);

// The stop of an open pain entry on a day, once an entry; empty when throwing goes on.
std::vector<Finding> pain_stops(const ThrowingCase& arm, Date day);

std::string code_of(PitchLimit limit, bool today); // today: what holds now, not what was broken then
std::string source_of(const PitchRule& rule);      // "Harbour league 2026 [common_practice]"
// "No pitching in games before 2026-03-05.": the first day the table allows again.
std::string not_before(const PitchTableOfArm& table, const std::vector<PitchingDay>& days, Date day);

} // namespace amentum
