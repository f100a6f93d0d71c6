// Where does this thrower stand in the steps back to throwing, and is the gate to the next one open?
//
// Steps are a ramp's (throw_ramp.h) or a clinician's (values/arm_care.h). Worked out afresh from the log, day by day:
//   done     a day with at least 0.9 of the step's throws, all settings together (the 0.9: proposal of this project, no source)
//   passed   done, pain-free during, and no residual soreness the next day: the published criterion of interval programs
//            [Pmc10547089]. Here: no pain entry of that day or the next, and the soreness of the next day is written down (as
//            that day's soreness_next_day, or as the next day's soreness_before) and is 0. Not written down is not passed.
//   repeat   a step done and not passed is the next step again
//   rest     days_between days without throwing after the last throws of any kind (days_between_after)
//   pain     stops everything until each entry is cleared (open_pains.h); then one step back [LittleLeagueInterval]
//            (published for little league; taken for every age here: proposal of this project). Pain from before the first day
//            of the steps stops them too, without a step back.
//   too early, or during a stop   such a day counts as no step; its throws still ask for their rest
// A gate that is closed plans nothing beyond the step it closes; plan_steps_ahead() gives a step not passed once more, and a
// stop nothing at all.
// Units: throws, days. Range: entries, pains and clearances of one athlete, in any order; what is after `today` is left out.
// `pains` are those that stop throwing (PainBlock::throwing): the caller leaves the others out.
// What it cannot tell: whether the throws were made as the step says (distance, effort, on a line); throws, pain or soreness
// nobody wrote down (an unknown day counts as rest here); whether the arm is ready. An open gate is not a clearance. The tool
// writes no clinician's plan, changes none and clears nobody.
//
// Example: step 1 of 50 throws done on Monday, soreness on Tuesday 0, one day between: step 2, from Wednesday.
#pragma once

#include "values/arm_care.h"
#include "values/season.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

enum class StepOutcome { passed, pain, sore_next_day, not_written, waiting, too_early, during_stop };
template <>
inline constexpr std::array<std::pair<StepOutcome, std::string_view>, 7> words_of<StepOutcome>{
    {{StepOutcome::passed, "passed"},
     {StepOutcome::pain, "pain"},
     {StepOutcome::sore_next_day, "sore_next_day"},
     {StepOutcome::not_written, "not_written"}, // nobody wrote down the soreness of the next day
     {StepOutcome::waiting, "waiting"},         // the next day is today or not yet
     {StepOutcome::too_early, "too_early"},
     {StepOutcome::during_stop, "during_stop"}}};

struct StepTry { // a day on which a step was done
    Date date;
    std::size_t step; // 0 ...
    int throws;
    StepOutcome outcome;
    std::optional<double> soreness_next_day;
};

enum class StepGate { open, rest, waiting, pain, not_begun, through, ended };
template <>
inline constexpr std::array<std::pair<StepGate, std::string_view>, 7> words_of<StepGate>{
    {{StepGate::open, "open"},
     {StepGate::rest, "rest"},       // days without throwing are not over
     {StepGate::waiting, "waiting"}, // for the next day's soreness
     {StepGate::pain, "pain"},
     {StepGate::not_begun, "not_begun"},
     {StepGate::through, "through"}, // every step is passed
     {StepGate::ended, "ended"}}};   // there are no steps

struct StepProgress {
    StepGate gate;
    std::size_t step;             // to do next, or once more: 0 ...; the number of steps when through
    Date since;                   // the day from which it was the next one
    std::optional<Date> earliest; // day on which it may be done; none while that cannot be told
    std::vector<StepTry> tries;   // ascending
    bool repeated;                // it was done and not passed, or is one step back after a stop
    std::string words; // whole sentences: which step, why the gate is open or closed, what is asked for
};

struct ArmWords { // what was written down of one athlete
    std::span<const ThrowEntry> entries;
    std::span<const PainEntry> pains; // those that stop throwing
    std::span<const PainClearance> clearances;
};

StepProgress measure_steps(const ThrowSteps& steps, const ArmWords& written, Date today);

struct PlannedThrowStep {
    std::size_t step;
    Date date;
};

// The days ahead if every step is passed: nothing while stopped or waiting, the step alone when it is a repeated one.
std::vector<PlannedThrowStep> plan_steps_ahead(const ThrowSteps& steps, const StepProgress& progress,
                                               Date today, std::span<const Date> days_off);

} // namespace amentum
