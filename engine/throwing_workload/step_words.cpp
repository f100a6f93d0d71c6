#include "throwing_workload/step_words.h"

#include "throwing_workload/throw_ramp.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {
namespace {

const std::string criterion =
    " A step is passed when it was pain-free during and left no soreness the next day (the published "
    "criterion), with that soreness written down.";

std::string step_name(const ThrowSteps& steps, std::size_t step) {
    const auto& each = steps.steps[step];
    std::string name = "step " + std::to_string(step + 1) + " of " + std::to_string(steps.steps.size()) +
                       " (" + std::to_string(each.throws) + (each.throws == 1 ? " throw" : " throws");
    return name + (each.words.empty() ? "" : ", " + each.words) + ")";
}

std::string capital(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z')
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

std::string why_not(const StepTry& done) {
    switch (done.outcome) {
    case StepOutcome::pain:
        return "pain was noted";
    case StepOutcome::sore_next_day:
        return "soreness of " + format_shortest(*done.soreness_next_day) + " of 10 was left the next day";
    case StepOutcome::not_written:
        return "nobody wrote down the soreness of " + (done.date + 1).text();
    case StepOutcome::too_early:
        return "it came before the days without throwing were over";
    case StepOutcome::during_stop:
        return "throwing was stopped";
    case StepOutcome::waiting:
    case StepOutcome::passed:
        break;
    }
    return "";
}

// Of the last day on which a step was done.
std::string last_try(const ThrowSteps& steps, const StepProgress& progress) {
    if (progress.tries.empty())
        return "";
    const auto& done = progress.tries.back();
    const std::string number = std::to_string(done.step + 1), on = " on " + done.date.text();
    std::string words;
    if (done.outcome == StepOutcome::passed)
        words = " Step " + number + " was passed" + on + ".";
    else if (done.outcome != StepOutcome::waiting)
        words = " Step " + number + on + " does not count as passed: " + why_not(done) + ".";
    if (const int written = steps.steps[done.step].throws; 10 * done.throws > 11 * written)
        words += " " + std::to_string(done.throws) + " throws were made" + on + " where the step has " +
                 std::to_string(written) + ".";
    return words;
}

std::string describe_stop(const ThrowSteps& steps, const StepProgress& progress, const StepStop& stop) {
    const std::size_t step = std::min(progress.step, steps.steps.size() - 1);
    const bool back = stop.step_back && progress.step > 0;
    return "Stopped: a pain entry of " + stop.pain.value_or(steps.start).text() +
           " stops throwing. Nothing is planned until a named person has cleared it; this tool clears "
           "nobody. "
           "Then it goes on with " +
           step_name(steps, back ? progress.step - 1 : step) +
           (back ? ", one step back (published for little league)." : ".");
}

std::string describe_rest(const ThrowSteps& steps, const StepProgress& progress) {
    const std::size_t done = progress.tries.empty() ? progress.step : progress.tries.back().step;
    const int days = days_between_after(steps, done);
    return capital(step_name(steps, progress.step)) + " is next, from " + progress.earliest->text() + ": " +
           std::to_string(days) + (days == 1 ? " day" : " days") + " without throwing first.";
}

} // namespace

std::string describe_step_progress(const ThrowSteps& steps, const StepProgress& progress,
                                   const StepStop& stop, Date today) {
    switch (progress.gate) {
    case StepGate::ended:
        return "There are no steps in force.";
    case StepGate::pain:
        return describe_stop(steps, progress, stop);
    case StepGate::through:
        return "All " + std::to_string(steps.steps.size()) + " steps are passed." +
               (steps.origin == StepsOrigin::clinician
                    ? " What comes after them is for whoever wrote them to say."
                    : "");
    case StepGate::waiting:
        return capital(step_name(steps, progress.step)) + " was done on " +
               progress.tries.back().date.text() + "; the soreness of " +
               (progress.tries.back().date + 1).text() +
               " is still to be written down. Nothing beyond this step is planned." + criterion;
    case StepGate::not_begun:
        return capital(step_name(steps, progress.step)) + " is next, from " + steps.start.text() + "." +
               criterion;
    case StepGate::rest:
        return describe_rest(steps, progress) + last_try(steps, progress) + criterion;
    case StepGate::open:
        return capital(step_name(steps, progress.step)) + " is next, since " + progress.since.text() +
               "; it may be done on " + today.text() + "." + last_try(steps, progress) + criterion;
    }
    return "";
}

} // namespace amentum
