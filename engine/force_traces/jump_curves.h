// How fast did the body's centre of mass move, how far, and with what power?
//
//   a = (F - W) / m,  m = W / g;  v = integral of a;  s = integral of v;  P = F v     trapezoid rule, v = s = 0 at the
//   start [Owen2014; Linthorne2001]
// Units: N, s; m/s, m, W. Valid from a start at rest; an error of W grows with time in v and with its square in s.
// What it cannot tell: where the centre of mass is in the body, or what any joint did.
// Example: W 784.532 N, force W + 1700 sin^2 over 0.4 s -> the speed rises by 4.25 m/s
#pragma once

#include "force_traces/force_signal.h"

namespace amentum {

struct JumpCurves {
    SampleSpan span;              // the samples covered; index 0 below is span.from
    std::vector<double> speed_ms; // up is positive
    std::vector<double> rise_m;   // above the place of the start
    double mass_kg;

    double speed(std::size_t sample) const { return speed_ms[sample - span.from]; }
    double rise(std::size_t sample) const { return rise_m[sample - span.from]; }
};

JumpCurves integrate_force(const ForceSignal& signal, double weight_n, SampleSpan span);

// N s above the weight (force minus weight), or of the whole force with weight 0: trapezoid from sample to sample.
double impulse_above(const ForceSignal& signal, double weight_n, std::size_t from, std::size_t to);

} // namespace amentum
