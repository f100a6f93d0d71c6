#include "measurement/allometry.h"
#include "measurement/ball_drag.h"
#include "measurement/ball_flight.h"
#include "measurement/methods.h"
#include "measurement/radar.h"

namespace amentum::measurement {
namespace {

MethodInput speed_input(std::string meaning) {
    return {"speed_ms", std::move(meaning), 0.1, 60};
}
MethodInput gravity_input() {
    return {"gravity_ms2", "local gravity", 9.76, 9.84, {}, "9.80665"};
}
MethodInput ball_input() {
    return {"ball", "which ball", 0, 0, all_words<BallKind>(), "baseball"};
}
MethodInput drag_input() {
    return {"drag_coefficient", "of the ball", 0.1, 1, {}, "0.33"};
}
MethodInput density_input() {
    return {"air_density_kgm3", "of the air", 0.8, 1.4, {}, "1.225"};
}
MethodInput path_input() {
    return {"distance_m", "along the path; below 0 for earlier on it", -120, 120};
}

Speed speed_of(const MethodArguments& given) {
    return Speed::metres_per_second(given.number("speed_ms"));
}
Ball ball_of(const MethodArguments& given) {
    return rule_ball(*from_word<BallKind>(given.word("ball")));
}
Air air_of(const MethodArguments& given) {
    return {given.number("drag_coefficient"), given.number("air_density_kgm3")};
}

Result<MethodAnswer> run_radar_speed(const MethodArguments& given) {
    const auto speed = radar_speed(speed_of(given), Angle::degrees(given.number("angle_deg")));
    if (!speed)
        return speed.refusal();
    return MethodAnswer{{{"radar_speed", speed->speed.metres_per_second(), "m/s", speed->method_error}},
                        speed->warnings};
}

Result<MethodAnswer> run_ball_speed_from_distance(const MethodArguments& given) {
    const BallThrow thrown{Length::metres(given.number("distance_m")),
                           Length::metres(given.number("release_height_m"))};
    const double gravity = given.number("gravity_ms2");
    const bool angle_known = given.has("release_angle_deg");
    const auto speed =
        angle_known
            ? ball_speed_from_distance(thrown, Angle::degrees(given.number("release_angle_deg")), gravity)
            : least_ball_speed_from_distance(thrown, gravity);
    if (!speed)
        return speed.refusal();
    MethodAnswer answer{{{"ball_speed", speed->speed.metres_per_second(), "m/s", speed->method_error}},
                        {"Without drag: a light ball was faster than this."}};
    if (!angle_known)
        answer.notes.push_back("The angle is not known: this is the least speed that reaches the distance.");
    return answer;
}

Result<MethodAnswer> run_ball_range(const MethodArguments& given) {
    const auto range =
        ball_range(speed_of(given), Angle::degrees(given.number("release_angle_deg")),
                   Length::metres(given.number("release_height_m")), given.number("gravity_ms2"));
    if (!range)
        return range.refusal();
    return MethodAnswer{{{"ball_range", range->metres(), "m"}}};
}

Result<MethodAnswer> run_ball_decay_length(const MethodArguments& given) {
    const auto decay = ball_decay_length(ball_of(given), air_of(given));
    if (!decay)
        return decay.refusal();
    return MethodAnswer{{{"ball_decay_length", decay->metres(), "m"}}};
}

Result<MethodAnswer> run_ball_speed_after_distance(const MethodArguments& given) {
    const auto speed = ball_speed_after_distance(ball_of(given), air_of(given), speed_of(given),
                                                 Length::metres(given.number("distance_m")));
    if (!speed)
        return speed.refusal();
    return MethodAnswer{{{"ball_speed", speed->value, "m/s", speed->standard_error}}};
}

Result<MethodAnswer> run_ball_time(const MethodArguments& given) {
    const auto time =
        ball_time(ball_of(given), air_of(given), speed_of(given), Length::metres(given.number("distance_m")));
    if (!time)
        return time.refusal();
    return MethodAnswer{{{"ball_time", time->seconds(), "s"}}};
}

Result<MethodAnswer> run_kinetic_energy(const MethodArguments& given) {
    return MethodAnswer{
        {{"kinetic_energy", kinetic_energy(Mass::kilograms(given.number("mass_kg")), speed_of(given)), "J"}}};
}

Result<MethodAnswer> run_ball_mass_exponent(const MethodArguments& given) {
    std::vector<Mass> masses;
    std::vector<Speed> speeds;
    for (const double kg : given.list("masses_kg"))
        masses.push_back(Mass::kilograms(kg));
    for (const double ms : given.list("speeds_ms"))
        speeds.push_back(Speed::metres_per_second(ms));
    const auto exponent = ball_mass_exponent(masses, speeds);
    if (!exponent)
        return exponent.refusal();
    return MethodAnswer{{{"ball_mass_exponent", *exponent, "1"}}};
}

std::vector<Method> methods_of_flight() {
    const MethodInput height{"release_height_m", "of release above the landing place", 0, 10};
    return {
        {"ball_speed_from_distance",
         "How fast left a ball that flew so far?",
         {{"distance_m", "level distance from the point of release", 0.1, 150},
          height,
          {"release_angle_deg", "above level; without it, the least speed is given", -30, 80, {}, ""},
          gravity_input()},
         {"Taylor2005", "PlusMathsShot"},
         run_ball_speed_from_distance},
        {"ball_range",
         "How far flies a ball of this speed, without air?",
         {speed_input("of release"), {"release_angle_deg", "above level", -30, 80}, height, gravity_input()},
         {"Taylor2005", "PlusMathsShot"},
         run_ball_range},
    };
}

std::vector<Method> methods_of_drag() {
    return {
        {"ball_decay_length",
         "Over which distance does drag bring a ball's speed down to 1/e?",
         {ball_input(), drag_input(), density_input()},
         {"IsaAtmosphere"},
         run_ball_decay_length},
        {"ball_speed_after_distance",
         "How fast is a thrown ball further along its path, or was it earlier?",
         {ball_input(), speed_input("at the start of the path"), path_input(), drag_input(), density_input()},
         {"IsaAtmosphere"},
         run_ball_speed_after_distance},
        {"ball_time",
         "How long does a thrown ball take over a distance?",
         {ball_input(), speed_input("at the start of the path"), path_input(), drag_input(), density_input()},
         {"IsaAtmosphere"},
         run_ball_time},
    };
}

} // namespace

std::vector<Method> methods_of_balls() {
    std::vector<Method> all{
        {"radar_speed",
         "How fast was the ball, when the radar stood off its line?",
         {{"speed_ms", "as read", 0.1, 100},
          {"angle_deg", "between the radar's line and the ball's path", 0, 45}},
         {"SportsBiomech2021", "JSportsSci2021Radar"},
         run_radar_speed},
        {"kinetic_energy",
         "How much energy does the ball carry?",
         {{"mass_kg", "of the ball", 0.01, 20}, speed_input("of the ball")},
         {"Nakata2013"},
         run_kinetic_energy},
        {"ball_mass_exponent",
         "How does one thrower's ball speed fall with ball mass?",
         {{"masses_kg", "of two or more balls", 0.01, 20, {}, {}, true},
          {"speeds_ms", "one for each ball", 0.1, 60, {}, {}, true}},
         {"Cross2004"},
         run_ball_mass_exponent},
    };
    for (auto& method : methods_of_flight())
        all.push_back(method);
    for (auto& method : methods_of_drag())
        all.push_back(method);
    return all;
}

} // namespace amentum::measurement
