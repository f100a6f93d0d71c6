#include "operations/load_velocity.h"

#include "operations/inside/inside.h"
#include "operations/inside/lifted_loads.h"
#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr int curve_points = 25;

std::string speed_said(double metres_per_second) {
    return format_fixed(metres_per_second, 2) + " m/s";
}

std::vector<ShownLinePoint> curve_of(const LoadVelocityLine& line, const ShownUnit& unit) {
    std::vector<ShownLinePoint> curve;
    const Mass first = line.loads.front().load, last = std::max(line.loads.back().load, line.one_rep_max);
    for (int i = 0; i < curve_points; ++i) {
        const Mass load = first + (last - first) * (static_cast<double>(i) / (curve_points - 1));
        const auto speed = line_speed_at(line, load);
        curve.push_back(
            {load.kilograms() * unit.factor, speed.value, speed.central().low, speed.central().high});
    }
    return curve;
}

std::string maximum_words(const LoadVelocityLine& line, const LiftedLoads& lifted,
                          const MinimalVelocity& least, const ShownUnit& unit) {
    const double kg = line.one_rep_max.kilograms();
    const Interval band = line.band;
    std::string text = "The line reaches " + speed_said(least.speed.metres_per_second()) + " at " +
                       describe_estimate(kg, band, unit);
    if (lifted.body_mass) {
        const double body = lifted.body_mass->kilograms();
        text += " of body mass and added load together, so " +
                describe_difference(kg - body, {band.low - body, band.high - body}, unit) + " added";
    }
    return text + ". It was not lifted: the heaviest load was " + format_fixed(100 * line.heaviest_share, 0) +
           " % of it.";
}

std::vector<std::string> words_of_line(const LoadVelocityLine& line, const LiftedLoads& lifted,
                                       const MinimalVelocity& least, const ShownUnit& unit) {
    const double ten = (unit.unit == "lb" ? Mass::pounds(10) : Mass::kilograms(10)).kilograms();
    std::vector<std::string> words{maximum_words(line, lifted, least, unit), describe_minimal_velocity(least),
                                   "Speed falls by " + format_fixed(-line.line.slope * ten, 3) +
                                       " m/s for each 10 " + unit.unit + " more. R-squared is " +
                                       format_fixed(line.r_squared, 3) +
                                       ", which it would be near whatever happened: it proves nothing."};
    if (least.lift == SpeedLift::hex_bar_deadlift)
        words.push_back(
            "Repetitions left are not read from bar speed in this lift: in a study of it no condition met an "
            "error of two repetitions [Chen2026].");
    return words;
}

std::vector<std::string> cautions_of(const LoadVelocityLine& line, const LiftedLoads& lifted,
                                     const Athlete& athlete, const MinimalVelocity& least) {
    auto cautions = line.warnings;
    cautions.insert(cautions.end(), lifted.left_out.begin(), lifted.left_out.end());
    if (athlete.training_years.value_or(0) < 1)
        cautions.push_back(
            std::string(athlete.training_years ? "In their first year of strength training"
                                               : "When years of strength training are not known") +
            ", the minimal velocity of others says little about this lifter: speeds at one percentage "
            "differ by 9 to 25 % between people who do not train [Ijerph2022].");
    if (least.lift == SpeedLift::pull_up)
        cautions.push_back(
            "The minimal velocity is that of pull-ups with palms away; the test here is done with palms "
            "facing each other.");
    return cautions;
}

std::vector<std::string> sources_of(const MinimalVelocity& least) {
    std::vector<std::string> sources{"GarciaRamos2024", "York2004", "Fieller1954"};
    sources.insert(sources.end(), least.sources.begin(), least.sources.end());
    return sources;
}

// Fields of the line's refusal as they stand in the request.
Refusal named_as_given(Refusal refusal, const LoadVelocityRequest& request) {
    if (!request.loads.empty() || refusal.field.empty())
        refusal.field = "loads";
    return refusal;
}

} // namespace

Result<LoadVelocityAnswer> load_velocity(Workplace& workplace, const LoadVelocityRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto kind = test_named(inside.tables, request.test);
    if (!kind)
        return kind.refusal();
    const auto lift = speed_lift_of(**kind);
    if (!lift)
        return lift.refusal();
    const auto lifted = request.loads.empty() ? loads_held(*view, **athlete, **kind, request)
                                              : loads_given(*view, **athlete, **kind, request);
    if (!lifted)
        return lifted.refusal();
    const auto& least = minimal_velocity(*lift);
    const auto facility = view->records.facility.value_or(Facility{"This facility"});
    LoadVelocityGiven given{lifted->repetitions, least.speed, least.between_people};
    given.said_in = facility.mass_unit;
    const auto line = estimate_load_velocity(given);
    if (!line)
        return named_as_given(line.refusal(), request);

    const auto unit = shown_mass(facility.mass_unit);
    LoadVelocityAnswer answer{
        (*athlete)->id.text,
        (*athlete)->name,
        (*kind)->key,
        (*kind)->name,
        lifted->date,
        lifted->taken,
        unit.unit,
        lifted->body_mass ? "body mass and added load" : "load on the bar",
        shown_estimate(line->one_rep_max.kilograms(), line->band, unit),
        {},
        {least.speed.metres_per_second(), least.between_people, least.from_memory, least.sources},
        {},
        curve_of(*line, unit),
        100 * line->heaviest_share,
        line->r_squared,
        words_of_line(*line, *lifted, least, unit),
        cautions_of(*line, *lifted, **athlete, least),
        sources_of(least)};
    if (lifted->body_mass) {
        const double body = lifted->body_mass->kilograms();
        answer.added_load = shown_estimate(line->one_rep_max.kilograms() - body,
                                           {line->band.low - body, line->band.high - body}, unit);
    }
    for (const auto& each : line->loads)
        answer.loads.push_back(
            {shown_load_in(each.load, unit), each.speed.metres_per_second(), each.fitted, each.used});
    return answer;
}

} // namespace amentum
