#include "inference/inside/athlete_pass.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace amentum {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

JointModelNow joint_model_now(const JointShape& shape, const VectorXd& phi) {
    JointModelNow now{joint_parameters(shape, phi), {}, {}};
    now.Q = now.parts.within.whole();
    now.S = now.parts.between.whole();
    return now;
}

Moments::Moments(const JointShape& shape)
    : start(SmallMatrix::Zero(shape.qualities, shape.qualities)), steps(start),
      steps_with(MatrixXd::Zero(shape.qualities, shape.growths)),
      start_mean(SmallVector::Zero(shape.qualities)),
      start_with(MatrixXd::Zero(shape.qualities, shape.covariates)), errors(start_mean),
      error_count(start_mean) {}

void Moments::operator+=(const Moments& other) {
    start += other.start;
    steps += other.steps;
    steps_with += other.steps_with;
    start_mean += other.start_mean;
    start_with += other.start_with;
    errors += other.errors;
    error_count += other.error_count;
    athletes += other.athletes;
    step_count += other.step_count;
    log_likelihood += other.log_likelihood;
}

// pseudo(reading, row): fills what the columns read of this reading, the first being the reading itself.
// seen(innovations, F): of each reading. A session's column is 0 until its first reading, and a root of doubts is lower
// triangular, so that columns beyond the sessions met so far are left alone.
template <class Columns, class Seen>
void AthletePass::run(const FlatAthlete& athlete, Index columns, Columns pseudo, Seen seen) {
    const Index d = data_.shape.qualities;
    days_.resize(athlete.days);
    MatrixXd m = MatrixXd::Zero(d, columns);
    m.col(0) = now_.parts.mean + now_.parts.covariate_effect * athlete.covariates;
    const SmallVector growth = now_.parts.growth_effect * athlete.growth;
    SmallMatrix P = now_.S;
    Eigen::RowVectorXd row(columns);
    Index met = 1;
    for (std::size_t t = 0; t < athlete.days; ++t) {
        const FlatDay& day = data_.days[athlete.first_day + t];
        FilteredDay& here = days_[t];
        P += day.gap * now_.Q;
        m.col(0) += day.gap * growth;
        here.predicted_mean = m;
        here.predicted_variance = P;
        for (std::size_t i = 0; i < day.readings; ++i) {
            const FlatReading& reading = data_.readings[day.first_reading + i];
            const Index k = reading.quality;
            const SmallVector g = P.col(k);
            const double F = g[k] + now_.parts.error[k] * reading.share;
            met = std::min(columns, std::max<Index>(met, 2 + reading.session));
            pseudo(reading, row);
            auto e = row.head(met);
            e -= m.row(k).head(met);
            seen(e, F);
            m.leftCols(met).noalias() += g * (e / F);
            P.noalias() -= (1 / F) * g * g.transpose();
        }
        here.mean = m;
        here.variance = P;
    }
}

SessionScore AthletePass::score_sessions(const FlatAthlete& athlete) {
    const auto sessions = static_cast<Index>(athlete.sessions.size());
    MatrixXd all = MatrixXd::Zero(1 + sessions, 1 + sessions);
    double logs = 0;
    run(
        athlete, 1 + sessions,
        [](const FlatReading& reading, Eigen::RowVectorXd& row) {
            row.setZero();
            row[0] = reading.value;
            if (reading.session >= 0)
                row[1 + reading.session] = 1;
        },
        [&](const auto& e, double F) {
            logs += std::log(2 * std::numbers::pi * F);
            all.topLeftCorner(e.size(), e.size())
                .template selfadjointView<Eigen::Lower>()
                .rankUpdate(e.transpose(), 1 / F);
        });
    MatrixXd A = all.bottomRightCorner(sessions, sessions).selfadjointView<Eigen::Lower>();
    return {-0.5 * (logs + all(0, 0)), all.bottomLeftCorner(sessions, 1), std::move(A)};
}

