// How fast does this athlete throw, by one session's throws, and which change between two sessions is real?
//
//   value = mean of n,  SE^2 = s_b^2 + s_w^2 / n
//   MDC95 of two sessions = 1.96 sqrt( 2 (s_w^2 / n + s_b^2) )       [Weir2005, applied to a mean of n]
// s_w standard deviation between throws of a session, s_b between sessions. Units: any one speed unit; n 1
//   to 60.
// Mean, never the best: the best of n is biased upwards by an amount that grows with n (measurement_error.h).
// Refusals: no throws, more than 60, an error below 0.
// Usual sizes: s_w 1.0 mph (professional) to 1.5 mph (youth), s_b 0.8 to 1.0 mph (from memory, no study of
//   s_b found).
// What it cannot tell: mound or flat, ball, warm-up, device and place: sessions must share them to be
//   compared.
// Example: n 5, s_w 1.0 mph, s_b 0.8 mph: MDC95 2.54 mph; ten throws instead of five only bring it to 2.38
//   mph
#pragma once

#include "values/interval.h"
#include "values/refusal.h"

#include <vector>

namespace amentum {

struct VelocityErrors {
    double between_throws;
    double between_sessions;
};

Result<Estimate> measure_session_velocity(const std::vector<double>& speeds, const VelocityErrors& errors);
Result<double> smallest_session_change(int throws, const VelocityErrors& errors, double z = z95);

} // namespace amentum
