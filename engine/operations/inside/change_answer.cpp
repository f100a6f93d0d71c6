#include "operations/inside/change_answer.h"

#include "inference/athlete_states.h"
#include "inference/change.h"
#include "inference/expected_growth.h"
#include "inference/test_scale.h"
#include "operations/inside/limiter_work.h"
#include "reports/sentences.h"
#include "reports/verdicts.h"
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

// What the change was judged from, whichever of the two ways.
struct Judged {
    ChangeJudgement judgement;
    double at; // the level on the first day, where a step of the scale is taken
    std::optional<Estimate> growth;
    std::vector<ReadingSurprise> surprises;
};

Judged judged_jointly(const RosterModel& model, const JointPart& joint, int from, int to, double worthwhile) {
    const AthleteStates states(model.fit->mode, *joint.athlete);
    const auto growth = growth_by_fit(model, joint, from, to);
    Judged judged{judge_known_change(states.change(joint.quality, from, to), worthwhile,
                                     growth ? growth->value : 0, growth ? growth->standard_error : 0),
                  states.smoothed(from, joint.quality).mean,
                  growth,
                  {}};
    for (const auto& surprise : states.surprises())
        if (surprise.quality == joint.quality && surprise.far_from_expected && from <= surprise.day &&
            surprise.day <= to)
            judged.surprises.push_back(surprise);
    return judged;
}

Judged judged_alone(const FacilityView& view, const Athlete& athlete, const Series& series, std::size_t from,
                    std::size_t to, double worthwhile) {
    const auto& trajectory = series.trajectory.front();
    const Date first = Date::from_days(trajectory.points[from].day),
               last = Date::from_days(trajectory.points[to].day);
    const double growth = series.kind->quality == "throwing_velocity"
                              ? std::max(0.0, growth_between(view, athlete, first, last))
                              : 0;
    const bool growing = growth > 0;
    Judged judged{judge_trajectory_change(growing ? beyond_growth(view, athlete, series, first) : trajectory,
                                          from, to, worthwhile, 0, growth_uncertainty * growth),
                  trajectory.points[from].smoothed.mean,
                  {},
                  {}};
    if (growing)
        judged.growth = Estimate{growth, growth_uncertainty * growth};
    for (std::size_t i = from; i <= to; ++i) {
        const auto& point = trajectory.points[i];
        const double value = series.values[i].value;
        if (point.far_from_expected)
            judged.surprises.push_back(
                {point.day, 0, value, value - point.innovation, point.innovation_variance, true});
    }
    return judged;
}

std::vector<SurprisingTest> surprises_of(const Judged& judged, const TestKind& kind, const ShownUnit& unit) {
    std::vector<SurprisingTest> shown;
    for (const auto& each : judged.surprises) {
        const auto forecast = back_on_unit(kind.scale, {each.forecast, each.forecast_variance});
        const double value = back_on_unit(kind.scale, {each.value, 0}).value;
        const std::string date = Date::from_days(each.day).text();
        shown.push_back({date, value * unit.factor, shown_estimate(forecast.value, forecast.band, unit),
                         "The test of " + date + ", " + format_fixed(value * unit.factor, unit.decimals) +
                             " " + unit.unit + ", lies far from what all readings before it foretold, " +
                             describe_estimate(forecast.value, forecast.band, unit) +
                             ". It is kept; see whether it was written down right."});
    }
    return shown;
}

std::string verdict_word(double gained, double lost) {
    return said_by(verdict_of(gained, lost), word(ChangeVerdict::gained), word(ChangeVerdict::lost),
                   word(ChangeVerdict::cannot_tell));
}

void add_growth(const Judged& judged, const TestKind& kind, const ShownUnit& unit, bool by_fit,
                JudgeChangeAnswer& answer) {
    const auto on_unit = [&](double step) { return difference_on_unit(kind.scale, judged.at, step); };
    const auto band = judged.growth->central();
    answer.growth =
        shown_estimate(on_unit(judged.growth->value), {on_unit(band.low), on_unit(band.high)}, unit);
    answer.words.push_back(
        std::string("Growth alone usually brings about ") +
        describe_estimate(on_unit(judged.growth->value), {on_unit(band.low), on_unit(band.high)}, unit) +
        " over that time below 18" + (by_fit ? ", by the records here and what is published" : "") +
        "; it has been taken out of the likely change.");
}

} // namespace

