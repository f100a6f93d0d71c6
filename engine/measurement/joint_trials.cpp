#include "measurement/joint_trials.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

// Chance that n standard normal readings span less than `width`: n times the integral of phi(x) (Phi(x + width) -
// Phi(x))^(n-1) over the smallest reading x, by Simpson's rule.
double chance_of_range(double width, int n) {
    constexpr int steps = 400;
    constexpr double low = -9, step = 18.0 / steps;
    double sum = 0;
    for (int i = 0; i <= steps; ++i) {
        const double x = low + i * step;
        const double phi = std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi);
        const double weight = i == 0 || i == steps ? 1 : (i % 2 == 1 ? 4 : 2);
        sum += weight * n * phi * std::pow(normal_cdf(x + width) - normal_cdf(x), n - 1);
    }
    return sum * step / 3;
}

} // namespace

double usual_range_of(int n) {
    assert(n >= 2 && n <= 60);
    double low = 0, high = 12;
    while (high - low > 1e-9) {
        const double middle = (low + high) / 2;
        (chance_of_range(middle, n) < 0.95 ? low : high) = middle;
    }
    return (low + high) / 2;
}

Result<AngleTrials> measure_angle_trials(const std::vector<double>& degrees, double trial_error,
                                         double day_error) {
    if (degrees.empty() || degrees.size() > 60)
        return refuse_range("angles_deg", static_cast<double>(degrees.size()), 1, 60, "trials");
    if (!(trial_error > 0))
        return refuse_range("trial_error_deg", trial_error, 0.1, 20, "deg", "An error is above 0.");
    if (!(day_error >= 0))
        return refuse_range("day_error_deg", day_error, 0, 20, "deg");
    const double n = static_cast<double>(degrees.size());
    double mean = 0;
    for (const double each : degrees)
        mean += each / n;
    const auto [smallest, largest] = std::minmax_element(degrees.begin(), degrees.end());
    const double spread = *largest - *smallest;
    const double allowed = n < 2 ? 0 : usual_range_of(static_cast<int>(n)) * trial_error;
    return AngleTrials{{mean, std::hypot(day_error, trial_error / std::sqrt(n))},
                       spread,
                       allowed,
                       n < 2 || spread > allowed};
}

Result<RangeFinding> judge_range_deficit(const Estimate& deficit, double cut_off, int days_found) {
    if (!(deficit.standard_error > 0))
        return refuse_range("error_deg", deficit.standard_error, 0.1, 40, "deg", "An error is above 0.");
    if (!(cut_off >= 0 && cut_off <= 60))
        return refuse_range("cut_off_deg", cut_off, 0, 60, "deg");
    if (days_found < 0)
        return refuse_range("days_found", days_found, 0, 1000, "days");
    if (!(deficit.value > cut_off))
        return RangeFinding::none_seen;
    if (deficit.value - z90 * deficit.standard_error > cut_off || days_found >= 2)
        return RangeFinding::show_clinician;
    return RangeFinding::measure_again;
}

} // namespace amentum
