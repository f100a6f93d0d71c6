#include "operations/inside/trajectory_answer.h"

#include "inference/test_scale.h"
#include "operations/inside/change_answer.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

constexpr int days_between_points = 21; // of the drawn line, so that its band is seen to widen between tests

std::set<int> drawn_days(const Trajectory& trajectory, Date today) {
    std::set<int> days;
    for (const auto& point : trajectory.points)
        days.insert(point.day);
    const int last = std::max(*days.rbegin(), today.days_since_1970());
    for (int day = *days.begin(); day < last; day += days_between_points)
        days.insert(day);
    days.insert(last);
    return days;
}

} // namespace

std::vector<ShownPoint> curve_of(const Series& series, const Facility& facility, Date today) {
    const auto unit = shown_unit(series.kind->unit, facility);
    const auto& trajectory = series.trajectory.front();
    std::vector<ShownPoint> curve;
    for (const int day : drawn_days(trajectory, today)) {
        const auto back = back_on_unit(series.kind->scale, trajectory.state_on(day));
        curve.push_back({Date::from_days(day).text(), back.value * unit.factor, back.band.low * unit.factor,
                         back.band.high * unit.factor});
    }
    return curve;
}

std::vector<ShownTest> tests_of(const Series& series, const Facility& facility) {
    const auto unit = shown_unit(series.kind->unit, facility);
    std::vector<ShownTest> tests;
    for (const auto& each : series.results) {
        const auto& result = each.result;
        ShownTest test{result.date.text(),
                       result.value * unit.factor,
                       result.standard_error * unit.factor,
                       word(result.side),
                       result.method,
                       result.warnings,
                       false,
                       each.from_logged_set,
                       each.left_out};
        if (each.point >= 0)
            test.far_from_expected =
                series.trajectory.front().points[static_cast<std::size_t>(each.point)].far_from_expected;
        tests.push_back(std::move(test));
    }
    return tests;
}

ShownTrajectory trajectory_answer(const Workplace::Inside& inside, const FacilityView& view,
                                  const RosterModel& model, const Athlete& athlete, const Series& series) {
    const auto facility = view.records.facility.value_or(Facility{"This facility"});
    const auto& kind = *series.kind;
    const auto unit = shown_unit(kind.unit, facility);
    const Quality* quality = inside.tables.quality(kind.quality);
    ShownTrajectory shown{kind.quality,
                          quality ? quality->name : kind.quality,
                          kind.key,
                          kind.name,
                          unit.unit,
                          unit.decimals,
                          tests_of(series, facility),
                          curve_of(series, facility, inside.today()),
                          {},
                          "",
                          ""};
    shown.now =
        shown_state(kind, series.trajectory.front().state_on(inside.today().days_since_1970()), facility);
    if (series.values.size() >= 2) {
        const auto change = change_answer(inside, view, model, athlete, series, 0, series.values.size() - 1);
        for (const auto& sentence : change.words)
            shown.change_words += (shown.change_words.empty() ? "" : " ") + sentence;
        shown.change_verdict = change.verdict;
    }
    return shown;
}

} // namespace amentum
