#include "inference/inside/chain_checks.h"

#include "inference/normal_quantile.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>
#include <vector>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

// Halves of chains as columns; of an odd number of draws the middle one is left out.
MatrixXd split(const VectorXd& draws, int chains) {
    const Index each = draws.size() / chains, half = each / 2;
    MatrixXd halves(half, 2 * chains);
    for (Index c = 0; c < chains; ++c) {
        halves.col(2 * c) = draws.segment(c * each, half);
        halves.col(2 * c + 1) = draws.segment((c + 1) * each - half, half);
    }
    return halves;
}

VectorXd sorted(VectorXd x) {
    std::sort(x.begin(), x.end());
    return x;
}

// Linear between order statistics, as R's default.
double quantile(const VectorXd& rising, double p) {
    const double place = p * static_cast<double>(rising.size() - 1);
    const auto low = static_cast<Index>(place);
    const Index high = std::min(low + 1, rising.size() - 1);
    return rising[low] + (place - static_cast<double>(low)) * (rising[high] - rising[low]);
}

// Equal draws share the mean of their ranks.
MatrixXd normal_ranks(const MatrixXd& x) {
    const Index S = x.size();
    std::vector<Index> order(static_cast<std::size_t>(S));
    std::iota(order.begin(), order.end(), Index{0});
    std::sort(order.begin(), order.end(), [&](Index a, Index b) { return x.data()[a] < x.data()[b]; });
    MatrixXd z(x.rows(), x.cols());
    for (std::size_t first = 0, end = 0; first < order.size(); first = end) {
        const double value = x.data()[order[first]];
        for (end = first; end < order.size() && x.data()[order[end]] == value;)
            ++end;
        const double rank = 0.5 * static_cast<double>(first + 1 + end);
        for (std::size_t i = first; i < end; ++i)
            z.data()[order[i]] = normal_quantile((rank - 0.375) / (static_cast<double>(S) + 0.25));
    }
    return z;
}

struct Moments {
    VectorXd means;
    double within, plus; // W, and the variance of all draws estimated from W and B
};

Moments moments_of(const MatrixXd& x) {
    const double n = static_cast<double>(x.rows()), m = static_cast<double>(x.cols());
    const VectorXd means = x.colwise().mean();
    const double within = (x.rowwise() - means.transpose()).squaredNorm() / (m * (n - 1));
    const double between = (means.array() - means.mean()).square().sum() / (m - 1);
    return {means, within, within * (n - 1) / n + between};
}

double r_hat(const MatrixXd& x) {
    const Moments moments = moments_of(x);
    constexpr double least_within =
        1e-300; // chains stuck, each at its own place: beyond all limits, but a number
    return moments.plus > 0 ? std::sqrt(moments.plus / std::max(moments.within, least_within)) : 1;
}

// Geyer's sums of neighbours' autocorrelations, as long as they are positive, never rising.
double size(const MatrixXd& x) {
    const Moments moments = moments_of(x);
    const Index n = x.rows();
    const double S = static_cast<double>(x.size());
    if (!(moments.plus > 0))
        return S;
    const MatrixXd centred = x.rowwise() - moments.means.transpose();
    const auto correlation = [&](Index lag) {
        if (lag == 0)
            return 1.0;
        const double covariance =
            centred.topRows(n - lag).cwiseProduct(centred.bottomRows(n - lag)).sum() / S;
        return 1 - (moments.within - covariance) / moments.plus;
    };
    double pairs = 0, before = 2, next = 1;
    for (Index lag = 0;; lag += 2) {
        next = correlation(lag);
        const double pair = next + correlation(lag + 1);
        if (!(pair > 0) || lag >= n - 5)
            break;
        before = std::min(before, pair);
        pairs += before;
    }
    const double tau = std::max(2 * pairs - 1 + std::max(next, 0.0), 1 / std::log10(S));
    return S / tau;
}

MatrixXd below(const MatrixXd& x, double limit) {
    return (x.array() <= limit).cast<double>();
}

} // namespace

ChainCheck check_chains(const VectorXd& draws, int chains) {
    assert(chains > 0 && draws.size() % chains == 0 && draws.size() / chains >= 16);
    const MatrixXd halves = split(draws, chains);
    const VectorXd rising = sorted(draws);
    if (rising[0] == rising[rising.size() - 1]) { // the mean of equal numbers is not always that number
        const double S = static_cast<double>(draws.size());
        return {rising[0], 0, 1, S, S, S, 0};
    }
    const MatrixXd bulk = normal_ranks(halves);
    const MatrixXd folded = normal_ranks((halves.array() - quantile(rising, 0.5)).abs());
    ChainCheck out{};
    out.mean = draws.mean();
    out.sd = std::sqrt((draws.array() - out.mean).square().sum() / static_cast<double>(draws.size() - 1));
    out.r_hat = std::max(r_hat(bulk), r_hat(folded));
    out.bulk_size = size(bulk);
    out.tail_size =
        std::min(size(below(halves, quantile(rising, 0.05))), size(below(halves, quantile(rising, 0.95))));
    out.mean_size = size(halves);
    out.error = out.sd / std::sqrt(out.mean_size);
    return out;
}

} // namespace amentum
