#include "operations/estimate_error.h"

#include "measurement/measurement_error.h"
#include "operations/inside/inside.h"
#include "operations/inside/repeats_here.h"
#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <cmath>

namespace amentum {
namespace {

// Errors are finer than values: one decimal more than the test's own; fractions are said in per cent.
ShownUnit error_unit(const TestKind& kind, const Facility& facility) {
    if (kind.scale == Scale::logarithmic)
        return {"%", 100, 1};
    auto unit = shown_unit(kind.unit, facility);
    ++unit.decimals;
    return unit;
}

std::string repeats_words(int needed, const std::string& what) {
    return "cannot tell yet: about " + std::to_string(needed) + " more " + what + (needed == 1 ? "" : "s") +
           " would settle it";
}

std::string part_words(const std::string& between, const std::optional<EstimatedError>& own, int held,
                       int needed, const std::string& what, const ShownUnit& unit) {
    if (held == 0)
        return between + ": no repeats are held, the published error stands; " + repeats_words(needed, what) +
               ".";
    if (!own)
        return between + ": the " + std::to_string(held) +
               " repeats held cannot tell it from none or from real change; the published error weighs "
               "most; " +
               repeats_words(needed, what) + ".";
    if (!(own->error > 0))
        return between + ": all repeats are alike, as if copied or rounded; the published error stands.";
    const std::string start =
        between + ": this gym's own repeats give " + describe_estimate(own->error, own->band, unit) + ", ";
    return start + (needed == 0 ? "which settles it." : repeats_words(needed, what) + ".");
}

ErrorPart part_of(double published, const std::optional<EstimatedError>& own, const PooledError& pooled,
                  int held, const ShownUnit& unit) {
    const double freedom = own ? own->freedom : 0;
    ErrorPart part{
        published * unit.factor,    {}, freedom, shown_estimate(pooled.error, pooled.band, unit), held,
        repeats_to_settle(freedom), ""};
    if (own)
        part.own = shown_estimate(own->error, own->band, unit);
    return part;
}

ErrorPart trial_part(const RepeatsHere& here, const TestKind& kind, const ShownUnit& unit) {
    if (!has_repeated_trials(kind)) {
        auto part = part_of(kind.trial_error, {}, here.trial, 0, unit);
        part.repeats_needed = 0;
        part.words = "Between trials: the sets of a day lead up to the best, they are no repeats of it; the "
                     "published error stands.";
        return part;
    }
    std::optional<EstimatedError> own;
    int held = 0;
    if (here.own_trial) {
        own = here.own_trial->error;
        held = here.own_trial->values - here.own_trial->rows;
    }
    auto part = part_of(kind.trial_error, own, here.trial, held, unit);
    part.words = part_words("Between trials", own, held, part.repeats_needed, "repeated trial", unit);
    return part;
}

double detectable(const TestKind& kind, double error_of_a_day, const ShownUnit& unit) {
    const double change = smallest_detectable_change(error_of_a_day, z95);
    return kind.scale == Scale::logarithmic ? 100 * std::expm1(change) : change * unit.factor;
}

void add_learning(ErrorLine& line, const RepeatsHere& here, const ShownUnit& unit) {
    if (!here.own_trial || here.own_trial->learning.empty())
        return;
    const auto& last = here.own_trial->learning.back();
    line.learning = shown_estimate(last.value, last.central(), unit);
    const auto trials = std::to_string(here.own_trial->learning.size() + 1);
    const std::string size = describe_difference(last.value, last.central(), unit);
    if (std::abs(last.value) > z95 * last.standard_error)
        line.words.push_back(
            "Trial " + trials + " differs from trial 1 by " + size +
            ": trials change as they go on (learning, warm-up or tiring), which is not error. Take "
            "the same number of trials every time.");
}

ErrorLine line_of(const FacilityView& view, const TestKind& kind, const Facility& facility) {
    const auto here = repeats_here(view, kind);
    const auto unit = error_unit(kind, facility);
    ErrorLine line{};
    line.test = kind.key;
    line.name = kind.name;
    line.unit = unit.unit;
    line.decimals = unit.decimals;
    line.trial = trial_part(here, kind, unit);
    const int repeated = repeated_days(here.days);
    line.day = part_of(kind.day_error, here.own_day, here.day, repeated, unit);
    line.day.words =
        part_words("Between days", here.own_day, repeated, line.day.repeats_needed, "repeated day", unit);
    line.usual_trials = here.usual_trials;
    line.words = {line.trial.words, line.day.words};
    add_learning(line, here, unit);
    line.smallest_detectable = detectable(kind, error_of_day(here), unit);
    line.smallest_detectable_published =
        detectable(kind, std::hypot(kind.day_error, kind.trial_error / std::sqrt(here.usual_trials)), unit);
    line.words.push_back("Two such days differ by up to " +
                         format_fixed(line.smallest_detectable, unit.decimals) + " " + unit.unit +
                         " by error alone, 19 times in 20.");
    line.sources = kind.sources;
    line.sources.push_back("Hopkins2000");
    return line;
}

} // namespace

Result<EstimateErrorAnswer> estimate_error(Workplace& workplace, const EstimateErrorRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto facility = view->records.facility.value_or(Facility{"This facility"});
    EstimateErrorAnswer answer{};
    if (request.test) {
        const auto kind = test_named(inside.tables, *request.test);
        if (!kind)
            return kind.refusal();
        answer.tests.push_back(line_of(*view, **kind, facility));
    } else {
        for (const auto& kind : inside.tables.test_kinds)
            answer.tests.push_back(line_of(*view, kind, facility));
    }
    answer.words = {
        "Pooled: the published error, which is taken to hold within a factor of 1.65 two times in three, and "
        "this "
        "gym's own repeats, each weighed by what it knows.",
        "The error between days is what is left when real change, which grows with the time between, is "
        "taken out; "
        "repeat a test a few days apart to learn it fastest.",
        "The other answers use the published errors, times one factor a test learned from all its days."};
    return answer;
}

} // namespace amentum
