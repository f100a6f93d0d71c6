#include "measurement/load_velocity.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double too_far_off = 3;         // standard errors: proposal of this project, no source
constexpr double one_load = 0.005;        // loads closer than this fraction are one load
constexpr std::size_t loads_to_judge = 4; // with fewer, nobody can say which one is off

Result<Done> check_ranges(const std::vector<LoadedRepetition>& repetitions) {
    for (const auto& each : repetitions) {
        const double kg = each.load.kilograms(), v = each.speed.metres_per_second();
        if (!(kg >= 1 && kg <= 600))
            return refuse_range("loads", kg, 1, 600, "kg", "Please check the unit.");
        if (!(v >= 0.05 && v <= 3))
            return refuse_range("speeds", v, 0.05, 3, "m/s", "Mean speed of the bar is meant.");
    }
    return Done{};
}

// The fastest repetition of each load, lightest load first.
std::vector<LoadedRepetition> fastest_of_each(std::vector<LoadedRepetition> all) {
    std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) {
        return a.load < b.load || (a.load == b.load && a.speed > b.speed);
    });
    std::vector<LoadedRepetition> best;
    for (const auto& each : all)
        if (best.empty() || each.load / best.back().load > 1 + one_load)
            best.push_back(each);
        else if (each.speed > best.back().speed)
            best.back() = each;
    return best;
}

std::vector<LinePoint> points_of(const std::vector<LoadedRepetition>& loads, const LoadVelocityGiven& given) {
    std::vector<LinePoint> points;
    for (const auto& each : loads)
        points.push_back({each.load.kilograms(), each.speed.metres_per_second(),
                          given.load_error * each.load.kilograms(), given.speed_error});
    return points;
}

Result<StraightLine> fitted(const std::vector<LinePoint>& points, LineFit fit) {
    switch (fit) {
    case LineFit::least_squares:
        return fit_errors_in_y(points);
    case LineFit::both_errors:
        return fit_errors_in_both(points);
    case LineFit::median_slope:
        return fit_median_slope(points);
    }
    assert(!"every fit is looked at");
    return fit_errors_in_both(points);
}

std::vector<LinePoint> without(std::vector<LinePoint> points, std::size_t i) {
    points.erase(points.begin() + static_cast<std::ptrdiff_t>(i));
    return points;
}

// Standard errors of each point from the line of the others.
std::vector<double> off_by(const std::vector<LinePoint>& points) {
    std::vector<double> all(points.size(), 0.0);
    for (std::size_t i = 0; points.size() > 2 && i < points.size(); ++i) {
        const auto others = fit_errors_in_both(without(points, i));
        if (!others)
            continue; // the others are one load
        const auto& p = points[i];
        const double variance = others->variance_at(p.x) + p.y_error * p.y_error +
                                others->slope * others->slope * p.x_error * p.x_error;
        all[i] = (p.y - others->at(p.x)) / std::sqrt(variance);
    }
    return all;
}

// The one point without which the others lie on a line. A half-hearted repetition is too slow; one that seems too fast is
// looked at only when none is too slow. Two such points: nobody can say which one it was.
std::optional<std::size_t> bad_repetition(const std::vector<LinePoint>& points,
                                          const std::vector<double>& off) {
    if (points.size() < loads_to_judge)
        return std::nullopt;
    std::vector<std::size_t> slow, fast;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (std::abs(off[i]) <= too_far_off)
            continue;
        const auto others = fit_errors_in_both(without(points, i));
        if (others && !misfit_is_unusual(*others))
            (off[i] < 0 ? slow : fast).push_back(i);
    }
    const auto& suspects = slow.empty() ? fast : slow;
    return suspects.size() == 1 ? std::optional(suspects.front()) : std::nullopt;
}

double r_squared(const std::vector<LinePoint>& points, const StraightLine& line) {
    double mean = 0, left = 0, whole = 0;
    for (const auto& p : points)
        mean += p.y / static_cast<double>(points.size());
    for (const auto& p : points) {
        left += std::pow(p.y - line.at(p.x), 2);
        whole += std::pow(p.y - mean, 2);
    }
    return whole > 0 ? 1 - left / whole : 0;
}

std::string mass_said(double kg, MassUnit unit) {
    const double shown = unit == MassUnit::lb ? Mass::kilograms(kg).pounds() : kg;
    return format_shortest(std::round(shown * 10) / 10) + " " + word(unit);
}

std::string percent_said(double share) {
    return format_fixed(100 * share, 0) + " %";
}

Result<Done> check_reach(double lightest, double heaviest, double maximum, MassUnit unit) {
    if (heaviest / maximum < least_share_of_max)
        return Refusal{
            RefusalCode::method_does_not_apply,
            "The heaviest load, " + mass_said(heaviest, unit) + ", is only " +
                percent_said(heaviest / maximum) + " of the " + mass_said(maximum, unit) +
                " the line leads to. Published lines end at 80 to 90 %: please add a heavier load.",
            "loads", mass_said(heaviest, unit),
            mass_said(std::ceil(published_share_of_max * maximum), unit) + " or more"};
    if ((heaviest - lightest) / maximum < least_spread_of_max)
        return Refusal{RefusalCode::too_few_data,
                       "The loads lie only " + percent_said((heaviest - lightest) / maximum) +
                           " of the maximum apart, too close to lay a line. Please add a lighter load.",
                       "loads", mass_said(lightest, unit) + " to " + mass_said(heaviest, unit),
                       "20 % of the maximum apart or more, 40 % is better"};
    return Done{};
}

