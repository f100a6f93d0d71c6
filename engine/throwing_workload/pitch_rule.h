// How many pitches a rule allows in a day, how many days of rest it asks for afterwards, the next day
// allowed.
//
// A rule is data (data/pitch_rules.csv), one row for each organisation, year, sport and band of ages; a
// league's own rule comes before any of these. rest_to[k] is the highest count after which k days of rest are
// enough:
//   days of rest(n) = smallest k with n <= rest_to[k];   next day allowed = day pitched + k + 1.
// A count above the last band has already broken the daily maximum: the days of the last band are the least.
// Sources: of each row, in the row [UsaBaseballPitching], [BaseballCanadaPitching], [AossmSoftball].
// Units: pitches to batters in games, of one person, on one day; whole days. Range: 1 to 400 pitches.
// Refuses: a count out of range; a rule without rest bands (method_does_not_apply); an age no row covers.
// What it cannot tell: the age a league reckons by (its own date in the year); warm-up and bullpen pitches,
// which rules leave out although they load the arm; whether the arm is rested. Following a rule is no sign of
// health.
//
// Example: ages 13-14, 40 pitches on Monday -> 2 days of rest (Tuesday, Wednesday), next on Thursday.
#pragma once

#include "values/pitch_table.h"
#include "values/refusal.h"

#include <span>
#include <string>
#include <vector>

namespace amentum {

// The row that covers an age, the newest year where several do; the refusal names the ages there are.
Result<PitchRule> pitch_rule_for(std::span<const PitchRule> rules, const std::string& organisation,
                                 Sport sport, int age);

// Organisations with a row for the sport, in the order of the table, each once.
std::vector<std::string> organisations_for(std::span<const PitchRule> rules, Sport sport);

Result<int> rest_days(const PitchRule& rule, int pitches);

Result<Date> next_day_allowed(const PitchRule& rule, Date pitched, int pitches);

// The same with its arithmetic: "40 pitches at 13 to 14 years are above 35 and not above 50,
// so 2 days of rest: 2026-03-10 to 2026-03-11; pitching again from 2026-03-12."
Result<std::string> describe_rest(const PitchRule& rule, Date pitched, int pitches);

// "The ... allows at most 95 pitches in a day at 13 to 14 years."
std::string describe_daily_maximum(const PitchRule& rule);

} // namespace amentum
