// Force curves whose speed, height, power and impulse are known in closed form.
//
// A lobe A sin^2(pi t / T) above body weight changes the speed by A T / 2m; a ramp from W to 0 over T by -g T / 2.
#pragma once

#include "recordings/force_recording.h"

#include <cmath>
#include <cstdint>
#include <numbers>

namespace amentum::analytic {

inline constexpr double g = 9.80665;

// A jump of 80 kg: still for `still` seconds, dip lobe -500 N over 0.4 s, push lobe +1700 N over 0.4 s, ramp to nothing
// in 0.03 s, flight, a landing lobe that stops the body in 0.3 s, standing, and from `leaves` on an empty plate.
struct Jump {
    double still = 1.5;
    double empty_before = 0; // seconds of empty plate before the athlete steps on
    double leaves = 5.5;     // after the end of that
    double end = 6.5;

    static constexpr double mass = 80, weight = mass * g, dip = 0.4, push = 0.4, ramp = 0.03;
    static constexpr double take_off_speed = 2.85290025; // (-500 0.4 + 1700 0.4) / 2m - g 0.03 / 2
    static constexpr double landing = 0.3;
    double take_off() const { return still + dip + push + ramp; }
    double flight() const { return 2 * take_off_speed / g; }

    double force(double t) const {
        t -= empty_before;
        if (t < 0 || t >= leaves)
            return 0;
        const auto lobe = [](double size, double at, double length) {
            const double s = std::sin(std::numbers::pi * at / length);
            return size * s * s;
        };
        if (t < still)
            return weight;
        if (t < still + dip)
            return weight + lobe(-500, t - still, dip);
        if (t < still + dip + push)
            return weight + lobe(1700, t - still - dip, push);
        if (t < take_off())
            return weight * (1 - (t - still - dip - push) / ramp);
        const double landed = t - take_off() - flight();
        if (landed < 0)
            return 0;
        return landed < landing ? weight + lobe(2 * mass * take_off_speed / landing, landed, landing)
                                : weight;
    }
};

// A drop of 0.30 m by 75 kg onto a half-sine contact of 0.2 s that sends the body up at 2.4 m/s, from an empty plate;
// it lands as it left and stands from a third of a second later on.
struct Drop {
    double touch_down = 1;

    static constexpr double mass = 75, weight = mass * g, contact = 0.2, take_off_speed = 2.4;
    static constexpr double peak = 3997.88697; // pi m (v_up + v_down + g T) / 2T
    static constexpr double flight = 2 * take_off_speed / g, landing = 0.3;

    double force(double t) const {
        t -= touch_down;
        if (t < 0)
            return 0;
        if (t < contact)
            return peak * std::sin(std::numbers::pi * t / contact);
        const double landed = t - contact - flight;
        if (landed < 0)
            return 0;
        const double s = std::sin(std::numbers::pi * landed / landing);
        return weight + (landed < landing ? 2 * mass * take_off_speed / landing * s * s : 0);
    }
};

// A pull against a fixed bar by 80 kg: net force 2000 (1 - e^(-t / 0.15)) from `start` to `release`.
struct Pull {
    double start = 2;
    double release = 4;

    static constexpr double weight = 80 * g, net = 2000, tau = 0.15;

    double force(double t) const {
        return weight + (t < start || t >= release ? 0 : net * (1 - std::exp(-(t - start) / tau)));
    }
};

// Samples of a curve; `shift` moves the sample grid by a part of a step.
template <class Curve>
ForceRecording sampled(const Curve& curve, double seconds, double rate_hz, double shift = 0) {
    ForceRecording recording{rate_hz, {{"plate", Side::none, {}, {}}}, {}};
    const auto n = static_cast<std::size_t>(seconds * rate_hz + 0.5);
    for (std::size_t i = 0; i < n; ++i)
        recording.plates[0].vertical.push_back(
            static_cast<float>(curve.force((static_cast<double>(i) + shift) / rate_hz)));
    return recording;
}

// A fixed stream of normal numbers: splitmix64 and Box-Muller, so that every library gives the same.
class Noise {
public:
    explicit Noise(std::uint64_t seed) : state_(seed) {}
    double next() {
        const double a = uniform(), b = uniform();
        return std::sqrt(-2 * std::log(1 - a)) * std::cos(2 * std::numbers::pi * b);
    }
    double uniform() {
        std::uint64_t z = (state_ += 0x9e3779b97f4a7c15);
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
        z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
        return static_cast<double>((z ^ (z >> 31)) >> 11) * 0x1.0p-53;
    }

private:
    std::uint64_t state_;
};

// Adds level + slope t + noise to the first plate.
inline ForceRecording disturbed(ForceRecording recording, double level, double slope, double sd,
                                std::uint64_t seed = 1) {
    Noise noise(seed);
    auto& force = recording.plates[0].vertical;
    for (std::size_t i = 0; i < force.size(); ++i)
        force[i] = static_cast<float>(static_cast<double>(force[i]) + level +
                                      slope * static_cast<double>(i) / recording.rate_hz + sd * noise.next());
    return recording;
}

// The same force on two plates, `left` of it (0 to 1) on the left one.
inline ForceRecording on_two_plates(const ForceRecording& one, double left) {
    ForceRecording two{one.rate_hz, {{"left", Side::left, {}, {}}, {"right", Side::right, {}, {}}}, {}};
    for (const float force : one.plates[0].vertical) {
        two.plates[0].vertical.push_back(static_cast<float>(left) * force);
        two.plates[1].vertical.push_back(force - static_cast<float>(left) * force);
    }
    return two;
}

} // namespace amentum::analytic
