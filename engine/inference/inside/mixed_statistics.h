// What a mixed model needs of its rows: crossproducts, whole and by group; read once, used at every evaluation.
#pragma once

#include "inference/mixed_model.h"

#include <Eigen/Dense>

namespace amentum {

struct GroupStatistics {
    Eigen::MatrixXd ZZ;      // q x q
    Eigen::MatrixXd ZXy;     // q x (p + 1): Z'X and Z'y
    Eigen::MatrixXd ZS;      // q x levels of this group
    std::vector<int> levels; // their places in S
};

// S has one column for each level of each crossed factor, factor after factor.
struct MixedStatistics {
    Eigen::Index n, p, q;
    std::vector<Eigen::Index> first_level; // of each crossed factor in S, and the number of all levels last
    double log_weights;   // sum of the logarithms; rows count by their weights in every product
    Eigen::MatrixXd XyXy; // (p + 1) x (p + 1)
    std::vector<GroupStatistics> groups;
    Eigen::MatrixXd SS;  // levels x levels
    Eigen::MatrixXd SXy; // levels x (p + 1)

    Eigen::Index factors() const { return static_cast<Eigen::Index>(first_level.size()) - 1; }
    Eigen::Index levels() const { return first_level.back(); }
};

MixedStatistics gather_statistics(const MixedRows& rows);

} // namespace amentum
