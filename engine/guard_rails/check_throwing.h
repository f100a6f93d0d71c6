// What in this athlete's throw log breaks a pitch rule, or asks for a clinician?
//
// Pitch rules (pitch_allowance.h): by every table of the athlete's teams on the day in question (arm_tables.h), `game` entries of
// all teams and of any role together. What was broken in the last 28 days warns (older is history):
//   rest_too_short, days_running, third_day_maximum, second_game, daily_maximum, game_maximum, innings_a_year, pitched_and_caught
//   (innings caught and pitches on one day, where either bars the other: which came first is not known)
// What a table leaves no pitch for on `today` stops, and so does catching after too many pitches:
//   rest_not_over, days_running_today, third_day_maximum, second_game, innings_a_year, daily_maximum, caught_today, no_catching_today
// and months_off_too_short warns, when not even the unknown days could make them up (months_off.h).
// Open pain entries of a region that stops throwing: open_pain stops; thrown_despite_pain warns, throws on later days (the throws of
// the day itself may have come before the pain).
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
// Who may answer (answered_stops.h): nobody for pain, soreness and the rest of the young; a coach, with a kept reason, for an adult's
// pitch rules.
// Entries of other athletes and days after `today` are left out. Without tables for sport or age no pitch rule is looked at.
// What it cannot tell: pitches nobody wrote down; warm-up throws; whether soreness is harm. No finding does not mean that the arm
// is fit.
//
// Example: age 13, 40 pitches on Monday, asked on Wednesday -> one finding, "rest_not_over", until Thursday.
#pragma once

#include "guard_rails/care_record.h"
#include "guard_rails/finding.h"
#include "values/athlete.h"
#include "values/pitch_table.h"
#include "values/season.h"

#include <span>
#include <vector>

namespace amentum {

struct ThrowingCase {
    const Athlete& athlete;
    std::span<const ThrowEntry> entries;
    std::span<const PitchRule> tables; // in force (pitch_tables_in_force.h)
    std::span<const TeamPlace> teams;
    const CareRecord& care;
    Date today;
};

std::vector<Finding> check_throwing(const ThrowingCase& arm);

} // namespace amentum
