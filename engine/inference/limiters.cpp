#include "inference/limiters.h"

#include "inference/normal_quantile.h"
#include "inference/random_stream.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr int draws = 4000;
constexpr double teenage_share = 0.49 / 1.34;                         // [MartinezGarcia2021], abstract
constexpr double teenage_share_sd = (1.17 + 0.18) / (2 * z95) / 1.34; // from the interval of the 0.49
constexpr double headroom_slope_sd = 0.15;                            // proposal of this project, no source
constexpr double least_sure = 0.6;                                    // proposal of this project, no source
constexpr double variance_after_test = 0.1;   // of z: a test with a third of an SD of error; proposal
constexpr double least_value_of_test = 0.001; // m/s; proposal of this project, no source
constexpr double much_information = 0.3;      // proposal of this project, no source
constexpr int nodes = 41;                     // of the quadrature over a test's outcome

// What all qualities of one draw share.
struct Shared {
    double youth;
    double headroom_slope;
};

struct Lever {
    const QualityState* state;
    const VelocityPrior* slope;
    const AttainableChange* change;
    double scale; // sigma_v . g . weeks / 12
};

struct Draws {
    std::vector<std::vector<double>> gains; // by lever, then draw
    std::vector<double> means, wins;
    double expected_best = 0;
};

template <class Table>
const auto* line_for(const Table& table, const std::string& quality) {
    const auto found =
        std::find_if(table.begin(), table.end(), [&](const auto& line) { return line.quality == quality; });
    assert(found != table.end());
    return &*found;
}

// In the order of their names, so that the order given changes nothing.
std::vector<Lever> levers_of(const LimiterQuestion& question, std::span<const VelocityPrior> priors,
                             std::span<const AttainableChange> changes) {
    const double scale =
        question.velocity_spread * training_share(question.training_years) * question.weeks / 12;
    std::vector<Lever> levers;
    for (const auto& each : question.qualities)
        levers.push_back({&each, line_for(priors, each.quality), line_for(changes, each.quality), scale});
    std::sort(levers.begin(), levers.end(),
              [](const auto& a, const auto& b) { return a.state->quality < b.state->quality; });
    return levers;
}

std::vector<Shared> drawn_shared(const LimiterQuestion& question) {
    RandomStream stream(seed_from(question.seed, "shared by all qualities"));
    std::vector<Shared> all;
    for (int i = 0; i < draws; ++i) {
        const double youth = std::clamp(teenage_share + teenage_share_sd * stream.next_normal(), 0.05, 1.0);
        const double slope = std::max(0.0, 0.5 + headroom_slope_sd * stream.next_normal());
        all.push_back({question.under_18 ? youth : 1.0, slope});
    }
    return all;
}

double drawn_gain(const Lever& lever, const Shared& shared, RandomStream& stream) {
    const double z = lever.state->z.mean + std::sqrt(lever.state->z.variance) * stream.next_normal();
    const double beta = lever.slope->mean + lever.slope->sd * stream.next_normal();
    const double change = std::max(0.0, lever.change->mean + lever.change->sd * stream.next_normal());
    return beta * lever.scale * shared.youth * change * headroom(z, shared.headroom_slope);
}

Draws drawn_gains(const LimiterQuestion& question, const std::vector<Lever>& levers) {
    const auto shared = drawn_shared(question);
    Draws out;
    for (const auto& lever : levers) {
        RandomStream stream(seed_from(question.seed, lever.state->quality));
        auto& gains = out.gains.emplace_back();
        for (const auto& common : shared)
            gains.push_back(drawn_gain(lever, common, stream));
    }
    out.means.assign(levers.size(), 0);
    out.wins.assign(levers.size(), 0);
    for (std::size_t i = 0; i < draws; ++i) {
        std::size_t best = 0;
        for (std::size_t k = 0; k < levers.size(); ++k) {
            out.means[k] += out.gains[k][i] / draws;
            if (out.gains[k][i] > out.gains[best][i])
                best = k;
        }
        out.wins[best] += 1.0 / draws;
        out.expected_best += out.gains[best][i] / draws;
    }
    return out;
}

// The middles of equally likely slices of N(0, 1).
std::array<double, nodes> slice_middles() {
    std::array<double, nodes> middles;
    for (std::size_t i = 0; i < nodes; ++i)
        middles[i] = normal_quantile((static_cast<double>(i) + 0.5) / nodes);
    return middles;
}

