#include "inference/inside/mixed_statistics.h"

#include <algorithm>
#include <cassert>

namespace amentum {

MixedStatistics gather_statistics(const MixedRows& rows) {
    const Eigen::Index n = static_cast<Eigen::Index>(rows.y.size()), p = rows.fixed, q = rows.random;
    assert(static_cast<Eigen::Index>(rows.X.size()) == n * p &&
           static_cast<Eigen::Index>(rows.Z.size()) == n * q);
    assert(rows.group.size() == rows.y.size() &&
           (rows.crossed.empty() || rows.crossed.size() == rows.y.size()));
    const int groups = rows.group.empty() ? 0 : *std::max_element(rows.group.begin(), rows.group.end()) + 1;
    const int sessions =
        rows.crossed.empty() ? 0 : *std::max_element(rows.crossed.begin(), rows.crossed.end()) + 1;
    MixedStatistics all{n,
                        p,
                        q,
                        sessions,
                        Eigen::MatrixXd::Zero(p + 1, p + 1),
                        {},
                        Eigen::VectorXd::Zero(sessions),
                        Eigen::MatrixXd::Zero(sessions, p + 1)};
    all.groups.resize(static_cast<std::size_t>(groups));
    for (auto& group : all.groups) {
        group.ZZ = Eigen::MatrixXd::Zero(q, q);
        group.ZXy = Eigen::MatrixXd::Zero(q, p + 1);
        group.Zs = Eigen::MatrixXd::Zero(q, 0);
    }
    Eigen::VectorXd xy(p + 1);
    for (Eigen::Index i = 0; i < n; ++i) {
        const std::size_t row = static_cast<std::size_t>(i);
        xy.head(p) = Eigen::Map<const Eigen::VectorXd>(rows.X.data() + i * p, p);
        xy[p] = rows.y[row];
        const Eigen::Map<const Eigen::VectorXd> z(rows.Z.data() + i * q, q);
        GroupStatistics& group = all.groups[static_cast<std::size_t>(rows.group[row])];
        all.XyXy.selfadjointView<Eigen::Lower>().rankUpdate(xy);
        group.ZZ += z * z.transpose();
        group.ZXy += z * xy.transpose();
        if (rows.crossed.empty())
            continue;
        const int session = rows.crossed[row];
        all.rows_of_session[session] += 1;
        all.SXy.row(session) += xy.transpose();
        auto found = std::find(group.sessions.begin(), group.sessions.end(), session);
        if (found == group.sessions.end()) {
            group.sessions.push_back(session);
            group.Zs.conservativeResize(q, group.Zs.cols() + 1);
            group.Zs.rightCols(1).setZero();
            found = group.sessions.end() - 1;
        }
        group.Zs.col(found - group.sessions.begin()) += z;
    }
    all.XyXy.triangularView<Eigen::StrictlyUpper>() = all.XyXy.transpose();
    return all;
}

} // namespace amentum
