#include "measurement/ball_flight_drag.h"

#include <array>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr double drag_coefficient = 0.5, air_density = 1.20; // header
constexpr double share_in_doubt = 0.28;                      // sqrt(0.2^2 + (2 x 0.1)^2)
constexpr double step = 0.002;                               // s; halving it moves no distance by 0.1 mm

struct Flight {
    double x, y, vx, vy;
};

Flight rate(const Flight& f, double decay) {
    const double drag = std::hypot(f.vx, f.vy) / decay;
    return {f.vx, f.vy, -drag * f.vx, -standard_gravity - drag * f.vy};
}

Flight moved(const Flight& f, const Flight& r, double t) {
    return {f.x + t * r.x, f.y + t * r.y, f.vx + t * r.vx, f.vy + t * r.vy};
}

Flight next(const Flight& f, double decay) {
    const Flight a = rate(f, decay), b = rate(moved(f, a, step / 2), decay);
    const Flight c = rate(moved(f, b, step / 2), decay), d = rate(moved(f, c, step), decay);
    const auto mean = [](double p, double q, double r, double s) { return (p + 2 * q + 2 * r + s) / 6; };
    return moved(f,
                 {mean(a.x, b.x, c.x, d.x), mean(a.y, b.y, c.y, d.y), mean(a.vx, b.vx, c.vx, d.vx),
                  mean(a.vy, b.vy, c.vy, d.vy)},
                 step);
}

// Level distance at which the ball comes down to the landing place.
double landing(double speed, double angle, double height, double decay) {
    Flight here{0, height, speed * std::cos(angle), speed * std::sin(angle)}, before = here;
    while (here.y > 0 || here.vy > 0) {
        before = here;
        here = next(here, decay);
    }
    return before.y == here.y ? here.x : before.x + (here.x - before.x) * before.y / (before.y - here.y);
}

} // namespace

Length usual_diameter(Mass ball) {
    return Length::metres(0.175 + 0.014 * ball.kilograms());
}

Angle best_release_angle(const BallThrow& thrown) {
    return Angle::degrees(
        45 -
        Angle::radians(std::atan2(thrown.release_height.metres(), thrown.distance.metres())).degrees() / 2);
}

Result<Estimate> estimate_drag_correction(const BallThrow& thrown, Angle release_angle, Mass ball,
                                          Length diameter) {
    const double kg = ball.kilograms(), d = diameter.metres();
    if (!(kg >= 0.5 && kg <= 6))
        return refuse_range("ball_mass", kg, 0.5, 6, "kg", "The usual sizes of balls are known there only.");
    if (!(d >= 0.05 && d <= 0.4))
        return refuse_range("diameter", d, 0.05, 0.4, "m", "");
    const auto without = ball_speed_from_distance(thrown, release_angle);
    if (!without)
        return without.refusal();
    const double decay = 2 * kg / (air_density * drag_coefficient * std::numbers::pi * d * d / 4);
    const double height = thrown.release_height.metres(), angle = release_angle.radians();
    double low = without->speed.metres_per_second(), high = 60;
    if (landing(high, angle, height, decay) < thrown.distance.metres())
        return refuse_range("distance", thrown.distance.metres(), 0.1, landing(high, angle, height, decay),
                            "m", "No throw reaches further with such a ball.");
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (landing(middle, angle, height, decay) < thrown.distance.metres() ? low : high) = middle;
    }
    const double correction = std::log(high / without->speed.metres_per_second());
    return Estimate{correction, share_in_doubt * correction};
}

} // namespace amentum
