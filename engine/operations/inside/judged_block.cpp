#include "operations/inside/judged_block.h"

#include "inference/test_scale.h"
#include "reports/sentences.h"
#include "reports/verdicts.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

constexpr int fewest_others = 3, fewest_for_scatter = 5; // (proposal of this project, no source)
constexpr int begun_together_days = 14, days_between_points = 7, days_shown_before = 240;
constexpr int old_baseline_days = 42; // older than that is said (proposal of this project, no source)

// One quality's numbers from the model's scale to what is shown.
struct Shower {
    const TestKind& kind;
    ShownUnit unit;
    double at; // forecast on the scale, where steps are taken

    double step(double on_scale) const { return difference_on_unit(kind.scale, at, on_scale); }
    ShownEstimate difference(const Estimate& e) const {
        const Interval band = e.central();
        return shown_estimate(step(e.value), {step(band.low), step(band.high)}, unit);
    }
    double value(double on_scale) const {
        return back_on_unit(kind.scale, {on_scale, 0}).value * unit.factor;
    }
    ShownEstimate state(double mean, double variance) const {
        const auto back = back_on_unit(kind.scale, {mean, variance});
        return shown_estimate(back.value, back.band, unit);
    }
    std::string words(const Estimate& e) const {
        const Interval band = e.central();
        return describe_difference(step(e.value), {step(band.low), step(band.high)}, unit);
    }
};

// Excesses of the other athletes over the same weeks: those without any kept block then, and those who began one together.
struct Others {
    std::vector<Estimate> without;
    std::vector<double> with_block;
};

Others others_of(const FacilityView& view, const RosterModel& model, const Athlete& athlete,
                 const BlockSpan& span, int quality) {
    std::set<std::string> busy, together;
    for (const auto& block : view.records.blocks) {
        if (block.start <= span.last && block.start + (7 * block.weeks - 1) >= span.start)
            busy.insert(block.athlete.text);
        if (std::abs(block.start - span.start) <= begun_together_days)
            together.insert(block.athlete.text);
    }
    Others others;
    for (std::size_t i = 0; i < model.data.athletes.size(); ++i) {
        const std::string& id = model.athlete_ids[i];
        if (id == athlete.id.text)
            continue;
        const auto found = measure_block_excess(*model.fit, model.data.athletes[i], span.days(), quality);
        if (found && !busy.contains(id))
            others.without.push_back(found->excess());
        if (found && together.contains(id))
            others.with_block.push_back(found->excess().value);
    }
    return others;
}

std::vector<ShownPoint> band_of(const RosterModel& model, const RosterAthlete& athlete, const BlockSpan& span,
                                const BlockExcess& found, int quality, const Shower& show) {
    std::set<int> days;
    const int start = span.start.days_since_1970();
    for (int day = start; day < found.after; day += days_between_points)
        days.insert(day);
    days.insert(found.after);
    const std::vector<int> on(days.begin(), days.end());
    const auto states = forecast_without_block(*model.fit, athlete, start, on, quality);
    const double error = found.variance - found.forecast.variance; // of a test like the one judged
    std::vector<ShownPoint> band;
    for (std::size_t i = 0; i < on.size(); ++i) {
        const auto point = show.state(states[i].mean, states[i].variance + error);
        band.push_back({Date::from_days(on[i]).text(), point.value, point.low, point.high});
    }
    return band;
}

std::vector<ResultOnDay> results_shown(const RosterModel& model, const RosterAthlete& athlete,
                                       const BlockExcess& found, int quality, const Shower& show) {
    std::vector<ResultOnDay> shown;
    for (const auto& each : results_of(*model.fit, athlete, quality))
        if (each.day <= found.after && each.day >= found.before - days_shown_before)
            shown.push_back(
                {Date::from_days(each.day).text(), show.value(each.value), each.day == found.after});
    return shown;
}

