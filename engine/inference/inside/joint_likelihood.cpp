#include "inference/inside/joint_likelihood.h"

#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr int most_qualities = 16;
using Index = Eigen::Index;
using Vector = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, most_qualities, 1>;
using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, most_qualities, most_qualities>;

struct
    Moments { // sums over the roster of what the complete data's gradient needs, expected given all readings
    Matrix start;               // (theta_1 - mean)(...)'
    Matrix steps;               // (theta_t - theta_s - growth)(...)' / gap
    Eigen::MatrixXd steps_with; // (theta_t - theta_s - growth) c''
    Vector start_mean;          // theta_1 - mean
    Eigen::MatrixXd start_with; // (theta_1 - mean) c'
    Vector errors;              // (y - theta)^2 / share
    Vector error_count;
    double athletes = 0, step_count = 0, log_likelihood = 0;
};

struct Filtered { // of one day
    Vector mean, predicted_mean;
    Matrix variance, predicted_variance;
};

class AthletePass {
public:
    AthletePass(const FlatData& data, const JointParameters& parts, const Matrix& Q, const Matrix& S)
        : data_(data), parts_(parts), Q_(Q), S_(S) {}

    void add(const FlatAthlete& athlete, Moments& sums) {
        filter(athlete, sums);
        smooth(athlete, sums);
    }

private:
    void filter(const FlatAthlete& athlete, Moments& sums) {
        days_.resize(athlete.days);
        Vector m = parts_.mean + parts_.covariate_effect * athlete.covariates;
        Matrix P = S_;
        start_ = m;
        growth_ = parts_.growth_effect * athlete.growth;
        for (std::size_t t = 0; t < athlete.days; ++t) {
            const FlatDay& day = data_.days[athlete.first_day + t];
            P += day.gap * Q_;
            m += day.gap * growth_;
            Filtered& now = days_[t];
            now.predicted_mean = m;
            now.predicted_variance = P;
            for (std::size_t i = 0; i < day.readings; ++i) {
                const auto& [k, value, share] = data_.readings[day.first_reading + i];
                const Vector g = P.col(k);
                const double F = g[k] + parts_.error[k] * share, e = value - m[k];
                m += (e / F) * g;
                P.noalias() -= (1 / F) * g * g.transpose();
                sums.log_likelihood -= 0.5 * (std::log(2 * std::numbers::pi * F) + e * e / F);
            }
            now.mean = m;
            now.variance = P;
        }
    }

    void smooth(const FlatAthlete& athlete, Moments& sums) {
        Vector m = days_.back().mean;
        Matrix P = days_.back().variance;
        for (std::size_t t = athlete.days; t-- > 0;) {
            const FlatDay& day = data_.days[athlete.first_day + t];
            if (t + 1 < athlete.days)
                step_back(days_[t], days_[t + 1], data_.days[athlete.first_day + t + 1].gap, m, P, athlete,
                          sums);
            for (std::size_t i = 0; i < day.readings; ++i) {
                const auto& [k, value, share] = data_.readings[day.first_reading + i];
                const double e = value - m[k];
                sums.errors[k] += (e * e + P(k, k)) / share;
                sums.error_count[k] += 1;
            }
        }
        const Vector from_mean = m - start_;
        sums.start.noalias() += from_mean * from_mean.transpose() + P;
        sums.start_mean += from_mean;
        sums.start_with.noalias() += from_mean * athlete.covariates.transpose();
        sums.athletes += 1;
    }

    // From the smoothed state of the day after (m, P) to that of this day, adding the step between them.
    void step_back(const Filtered& now, const Filtered& next, double gap, Vector& m, Matrix& P,
                   const FlatAthlete& athlete, Moments& sums) {
        const Eigen::LLT<Matrix> L(next.predicted_variance);
        const Matrix J = L.solve(now.variance).transpose();
        const Vector m_before = now.mean + J * (m - next.predicted_mean);
        const Matrix difference = P - next.predicted_variance;
        const Matrix P_before = now.variance + J * difference * J.transpose();
        const Matrix PJ = P * J.transpose();
        const Vector step = m - m_before - gap * growth_;
        sums.steps.noalias() += (1 / gap) * (step * step.transpose() + P + P_before - PJ - PJ.transpose());
        sums.steps_with.noalias() += step * athlete.growth.transpose();
        sums.step_count += 1;
        m = m_before;
        P = P_before;
    }

    const FlatData& data_;
    const JointParameters& parts_;
    const Matrix& Q_;
    const Matrix& S_;
    std::vector<Filtered> days_;
    Vector start_, growth_;
};

// d/dC of -(count log|C| + tr(C^-1 sums)) / 2.
Eigen::MatrixXd by_covariance(const Matrix& C, const Matrix& sums, double count) {
    const Eigen::MatrixXd inverse =
        Eigen::LLT<Eigen::MatrixXd>(C).solve(Eigen::MatrixXd::Identity(C.rows(), C.cols()));
    return 0.5 * (inverse * sums * inverse - count * inverse);
}

} // namespace

double joint_log_likelihood(const FlatData& data, const Eigen::VectorXd& phi, Eigen::VectorXd& gradient) {
    const JointShape& shape = data.shape;
    const JointParameters parts = joint_parameters(shape, phi);
    const Matrix Q = parts.within.whole(), S = parts.between.whole();
    const Index d = shape.qualities;
    Moments sums{Matrix::Zero(d, d),
                 Matrix::Zero(d, d),
                 Eigen::MatrixXd::Zero(d, shape.growths),
                 Vector::Zero(d),
                 Eigen::MatrixXd::Zero(d, shape.covariates),
                 Vector::Zero(d),
                 Vector::Zero(d)};
    AthletePass pass(data, parts, Q, S);
    for (const auto& athlete : data.athletes)
        pass.add(athlete, sums);

    gradient = Eigen::VectorXd::Zero(shape.size());
    const Eigen::LLT<Eigen::MatrixXd> S_factor{Eigen::MatrixXd(S)};
    gradient.head(d) = S_factor.solve(Eigen::VectorXd(sums.start_mean));
    for (Index k = 0; k < shape.covariates; ++k)
        gradient.segment(d * (1 + k), d) = S_factor.solve(Eigen::VectorXd(sums.start_with.col(k)));
    const Eigen::LLT<Eigen::MatrixXd> Q_factor{Eigen::MatrixXd(Q)};
    for (Index k = 0; k < shape.growths; ++k)
        gradient.segment(shape.growth_at() + d * k, d) =
            Q_factor.solve(Eigen::VectorXd(sums.steps_with.col(k)));
    pull_back(shape, parts.within, by_covariance(Q, sums.steps, sums.step_count), shape.within_at(),
              gradient);
    pull_back(shape, parts.between, by_covariance(S, sums.start, sums.athletes), shape.between_at(),
              gradient);
    gradient.tail(d) = 0.5 * (sums.errors.array() / parts.error.array() - sums.error_count.array());
    return sums.log_likelihood;
}

} // namespace amentum
