#include "measurement/test_error_pooled.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

struct Grid {
    double low, step;
    std::vector<double> log_posterior;
    double at(std::size_t i) const { return low + step * static_cast<double>(i); }
};

Grid evaluate(double low, double high, int points, const std::function<double(double)>& log_posterior) {
    Grid grid{low, (high - low) / (points - 1), {}};
    for (int i = 0; i < points; ++i)
        grid.log_posterior.push_back(log_posterior(low + grid.step * i));
    return grid;
}

// The part of the grid within a chance of e^-12 of the highest point, one step wider each way.
Interval where_it_matters(const Grid& grid) {
    const double highest = *std::max_element(grid.log_posterior.begin(), grid.log_posterior.end());
    std::size_t first = grid.log_posterior.size(), last = 0;
    for (std::size_t i = 0; i < grid.log_posterior.size(); ++i)
        if (grid.log_posterior[i] > highest - 12) {
            first = std::min(first, i);
            last = i;
        }
    return {grid.at(first) - grid.step, grid.at(last) + grid.step};
}

// Three points more between each two, on the cubic through the two and their neighbours.
Grid made_finer(const Grid& grid) {
    const auto& y = grid.log_posterior;
    Grid finer{grid.low, grid.step / 4, {}};
    for (std::size_t i = 0; i + 1 < y.size(); ++i) {
        const double before = i > 0 ? y[i - 1] : 2 * y[i] - y[i + 1];
        const double after = i + 2 < y.size() ? y[i + 2] : 2 * y[i + 1] - y[i];
        for (int part = 0; part < 4; ++part) {
            const double t = part / 4.0;
            finer.log_posterior.push_back(
                -before * t * (t - 1) * (t - 2) / 6 + y[i] * (t + 1) * (t - 1) * (t - 2) / 2 -
                y[i + 1] * (t + 1) * t * (t - 2) / 2 + after * (t + 1) * t * (t - 1) / 6);
        }
    }
    finer.log_posterior.push_back(y.back());
    return finer;
}

double quantile_of(const Grid& grid, const std::vector<double>& below, double share) {
    const double wanted = share * below.back();
    const auto above = std::upper_bound(below.begin(), below.end(), wanted);
    const auto i = static_cast<std::size_t>(above - below.begin()) - 1;
    return grid.at(i) + grid.step * (wanted - below[i]) / (below[i + 1] - below[i]);
}

PooledError summary_of(const Grid& grid, double prior_sd) {
    const double highest = *std::max_element(grid.log_posterior.begin(), grid.log_posterior.end());
    std::vector<double> density, below{0.0};
    for (const double each : grid.log_posterior)
        density.push_back(std::exp(each - highest));
    double mass = 0, mean = 0, square = 0;
    for (std::size_t i = 0; i < density.size(); ++i) {
        mass += density[i];
        mean += density[i] * grid.at(i);
        square += density[i] * grid.at(i) * grid.at(i);
        if (i > 0)
            below.push_back(below.back() + (density[i - 1] + density[i]) / 2);
    }
    mean /= mass;
    const double variance = std::max(0.0, square / mass - mean * mean);
    return {std::exp(mean),
            {std::exp(quantile_of(grid, below, 0.1)), std::exp(quantile_of(grid, below, 0.9))},
            mean,
            std::sqrt(variance),
            std::min(1.0, variance / (prior_sd * prior_sd))};
}

} // namespace

ErrorLikelihood likelihood_of_repeats(const EstimatedError& own) {
    if (!(own.error > 0))
        return [](double) { return 0.0; };
    return
        [own](double error) { return -own.freedom * (std::log(error) + std::pow(own.error / error, 2) / 2); };
}

Result<PooledError> pool_with_published(double published, const ErrorLikelihood& repeats, double sd_of_log) {
    assert(sd_of_log > 0);
    if (!(published > 0))
        return refuse_range("published", published, 1e-9, 1e6, "", "An error is above 0.");
    const auto log_posterior = [&](double log_error) {
        return repeats(std::exp(log_error)) - std::pow((log_error - std::log(published)) / sd_of_log, 2) / 2;
    };
    // Six prior standard deviations each way, twice narrowed to where the chance lies.
    Interval range{std::log(published) - 6 * sd_of_log, std::log(published) + 6 * sd_of_log};
    for (const int points : {25, 25})
        range = where_it_matters(evaluate(range.low, range.high, points, log_posterior));
    return summary_of(made_finer(evaluate(range.low, range.high, 33, log_posterior)), sd_of_log);
}

} // namespace amentum
