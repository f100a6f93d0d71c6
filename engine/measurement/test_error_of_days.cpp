#include "measurement/test_error_of_days.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double days_a_month = 30;
constexpr int drifts_tried = 33, trends_tried = 7;
constexpr double widest = 3.0; // log of 20: how far from the published error is looked

// With T the covariance of the differences d when nobody rises or falls, and g the days between: what is needed of them
// to add a rise of one's own to it.
struct Sums {
    double log_determinant; // of T
    double dd, dg, gg;      // d' T^-1 d, d' T^-1 g, g' T^-1 g
};

// T has three diagonals; it is factored as it goes along.
Sums sums_of(const DaySeries& series, double day_variance, double drift) {
    Sums sums{0, 0, 0, 0};
    double inverse = 0, rest = 0, rest_of_gap = 0; // of the pivot before
    double product = 1;                            // of pivots whose logarithm is not yet taken
    for (std::size_t i = 1; i < series.size(); ++i) {
        const double before = day_variance + series[i - 1].known_variance;
        const double after = day_variance + series[i].known_variance;
        const double ratio = -before * inverse;
        const int gap = series[i].day - series[i - 1].day;
        assert(gap > 0);
        rest = series[i].value - series[i - 1].value - ratio * rest;
        rest_of_gap = gap - ratio * rest_of_gap;
        const double pivot = before + after + drift * gap + ratio * before;
        inverse = 1 / pivot;
        product *= pivot;
        if (i % 8 == 0 || i + 1 == series.size()) {
            sums.log_determinant += std::log(product);
            product = 1;
        }
        sums.dd += rest * rest * inverse;
        sums.dg += rest * rest_of_gap * inverse;
        sums.gg += rest_of_gap * rest_of_gap * inverse;
    }
    return sums;
}

// T + trend g g' by the rule for a matrix with one more direction (Sherman, Morrison).
double log_likelihood(const Sums& sums, double trend) {
    const double more = 1 + trend * sums.gg;
    return -(sums.log_determinant + std::log(more) + sums.dd - trend * sums.dg * sums.dg / more) / 2;
}

// The i-th of n standard deviations in a month, from low to high published errors, each a factor from the next.
double in_a_month(int i, int n, double low, double high, double published) {
    return published * low * std::pow(high / low, static_cast<double>(i) / (n - 1));
}

void add_drift(std::vector<double>& logs, const std::vector<DaySeries>& series, double error,
               double published, double drift) {
    std::vector<double> of_trend(trends_tried, 0.0);
    for (const auto& one : series) {
        const Sums sums = sums_of(one, error * error, drift);
        for (int j = 0; j < trends_tried; ++j) {
            const double a_day = in_a_month(j, trends_tried, 0.03, 3, published) / days_a_month;
            of_trend[static_cast<std::size_t>(j)] += log_likelihood(sums, a_day * a_day);
        }
    }
    logs.insert(logs.end(), of_trend.begin(), of_trend.end());
}

double with_change_integrated(const std::vector<DaySeries>& series, double error, double published) {
    std::vector<double> logs;
    for (int i = 0; i < drifts_tried; ++i) {
        const double month = in_a_month(i, drifts_tried, 0.03, 10, published);
        add_drift(logs, series, error, published, month * month / days_a_month);
    }
    const double highest = *std::max_element(logs.begin(), logs.end());
    double total = 0;
    for (const double each : logs)
        total += std::exp(each - highest);
    return highest + std::log(total / static_cast<double>(logs.size()));
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

double log_likelihood_of_series(const DaySeries& series, double day_variance, double drift_a_day,
                                double trend_variance) {
    return log_likelihood(sums_of(series, day_variance, drift_a_day), trend_variance);
}

ErrorLikelihood likelihood_of_days(std::vector<DaySeries> series, double published) {
    return [series = std::move(series), published](double error) {
        return with_change_integrated(series, error, published);
    };
}

Result<EstimatedError> estimate_error_of_days(const std::vector<DaySeries>& series, double published) {
    assert(published > 0);
    const int repeats = repeated_days(series);
    if (repeats == 0)
        return cannot_tell(0);
    const auto at = [&](double log_ratio) {
        return with_change_integrated(series, published * std::exp(log_ratio), published);
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
