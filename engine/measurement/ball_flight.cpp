#include "measurement/ball_flight.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double reading_error_of_angle = 3;    // degrees: proposal of this project, no source
constexpr double cost_of_unknown_angle = 0.026; // recomputed: 10 m, 1.8 m, 10 degrees either side of the best

Result<Done> check_gravity(double g) {
    if (g >= 9.76 && g <= 9.84)
        return Done{};
    return refuse_range("gravity", g, 9.76, 9.84, "m/s^2", "Gravity on the ground lies between these.");
}

Result<Done> check_height(Length height) {
    if (height.metres() >= 0 && height.metres() <= 10)
        return Done{};
    return refuse_range("release_height", height.metres(), 0, 10, "m",
                        "It is measured from the landing place up to the hand.");
}

Result<Done> check_angle(Angle angle) {
    if (angle.degrees() >= -30 && angle.degrees() <= 80)
        return Done{};
    return refuse_range("release_angle", angle.degrees(), -30, 80, "degrees",
                        "It is measured up from level.");
}

Result<Done> check_throw(const BallThrow& thrown, double g) {
    const double d = thrown.distance.metres();
    if (!(d >= 0.1 && d <= 150))
        return refuse_range("distance", d, 0.1, 150, "m", "Please check the unit.");
    if (const auto height = check_height(thrown.release_height); !height)
        return height.refusal();
    return check_gravity(g);
}

// How far the ball falls below its line of release by the time it is at D; the ball lands only if that is
//   above 0.
double fall(const BallThrow& thrown, double angle) {
    return thrown.release_height.metres() + thrown.distance.metres() * std::tan(angle);
}

double speed_at_angle(const BallThrow& thrown, double angle, double g) {
    const double d = thrown.distance.metres();
    return d / std::cos(angle) * std::sqrt(g / (2 * fall(thrown, angle)));
}

double carried_angle_error(const BallThrow& thrown, double angle, double g) {
    const double step = Angle::degrees(reading_error_of_angle).radians();
    const double here = speed_at_angle(thrown, angle, g);
    const double above = std::abs(speed_at_angle(thrown, angle + step, g) - here);
    if (fall(thrown, angle - step) <= 0)
        return above;
    return std::max(above, std::abs(speed_at_angle(thrown, angle - step, g) - here));
}

} // namespace

Result<SpeedFromDistance> ball_speed_from_distance(const BallThrow& thrown, Angle release_angle,
                                                   double gravity) {
    if (const auto sound = check_throw(thrown, gravity); !sound)
        return sound.refusal();
    if (const auto sound = check_angle(release_angle); !sound)
        return sound.refusal();
    const double angle = release_angle.radians();
    if (!(fall(thrown, angle) > 0))
        return Refusal{RefusalCode::out_of_range,
                       "A ball released downwards at this angle lands before the distance given.",
                       "release_angle", "", "an angle that reaches the distance"};
    return SpeedFromDistance{Speed::metres_per_second(speed_at_angle(thrown, angle, gravity)),
                             carried_angle_error(thrown, angle, gravity)};
}

Result<SpeedFromDistance> least_ball_speed_from_distance(const BallThrow& thrown, double gravity) {
    if (const auto sound = check_throw(thrown, gravity); !sound)
        return sound.refusal();
    const double d = thrown.distance.metres();
    const double h = thrown.release_height.metres();
    const double least = std::sqrt(gravity * (std::hypot(d, h) - h));
    return SpeedFromDistance{Speed::metres_per_second(least), cost_of_unknown_angle * least};
}

Result<Length> ball_range(Speed speed, Angle release_angle, Length release_height, double gravity) {
    const double v = speed.metres_per_second();
    if (!(v > 0 && v <= 60))
        return refuse_range("speed", v, 0, 60, "m/s", "Please check the unit.");
    if (const auto sound = check_angle(release_angle); !sound)
        return sound.refusal();
    if (const auto sound = check_height(release_height); !sound)
        return sound.refusal();
    if (const auto sound = check_gravity(gravity); !sound)
        return sound.refusal();
    const double rise = v * std::sin(release_angle.radians());
    const double level = v * std::cos(release_angle.radians());
    const double airborne = (rise + std::sqrt(rise * rise + 2 * gravity * release_height.metres())) / gravity;
    return Length::metres(level * airborne);
}

} // namespace amentum