JointPart joint_part(const RosterModel& model, const Athlete& athlete, const TestKind& kind) {
    const auto quality = model.quality_tested_by(kind.key);
    if (!quality || model.qualities.empty())
        return {nullptr, 0,
                "The joint model of this roster does not hold this test: too few throwers did it, or another "
                "test speaks for its quality."};
    if (!model.fit)
        return {nullptr, 0, "The joint model of this roster does not stand: " + model.fit.refusal().sentence};
    const RosterAthlete* found = model.athlete(athlete.id.text);
    if (!found)
        return {nullptr, 0, "The joint model of this roster does not hold this thrower."};
    return {found, *quality,
            "All tests of this thrower and the usual changes of this roster, in one model, the error of "
            "every test "
            "and of its session allowed for."};
}

bool tested_on(const JointPart& joint, int day) {
    return std::any_of(joint.athlete->days.begin(), joint.athlete->days.end(), [&](const auto& each) {
        return each.day == day && std::any_of(each.readings.begin(), each.readings.end(),
                                              [&](const auto& r) { return r.quality == joint.quality; });
    });
}

std::optional<Estimate> growth_by_fit(const RosterModel& model, const JointPart& joint, int from_day,
                                      int to_day) {
    const auto& fit = *model.fit;
    if (joint.athlete->growth.empty() || joint.athlete->growth.front() <= 0 || fit.growth.empty())
        return std::nullopt;
    const double units = joint.athlete->growth.front() * (to_day - from_day) / 30.0;
    const Estimate& each = fit.growth[static_cast<std::size_t>(joint.quality)];
    return Estimate{each.value * units, each.standard_error * units};
}

JudgeChangeAnswer change_answer(const Workplace::Inside& inside, const FacilityView& view,
                                const RosterModel& model, const Athlete& athlete, const Series& series,
                                std::size_t from, std::size_t to) {
    const auto& kind = *series.kind;
    const auto& points = series.trajectory.front().points;
    const auto unit = shown_unit(kind.unit, view.records.facility.value_or(Facility{"This facility"}));
    const double worthwhile = worthwhile_on_scale(view, kind, athlete, inside.today());
    auto joint = joint_part(model, athlete, kind);
    if (joint.athlete && !(tested_on(joint, points[from].day) && tested_on(joint, points[to].day)))
        joint = {nullptr, 0,
                 "The joint model leaves logged sets out, and one of the two days is of a logged set."};
    const auto judged = joint.athlete
                            ? judged_jointly(model, joint, points[from].day, points[to].day, worthwhile)
                            : judged_alone(view, athlete, series, from, to, worthwhile);
    const auto& [likely, gained, lost, flat, verdict] = judged.judgement;

    const auto on_unit = [&](double step) { return difference_on_unit(kind.scale, judged.at, step); };
    const Interval band{on_unit(likely.central().low), on_unit(likely.central().high)};
    const double detectable = smallest_detectable_difference(std::sqrt(series.values[from].variance),
                                                             std::sqrt(series.values[to].variance));
    // Between the two days' own results, not a step from the smoothed level.
    const double measured = difference_on_unit(kind.scale, series.values[from].value,
                                               series.values[to].value - series.values[from].value);
    const auto* quality = inside.tables.quality(kind.quality);
    const Date first = Date::from_days(points[from].day), last = Date::from_days(points[to].day);
    const ChangeWords words{quality ? quality->name : kind.quality,
                            measured,
                            on_unit(likely.value),
                            band,
                            gained,
                            lost,
                            on_unit(worthwhile),
                            on_unit(detectable),
                            first,
                            last,
                            judged.growth.has_value()};
    JudgeChangeAnswer answer{athlete.id.text,
                             kind.key,
                             kind.name,
                             first.text(),
                             last.text(),
                             measured * unit.factor,
                             shown_estimate(on_unit(likely.value), band, unit),
                             on_unit(worthwhile) * unit.factor,
                             gained,
                             lost,
                             on_unit(detectable) * unit.factor,
                             {},
                             joint.athlete ? "joint model" : "this test alone",
                             joint.why,
                             surprises_of(judged, kind, unit),
                             verdict_word(gained, lost),
                             {describe_change(words, unit)}};
    if (judged.growth)
        add_growth(judged, kind, unit, joint.athlete != nullptr, answer);
    for (const auto& surprise : answer.surprises)
        answer.words.push_back(surprise.words);
    return answer;
}

} // namespace amentum
