#include "inference/simulated_roster.h"

#include "inference/inside/athlete_pass.h"
#include "inference/inside/roster_scaling.h"
#include "inference/random_stream.h"

#include <cassert>
#include <cmath>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

VectorXd drawn(RandomStream& random, const MatrixXd& root) {
    VectorXd z(root.rows());
    for (Index k = 0; k < z.size(); ++k)
        z[k] = random.next_normal();
    return root * z;
}

MatrixXd root_of(const SmallMatrix& covariance) {
    return Eigen::LLT<MatrixXd>(MatrixXd(covariance)).matrixL();
}

} // namespace

RosterData simulate_roster(const RosterData& design, const RosterMode& mode, std::span<const double> within,
                           std::uint64_t seed) {
    const JointShape shape = shape_of(design);
    assert(static_cast<Index>(mode.phi.size()) == shape.size() &&
           static_cast<Index>(within.size()) == shape.predictors());
    JointModelNow now = joint_model_now(shape, Eigen::Map<const VectorXd>(mode.phi.data(), shape.size()));
    for (std::size_t k = 0; k < within.size(); ++k)
        now.parts.within.slope[static_cast<Index>(k)] = within[k] * mode.unit[k + 1] / mode.unit[0];
    now.Q = now.parts.within.whole();
    const MatrixXd step_root = root_of(now.Q), start_root = root_of(now.S);

    RandomStream random(seed);
    std::vector<double> shifts;
    for (const int quality : design.sessions)
        shifts.push_back(mode.session_spread[static_cast<std::size_t>(quality)] * random.next_normal());
    RosterData made = design;
    for (auto& athlete : made.athletes) {
        const auto covariates = Eigen::Map<const VectorXd>(athlete.covariates.data(), shape.covariates);
        const VectorXd growth =
            now.parts.growth_effect * Eigen::Map<const VectorXd>(athlete.growth.data(), shape.growths);
        VectorXd state = now.parts.mean + now.parts.covariate_effect * covariates + drawn(random, start_root);
        int before = athlete.days.front().day;
        for (auto& day : athlete.days) {
            const double gap = (day.day - before) / days_a_unit;
            state += gap * growth + std::sqrt(gap) * drawn(random, step_root);
            before = day.day;
            for (auto& r : day.readings) {
                const auto k = static_cast<std::size_t>(r.quality);
                const double error = std::sqrt(now.parts.error[r.quality] * r.share) * random.next_normal();
                r.value = mode.centre[k] + mode.unit[k] * (state[r.quality] + error) +
                          (r.session >= 0 ? shifts[static_cast<std::size_t>(r.session)] : 0);
            }
        }
    }
    return made;
}

} // namespace amentum
