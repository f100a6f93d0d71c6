#include "inference/inside/laplace_draws.h"

#include "inference/random_stream.h"

#include <cassert>
#include <cmath>
#include <numbers>
#include <string>

namespace amentum {

using Eigen::Index;
using Eigen::VectorXd;

LaplaceDraws draw_around(const VectorXd& mode, const Eigen::MatrixXd& factor, int degrees_of_freedom,
                         int draws, std::uint64_t seed) {
    assert(factor.rows() == mode.size() && factor.cols() == mode.size() && degrees_of_freedom >= 0);
    const Index n = mode.size();
    const double d = static_cast<double>(n), nu = degrees_of_freedom;
    double constant = -factor.diagonal().array().abs().log().sum();
    constant +=
        nu > 0 ? std::lgamma((nu + d) / 2) - std::lgamma(nu / 2) - d / 2 * std::log(nu * std::numbers::pi)
               : -d / 2 * std::log(2 * std::numbers::pi);
    LaplaceDraws out{Eigen::MatrixXd(n, draws), VectorXd(draws)};
    VectorXd z(n);
    for (int i = 0; i < draws; ++i) {
        RandomStream random(seed_from(seed, "draw " + std::to_string(i)));
        for (double& each : z)
            each = random.next_normal();
        double chi_squared = 0;
        for (int j = 0; j < degrees_of_freedom; ++j)
            chi_squared += std::pow(random.next_normal(), 2);
        if (nu > 0)
            z *= std::sqrt(nu / chi_squared);
        out.values.col(i) = mode + factor.triangularView<Eigen::Lower>() * z;
        const double square = z.squaredNorm();
        out.log_density[i] = constant - (nu > 0 ? (nu + d) / 2 * std::log1p(square / nu) : square / 2);
    }
    return out;
}

} // namespace amentum
