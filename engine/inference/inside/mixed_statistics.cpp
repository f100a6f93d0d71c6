#include "inference/inside/mixed_statistics.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

using Eigen::Index;

int numbers_of(const std::vector<int>& numbers) {
    return numbers.empty() ? 0 : *std::max_element(numbers.begin(), numbers.end()) + 1;
}

MixedStatistics empty_statistics(const MixedRows& rows) {
    const Index n = static_cast<Index>(rows.y.size()), p = rows.fixed, q = rows.random;
    assert(static_cast<Index>(rows.X.size()) == n * p && static_cast<Index>(rows.Z.size()) == n * q);
    assert(rows.group.size() == rows.y.size());
    assert(rows.weight.empty() || rows.weight.size() == rows.y.size());
    MixedStatistics all{n, p, q, {0}, 0, Eigen::MatrixXd::Zero(p + 1, p + 1), {}, {}, {}};
    for (const auto& factor : rows.crossed) {
        assert(factor.size() == rows.y.size());
        all.first_level.push_back(all.levels() + numbers_of(factor));
    }
    all.SS = Eigen::MatrixXd::Zero(all.levels(), all.levels());
    all.SXy = Eigen::MatrixXd::Zero(all.levels(), p + 1);
    all.groups.assign(
        static_cast<std::size_t>(numbers_of(rows.group)),
        {Eigen::MatrixXd::Zero(q, q), Eigen::MatrixXd::Zero(q, p + 1), Eigen::MatrixXd::Zero(q, 0), {}});
    return all;
}

// The column of a level in the group's Z'S, made when it is seen first.
Index column_of(GroupStatistics& group, int level) {
    const auto found = std::find(group.levels.begin(), group.levels.end(), level);
    if (found != group.levels.end())
        return found - group.levels.begin();
    group.levels.push_back(level);
    group.ZS.conservativeResize(Eigen::NoChange, group.ZS.cols() + 1);
    group.ZS.rightCols(1).setZero();
    return group.ZS.cols() - 1;
}

} // namespace

MixedStatistics gather_statistics(const MixedRows& rows) {
    MixedStatistics all = empty_statistics(rows);
    const Index p = all.p, q = all.q;
    Eigen::VectorXd xy(p + 1), z(q);
    std::vector<int> levels(rows.crossed.size());
    for (std::size_t row = 0; row < rows.y.size(); ++row) {
        const Index i = static_cast<Index>(row);
        const double weight = rows.weight.empty() ? 1 : rows.weight[row];
        assert(weight > 0);
        const double root = std::sqrt(weight);
        all.log_weights += std::log(weight);
        xy.head(p) = root * Eigen::Map<const Eigen::VectorXd>(rows.X.data() + i * p, p);
        xy[p] = root * rows.y[row];
        z = root * Eigen::Map<const Eigen::VectorXd>(rows.Z.data() + i * q, q);
        GroupStatistics& group = all.groups[static_cast<std::size_t>(rows.group[row])];
        all.XyXy.selfadjointView<Eigen::Lower>().rankUpdate(xy);
        group.ZZ += z * z.transpose();
        group.ZXy += z * xy.transpose();
        for (std::size_t f = 0; f < levels.size(); ++f) {
            levels[f] = static_cast<int>(all.first_level[f]) + rows.crossed[f][row];
            all.SXy.row(levels[f]) += root * xy.transpose();
            group.ZS.col(column_of(group, levels[f])) += root * z;
            for (std::size_t other = 0; other <= f; ++other) {
                all.SS(levels[f], levels[other]) += weight;
                if (other < f)
                    all.SS(levels[other], levels[f]) += weight;
            }
        }
    }
    all.XyXy.triangularView<Eigen::StrictlyUpper>() = all.XyXy.transpose();
    return all;
}

} // namespace amentum
