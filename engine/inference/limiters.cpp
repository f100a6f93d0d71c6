#include "inference/limiters.h"

#include "inference/random_stream.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

constexpr int draws = 4000;
constexpr double teenage_share = 0.49 / 1.34;      // [MartinezGarcia2021], abstract
constexpr double least_sure = 0.6;                 // proposal of this project, no source
constexpr double variance_after_test = 0.1;        // of z; a test with about twice the usual error; proposal
constexpr int nodes = 41;                          // of the quadrature over a test's outcome

struct Lever {
    StateOnDay z;
    const VelocityPrior* slope;
    const AttainableChange* change;
    double scale;  // sigma_v, and the teenage share
};

template <class Table>
const auto* line_for(const Table& table, const std::string& quality) {
    const auto found = std::find_if(table.begin(), table.end(), [&](const auto& line) { return line.quality == quality; });
    assert(found != table.end());
    return &*found;
}

double drawn_gain(const Lever& lever, RandomStream& stream) {
    const double z = lever.z.mean + std::sqrt(lever.z.variance) * stream.next_normal();
    const double beta = lever.slope->mean + lever.slope->sd * stream.next_normal();
    const double change = std::max(0.0, lever.change->mean + lever.change->sd * stream.next_normal());
    return beta * lever.scale * change * headroom(z);
}

// E max(0, N(m, s^2)) [closed form of the rectified normal]
double expected_positive(double m, double s) {
    const double d = m / s;
    return m * normal_cdf(d) + s * std::exp(-d * d / 2) * 0.3989422804014327;
}

// E over z ~ N(mean, variance) of f, at the middles of equally likely slices.
template <class F>
double averaged(const StateOnDay& z, F&& f) {
    double sum = 0;
    for (int i = 0; i < nodes; ++i) {
        const double u = (i + 0.5) / nodes;
        // The middle of slice i by bisection on the distribution function: 60 halvings of [-8, 8].
        double low = -8, high = 8;
        for (int step = 0; step < 60; ++step) (normal_cdf((low + high) / 2) < u ? low : high) = (low + high) / 2;
        sum += f(z.mean + std::sqrt(z.variance) * low) / nodes;
    }
    return sum;
}

double expected_gain(const Lever& lever, const StateOnDay& z) {
    const double per_headroom = lever.slope->mean * lever.scale * expected_positive(lever.change->mean, lever.change->sd);
    return per_headroom * averaged(z, headroom);
}

// Preposterior: what the choice is worth after a test of quality k, on average over what the test may show.
double value_of_testing(const std::vector<Lever>& levers, std::size_t k) {
    const StateOnDay now = levers[k].z;
    if (now.variance <= variance_after_test) return 0;
    double best_other = -1e300;
    for (std::size_t j = 0; j < levers.size(); ++j)
        if (j != k) best_other = std::max(best_other, expected_gain(levers[j], levers[j].z));
    const StateOnDay shown{now.mean, now.variance - variance_after_test};
    const double after = averaged(shown, [&](double z) {
        return std::max(best_other, expected_gain(levers[k], {z, variance_after_test}));
    });
    const double before = averaged(shown, [&](double z) { return expected_gain(levers[k], {z, variance_after_test}); });
    return after - std::max(best_other, before);
}

double quantile(std::vector<double> values, double p) {
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(p * static_cast<double>(values.size() - 1) + 0.5);
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

}  // namespace

double headroom(double z) { return std::clamp(1 - z / 2, 0.2, 2.0); }

LimiterAnswer estimate_limiters(const LimiterQuestion& question, std::span<const VelocityPrior> priors,
                                std::span<const AttainableChange> changes) {
    assert(question.qualities.size() >= 2 && question.velocity_spread > 0 && question.smallest_worthwhile > 0);
    const double scale = question.velocity_spread * (question.under_18 ? teenage_share : 1.0);
    std::vector<Lever> levers;
    std::vector<std::vector<double>> gains;
    for (const auto& each : question.qualities) {
        levers.push_back({each.z, line_for(priors, each.quality), line_for(changes, each.quality), scale});
        RandomStream stream(seed_from(question.seed, each.quality));
        auto& drawn = gains.emplace_back(draws);
        for (double& gain : drawn) gain = drawn_gain(levers.back(), stream);
    }

    const std::size_t n = levers.size();
    std::vector<double> means(n, 0), wins(n, 0);
    double expected_best = 0;
    for (int i = 0; i < draws; ++i) {
        std::size_t best = 0;
        for (std::size_t k = 0; k < n; ++k) {
            means[k] += gains[k][i] / draws;
            if (gains[k][i] > gains[best][i]) best = k;
        }
        wins[best] += 1.0 / draws;
        expected_best += gains[best][i] / draws;
    }

    LimiterAnswer answer{{}, false, expected_best - *std::max_element(means.begin(), means.end()), {}, 0};
    for (std::size_t k = 0; k < n; ++k) {
        const auto& each = question.qualities[k];
        answer.gains.push_back({each.quality, means[k], {quantile(gains[k], 0.1), quantile(gains[k], 0.9)}, wins[k],
                                expected_best - means[k], each.tested, 0.0, levers[k].slope->sources});
        const double value = value_of_testing(levers, k);
        if (value > answer.value_of_test) answer.value_of_test = value, answer.test_next = each.quality;
    }
    std::stable_sort(answer.gains.begin(), answer.gains.end(),
                     [](const auto& a, const auto& b) { return a.expected > b.expected; });
    answer.can_tell = answer.gains.front().chance_best >= least_sure &&
                      answer.value_of_knowing <= question.smallest_worthwhile / 2;
    return answer;
}

}  // namespace amentum
