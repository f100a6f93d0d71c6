// The lifts of a test day: each set becomes a 1RM, the best set becomes the day's value.
#include "measurement/day_value.h"

#include "measurement/body_mass_lifts.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr const char* failure_taken =
    "Reps in reserve were not given: the set is taken as ended at failure, as a test's last set is.";

struct Set {
    OneRepMax maximum;
    int reps;
    double reserve;
};

Result<Done> check_lift_fields(const TestKind& kind, const Reading& reading) {
    if (!reading.load)
        return refuse_missing("load", kind.measure == Measure::system_mass_max
                                          ? "the load added to body mass; 0 for none, below 0 when helped"
                                          : "the external load of the set");
    if (!reading.reps)
        return refuse_missing("reps", "the clean repetitions done");
    if (kind.measure == Measure::system_mass_max && !reading.body_mass)
        return refuse_missing("body_mass", "the athlete's body mass, which is part of what is lifted");
    return Done{};
}

bool trusted(const Set& set) {
    return set.maximum.repetitions_to_failure <= most_trusted_repetitions;
}

// A set of at most 10 before any longer one; among equals the higher estimate.
bool less_telling(const Set& a, const Set& b) {
    if (trusted(a) != trusted(b))
        return trusted(b);
    return a.maximum.value < b.maximum.value;
}

DayValue value_of_best(const TestKind& kind, const Set& best, int sets, std::vector<std::string> warnings) {
    std::string method = describe_set(kind, best.reps, best.reserve);
    if (sets > 1)
        method += ", best of " + std::to_string(sets) + " sets";
    for (const auto& warning : best.maximum.warnings)
        warnings.push_back(warning);
    const double value = best.maximum.value.kilograms();
    return {value, value * best.maximum.relative_error, sets, 1, method, warnings, lift_sources(kind)};
}

} // namespace

std::vector<std::string> lift_sources(const TestKind& kind) {
    std::vector<std::string> sources{"Epley1985", "Hackett2017"};
    if (kind.measure == Measure::system_mass_max)
        sources.push_back("Coyne2015");
    return sources;
}

std::string describe_set(const TestKind& kind, int reps, double reserve) {
    if (reps == 1 && reserve == 0)
        return "one repetition";
    std::string text = "Epley, " + std::to_string(reps) + (reps == 1 ? " repetition" : " repetitions");
    if (reserve > 0)
        text += " + " + format_shortest(reserve) + " in reserve";
    return kind.measure == Measure::system_mass_max ? text + ", on body mass + load" : text;
}

Result<OneRepMax> estimate_lift(const TestKind& kind, const Reading& reading, double reserve) {
    if (const auto fields = check_lift_fields(kind, reading); !fields)
        return fields.refusal();
    const RepetitionSet set{*reading.load, static_cast<double>(*reading.reps), reserve};
    if (kind.measure != Measure::system_mass_max)
        return estimate_one_rep_max(our_equation, set);
    const auto pull = estimate_pull_up_max(our_equation, *reading.body_mass, set);
    if (!pull)
        return pull.refusal();
    return OneRepMax{pull->system, pull->relative_error, pull->repetitions_to_failure, pull->warnings};
}

Result<DayValue> measure_best_set(const TestKind& kind, const std::vector<Reading>& readings) {
    std::vector<Set> sets;
    std::vector<std::string> warnings;
    std::optional<Refusal> too_long;
    for (const auto& reading : readings) {
        const double reserve = reading.reps_in_reserve.value_or(0);
        const auto maximum = estimate_lift(kind, reading, reserve);
        if (maximum) {
            sets.push_back({*maximum, *reading.reps, reserve});
            continue;
        }
        if (maximum.refusal().code != RefusalCode::method_does_not_apply)
            return maximum.refusal();
        too_long = maximum.refusal();
        warnings.push_back("Trial " + std::to_string(reading.trial) + " was left out: " + too_long->sentence);
    }
    if (sets.empty())
        return *too_long;
    const auto best = std::max_element(sets.begin(), sets.end(), less_telling);
    if (const auto sound = check_plausible(kind, best->maximum.value.kilograms(), "load"); !sound)
        return sound.refusal();
    const bool silent = std::none_of(readings.begin(), readings.end(),
                                     [](const Reading& each) { return each.reps_in_reserve.has_value(); });
    if (silent && best->reps > 1)
        warnings.push_back(failure_taken);
    return value_of_best(kind, *best, static_cast<int>(readings.size()), warnings);
}

} // namespace amentum
