// The readings of a roster in one row of memory, athletes one after another; values in units of the fit, days in units of 30.
#pragma once

#include "inference/inside/joint_parameters.h"

#include <vector>

namespace amentum {

constexpr int most_qualities = 16;
using SmallVector = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, most_qualities, 1>;
using SmallMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, most_qualities, most_qualities>;

struct FlatReading {
    int quality;
    double value;
    double share;
    int session = -1; // number in FlatAthlete::sessions
};
struct FlatDay {
    double gap; // since the athlete's day before; 0 on the first
    std::size_t first_reading, readings;
};
struct FlatAthlete {
    std::size_t first_day, days;
    Eigen::VectorXd covariates, growth;
    std::vector<Eigen::Index> sessions = {}; // of the roster, each once
};
struct FlatData {
    JointShape shape;
    std::vector<FlatReading> readings;
    std::vector<FlatDay> days;
    std::vector<FlatAthlete> athletes;
    std::vector<Eigen::Index> session_kind = {}; // of each session: number in JointShape::session_qualities
};

} // namespace amentum
