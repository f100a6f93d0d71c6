#include "measurement/ball_mass_line.h"

#include "measurement/ball_drag.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr std::size_t fewest_balls = 3, fewest_throws = 2;
constexpr int freedom_to_believe_the_throws = 4; // proposal of this project, no source
constexpr double furthest_miss = 3;              // standard errors: proposal of this project, no source

std::string pounds_said(Mass mass) {
    return format_shortest(std::round(mass.pounds() * 10) / 10) + " lb";
}

Result<Done> check_ranges(const std::vector<ThrowsOfBall>& balls) {
    for (const auto& ball : balls) {
        const double kg = ball.mass.kilograms();
        if (!(kg >= 0.2 && kg <= 10))
            return refuse_range("masses", kg, 0.2, 10, "kg", "Please check the unit.");
        for (const Speed speed : ball.speeds)
            if (!(speed.metres_per_second() >= 0.5 && speed.metres_per_second() <= 60))
                return refuse_range("speeds", speed.metres_per_second(), 0.5, 60, "m/s",
                                    "Please check the unit.");
    }
    return Done{};
}

Result<Done> check_enough(const std::vector<ThrowsOfBall>& balls) {
    const auto needed = describe_throws_needed(balls);
    if (needed.empty())
        return Done{};
    std::string sentence = "A line over ball masses needs 3 balls or more, each thrown twice or more.";
    for (const auto& each : needed)
        sentence += " " + each;
    return Refusal{RefusalCode::too_few_data, sentence, "masses", std::to_string(balls.size()) + " balls",
                   "3 different masses or more, 2 throws of each"};
}

double mean_speed(const ThrowsOfBall& ball) {
    double sum = 0;
    for (const Speed speed : ball.speeds)
        sum += speed.metres_per_second();
    return sum / static_cast<double>(ball.speeds.size());
}

// The spread of one throw within its ball, pooled, as a fraction; none when it rests on too few throws.
std::optional<double> pooled_spread(const std::vector<ThrowsOfBall>& balls) {
    double squares = 0;
    int freedom = 0;
    for (const auto& ball : balls) {
        const double mean = mean_speed(ball);
        for (const Speed speed : ball.speeds)
            squares += std::pow(speed.metres_per_second() / mean - 1, 2);
        freedom += static_cast<int>(ball.speeds.size()) - 1;
    }
    if (freedom < freedom_to_believe_the_throws)
        return std::nullopt;
    return std::sqrt(squares / freedom);
}

std::vector<LinePoint> points_of(const std::vector<ThrowsOfBall>& balls, Mass reference, double trial_error,
                                 double drags, double drag_errors) {
    std::vector<LinePoint> points;
    for (const auto& ball : balls)
        points.push_back({std::log(ball.mass / reference),
                          std::log(mean_speed(ball)) + drags * ball.drag + drag_errors * ball.drag_error, 0,
                          trial_error / std::sqrt(static_cast<double>(ball.speeds.size()))});
    return points;
}

SlopeGoesWith reading_of(const Estimate& slope) {
    const Interval band = slope.central();
    if (band.high < slope_of_light_balls && band.low <= slope_of_heavy_balls)
        return SlopeGoesWith::strength;
    if (band.low > slope_of_heavy_balls && band.high >= slope_of_light_balls)
        return SlopeGoesWith::limb_speed;
    return SlopeGoesWith::cannot_tell;
}

BallOnLine ball_on_line(const ThrowsOfBall& ball, const LinePoint& point, const StraightLine& line,
                        double lightest_speed) {
    const double kg = ball.mass.kilograms(), v = std::exp(point.y), error = point.y_error;
    const double fitted = std::exp(line.at(point.x));
    const double energy = kinetic_energy(ball.mass, Speed::metres_per_second(v));
    return {ball.mass,
            static_cast<int>(ball.speeds.size()),
            {v, v * error},
            {fitted, fitted * std::sqrt(line.variance_at(point.x))},
            {energy, energy * 2 * error},
            {kg * v, kg * v * error},
            v / lightest_speed,
            (point.y - line.at(point.x)) / error,
            ball.mass.kilograms() >= working_mass_low.kilograms() * 0.97 &&
                ball.mass.kilograms() <= working_mass_high.kilograms() * 1.03,
            ball.mass.kilograms() > heaviest_advised.kilograms() * 1.03};
}

// The error all balls share through the drag correction moves level and slope as the shifted points do.
void add_drag_error(BallMassLine& answer, const StraightLine& shifted, const StraightLine& line) {
    const double of_level = shifted.intercept - line.intercept, of_slope = shifted.slope - line.slope;
    answer.line.intercept_variance += of_level * of_level;
    answer.line.covariance += of_level * of_slope;
    answer.line.slope_variance += of_slope * of_slope;
}

