// How does an arm come back to a week's throws after time off? A ramp in absolute throws, with days between.
//
// T target throws of a week, L throws of the week before (the start week's, 0 after time off), p the rise, s sessions:
//   rise of a week   r = floor(p T) throws, p 0.10 to 0.20: a share OF THE TARGET, the same number every week
//   next week        min(T, L + r), split evenly over its sessions, the remainder on the last ones
//   days between     at least one without throwing while the week is below T / 2, then as asked; never fewer than asked. The
//                    early weeks therefore have at most three sessions.
//   days left out    games, days off: no session stands on them. A week with too few free days keeps its sessions' size and
//                    holds fewer of them; the week after rises from what it really held. One without a free day holds none.
//   a session        never more than p T / (sessions of an early week) above the one before it, one throw at least
// All of this is a proposal of this project, no source: no ramp of throws has been tested against another. A rise relative to
// the week before, or a ratio of short to long workload, is not used: it is nothing to rise from after time off
// (workload_averages.h tells why no ratio is shown). Distance and effort of the steps are left to the coach.
// Units: throws; days. Valid: T 10 to 1000, p 0.10 to 0.20, L 0 to T, s 1 to 6, days between 0 to 6 with s (days + 1) <= 7.
// Refuses: numbers outside these (out_of_range); a session above 400 throws; no room (no_block_fits): the target is not reached
// by the last date, or within 52 weeks.
// What it cannot tell: whether the arm is ready for any of it. Steps after an operation or an injury are a clinician's to write,
// never this function's. A step not passed is repeated (step_progress.h), and then the dates here slip.
//
// Example: T = 120, p = 0.15, 3 sessions: weeks of 18, 36, 54, 72, 90, 108, 120 throws; the first step is 6 throws.
#pragma once

#include "values/arm_care.h"
#include "values/refusal.h"

#include <span>
#include <string>
#include <vector>

namespace amentum {

struct ThrowRampWanted {
    int target_throws;    // of a week
    Date start;           // first day on which a session may stand
    int start_throws = 0; // of the last known week; 0 after time off
    double rise = 0.15;   // of the target, each week
    int sessions_a_week = 3;
    int days_between = 1; // once half of the target is reached
    std::optional<Date> last_date = {};
    std::vector<Date> days_off = {}; // games and other days without a session, in any order
};

struct ThrowRampWeek {
    Date first; // its first day; the week runs from the start date's weekday
    int throws;
    std::vector<Date> sessions;
    std::string
        words; // "Week 2, from 2026-05-11: 36 throws in 3 sessions, 12 each; 18 more than the week before."
};

struct ThrowRamp {
    std::vector<ThrowStep> steps; // one a session
    std::vector<Date> dates;      // of the steps: the first possible ones when every step is passed
    std::vector<ThrowRampWeek> weeks;
};

Result<ThrowRamp> plan_throw_ramp(const ThrowRampWanted& wanted);

// Days without throwing a step asks for before the next one: of a clinician's steps those that were written; of a ramp's at
// least one while the step is below half of its largest.
int days_between_after(const ThrowSteps& steps, std::size_t step);

// Steps edited by a coach: a note for each that rises over the one before (the first: over the start week's session) by more
// than the rise times the target's session (the target over the sessions of an early week), one throw at least. Nothing is
// refused but what is no step: none, or throws outside 1 to 400.
struct ThrowStepNote {
    std::size_t step;     // 0 ...
    std::string sentence; // "19 throws, 7 more than the step before; 15 % of the target's session are 6.0."
};
Result<std::vector<ThrowStepNote>> check_throw_steps(const ThrowRampWanted& wanted,
                                                     std::span<const ThrowStep> steps);

} // namespace amentum
