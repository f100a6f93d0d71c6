#include "operations/inside/change_answer.h"

#include "inference/change.h"
#include "inference/expected_growth.h"
#include "inference/test_scale.h"
#include "operations/inside/limiter_work.h"
#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

// Taken when too few throwers have the test: one published day-to-day error is worth noticing (proposal).
constexpr double worthwhile_in_errors = 1.0;
constexpr double worthwhile_share = 0.2;
// One SD of how far one child's growth in velocity lies from the published slopes, as a share of it. The slopes are
// between children and their errors were not read: proposal of this project, no source.
constexpr double growth_uncertainty = 0.3;

// How much taller, when the stature was taped more than once.
std::optional<Length> taller_by(const FacilityView& view, const Athlete& athlete, Date from, Date to) {
    const Series* taped = view.one_series(athlete.id.text, "stature");
    if (!taped || taped->values.size() < 2)
        return std::nullopt;
    const auto& trajectory = taped->trajectory.front();
    return Length::metres(trajectory.state_on(to.days_since_1970()).mean -
                          trajectory.state_on(from.days_since_1970()).mean);
}

double growth_between(const FacilityView& view, const Athlete& athlete, Date from, Date to) {
    return expected_growth(decimal_years(athlete.birth_date, from), decimal_years(athlete.birth_date, to),
                           taller_by(view, athlete, from, to))
        .velocity.metres_per_second();
}

// 0.2 of the SD between athletes of the same kind (age, size, sex and sport taken out), error taken out [Hopkins2004].
double worthwhile_on_scale(const FacilityView& view, const TestKind& kind, const Athlete& athlete,
                           Date today) {
    const auto level = level_in(view, kind, athlete, today);
    return level.spread > 0 ? worthwhile_share * level.spread : worthwhile_in_errors * kind.day_error;
}

// The trajectory of what growth alone does not bring: growth since `first` is taken off each test before smoothing,
// so that what the smoother shrinks is the change beyond growth, and not growth itself.
Trajectory beyond_growth(const FacilityView& view, const Athlete& athlete, const Series& series, Date first) {
    auto values = series.values;
    for (auto& value : values) {
        const Date day = Date::from_days(value.day);
        value.value -= day >= first ? growth_between(view, athlete, first, day)
                                    : -growth_between(view, athlete, day, first);
    }
    return estimate_trajectory(values, series.trajectory.front().drift);
}

} // namespace

JudgeChangeAnswer change_answer(const Workplace::Inside& inside, const FacilityView& view,
                                const Athlete& athlete, const Series& series, std::size_t from,
                                std::size_t to) {
    const auto& kind = *series.kind;
    const auto& trajectory = series.trajectory.front();
    const auto unit = shown_unit(kind.unit, view.records.facility.value_or(Facility{"This facility"}));
    const Date first = Date::from_days(trajectory.points[from].day),
               last = Date::from_days(trajectory.points[to].day);
    const double growth =
        kind.quality == "throwing_velocity" ? std::max(0.0, growth_between(view, athlete, first, last)) : 0;
    const bool growing = growth > 0;
    const double worthwhile = worthwhile_on_scale(view, kind, athlete, inside.today());
    const auto judged =
        judge_trajectory_change(growing ? beyond_growth(view, athlete, series, first) : trajectory, from, to,
                                worthwhile, 0, growth_uncertainty * growth);

    const double at = trajectory.points[from].smoothed.mean;
    const auto on_unit = [&](double step) { return difference_on_unit(kind.scale, at, step); };
    const Interval band{on_unit(judged.likely.central().low), on_unit(judged.likely.central().high)};
    const double detectable = smallest_detectable_difference(std::sqrt(series.values[from].variance),
                                                             std::sqrt(series.values[to].variance));
    // Between the two days' own results, not a step from the smoothed level.
    const double measured = difference_on_unit(kind.scale, series.values[from].value,
                                               series.values[to].value - series.values[from].value);
    const std::string quality =
        inside.tables.quality(kind.quality) ? inside.tables.quality(kind.quality)->name : kind.quality;
    const ChangeWords words{quality,
                            measured,
                            on_unit(judged.likely.value),
                            band,
                            judged.chance_gained,
                            judged.chance_lost,
                            on_unit(worthwhile),
                            on_unit(detectable),
                            first,
                            last,
                            growing};
    JudgeChangeAnswer answer{athlete.id.text,
                             kind.key,
                             kind.name,
                             first.text(),
                             last.text(),
                             measured * unit.factor,
                             shown_estimate(on_unit(judged.likely.value), band, unit),
                             on_unit(worthwhile) * unit.factor,
                             judged.chance_gained,
                             judged.chance_lost,
                             on_unit(detectable) * unit.factor,
                             {},
                             word(judged.verdict),
                             {describe_change(words, unit)}};
    if (growing) {
        const double shown = growth * unit.factor;
        const double half = z80 * growth_uncertainty * shown;
        answer.growth = ShownEstimate{shown, shown - half, shown + half, unit.unit, unit.decimals};
        answer.words.push_back("Growth alone usually brings about " + format_fixed(shown, unit.decimals) +
                               " " + unit.unit +
                               " over that time below 18; it has been taken out of the likely change.");
    }
    return answer;
}

} // namespace amentum
