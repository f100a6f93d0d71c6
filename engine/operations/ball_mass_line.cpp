#include "operations/ball_mass_line.h"

#include "measurement/ball_mass_line.h"
#include "operations/inside/ball_days.h"
#include "operations/inside/ball_line_words.h"
#include "operations/inside/inside.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr int curve_points = 25;

using Families = std::map<std::string, std::vector<BallDay>>;

Result<BallMassLine> line_on(const BallDay& day) {
    if (day.balls.empty())
        return Refusal{RefusalCode::too_few_data, "No throw of that day could be measured.", "date",
                       day.date.text(), "3 balls or more, 2 throws of each"};
    return estimate_ball_mass_line(day.balls, day.trial_error, day.shared_error);
}

const BallDay* last_with_line(const std::vector<BallDay>& days) {
    const BallDay* last = nullptr;
    for (const auto& day : days)
        if (line_on(day))
            last = &day;
    return last;
}

std::vector<std::string> names_of(const Families& families) {
    std::vector<std::string> names;
    for (const auto& [name, days] : families)
        names.push_back(name);
    return names;
}

// The family with the latest line; without any, the one with most balls on a day.
std::string usual_family(const Families& families) {
    std::string best;
    std::pair<int, std::size_t> most{-1, 0};
    for (const auto& [name, days] : families) {
        const BallDay* last = last_with_line(days);
        std::pair<int, std::size_t> has{last ? last->date.days_since_1970() : -1, 0};
        for (const auto& day : days)
            has.second = std::max(has.second, day.balls.size());
        if (best.empty() || has > most) {
            best = name;
            most = has;
        }
    }
    return best;
}

Result<const BallDay*> day_wanted(const std::vector<BallDay>& days, const std::optional<std::string>& text) {
    if (!text) {
        const BallDay* last = last_with_line(days);
        return last ? last : &*std::max_element(days.rbegin(), days.rend(), [](const auto& a, const auto& b) {
            return a.balls.size() < b.balls.size();
        });
    }
    const auto date = parse_date(*text, "date");
    if (!date)
        return date.refusal();
    std::string held;
    for (const auto& day : days) {
        if (day.date == *date)
            return &day;
        held += (held.empty() ? "" : ", ") + day.date.text();
    }
    return Refusal{RefusalCode::unknown_name, "No ball was thrown in this test on " + *text + ".", "date",
                   *text, held};
}

ShownEstimate shown_power(const Estimate& slope) {
    return shown_estimate(slope.value, slope.central(), {"power of mass", 1, 2});
}

ShownEstimate shown_about(const Estimate& estimate, const ShownUnit& unit) {
    return shown_estimate(estimate.value, estimate.central(), unit);
}

ShownBall shown_ball(const BallOnLine& ball, const BallDay& day, const BallUnits& units) {
    ShownBall shown{shown_load_in(ball.mass, units.mass),
                    ball.throws,
                    {},
                    shown_about(ball.speed, units.speed),
                    shown_about(ball.fitted, units.speed),
                    shown_about(ball.energy, {"J", 1, 0}),
                    shown_about(ball.momentum, {"N s", 1, 1}),
                    ball.of_lightest,
                    ball.in_working_range,
                    ball.above_advised};
    for (const auto& thrown : day.balls)
        if (thrown.mass == ball.mass)
            for (const Speed speed : thrown.speeds)
                shown.speeds.push_back(speed.metres_per_second() * units.speed.factor);
    return shown;
}

std::vector<ShownLinePoint> curve_of(const BallMassLine& line, const BallUnits& units) {
    std::vector<ShownLinePoint> curve;
    for (int i = 0; i < curve_points; ++i) {
        const double share = static_cast<double>(i) / (curve_points - 1);
        const Mass mass =
            Mass::kilograms(line.lightest.kilograms() * std::pow(line.heaviest / line.lightest, share));
        const auto speed = speed_at(line, mass);
        assert(speed);
        const double f = units.speed.factor;
        curve.push_back({mass.kilograms() * units.mass.factor, speed->speed.value * f, speed->band.low * f,
                         speed->band.high * f});
    }
    return curve;
}

BallLineDay shown_day(const BallDay& day, const BallUnits& units) {
    BallLineDay shown{day.date.text(), static_cast<int>(day.balls.size()), {}, {}, 0, ""};
    const auto line = line_on(day);
    if (!line) {
        shown.why_not = line.refusal().sentence;
        return shown;
    }
    shown.slope = shown_power(line->slope);
    shown.level = shown_estimate(line->level.value, line->level_band, units.speed);
    shown.reference_mass = shown_load_in(line->reference, units.mass);
    return shown;
}

} // namespace

Result<BallMassLineAnswer> ball_mass_line(Workplace& workplace, const BallMassLineRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto families = ball_days(*view, inside.tables, **athlete);
    if (request.family && !families.contains(*request.family))
        return refuse_unknown("family", *request.family, names_of(families));
    if (families.empty())
        return refuse_no_balls(**athlete);
    const std::string family = request.family.value_or(usual_family(families));
    const auto& days = families.at(family);
    const auto day = day_wanted(days, request.date);
    if (!day)
        return day.refusal();
    const auto line = line_on(**day);
    if (!line)
        return refuse_line(**athlete, **day, line.refusal());

    const auto units = ball_units(view->records.facility.value_or(Facility{"This facility"}));
    const std::string name = family_name(inside.tables, family);
    BallMassLineAnswer answer{(*athlete)->id.text,
                              (*athlete)->name,
                              family,
                              name,
                              (*day)->date.text(),
                              (*day)->taken,
                              units.mass.unit,
                              units.speed.unit,
                              shown_load_in(line->reference, units.mass),
                              shown_estimate(line->level.value, line->level_band, units.speed),
                              shown_power(line->slope),
                              word(line->goes_with),
                              {},
                              curve_of(*line, units),
                              {},
                              names_of(families),
                              ball_line_words(*line, **day, units),
                              ball_line_cautions(*line, **day, **athlete, inside.tables, family),
                              ball_line_next(*line),
                              ball_line_sources(**day)};
    for (const auto& ball : line->balls)
        answer.balls.push_back(shown_ball(ball, **day, units));
    for (const auto& each : days)
        answer.days.push_back(shown_day(each, units));
    return answer;
}

} // namespace amentum