void warn(LoadVelocityLine& answer, std::size_t used, const StraightLine& bare,
          const LoadVelocityGiven& given) {
    const auto say = [&](const std::string& sentence) { answer.warnings.push_back(sentence); };
    for (const auto& each : answer.loads)
        if (!each.used)
            say("The repetition with " + mass_said(each.load.kilograms(), given.said_in) +
                " is out of line: it was " +
                format_fixed(std::abs(each.speed.metres_per_second() - each.fitted), 2) + " m/s " +
                (each.speed.metres_per_second() < each.fitted ? "slower" : "faster") +
                " than the other loads say. It is left out; please repeat it.");
    if (used == 2)
        say("Two loads always lie on a line: nothing here would show a bad repetition. Three or more are "
            "better.");
    if (misfit_is_unusual(bare))
        say("The loads do not lie on a straight line as well as bar speeds should; which one is off cannot "
            "be said. "
            "The interval is widened; please repeat the test.");
    if (answer.heaviest_share < published_share_of_max)
        say("The heaviest load is " + percent_said(answer.heaviest_share) +
            " of the maximum found; published lines end at 80 to 90 %, so this one is drawn out further.");
    const double spread = (answer.loads.back().load - answer.loads.front().load) / answer.one_rep_max;
    if (std::round(100 * spread) < 100 * wanted_spread_of_max) // as it is said, in whole per cent
        say("The loads lie " + percent_said(spread) + " of the maximum apart; 40 % or more is better.");
    if (answer.heaviest_share > 1)
        say("A load above this estimate was lifted, at a speed below the usual minimal velocity: this lifter "
            "grinds slower than most, and the maximum is at least that load.");
    if (answer.line.at(answer.loads.front().load.kilograms()) < given.minimal_velocity.metres_per_second())
        say("Even the lightest load moved below the usual minimal velocity.");
}

Refusal refuse_too_few(std::size_t loads) {
    return {RefusalCode::too_few_data,
            "A line of speed on load needs two different loads, better three or more.", "loads",
            std::to_string(loads) + " different loads", "2 or more, 40 % of the maximum apart"};
}

// Where the line comes down to the minimal velocity.
Result<Crossing> crossing_of(const StraightLine& line, const LoadVelocityGiven& given) {
    if (!(line.slope < 0))
        return Refusal{RefusalCode::method_does_not_apply,
                       "The heavier loads were not slower, so the repetitions were not all as fast as "
                       "possible, or two numbers are swapped.",
                       "speeds", "", "speeds that fall as loads rise"};
    const auto crossing =
        estimate_crossing(line, given.minimal_velocity.metres_per_second(), given.between_people);
    if (!crossing || crossing->x > 0)
        return crossing;
    return Refusal{RefusalCode::method_does_not_apply,
                   "The line reaches the minimal velocity at no load at all.", "speeds", "",
                   "speeds above the minimal velocity"};
}

} // namespace

Result<LoadVelocityLine> estimate_load_velocity(const LoadVelocityGiven& given) {
    assert(given.speed_error > 0 && given.load_error >= 0 && given.between_people >= 0);
    if (const auto sound = check_ranges(given.repetitions); !sound)
        return sound.refusal();
    const auto loads = fastest_of_each(given.repetitions);
    if (loads.size() < 2)
        return refuse_too_few(loads.size());
    const auto points = points_of(loads, given);
    const auto off = off_by(points);
    const auto bad = bad_repetition(points, off);
    const auto kept = bad ? without(points, *bad) : points;
    const auto bare = fitted(kept, given.fit);
    if (!bare)
        return bare.refusal();
    const auto line = widened_by_misfit(*bare);
    const auto crossing = crossing_of(line, given);
    if (!crossing)
        return crossing.refusal();
    if (const auto reached = check_reach(kept.front().x, kept.back().x, crossing->x, given.said_in); !reached)
        return reached.refusal();

    LoadVelocityLine answer{{},
                            line,
                            Mass::kilograms(crossing->x),
                            crossing->standard_error,
                            crossing->band,
                            kept.back().x / crossing->x,
                            r_squared(kept, line),
                            {}};
    for (std::size_t i = 0; i < loads.size(); ++i)
        answer.loads.push_back(
            {loads[i].load, loads[i].speed, line.at(points[i].x), off[i], !bad || *bad != i});
    warn(answer, kept.size(), *bare, given);
    return answer;
}

Estimate line_speed_at(const LoadVelocityLine& line, Mass load) {
    return {line.line.at(load.kilograms()), std::sqrt(line.line.variance_at(load.kilograms()))};
}

} // namespace amentum
