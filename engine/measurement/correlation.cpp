#include "measurement/correlation.h"

#include <cmath>
#include <numbers>

namespace amentum {

Result<FisherZ> fisher_z(double r, double n) {
    if (!(r > -1 && r < 1))
        return refuse_range("r", r, -1, 1, "", "Both ends excluded.");
    if (!(n > 3 && n <= 1e6))
        return refuse_range("n", n, 4, 1e6, "", "Fisher's error needs more than 3 athletes.");
    const Estimate z{std::atanh(r), 1 / std::sqrt(n - 3)};
    const Interval limits = z.central(z95);
    return FisherZ{z, {std::tanh(limits.low), std::tanh(limits.high)}};
}

Result<double> correlation_from_tau(double tau) {
    if (!(tau >= -1 && tau <= 1))
        return refuse_range("tau", tau, -1, 1, "", "");
    return std::sin(std::numbers::pi * tau / 2);
}

} // namespace amentum