// Beside others when there are enough, and how much single throwers' responses scatter beyond theirs.
void add_others(const Others& others, const Estimate& own, const Shower& show, JudgedQuality& judged) {
    const int without = static_cast<int>(others.without.size());
    if (without < fewest_others) {
        judged.words.push_back(describe_no_comparison_group(without, fewest_others));
        return;
    }
    const auto group = estimate_comparison(others.without);
    const Estimate beside{own.value - group.mean.value,
                          std::hypot(own.standard_error, group.mean.standard_error)};
    const auto verdict = verdict_of(beside);
    judged.others =
        BesideOthers{group.athletes, show.difference(group.mean), show.difference(beside), word(verdict)};
    judged.verdict = word(verdict);
    judged.words.push_back(
        std::to_string(group.athletes) + " throwers without a kept block over the same weeks: " +
        show.words(group.mean) + " beside their own forecasts. Beside them: " + show.words(beside) + ", " +
        said_by(verdict, "more than they", "less than they", "cannot tell whether it differs from theirs") +
        ".");
    auto with_block = others.with_block;
    with_block.push_back(own.value);
    if (without < fewest_for_scatter || static_cast<int>(with_block.size()) < fewest_for_scatter)
        return;
    std::vector<double> values;
    for (const auto& each : others.without)
        values.push_back(each.value);
    const auto found = estimate_individual_responses(with_block, values);
    judged.individual = shown_estimate(
        show.step(found.sd), {show.step(found.central.low), show.step(found.central.high)}, show.unit);
    judged.words.push_back("Individual responses: SD " +
                           describe_estimate(show.step(found.sd),
                                             {show.step(found.central.low), show.step(found.central.high)},
                                             show.unit) +
                           ", the scatter of " + std::to_string(with_block.size()) +
                           " throwers who began a block together beyond that of those without one; below 0 "
                           "there is none to be seen.");
}

void add_doubts(const BlockSpan& span, const BlockExcess& found, JudgedQuality& judged) {
    const int age = span.start.days_since_1970() - found.before;
    if (age > old_baseline_days)
        judged.words.push_back("The last test before the block lies " + std::to_string(age) +
                               " days before its start; the forecast is wider for it.");
}

} // namespace

JudgedOrWhy judged_quality(const Workplace::Inside& inside, const FacilityView& view,
                           const RosterModel& model, const Athlete& athlete, const BlockSpan& span,
                           int quality) {
    const RosterAthlete* seen = model.athlete(athlete.id.text);
    const int start = span.start.days_since_1970();
    const auto results = seen ? results_of(*model.fit, *seen, quality) : std::vector<DayResult>{};
    if (results.empty() || results.front().day > start)
        return {{}, true, false};
    const auto found = measure_block_excess(*model.fit, *seen, span.days(), quality);
    if (!found)
        return {{}, false, true};
    const TestKind& kind = *model.kinds[static_cast<std::size_t>(quality)];
    const Quality* named = inside.tables.quality(kind.quality);
    const Shower show{kind, shown_unit(kind.unit, view.records.facility.value_or(Facility{"This facility"})),
                      found->forecast.mean};
    const Estimate excess = found->excess();
    const auto verdict = verdict_of(excess);
    JudgedQuality judged{kind.quality,
                         named ? named->name : kind.quality,
                         kind.key,
                         kind.name,
                         show.unit.unit,
                         show.unit.decimals,
                         Date::from_days(found->before).text(),
                         show.value(found->before_value),
                         Date::from_days(found->after).text(),
                         show.value(found->observed),
                         show.state(found->forecast.mean, found->variance),
                         show.difference(excess),
                         normal_cdf(excess.value / excess.standard_error),
                         word(verdict),
                         {},
                         {},
                         band_of(model, *seen, span, *found, quality, show),
                         results_shown(model, *seen, *found, quality, show),
                         {}};
    const Interval band = excess.central();
    judged.words.push_back(describe_beside_forecast(judged.name, show.step(excess.value),
                                                    {show.step(band.low), show.step(band.high)}, verdict,
                                                    show.unit));
    add_others(others_of(view, model, athlete, span, quality), excess, show, judged);
    add_doubts(span, *found, judged);
    return {std::move(judged)};
}

} // namespace amentum
