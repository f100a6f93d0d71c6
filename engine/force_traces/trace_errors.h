// How uncertain is each number of a trace, from the trace alone?
//
// Four errors, taken as independent and added as squares. W weight, m = W / g, v speed, s rise, t time since the start.
//   weight   dW, standard error of the weighing. v = g (integral of F / W - t), so
//            dv/dW = -(v + g t) / W,  ds/dW = -(s + g t^2 / 2) / W.
//            Height: dh/dW = -(v/g)(v + g t)/W: 4.1 mm a newton at 80 kg, 2.85 m/s after 0.83 s, of which 3.0 mm come
//            from the weight in F - W and 1.1 mm from the mass that follows from it.
//   zero     db, standard error of the empty plate's reading; it shifts F and W alike: dv/db = -v / W, ds/db = -s / W.
//   noise    white, SD of one sample sigma, step d: v: sigma sqrt(t d) / m;  s: sigma sqrt(d t^3 / 3) / m;
//            impulse: sigma sqrt(t d);  one sample of force: sigma.
//   grid     an instant is read on the samples: d / sqrt(12). At take-off a = -g: v: g d / sqrt(12),
//            s: v d / sqrt(12). A flight time has two such instants: d / sqrt(6).
// Grid also biases: take-off is read half a sample late on average, a speed g d / 2 too low. That is not corrected, so
//   that numbers stay those of the published rule; it is why rates are not mixed.
// Units: N, s, m/s, m. What it cannot tell: everything that differs from trial to trial and from day to day; that is
//   most of the error of a person's level.
// Example: W 784.532 N, dW 0.063 N, sigma 2 N, 1,000 Hz, v 2.853 m/s, t 0.83 s -> height 0.9 mm, mostly grid
#pragma once

namespace amentum {

struct TraceNoise {
    double weight_n;       // W
    double weight_error_n; // dW
    double zero_error_n;   // db
    double sample_sd_n;    // sigma
    double step_s;         // d
};

// dh/dW without its sign, m/N.
double height_per_newton(double weight_n, double take_off_speed_ms, double seconds_from_start);

double grid_error_s(const TraceNoise& noise); // of one instant
double error_of_speed(const TraceNoise& noise, double speed_ms, double t_s);
double error_of_rise(const TraceNoise& noise, double rise_m, double t_s);
double error_of_take_off_speed(const TraceNoise& noise, double speed_ms, double t_s);
double error_of_height(const TraceNoise& noise, double take_off_speed_ms, double t_s);
double error_of_flight_height(const TraceNoise& noise, double flight_s);
double error_of_net_impulse(const TraceNoise& noise, double t_s); // over t_s seconds, ends fixed
double error_of_power(const TraceNoise& noise, double force_n, double speed_ms, double t_s); // one sample
double error_of_ratio(double ratio, double above, double above_error, double below, double below_error);

double root_of_squares(double a, double b, double c = 0, double d = 0);

} // namespace amentum