double expected_headroom(const std::array<double, nodes>& middles, const StateOnDay& z) {
    double sum = 0;
    for (const double middle : middles)
        sum += headroom(z.mean + std::sqrt(z.variance) * middle) / nodes;
    return sum;
}

// E max(0, N(m, s^2)): the closed form of the rectified normal.
double expected_positive(double m, double s) {
    const double d = m / s;
    return m * normal_cdf(d) + s * std::exp(-d * d / 2) / std::sqrt(2 * std::numbers::pi);
}

struct TestValue {
    const std::array<double, nodes> middles = slice_middles();
    double youth;

    double gain(const Lever& lever, const StateOnDay& z) const {
        const double change = expected_positive(lever.change->mean, lever.change->sd);
        return lever.slope->mean * lever.scale * youth * change * expected_headroom(middles, z);
    }

    // Preposterior: what the choice is worth after a test of quality k, on average over what the test may
    // show.
    double of_testing(const std::vector<Lever>& levers, std::size_t k) const {
        const StateOnDay now = levers[k].state->z;
        if (now.variance <= variance_after_test)
            return 0;
        double best_other = -1e300;
        for (std::size_t j = 0; j < levers.size(); ++j)
            if (j != k)
                best_other = std::max(best_other, gain(levers[j], levers[j].state->z));
        double after = 0, before = 0;
        for (const double middle : middles) {
            const double z = now.mean + std::sqrt(now.variance - variance_after_test) * middle;
            const double shown = gain(levers[k], {z, variance_after_test});
            after += std::max(best_other, shown) / nodes;
            before += shown / nodes;
        }
        return after - std::max(best_other, before);
    }
};

double quantile(std::vector<double> values, double p) {
    const auto at =
        values.begin() + static_cast<std::ptrdiff_t>(p * static_cast<double>(values.size() - 1) + 0.5);
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

std::vector<std::string> words_beside(const LimiterQuestion& question, const LimiterAnswer& answer) {
    std::vector<std::string> words;
    if (!answer.can_tell)
        words.push_back(
            "The records cannot tell yet which quality comes first: read the list as a list of candidates.");
    const bool own = std::any_of(answer.gains.begin(), answer.gains.end(),
                                 [](const auto& gain) { return gain.information >= much_information; });
    if (!own)
        words.push_back("This ranking is the literature's, not yet your athletes'.");
    if (question.under_18)
        words.push_back(
            "Below 18, age and height by themselves go with most of throwing velocity (about 73 % of its "
            "variance in 420 young pitchers); growth will move it more than any one quality.");
    return words;
}

} // namespace

double headroom(double z, double slope) {
    return std::clamp(1 - slope * z, 0.2, 2.0);
}

double training_share(std::optional<double> training_years) {
    if (!training_years)
        return 1.0;
    return *training_years < 1 ? 2.0 : *training_years <= 5 ? 1.0 : 0.4;
}

LimiterAnswer estimate_limiters(const LimiterQuestion& question, std::span<const VelocityPrior> priors,
                                std::span<const AttainableChange> changes) {
    assert(question.qualities.size() >= 2 && question.velocity_spread > 0 &&
           question.smallest_worthwhile > 0);
    assert(question.weeks >= 4 && question.weeks <= 16);
    const auto levers = levers_of(question, priors, changes);
    const auto drawn = drawn_gains(question, levers);
    const TestValue test_value{.youth = question.under_18 ? teenage_share : 1.0};

    LimiterAnswer answer{{}, false, 0, {}, 0};
    answer.value_of_knowing = drawn.expected_best - *std::max_element(drawn.means.begin(), drawn.means.end());
    for (std::size_t k = 0; k < levers.size(); ++k) {
        const auto& state = *levers[k].state;
        answer.gains.push_back({state.quality,
                                drawn.means[k],
                                {quantile(drawn.gains[k], 0.1), quantile(drawn.gains[k], 0.9)},
                                drawn.wins[k],
                                drawn.expected_best - drawn.means[k],
                                state.tested,
                                0.0,
                                levers[k].slope->sources});
        const double value = test_value.of_testing(levers, k);
        if (value > std::max(answer.value_of_test, least_value_of_test)) {
            answer.value_of_test = value;
            answer.test_next = state.quality;
        }
    }
    std::stable_sort(answer.gains.begin(), answer.gains.end(),
                     [](const auto& a, const auto& b) { return a.expected > b.expected; });
    answer.can_tell = answer.gains.front().chance_best >= least_sure &&
                      answer.value_of_knowing <= question.smallest_worthwhile / 2;
    answer.words = words_beside(question, answer);
    return answer;
}

} // namespace amentum
