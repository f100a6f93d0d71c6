#include "measurement/test_error_of_days.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double days_a_month = 30;
constexpr int drifts_tried = 25;
constexpr double widest = 3.0; // log of 20: how far from the published error is looked

double drift_tried(int i, double published) {
    const double low = std::log(0.03), high = std::log(10.0);
    const double in_a_month = published * std::exp(low + (high - low) * i / (drifts_tried - 1));
    return in_a_month * in_a_month / days_a_month;
}

double with_drift_integrated(const std::vector<DaySeries>& series, double error, double published) {
    std::vector<double> logs;
    for (int i = 0; i < drifts_tried; ++i) {
        double sum = 0;
        for (const auto& one : series)
            sum += log_likelihood_of_series(one, error * error, drift_tried(i, published));
        logs.push_back(sum);
    }
    const double highest = *std::max_element(logs.begin(), logs.end());
    double total = 0;
    for (const double each : logs)
        total += std::exp(each - highest);
    return highest + std::log(total / drifts_tried);
}

Refusal cannot_tell(int repeats) {
    return {RefusalCode::too_few_data,
            "The repeated days cannot tell the error between days from none, or from real change.", "",
            std::to_string(repeats) + " repeated days", "more days, close together"};
}

// Golden section for the highest point between low and high.
double highest_between(double low, double high, const std::function<double(double)>& f) {
    const double golden = (std::sqrt(5.0) - 1) / 2;
    double a = high - golden * (high - low), b = low + golden * (high - low), fa = f(a), fb = f(b);
    while (high - low > 1e-4) {
        if (fa < fb) {
            low = a;
            a = b;
            fa = fb;
            fb = f(b = low + golden * (high - low));
        } else {
            high = b;
            b = a;
            fb = fa;
            fa = f(a = high - golden * (high - low));
        }
    }
    return (low + high) / 2;
}

} // namespace

// The differences of neighbouring days have a covariance of three diagonals; it is factored as it goes along.
double log_likelihood_of_series(const DaySeries& series, double day_variance, double drift) {
    double sum = 0, variance = 1, rest = 0;
    for (std::size_t i = 1; i < series.size(); ++i) {
        const double before = day_variance + series[i - 1].known_variance;
        const double after = day_variance + series[i].known_variance;
        const double ratio = i > 1 ? -before / variance : 0;
        const int gap = series[i].day - series[i - 1].day;
        assert(gap > 0);
        rest = series[i].value - series[i - 1].value - ratio * rest;
        variance = before + after + drift * gap - ratio * ratio * (i > 1 ? variance : 0);
        sum -= (std::log(variance) + rest * rest / variance) / 2;
    }
    return sum;
}

ErrorLikelihood likelihood_of_days(std::vector<DaySeries> series, double published) {
    return [series = std::move(series), published](double error) {
        return with_drift_integrated(series, error, published);
    };
}

Result<EstimatedError> estimate_error_of_days(const std::vector<DaySeries>& series, double published) {
    assert(published > 0);
    const int repeats = repeated_days(series);
    if (repeats == 0)
        return cannot_tell(0);
    const auto at = [&](double log_ratio) {
        return with_drift_integrated(series, published * std::exp(log_ratio), published);
    };
    constexpr int points = 25;
    constexpr double step = 2 * widest / (points - 1);
    int best = 0;
    double highest = at(-widest);
    for (int i = 1; i < points; ++i)
        if (const double here = at(-widest + step * i); here > highest) {
            highest = here;
            best = i;
        }
    if (best == 0 || best == points - 1)
        return cannot_tell(repeats);
    const double top = highest_between(-widest + step * (best - 1), -widest + step * (best + 1), at);
    constexpr double h = 0.05;
    const double curvature = (at(top + h) - 2 * at(top) + at(top - h)) / (h * h);
    if (!(curvature <= -2)) // less than one degree of freedom
        return cannot_tell(repeats);
    return error_with_band(published * std::exp(top), -curvature / 2);
}

int repeated_days(const std::vector<DaySeries>& series) {
    int repeats = 0;
    for (const auto& one : series)
        repeats += one.empty() ? 0 : static_cast<int>(one.size()) - 1;
    return repeats;
}

} // namespace amentum
