#include "measurement/ball_drag.h"

#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr double doubt_of_drag_coefficient = 0.03; // half of 0.3 to 0.4, rounded down: from memory

Result<Done> check_flight(Speed speed, Length x) {
    const double v = speed.metres_per_second();
    if (!(v > 0 && v <= 60))
        return refuse_range("speed", v, 0, 60, "m/s", "Please check the unit.");
    if (!(std::abs(x.metres()) <= 120))
        return refuse_range("distance", x.metres(), -120, 120, "m", "");
    return Done{};
}

} // namespace

Ball rule_ball(BallKind kind) {
    switch (kind) {
    case BallKind::baseball:
        return {Mass::ounces(5.125), Length::inches(9.125)};
    case BallKind::softball_12:
        return {Mass::ounces(6.625), Length::inches(12)};
    case BallKind::softball_11:
        return {Mass::ounces(6.0), Length::inches(11)};
    }
    assert(!"every ball kind has a rule");
    return {Mass::ounces(5.125), Length::inches(9.125)};
}

Result<Length> ball_decay_length(const Ball& ball, const Air& air) {
    const double c = air.drag_coefficient;
    if (!(c >= 0.1 && c <= 1))
        return refuse_range("drag_coefficient", c, 0.1, 1, "", "");
    if (!(air.density >= 0.8 && air.density <= 1.4))
        return refuse_range("air_density", air.density, 0.8, 1.4, "kg/m^3", "");
    assert(ball.mass.kilograms() > 0 && ball.girth.metres() > 0);
    const double area = ball.girth.metres() * ball.girth.metres() / (4 * std::numbers::pi);
    return Length::metres(2 * ball.mass.kilograms() / (air.density * c * area));
}

Result<Estimate> ball_speed_after_distance(const Ball& ball, const Air& air, Speed at_start, Length x) {
    if (const auto sound = check_flight(at_start, x); !sound)
        return sound.refusal();
    const auto decay = ball_decay_length(ball, air);
    if (!decay)
        return decay.refusal();
    const double lengths = x / *decay;
    const double v = at_start.metres_per_second() * std::exp(-lengths);
    return Estimate{v, v * std::abs(lengths) * doubt_of_drag_coefficient / air.drag_coefficient};
}

Result<Duration> ball_time(const Ball& ball, const Air& air, Speed at_start, Length x) {
    if (const auto sound = check_flight(at_start, x); !sound)
        return sound.refusal();
    const auto decay = ball_decay_length(ball, air);
    if (!decay)
        return decay.refusal();
    return Duration::seconds(decay->metres() / at_start.metres_per_second() * std::expm1(x / *decay));
}

double kinetic_energy(Mass mass, Speed speed) {
    return 0.5 * mass.kilograms() * speed.metres_per_second() * speed.metres_per_second();
}

} // namespace amentum
