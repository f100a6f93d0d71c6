#include "operations/inside/ball_line_words.h"

#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

std::string mass_said(Mass mass, const ShownUnit& unit) {
    return format_shortest(std::round(mass.kilograms() * unit.factor * 100) / 100) + " " + unit.unit;
}

std::string slope_words(const BallMassLine& line) {
    const Interval band = line.slope.central();
    const auto loss = [](double slope) { return format_fixed(100 * (1 - std::pow(2.0, slope)), 0); };
    return "Speed falls with the ball's mass to the power " + format_fixed(line.slope.value, 2) +
           " (80 %: " + format_fixed(band.low, 2) + " to " + format_fixed(band.high, 2) +
           "): a ball of twice the mass is " + loss(line.slope.value) + " % slower (" + loss(band.high) +
           " to " + loss(band.low) + " %).";
}

std::string goes_with_words(const BallMassLine& line) {
    switch (line.goes_with) {
    case SlopeGoesWith::strength:
        return "So steep a slope (toward -0.5) goes with a thrower whom strength holds back with heavy "
               "balls; a proposal of "
               "this project, not a finding.";
    case SlopeGoesWith::limb_speed:
        return "So flat a slope (about -0.21) goes with a thrower whom the speed of the limb itself holds "
               "back; a proposal of "
               "this project, not a finding.";
    case SlopeGoesWith::cannot_tell:
        break;
    }
    const Interval band = line.slope.central();
    const bool both = band.low <= slope_of_heavy_balls && band.high >= slope_of_light_balls;
    return std::string("Cannot tell whether the slope goes with strength or with the speed of the limb: ") +
           (both ? "its interval holds both -0.21 and -0.5." : "it lies between -0.21 and -0.5.");
}

std::string energy_words(const BallMassLine& line, const BallUnits& units) {
    std::string energies;
    for (const auto& ball : line.balls)
        energies += (energies.empty() ? "" : "; ") + mass_said(ball.mass, units.mass) + ": " +
                    describe_estimate(ball.energy.value, ball.energy.central(), {"J", 1, 0});
    return "Energy of the ball, " + energies + ". Momentum rises from " +
           format_fixed(line.balls.front().momentum.value, 1) + " to " +
           format_fixed(line.balls.back().momentum.value, 1) + " N s.";
}

std::string working_words(const BallMassLine& line, const BallUnits& units) {
    std::string kept;
    for (const auto& ball : line.balls)
        if (ball.in_working_range)
            kept += (kept.empty() ? "" : ", ") + mass_said(ball.mass, units.mass) + " at " +
                    format_fixed(100 * ball.of_lightest, 0) + " %";
    return describe_working_masses() + (kept.empty() ? " None of these was thrown."
                                                     : " Of the lightest ball's speed there: " + kept + ".");
}

} // namespace

BallUnits ball_units(const Facility& facility) {
    auto mass = shown_mass(facility.mass_unit);
    mass.decimals = facility.mass_unit == MassUnit::lb ? 1 : 2;
    return {mass, shown_unit(TestUnit::metre_per_second, facility)};
}

std::string family_name(const ReferenceTables& tables, const std::string& family) {
    for (const auto& kind : tables.test_kinds)
        if (kind.ball_mass && ball_family(kind) == family)
            return ball_family_name(kind);
    return family;
}

std::vector<std::string> ball_line_words(const BallMassLine& line, const BallDay& day,
                                         const BallUnits& units) {
    return {"A ball of " + mass_said(line.reference, units.mass) +
                ", the middle of those thrown, leaves with " +
                describe_estimate(line.level.value, line.level_band, units.speed) + " (" + day.taken +
                "). What the day and the device share is in this interval, and not in the slope's.",
            slope_words(line), goes_with_words(line), energy_words(line, units), working_words(line, units)};
}

std::vector<std::string> ball_line_cautions(const BallMassLine& line, const BallDay& day,
                                            const Athlete& athlete, const ReferenceTables& tables,
                                            const std::string& family) {
    auto cautions = line.warnings;
    cautions.insert(cautions.end(), day.warnings.begin(), day.warnings.end());
    cautions.insert(cautions.end(), day.left_out.begin(), day.left_out.end());
    for (const auto& key : athlete.restrictions) {
        const Caution* caution = tables.caution(key);
        const bool speaks_against =
            caution && std::any_of(tables.exercises.begin(), tables.exercises.end(), [&](const Exercise& e) {
                return (e.key == family || e.pattern == family) &&
                       std::find(e.cautions.begin(), e.cautions.end(), key) != e.cautions.end();
            });
        if (speaks_against)
            cautions.push_back("Caution, " + caution->condition + ": " + caution->sentence);
    }
    return cautions;
}

std::vector<std::string> ball_line_next(const BallMassLine& line) {
    std::vector<std::string> next;
    const bool unsure =
        line.slope.standard_error > 0.06; // proposal: half the way between -0.21 and -0.5 is 0.14
    if (unsure || !line.straight)
        next.push_back(
            "Throw the same balls again on one day, five throws each: the slope's interval is wide.");
    if (line.heaviest / line.lightest < 1.6 && line.heaviest < heaviest_advised * 0.97)
        next.push_back("Balls further apart say more about the slope: add one of 8 lb, or a lighter one.");
    return next;
}

std::vector<std::string> ball_line_sources(const BallDay& day) {
    auto sources = day.sources;
    for (const char* own : {"Cross2004", "Ijssc2024", "CommonPractice"})
        if (std::find(sources.begin(), sources.end(), own) == sources.end())
            sources.push_back(own);
    return sources;
}

Refusal refuse_no_balls(const Athlete& athlete) {
    return {RefusalCode::too_few_data,
            athlete.name + " has no test with a medicine ball yet. " + describe_throws_needed({}).front(),
            "athlete", athlete.name, "3 balls or more, 2 throws of each, on one day"};
}

Refusal refuse_line(const Athlete& athlete, const BallDay& day, Refusal refusal) {
    std::string thrown;
    for (const auto& ball : day.balls)
        thrown += (thrown.empty() ? "" : ", ") + std::to_string(ball.speeds.size()) + " with " +
                  format_shortest(std::round(ball.mass.pounds() * 10) / 10) + " lb";
    refusal.sentence = athlete.name + ", " + day.date.text() +
                       " (throws: " + (thrown.empty() ? "none" : thrown) + "): " + refusal.sentence;
    refusal.field = "date";
    return refusal;
}

} // namespace amentum
