#include "operations/inside/repeats_here.h"

#include "measurement/measure_test.h"
#include "measurement/one_trial.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace amentum {
namespace {

using DayKey = std::tuple<std::string, int, Side>;

double on_own_scale(const TestKind& kind, double value) {
    return kind.scale == Scale::logarithmic ? std::log(value) : value;
}

// Rows in the order of athlete, day and side; trials in theirs. Days that make no result are left out.
RepeatTable table_of_trials(const FacilityView& view, const TestKind& kind) {
    std::map<DayKey, std::vector<Reading>> groups;
    for (const auto& reading : view.records.readings)
        if (reading.test == kind.key)
            groups[{reading.athlete.text, reading.date.days_since_1970(), reading.side}].push_back(reading);
    RepeatTable table;
    for (auto& [key, readings] : groups) {
        if (!measure_test(kind, readings))
            continue;
        std::stable_sort(readings.begin(), readings.end(),
                         [](const auto& a, const auto& b) { return a.trial < b.trial; });
        table.emplace_back();
        for (const auto& reading : readings)
            table.back().push_back(on_own_scale(kind, measure_trial(kind, reading)->value));
    }
    return table;
}

double median_length(const RepeatTable& table) {
    std::vector<double> lengths;
    for (const auto& row : table)
        lengths.push_back(static_cast<double>(row.size()));
    if (lengths.empty())
        return 1;
    const auto middle = lengths.begin() + static_cast<std::ptrdiff_t>(lengths.size() / 2);
    std::nth_element(lengths.begin(), middle, lengths.end());
    return *middle;
}

std::vector<DaySeries> series_of_days(const FacilityView& view, const TestKind& kind, double trial_error) {
    std::map<std::tuple<std::string, Side, std::string, std::string, PlaceMeasured>, DaySeries> alike;
    for (const auto& [key, series] : view.series) {
        if (key.second != kind.key)
            continue;
        for (const auto& each : series.results) {
            if (each.from_logged_set)
                continue;
            const auto& r = each.result;
            const int averaged = has_repeated_trials(kind) ? r.trials : 1;
            alike[{key.first, r.side, r.device, r.rater, r.place}].push_back(
                {r.date.days_since_1970(), on_own_scale(kind, r.value),
                 trial_error * trial_error / averaged});
        }
    }
    std::vector<DaySeries> all;
    for (auto& [key, days] : alike)
        if (days.size() > 1)
            all.push_back(std::move(days));
    return all;
}

} // namespace

bool has_repeated_trials(const TestKind& kind) {
    return kind.measure != Measure::one_rep_max && kind.measure != Measure::split_squat_max &&
           kind.measure != Measure::system_mass_max;
}

double error_of_day(const RepeatsHere& here) {
    return std::hypot(here.day.error, here.trial.error / std::sqrt(here.usual_trials));
}

RepeatsHere repeats_here(const FacilityView& view, const TestKind& kind) {
    RepeatsHere here{};
    here.usual_trials = 1;
    EstimatedError own_trial{0, 0, {0, 0}}; // says nothing
    if (has_repeated_trials(kind)) {
        here.trials = table_of_trials(view, kind);
        here.usual_trials = median_length(here.trials);
        if (const auto own = estimate_error_of_trials(here.trials)) {
            here.own_trial = *own;
            own_trial = own->error;
        }
    }
    here.trial = *pool_with_published(kind.trial_error, likelihood_of_repeats(own_trial));
    here.days = series_of_days(view, kind, here.trial.error);
    if (const auto own = estimate_error_of_days(here.days, kind.day_error))
        here.own_day = *own;
    here.day = *pool_with_published(kind.day_error, likelihood_of_days(here.days, kind.day_error));
    return here;
}

} // namespace amentum
