// What in this athlete's throw log breaks a pitch rule, or asks for a clinician?
//
// Pitch rules (pitch_rule.h; `game` entries of athletes whose role is pitcher): daily maximum, limit of a
// third day running, days of rest, days running. A rule broken in the last 28 days warns (older ones are
// history); a rest that is not yet over on `today` stops.
// Soreness on the log's scale, 0 none to 10 worst, of 3 and more counts as sore (our proposal, no source):
//   lasting   every note before a session or on the next day is sore over more than 72 h, no two notes more
//             than 3 days apart; and the last of them at most 7 days old
//   rising    the last three sessions of 14 days, next-day notes or, without those, notes after: each above
//             the one before, the last at least 3
//   slower    the latest measured speed is 5 % or more below the mean of at least three earlier entries of 28
//             days with the same setting and ball, and the athlete is sore that day (5 %: proposal of this
//             project)
// These stop, and say: stop and refer. Their codes are keys of data/stop_and_refer.csv, which has the whole
// list.
// Entries of other athletes and days after `today` are left out. `organisation` empty: the first one of the
// sport.
// What it cannot tell: two games of one day apart; pitches thrown for other teams, innings, warm-up throws;
// whether soreness is harm. No finding does not mean that the arm is fit.
//
// Example: age 13, 40 pitches on Monday, asked on Wednesday -> one finding, "rest_not_over", until Thursday.
#pragma once

#include "guard_rails/finding.h"
#include "throwing_workload/pitch_rule.h"
#include "values/athlete.h"
#include "values/season.h"

#include <span>
#include <string>
#include <vector>

namespace amentum {

std::vector<Finding> check_throwing(const Athlete& athlete, std::span<const ThrowEntry> entries,
                                    std::span<const PitchRule> rules, Date today,
                                    const std::string& organisation = "");

} // namespace amentum
