#include "planning/inside/cooling.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

// By the series of the inverse hyperbolic tangent.
double log_of_inverse(double u) {
    constexpr double ln_2 = 0.6931471805599453;
    double log = 0;
    while (u < 0.5) {
        u *= 2;
        log += ln_2;
    }
    const double z = (1 - u) / (1 + u);
    double term = z, sum = 0;
    for (int k = 1; k < 60; k += 2, term *= z * z)
        sum += term / k;
    return log + 2 * sum;
}

using Table = std::array<double, 1024>;

Table thresholds() {
    Table table;
    for (std::size_t i = 0; i < table.size(); ++i)
        table[i] = log_of_inverse((static_cast<double>(i) + 0.5) / static_cast<double>(table.size()));
    return table;
}

} // namespace

double drawn_threshold(SeededStream& stream) {
    static const Table table = thresholds();
    return table[static_cast<std::size_t>(stream.below(static_cast<int>(table.size())))];
}

double factor_a_step(double from, double to) {
    const double ratio = to / from;
    double low = 0, high = std::max(1.0, ratio);
    for (int i = 0; i < 200; ++i) { // by halving
        const double middle = (low + high) / 2;
        double power = 1;
        for (int k = 0; k < steps_of_cooling; ++k)
            power *= middle;
        (power < ratio ? low : high) = middle;
    }
    return (low + high) / 2;
}

} // namespace amentum