const std::vector<FilteredDay>& AthletePass::filter(const FlatAthlete& athlete, const SessionShifts& shifts,
                                                    double& log_likelihood) {
    run(
        athlete, 1 + shifts.root.cols(),
        [&](const FlatReading& reading, Eigen::RowVectorXd& row) {
            row.setZero();
            row[0] = reading.value;
            if (reading.session < 0)
                return;
            row[0] -= shifts.mean[reading.session];
            row.tail(shifts.root.cols()) = shifts.root.row(reading.session);
        },
        [&](const auto& e, double F) {
            log_likelihood -= 0.5 * (std::log(2 * std::numbers::pi * F) + e[0] * e[0] / F);
        });
    return days_;
}

std::vector<std::pair<double, double>> AthletePass::innovations(const FlatAthlete& athlete) {
    std::vector<std::pair<double, double>> seen;
    run(
        athlete, 1, [](const FlatReading& reading, Eigen::RowVectorXd& row) { row[0] = reading.value; },
        [&](const auto& e, double F) { seen.emplace_back(e[0], F); });
    return seen;
}

SmoothedStep AthletePass::step_back(const FilteredDay& now, const FilteredDay& next, const MatrixXd& mean,
                                    const SmallMatrix& variance) {
    const Eigen::LLT<SmallMatrix> L(next.predicted_variance);
    SmoothedStep step;
    step.gain = L.solve(now.variance).transpose();
    step.mean = now.mean + step.gain * (mean - next.predicted_mean);
    const SmallMatrix difference = variance - next.predicted_variance;
    step.variance = now.variance + step.gain * difference * step.gain.transpose();
    return step;
}

void AthletePass::add_errors(const FlatDay& day, const SessionShifts& shifts, const MatrixXd& mean,
                             const SmallMatrix& variance, Moments& sums) const {
    for (std::size_t i = 0; i < day.readings; ++i) {
        const FlatReading& reading = data_.readings[day.first_reading + i];
        const Index k = reading.quality;
        const bool shifted = reading.session >= 0;
        const double e = reading.value - (shifted ? shifts.mean[reading.session] : 0) - mean(k, 0);
        double squares = e * e + variance(k, k);
        for (Index c = 1; c < mean.cols(); ++c)
            squares += std::pow((shifted ? shifts.root(reading.session, c - 1) : 0) - mean(k, c), 2);
        sums.errors[k] += squares / reading.share;
        sums.error_count[k] += 1;
    }
}

void AthletePass::add(const FlatAthlete& athlete, const SessionShifts& shifts, Moments& sums) {
    filter(athlete, shifts, sums.log_likelihood);
    const SmallVector growth = now_.parts.growth_effect * athlete.growth;
    MatrixXd m = days_.back().mean;
    SmallMatrix P = days_.back().variance;
    for (std::size_t t = athlete.days; t-- > 0;) {
        if (t + 1 < athlete.days) {
            const double gap = data_.days[athlete.first_day + t + 1].gap;
            SmoothedStep before = step_back(days_[t], days_[t + 1], m, P);
            const SmallMatrix PJ = P * before.gain.transpose();
            m -= before.mean; // the step, growth still in it
            m.col(0) -= gap * growth;
            sums.steps_with.noalias() += m.col(0) * athlete.growth.transpose();
            sums.steps.noalias() += (1 / gap) * (m * m.transpose());
            sums.steps += (1 / gap) * (P + before.variance - PJ - PJ.transpose());
            sums.step_count += 1;
            m.swap(before.mean);
            P = before.variance;
        }
        add_errors(data_.days[athlete.first_day + t], shifts, m, P, sums);
    }
    m.col(0) -= now_.parts.mean + now_.parts.covariate_effect * athlete.covariates;
    sums.start.noalias() += m * m.transpose();
    sums.start += P;
    sums.start_mean += m.col(0);
    sums.start_with.noalias() += m.col(0) * athlete.covariates.transpose();
    sums.athletes += 1;
}

} // namespace amentum
