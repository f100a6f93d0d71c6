// What a mixed model needs of its rows: crossproducts, whole and by group; read once, used at every evaluation.
#pragma once

#include "inference/mixed_model.h"

#include <Eigen/Dense>

namespace amentum {

struct GroupStatistics {
    Eigen::MatrixXd ZZ;        // q x q
    Eigen::MatrixXd ZXy;       // q x (p + 1): Z'X and Z'y
    Eigen::MatrixXd Zs;        // q x sessions of this group
    std::vector<int> sessions; // their numbers
};

struct MixedStatistics {
    Eigen::Index n, p, q, crossed;
    Eigen::MatrixXd XyXy; // (p + 1) x (p + 1)
    std::vector<GroupStatistics> groups;
    Eigen::VectorXd rows_of_session;
    Eigen::MatrixXd SXy; // sessions x (p + 1)
};

MixedStatistics gather_statistics(const MixedRows& rows);

} // namespace amentum
