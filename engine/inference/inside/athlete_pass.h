// One athlete's readings through the Kalman filter and back through the smoother.
//
// Filter with one scalar update a reading (its error is independent of the others), so that a missing one costs nothing;
// smoother of Rauch, Tung and Striebel with the covariance of neighbours [DurbinKoopman2012; RauchTungStriebel1965].
// A mean is a row of columns: the first for the readings, the rest for pseudo-readings that go the same way, from a start of 0
// and without growth; that is how sessions crossed with athletes are carried [DeJong1991, from memory].
#pragma once

#include "inference/inside/joint_data.h"

#include <utility>

namespace amentum {

struct JointModelNow { // the parameters with their covariances multiplied out
    JointParameters parts;
    SmallMatrix Q, S;
};
JointModelNow joint_model_now(const JointShape& shape, const Eigen::VectorXd& phi);

struct FilteredDay {
    Eigen::MatrixXd mean, predicted_mean; // qualities x columns
    SmallMatrix variance, predicted_variance;
};

struct SmoothedStep { // from the smoothed state of the day after to that of this day
    Eigen::MatrixXd mean;
    SmallMatrix variance;
    SmallMatrix gain; // J
};

// What the complete data's gradient needs, expected given all readings, summed over athletes.
struct Moments {
    explicit Moments(const JointShape& shape);
    void operator+=(const Moments& other);

    SmallMatrix start;          // (theta_1 - mean)(...)'
    SmallMatrix steps;          // (theta_t - theta_s - growth)(...)' / gap
    Eigen::MatrixXd steps_with; // (theta_t - theta_s - growth) c''
    SmallVector start_mean;     // theta_1 - mean
    Eigen::MatrixXd start_with; // (theta_1 - mean) c'
    SmallVector errors;         // (y - theta)^2 / share
    SmallVector error_count;
    double athletes = 0, step_count = 0, log_likelihood = 0;
};

// Of one athlete: shift of each of its sessions, and a root of their doubt (shifts' covariance = root root').
struct SessionShifts {
    Eigen::VectorXd mean;
    Eigen::MatrixXd root;
};

// By the filter alone: the likelihood without shifts, and b, A: it grows by b's - s'As/2 with them.
struct SessionScore {
    double log_likelihood = 0;
    Eigen::VectorXd b;
    Eigen::MatrixXd A;
};

class AthletePass {
public:
    AthletePass(const FlatData& data, const JointModelNow& now) : data_(data), now_(now) {}

    SessionScore score_sessions(const FlatAthlete& athlete);
    void add(const FlatAthlete& athlete, const SessionShifts& shifts, Moments& sums);

    // The days of the last filtering.
    const std::vector<FilteredDay>& filter(const FlatAthlete& athlete, const SessionShifts& shifts,
                                           double& log_likelihood);
    // Of each reading its innovation, and that one's variance.
    std::vector<std::pair<double, double>> innovations(const FlatAthlete& athlete);
    static SmoothedStep step_back(const FilteredDay& now, const FilteredDay& next,
                                  const Eigen::MatrixXd& mean, const SmallMatrix& variance);

private:
    template <class Columns, class Seen>
    void run(const FlatAthlete& athlete, Eigen::Index columns, Columns pseudo, Seen seen);
    void add_errors(const FlatDay& day, const SessionShifts& shifts, const Eigen::MatrixXd& mean,
                    const SmallMatrix& variance, Moments& sums) const;

    const FlatData& data_;
    const JointModelNow& now_;
    std::vector<FilteredDay> days_;
};

} // namespace amentum
