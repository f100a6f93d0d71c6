#include "inference/limiters.h"

#include "inference/random_stream.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace amentum {
namespace {

constexpr int draws = 4000;
constexpr double teenage_share = 0.49 / 1.34;                         // [MartinezGarcia2021], abstract
constexpr double teenage_share_sd = (1.17 + 0.18) / (2 * z95) / 1.34; // from the interval of the 0.49
constexpr double headroom_slope_sd = 0.15;                            // proposal of this project, no source
constexpr double least_sure = 0.6;                                    // proposal of this project, no source
constexpr double much_information = 0.3;                              // proposal of this project, no source

// What all qualities of one draw share.
struct Shared {
    double youth;
    double headroom_slope;
};

struct Lever {
    const QualityState* state;
    Estimate slope;
    Estimate change;
    std::vector<std::string> sources;
    double scale; // sigma_v . g . weeks / 12
};

struct Levers {
    std::vector<Lever> all;
    Eigen::MatrixXd root; // of the slopes' correlation
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

Lever lever_of(const QualityState& state, double scale, std::span<const VelocityPrior> priors,
               std::span<const AttainableChange> changes) {
    const VelocityPrior& prior = *line_for(priors, state.quality);
    const AttainableChange& change = *line_for(changes, state.quality);
    return {&state, state.slope.value_or(Estimate{prior.mean, prior.sd}),
            state.attainable.value_or(Estimate{change.mean, change.sd}), prior.sources, scale};
}

// In the order of their names, so that the order given changes nothing.
Levers levers_of(const LimiterQuestion& question, std::span<const VelocityPrior> priors,
                 std::span<const AttainableChange> changes) {
    const double scale =
        question.velocity_spread * training_share(question.training_years) * question.weeks / 12;
    const std::size_t n = question.qualities.size();
    std::vector<std::size_t> order(n);
    std::iota(order.begin(), order.end(), 0U);
    std::sort(order.begin(), order.end(),
              [&](auto a, auto b) { return question.qualities[a].quality < question.qualities[b].quality; });
    const auto size = static_cast<Eigen::Index>(n);
    Levers levers{{}, Eigen::MatrixXd::Identity(size, size)};
    for (const auto k : order)
        levers.all.push_back(lever_of(question.qualities[k], scale, priors, changes));
    if (question.slope_correlation.empty())
        return levers;
    assert(question.slope_correlation.size() == n * n);
    Eigen::MatrixXd correlation(size, size);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < n; ++j)
            correlation(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) =
                question.slope_correlation[order[i] * n + order[j]];
    const Eigen::LLT<Eigen::MatrixXd> L(correlation);
    assert(L.info() == Eigen::Success);
    levers.root = L.matrixL();
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

double drawn_gain(const Lever& lever, double slope, const Shared& shared, RandomStream& stream) {
    const double z = lever.state->z.mean + std::sqrt(lever.state->z.variance) * stream.next_normal();
    const double change =
        std::max(0.0, lever.change.value + lever.change.standard_error * stream.next_normal());
    return slope * lever.scale * shared.youth * change * headroom(z, shared.headroom_slope);
}

Draws drawn_gains(const LimiterQuestion& question, const Levers& levers) {
    const auto shared = drawn_shared(question);
    const std::size_t count = levers.all.size();
    std::vector<RandomStream> streams;
    for (const auto& lever : levers.all)
        streams.emplace_back(seed_from(question.seed, lever.state->quality));
    Draws out{std::vector<std::vector<double>>(count), std::vector<double>(count, 0),
              std::vector<double>(count, 0)};
    Eigen::VectorXd own(static_cast<Eigen::Index>(count));
    for (const auto& common : shared) {
        for (std::size_t k = 0; k < count; ++k)
            own[static_cast<Eigen::Index>(k)] = streams[k].next_normal();
        const Eigen::VectorXd doubt = levers.root * own;
        std::size_t best = 0;
        for (std::size_t k = 0; k < count; ++k) {
            const Lever& lever = levers.all[k];
            const double slope =
                lever.slope.value + lever.slope.standard_error * doubt[static_cast<Eigen::Index>(k)];
            out.gains[k].push_back(drawn_gain(lever, slope, common, streams[k]));
            out.means[k] += out.gains[k].back() / draws;
            if (out.gains[k].back() > out.gains[best].back())
                best = k;
        }
        out.wins[best] += 1.0 / draws;
        out.expected_best += out.gains[best].back() / draws;
    }
    return out;
}

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

Estimate attainable_here(double drift_sd_30_days, int athletes, const AttainableChange& published) {
    assert(drift_sd_30_days > 0 && athletes > 0);
    constexpr double upper_tenth = 1.755, months = 84.0 / 30; // mean of the upper tenth of N(0, 1)
    constexpr double aim_unknown = 0.3;
    const double here = upper_tenth * drift_sd_30_days * std::sqrt(months);
    const double here_precision = 1 / (here * here * (1.0 / athletes + aim_unknown * aim_unknown));
    const double published_precision = 1 / (published.sd * published.sd);
    const double mean = (here * here_precision + published.mean * published_precision) /
                        (here_precision + published_precision);
    return {mean, mean * published.sd / published.mean};
}

LimiterAnswer estimate_limiters(const LimiterQuestion& question, std::span<const VelocityPrior> priors,
                                std::span<const AttainableChange> changes) {
    assert(question.qualities.size() >= 2 && question.velocity_spread > 0 &&
           question.smallest_worthwhile > 0);
    assert(question.weeks >= 4 && question.weeks <= 16);
    const auto levers = levers_of(question, priors, changes);
    const auto drawn = drawn_gains(question, levers);

    LimiterAnswer answer{{}, false, 0};
    answer.value_of_knowing = drawn.expected_best - *std::max_element(drawn.means.begin(), drawn.means.end());
    for (std::size_t k = 0; k < levers.all.size(); ++k) {
        const auto& state = *levers.all[k].state;
        answer.gains.push_back({state.quality,
                                drawn.means[k],
                                {quantile(drawn.gains[k], 0.1), quantile(drawn.gains[k], 0.9)},
                                drawn.wins[k],
                                drawn.expected_best - drawn.means[k],
                                state.tested,
                                std::clamp(state.information, 0.0, 1.0),
                                levers.all[k].sources});
    }
    std::stable_sort(answer.gains.begin(), answer.gains.end(),
                     [](const auto& a, const auto& b) { return a.expected > b.expected; });
    answer.can_tell = answer.gains.front().chance_best >= least_sure &&
                      answer.value_of_knowing <= question.smallest_worthwhile / 2;
    answer.words = words_beside(question, answer);
    return answer;
}

} // namespace amentum
