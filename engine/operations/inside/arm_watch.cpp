#include "operations/inside/arm_watch.h"

namespace amentum {
namespace {

std::vector<TestResult> results_of(const FacilityView& view, const Athlete& athlete) {
    std::vector<TestResult> results;
    for (const auto& [key, series] : view.series)
        if (key.first == athlete.id.text)
            for (const auto& each : series.results)
                if (!each.from_logged_set)
                    results.push_back(each.result);
    return results;
}

} // namespace

RangeWatch watch_ranges(const FacilityView& view, const Athlete& athlete, Date today) {
    return check_ranges(athlete, results_of(view, athlete), today);
}

GrowthWatch watch_growth(const FacilityView& view, const Athlete& athlete, Date today) {
    return check_growth(athlete, results_of(view, athlete), today,
                        view.records.facility.value_or(Facility{}).length_unit);
}

} // namespace amentum
