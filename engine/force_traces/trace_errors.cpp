#include "force_traces/trace_errors.h"

#include "force_traces/force_signal.h"

#include <cmath>

namespace amentum {
namespace {

constexpr double g = gravity_at_plate;

double mass(const TraceNoise& noise) {
    return noise.weight_n / g;
}

} // namespace

double root_of_squares(double a, double b, double c, double d) {
    return std::sqrt(a * a + b * b + c * c + d * d);
}

double height_per_newton(double weight_n, double v, double t) {
    return v / g * (v + g * t) / weight_n;
}

double grid_error_s(const TraceNoise& noise) {
    return noise.step_s / std::sqrt(12.0);
}

double error_of_speed(const TraceNoise& noise, double v, double t) {
    return root_of_squares(noise.weight_error_n * (v + g * t) / noise.weight_n,
                           noise.zero_error_n * v / noise.weight_n,
                           noise.sample_sd_n * std::sqrt(t * noise.step_s) / mass(noise));
}

double error_of_rise(const TraceNoise& noise, double s, double t) {
    return root_of_squares(noise.weight_error_n * (s + g * t * t / 2) / noise.weight_n,
                           noise.zero_error_n * s / noise.weight_n,
                           noise.sample_sd_n * std::sqrt(noise.step_s * t * t * t / 3) / mass(noise));
}

double error_of_take_off_speed(const TraceNoise& noise, double v, double t) {
    return root_of_squares(error_of_speed(noise, v, t), g * grid_error_s(noise));
}

double error_of_height(const TraceNoise& noise, double v, double t) {
    return v / g * error_of_take_off_speed(noise, v, t);
}

double error_of_flight_height(const TraceNoise& noise, double flight_s) {
    return g * flight_s / 4 * std::sqrt(2.0) * grid_error_s(noise);
}

double error_of_net_impulse(const TraceNoise& noise, double t) {
    return root_of_squares(noise.weight_error_n * t, noise.sample_sd_n * std::sqrt(t * noise.step_s));
}

double error_of_power(const TraceNoise& noise, double force, double v, double t) {
    return root_of_squares(force * error_of_speed(noise, v, t), v * noise.sample_sd_n);
}

double error_of_ratio(double ratio, double above, double above_error, double below, double below_error) {
    return std::abs(ratio) * root_of_squares(above_error / above, below_error / below);
}

} // namespace amentum
