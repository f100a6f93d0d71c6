#include "planning/dose_curve.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

constexpr double difference = 0.18, difference_low = 0.06, difference_high = 0.30; // [Ralston2017]

} // namespace

double DoseCurve::share(double sets) const {
    assert(sets >= 0 && knots.size() >= 2);
    for (std::size_t k = 1; k < knots.size(); ++k)
        if (sets < knots[k].sets) {
            const double part = (sets - knots[k - 1].sets) / (knots[k].sets - knots[k - 1].sets);
            return knots[k - 1].share + part * (knots[k].share - knots[k - 1].share);
        }
    return knots.back().share;
}

Interval DoseCurve::share_between(double sets) const {
    const double middle = share(sets);
    if (middle <= 0)
        return {0, 0};
    const double missing = 1 - middle;
    return {std::max(0.0, middle - missing * (difference_high - difference) / difference),
            std::min(1.0, middle + missing * (difference - difference_low) / difference)};
}

const DoseCurve& usual_dose_curve() {
    static const DoseCurve curve{{{0, 0}, {1, 0.40}, {3, 0.70}, {5, 0.82}, {10, 1.00}}};
    return curve;
}

} // namespace amentum
