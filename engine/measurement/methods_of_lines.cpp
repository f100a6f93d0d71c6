#include "measurement/ball_flight_drag.h"
#include "measurement/ball_mass_line.h"
#include "measurement/load_velocity.h"
#include "measurement/methods.h"

#include <algorithm>
#include <cmath>

namespace amentum::measurement {
namespace {

Refusal refuse_lengths(const std::string& field, std::size_t given, std::size_t wanted) {
    return {RefusalCode::wrong_type, "These lists belong together, entry by entry.", field,
            std::to_string(given) + " entries", std::to_string(wanted) + " entries"};
}

SpeedLift lift_of(const MethodArguments& given) {
    return *from_word<SpeedLift>(given.word("lift"));
}
MethodInput lift_input() {
    return {"lift", "for its minimal velocity", 0, 0, all_words<SpeedLift>()};
}

Result<MethodAnswer> run_line_with_errors_in_both(const MethodArguments& given) {
    const auto &x = given.list("x"), &y = given.list("y");
    const auto &x_errors = given.list("x_errors"), &y_errors = given.list("y_errors");
    for (const auto& [name, list] : {std::pair{"y", &y}, {"x_errors", &x_errors}, {"y_errors", &y_errors}})
        if (list->size() != x.size())
            return refuse_lengths(name, list->size(), x.size());
    std::vector<LinePoint> points;
    for (std::size_t i = 0; i < x.size(); ++i)
        points.push_back({x[i], y[i], x_errors[i], y_errors[i]});
    const auto line = fit_errors_in_both(points);
    if (!line)
        return Refusal{line.refusal().code, line.refusal().sentence, "x", line.refusal().given,
                       line.refusal().allowed};
    return MethodAnswer{{{"slope", line->slope, "unit of y / unit of x", std::sqrt(line->slope_variance)},
                         {"intercept", line->intercept, "unit of y", std::sqrt(line->intercept_variance)},
                         {"misfit", line->misfit, "1"}}};
}

// One number each for every throw; throws of one mass are one ball.
Result<std::vector<ThrowsOfBall>> balls_of(const MethodArguments& given) {
    const auto &masses = given.list("masses_kg"), &speeds = given.list("speeds_ms");
    if (speeds.size() != masses.size())
        return refuse_lengths("speeds_ms", speeds.size(), masses.size());
    std::vector<ThrowsOfBall> balls;
    for (std::size_t i = 0; i < masses.size(); ++i) {
        const Mass mass = Mass::kilograms(masses[i]);
        auto ball = std::find_if(balls.begin(), balls.end(), [&](const auto& b) { return b.mass == mass; });
        if (ball == balls.end())
            ball = balls.insert(balls.end(), {mass, {}});
        ball->speeds.push_back(Speed::metres_per_second(speeds[i]));
    }
    return balls;
}

Result<MethodAnswer> run_ball_mass_line(const MethodArguments& given) {
    const auto balls = balls_of(given);
    if (!balls)
        return balls.refusal();
    const auto line =
        estimate_ball_mass_line(*balls, given.number("trial_error"), given.number("shared_error"));
    if (!line)
        return line.refusal();
    MethodAnswer answer{{{"slope", line->slope.value, "1", line->slope.standard_error},
                         {"reference_mass", line->reference.kilograms(), "kg"},
                         {"level", line->level.value, "m/s", line->level.standard_error}},
                        line->warnings};
    if (given.has("at_mass_kg")) {
        const auto speed = speed_at(*line, Mass::kilograms(given.number("at_mass_kg")));
        if (!speed)
            return speed.refusal();
        answer.outputs.push_back({"speed", speed->speed.value, "m/s", speed->speed.standard_error});
    }
    return answer;
}

Result<MethodAnswer> run_ball_flight_drag(const MethodArguments& given) {
    const BallThrow thrown{Length::metres(given.number("distance_m")),
                           Length::metres(given.number("release_height_m"))};
    const Mass ball = Mass::kilograms(given.number("ball_kg"));
    const auto correction = estimate_drag_correction(
        thrown, Angle::degrees(given.number("release_angle_deg")), ball,
        given.has("diameter_m") ? Length::metres(given.number("diameter_m")) : usual_diameter(ball));
    if (!correction)
        return correction.refusal();
    return MethodAnswer{{{"correction", correction->value, "1", correction->standard_error}},
                        {"To be added to the natural logarithm of the speed without drag."}};
}

Result<MethodAnswer> answer_of(const LoadVelocityGiven& given) {
    const auto line = estimate_load_velocity(given);
    if (!line)
        return line.refusal();
    return MethodAnswer{{{"one_rep_max", line->one_rep_max.kilograms(), "kg", line->standard_error},
                         {"slope", line->line.slope, "m/s/kg", std::sqrt(line->line.slope_variance)},
                         {"low", line->band.low, "kg"},
                         {"high", line->band.high, "kg"}},
                        line->warnings};
}

Result<MethodAnswer> run_load_velocity_max(const MethodArguments& given) {
    const auto &loads = given.list("loads_kg"), &speeds = given.list("speeds_ms");
    if (speeds.size() != loads.size())
        return refuse_lengths("speeds_ms", speeds.size(), loads.size());
    const auto& least = minimal_velocity(lift_of(given));
    LoadVelocityGiven asked{{}, least.speed, least.between_people, *from_word<LineFit>(given.word("fit"))};
    for (std::size_t i = 0; i < loads.size(); ++i)
        asked.repetitions.push_back({Mass::kilograms(loads[i]), Speed::metres_per_second(speeds[i])});
    return answer_of(asked);
}

Result<MethodAnswer> run_load_velocity_two_points(const MethodArguments& given) {
    const auto& least = minimal_velocity(lift_of(given));
    return answer_of({{{Mass::kilograms(given.number("light_load_kg")),
                        Speed::metres_per_second(given.number("light_speed_ms"))},
                       {Mass::kilograms(given.number("heavy_load_kg")),
                        Speed::metres_per_second(given.number("heavy_speed_ms"))}},
                      least.speed,
                      least.between_people});
}

Result<MethodAnswer> run_percent_of_max(const MethodArguments& given) {
    const auto percent = percent_of_max(lift_of(given), Speed::metres_per_second(given.number("speed_ms")));
    if (!percent)
        return percent.refusal();
    return MethodAnswer{
        {{"percent_of_max", percent->value, "%", percent->standard_error}},
        {"A general equation, its coefficients from memory; not for lifters new to strength training."}};
}

Result<MethodAnswer> run_pull_up_repetitions(const MethodArguments& given) {
    const auto reps = pull_up_repetitions(Speed::metres_per_second(given.number("speed_ms")));
    if (!reps)
        return reps.refusal();
    return MethodAnswer{{{"repetitions", reps->value, "1", reps->standard_error}}};
}

Result<MethodAnswer> run_velocity_loss(const MethodArguments& given) {
    std::vector<Speed> speeds;
    for (const double v : given.list("speeds_ms"))
        speeds.push_back(Speed::metres_per_second(v));
    const auto loss = velocity_loss(speeds);
    if (!loss)
        return loss.refusal();
    return MethodAnswer{{{"velocity_loss", *loss, "1"}}};
}

std::vector<Method> methods_of_throws() {
    return {
        {"ball_mass_line",
         "How fast are one thrower's balls of a middle mass, and how steeply does speed fall with mass?",
         {{"masses_kg", "of the ball, one entry for each throw", 0.2, 10, {}, {}, true},
          {"speeds_ms", "one for each throw", 0.5, 60, {}, {}, true},
          {"trial_error", "of one throw, as a fraction", 0.001, 0.3, {}, "0.03"},
          {"shared_error", "of the day and the radar, as a fraction", 0, 0.3, {}, "0.025"},
          {"at_mass_kg", "read the line there too", 0.2, 10, {}, ""}},
         {"Cross2004", "Ijssc2024", "CommonPractice"},
         run_ball_mass_line},
        {"ball_flight_drag",
         "How much faster was a heavy ball thrown for distance than its distance alone says?",
         {{"distance_m", "level distance from the point of release", 0.1, 60},
          {"release_height_m", "of release above the landing place", 0, 10},
          {"release_angle_deg", "above level", -30, 80},
          {"ball_kg", "mass of the ball", 0.5, 6},
          {"diameter_m", "of the ball; left out: the usual one of its mass", 0.05, 0.4, {}, ""}},
         {"Taylor2005", "CommonPractice"},
         run_ball_flight_drag},
        {"line_with_errors_in_both",
         "Which straight line runs through points whose both numbers have errors?",
         {{"x", "of each point", -1e9, 1e9, {}, {}, true},
          {"y", "of each point", -1e9, 1e9, {}, {}, true},
          {"x_errors", "standard deviations of x; 0: exact", 0, 1e9, {}, {}, true},
          {"y_errors", "standard deviations of y", 1e-12, 1e9, {}, {}, true}},
         {"York2004"},
         run_line_with_errors_in_both},
    };
}

std::vector<Method> methods_of_bar_speed() {
    const MethodInput speed{"speed_ms", "mean speed of the bar, as fast as possible", 0.05, 3};
    return {
        {"load_velocity_max",
         "How much could be lifted once, when lighter loads were moved as fast as possible?",
         {{"loads_kg", "of each repetition", 1, 600, {}, {}, true},
          {"speeds_ms", "mean speed of each repetition", 0.05, 3, {}, {}, true},
          lift_input(),
          {"fit", "which line", 0, 0, all_words<LineFit>(), word(LineFit::both_errors)}},
         {"GarciaRamos2024", "York2004", "Theil1950", "Sen1968", "Fieller1954"},
         run_load_velocity_max},
        {"load_velocity_two_points",
         "How much could be lifted once, by two loads only?",
         {{"light_load_kg", "the lighter load", 1, 600},
          {"light_speed_ms", "its mean speed", 0.05, 3},
          {"heavy_load_kg", "the heavier load", 1, 600},
          {"heavy_speed_ms", "its mean speed", 0.05, 3},
          lift_input()},
         {"GarciaRamos2024", "Fieller1954"},
         run_load_velocity_two_points},
        {"percent_of_max_from_speed",
         "Which share of the maximum moves at this speed, in trained people on average?",
         {lift_input(), speed},
         {"GonzalezBadillo2010", "SanchezMedina2017", "SanchezMedina2014", "Ijerph2022"},
         run_percent_of_max},
        {"pull_up_repetitions_from_speed",
         "How many pull-ups would there be, when the first goes up this fast?",
         {{"speed_ms", "mean speed of the first repetition", 0.05, 3}},
         {"Beckham2018"},
         run_pull_up_repetitions},
        {"velocity_loss",
         "How much slower was the slowest repetition of a set than the fastest?",
         {{"speeds_ms", "of each repetition of the set", 0.01, 4, {}, {}, true}},
         {"HernandezBelmonte2022"},
         run_velocity_loss},
    };
}

} // namespace

std::vector<Method> methods_of_lines() {
    auto all = methods_of_throws();
    for (auto& method : methods_of_bar_speed())
        all.push_back(std::move(method));
    return all;
}

} // namespace amentum::measurement
