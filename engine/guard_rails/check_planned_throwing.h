// Which planned games and throw steps must not stand as they are, and what to do about them?
//
// Games, in order of day, each with the pitches it is planned for, after what was really thrown: a game that every table allows
// counts as thrown; one that is allowed less counts with what is allowed; one that is stopped counts as not thrown, so that it
// stops nothing after it; one whose stops a coach answered for counts in full.
//   every code of check_throwing's pitch rules   the table leaves fewer pitches than planned; the day is the game's, so that an
//                                                answer kept for the day holds when the day has come
//   open_pain           a pain entry that stops throwing is open on that day
//   steps_not_through   steps back to throwing that a clinician wrote are not all passed (nobody answers); those of a ramp warn
// Steps, by where the log stands now (step_progress.h):
//   open_pain; throws_on_day_off (of the calendar); step_before_gate: before the day the gate allows, or while it is closed;
//   step_skipped: a step beyond the next; step_too_soon: days without throwing after the step before are too few
// Nobody answers for steps of a clinician; for a ramp's the coach of an adult may (answered_stops.h).
// Games and steps before `today` are left out. Without tables for sport or age only pain and steps are looked at.
// What it cannot tell: how many pitches a game will take; whether the arm is ready. No finding is no clearance.
//
// Example: age 13, 40 pitches on Monday, a start on Wednesday planned for 60 -> "rest_not_over" on Wednesday.
#pragma once

#include "guard_rails/check_throwing.h"
#include "throwing_workload/step_progress.h"

#include <string>

namespace amentum {

struct GameAhead {
    Date date;
    int pitches;           // planned for this arm, 1 to 400
    std::string name = {}; // of the game; empty: a game of its own
};

struct StepsAhead {
    const ThrowSteps& steps; // in force, of this athlete
    std::vector<PlannedThrowStep> planned;
};

std::vector<Finding> check_planned_throwing(const ThrowingCase& arm, std::span<const GameAhead> games,
                                            std::span<const StepsAhead> steps,
                                            std::span<const CalendarEntry> calendar);

} // namespace amentum