void warn(BallMassLine& answer, const std::vector<ThrowsOfBall>& balls) {
    if (answer.trial_error_from_throws)
        answer.warnings.push_back("The throws of one ball lie further apart than is usual for this test (" +
                                  format_fixed(100 * answer.trial_error, 1) +
                                  " %): their own spread is what the errors rest on.");
    if (!answer.straight)
        answer.warnings.push_back(
            "The balls miss the straight line by more than their errors: the errors are "
            "widened, and the line says less.");
    for (const auto& ball : answer.balls) {
        if (answer.line.freedom >= 2 && std::abs(ball.misses_by) > furthest_miss)
            answer.warnings.push_back("The " + pounds_said(ball.mass) + " ball lies " +
                                      (ball.misses_by > 0 ? "above" : "below") +
                                      " the line: throw it again before reading the slope.");
        if (ball.above_advised)
            answer.warnings.push_back(
                "Caution: the " + pounds_said(ball.mass) +
                " ball is heavier than the 8 lb that are not gone beyond in a throw "
                "for speed (common practice, no source). It is left out of all advice.");
    }
    for (const auto& ball : balls)
        if (ball.drag != 0) {
            answer.warnings.push_back("The speeds come from distance, with a correction for drag from the "
                                      "usual size of such balls; "
                                      "without it the slope would read " +
                                      format_fixed(answer.slope_without_drag, 2) + " instead of " +
                                      format_fixed(answer.slope.value, 2) + ".");
            break;
        }
}

} // namespace

std::string describe_working_masses() {
    return "Balls of 4 to 6 lb are the usual working range for throws at full speed, and none above 8 lb "
           "(common practice, no source).";
}

std::vector<std::string> describe_throws_needed(const std::vector<ThrowsOfBall>& balls) {
    std::vector<std::string> needed;
    for (const auto& ball : balls)
        if (ball.speeds.size() < fewest_throws)
            needed.push_back("Throw the " + pounds_said(ball.mass) + " ball once more.");
    if (balls.size() >= fewest_balls)
        return needed;
    std::string others;
    std::size_t missing = fewest_balls - balls.size();
    for (const double pounds : {4.0, 6.0, 8.0, 5.0}) {
        const bool thrown = std::any_of(balls.begin(), balls.end(), [&](const ThrowsOfBall& ball) {
            return std::abs(ball.mass.pounds() / pounds - 1) < 0.06;
        });
        if (!thrown && missing > 0) {
            others +=
                (others.empty() ? "" : " and ") + std::string("a ball of ") + format_shortest(pounds) + " lb";
            --missing;
        }
    }
    needed.push_back("Throw these next, on one day, two throws or more, five are better: " + others + ".");
    return needed;
}

Result<BallMassLine> estimate_ball_mass_line(const std::vector<ThrowsOfBall>& given, double trial_error,
                                             double shared_error) {
    assert(trial_error > 0 && shared_error >= 0);
    auto balls = given;
    std::sort(balls.begin(), balls.end(),
              [](const ThrowsOfBall& a, const ThrowsOfBall& b) { return a.mass < b.mass; });
    for (std::size_t i = 1; i < balls.size(); ++i)
        assert(balls[i - 1].mass < balls[i].mass);
    if (const auto sound = check_ranges(balls); !sound)
        return sound.refusal();
    if (const auto enough = check_enough(balls); !enough)
        return enough.refusal();

    const Mass lightest = balls.front().mass, heaviest = balls.back().mass;
    const Mass reference = Mass::kilograms(std::sqrt(lightest.kilograms() * heaviest.kilograms()));
    const auto spread = pooled_spread(balls);
    const bool wider = spread && *spread > trial_error;
    const double believed = wider ? *spread : trial_error;
    const auto points = points_of(balls, reference, believed, 1, 0);
    const auto line = fit_errors_in_y(points);
    const auto shifted = fit_errors_in_y(points_of(balls, reference, believed, 1, 1));
    const auto bare = fit_errors_in_y(points_of(balls, reference, believed, 0, 0));
    if (!line || !shifted || !bare)
        return line.refusal();

    BallMassLine answer{reference,   {},
                        {},          {},
                        lightest,    heaviest,
                        {},          believed,
                        wider,       !misfit_is_unusual(*line),
                        bare->slope, SlopeGoesWith::cannot_tell,
                        {},          widened_by_misfit(*line),
                        shared_error};
    add_drag_error(answer, *shifted, *line);
    for (std::size_t i = 0; i < balls.size(); ++i)
        answer.balls.push_back(ball_on_line(balls[i], points[i], answer.line, std::exp(points.front().y)));
    answer.slope = {line->slope, std::sqrt(answer.line.slope_variance)};
    answer.goes_with = reading_of(answer.slope);
    const auto middle = speed_at(answer, reference);
    answer.level = middle->speed;
    answer.level_band = middle->band;
    warn(answer, balls);
    return answer;
}

Result<SpeedAtMass> speed_at(const BallMassLine& line, Mass mass) {
    const double slack = 1 + 1e-9;
    if (mass.kilograms() * slack < line.lightest.kilograms() ||
        mass.kilograms() > line.heaviest.kilograms() * slack)
        return Refusal{RefusalCode::method_does_not_apply,
                       "The line says nothing about a ball of " + format_fixed(mass.kilograms(), 2) +
                           " kg: it is read between the lightest and the heaviest ball thrown only.",
                       "mass", format_fixed(mass.kilograms(), 2) + " kg",
                       format_fixed(line.lightest.kilograms(), 2) + " to " +
                           format_fixed(line.heaviest.kilograms(), 2) + " kg"};
    const double x = std::log(mass / line.reference), v = std::exp(line.line.at(x));
    const double error = std::hypot(std::sqrt(line.line.variance_at(x)), line.shared_error);
    return SpeedAtMass{{v, v * error}, {v * std::exp(-z80 * error), v * std::exp(z80 * error)}};
}

} // namespace amentum
