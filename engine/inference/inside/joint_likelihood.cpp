#include "inference/inside/joint_likelihood.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr std::size_t most_parts = 16;

// part(p, athlete): every athlete, in `parts` stretches.
template <class Part>
void run_athletes(const FlatData& data, const PartRunner& run, std::size_t parts, Part part) {
    const std::size_t n = data.athletes.size();
    const auto stretch = [&](std::size_t p) {
        AthletePass pass = part.pass();
        for (std::size_t i = n * p / parts; i < n * (p + 1) / parts; ++i)
            part.take(p, pass, data.athletes[i]);
    };
    if (run)
        run(parts, stretch);
    else
        for (std::size_t p = 0; p < parts; ++p)
            stretch(p);
}

std::size_t parts_of(const FlatData& data) {
    return std::clamp<std::size_t>(data.athletes.size() / 4, 1, most_parts);
}

struct ScorePart {
    const FlatData& data;
    const JointModelNow& now;
    std::vector<SessionScore>& sums;

    AthletePass pass() const { return {data, now}; }
    void take(std::size_t p, AthletePass& pass, const FlatAthlete& athlete) const {
        const SessionScore one = pass.score_sessions(athlete);
        SessionScore& sum = sums[p];
        sum.log_likelihood += one.log_likelihood;
        const auto& at = athlete.sessions;
        for (std::size_t j = 0; j < at.size(); ++j) {
            sum.b[at[j]] += one.b[static_cast<Index>(j)];
            for (std::size_t i = 0; i < at.size(); ++i)
                sum.A(at[i], at[j]) += one.A(static_cast<Index>(i), static_cast<Index>(j));
        }
    }
};

struct MomentPart {
    const FlatData& data;
    const JointModelNow& now;
    const SessionPosterior& sessions;
    std::vector<Moments>& sums;

    AthletePass pass() const { return {data, now}; }
    void take(std::size_t p, AthletePass& pass, const FlatAthlete& athlete) const {
        pass.add(athlete, shifts_of(athlete, sessions), sums[p]);
    }
};

// d/dC of -(count log|C| + tr(C^-1 sums)) / 2.
MatrixXd by_covariance(const SmallMatrix& C, const SmallMatrix& sums, double count) {
    const MatrixXd inverse = Eigen::LLT<MatrixXd>(C).solve(MatrixXd::Identity(C.rows(), C.cols()));
    return 0.5 * (inverse * sums * inverse - count * inverse);
}

VectorXd gradient_of(const JointShape& shape, const JointModelNow& now, const Moments& sums) {
    const Index d = shape.qualities;
    VectorXd gradient = VectorXd::Zero(shape.size());
    const Eigen::LLT<MatrixXd> S_factor{MatrixXd(now.S)}, Q_factor{MatrixXd(now.Q)};
    gradient.head(d) = S_factor.solve(VectorXd(sums.start_mean));
    for (Index k = 0; k < shape.covariates; ++k)
        gradient.segment(d * (1 + k), d) = S_factor.solve(VectorXd(sums.start_with.col(k)));
    for (Index k = 0; k < shape.growths; ++k)
        gradient.segment(shape.growth_at() + d * k, d) = Q_factor.solve(VectorXd(sums.steps_with.col(k)));
    pull_back(shape, now.parts.within, by_covariance(now.Q, sums.steps, sums.step_count), shape.within_at(),
              gradient);
    pull_back(shape, now.parts.between, by_covariance(now.S, sums.start, sums.athletes), shape.between_at(),
              gradient);
    gradient.segment(shape.errors_at(), d) =
        0.5 * (sums.errors.array() / now.parts.error.array() - sums.error_count.array());
    return gradient;
}

} // namespace

SessionPosterior session_posterior(const FlatData& data, const JointModelNow& now, const PartRunner& run) {
    const auto count = static_cast<Index>(data.session_kind.size());
    std::vector<SessionScore> sums(parts_of(data), {0, VectorXd::Zero(count), MatrixXd::Zero(count, count)});
    run_athletes(data, run, sums.size(), ScorePart{data, now, sums});
    SessionPosterior all{VectorXd::Zero(count), MatrixXd::Zero(count, count), 0};
    VectorXd b = VectorXd::Zero(count);
    MatrixXd M = MatrixXd::Zero(count, count);
    for (const auto& sum : sums) {
        all.log_likelihood += sum.log_likelihood;
        b += sum.b;
        M += sum.A;
    }
    if (count == 0)
        return all;
    for (Index s = 0; s < count; ++s) {
        const double spread = now.parts.session[data.session_kind[static_cast<std::size_t>(s)]];
        M(s, s) += 1 / spread;
        all.log_likelihood -= 0.5 * std::log(spread);
    }
    const Eigen::LLT<MatrixXd> L(M);
    all.mean = L.solve(b);
    all.covariance = L.solve(MatrixXd::Identity(count, count));
    all.log_likelihood += 0.5 * b.dot(all.mean) - L.matrixLLT().diagonal().array().log().sum();
    return all;
}

SessionShifts shifts_of(const FlatAthlete& athlete, const SessionPosterior& sessions) {
    const auto& at = athlete.sessions;
    if (at.empty())
        return {VectorXd(0), MatrixXd(0, 0)};
    const MatrixXd V = sessions.covariance(at, at);
    return {sessions.mean(at), Eigen::LLT<MatrixXd>(V).matrixL()};
}

double joint_log_likelihood(const FlatData& data, const VectorXd& phi, VectorXd& gradient,
                            const PartRunner& run) {
    const JointShape& shape = data.shape;
    const JointModelNow now = joint_model_now(shape, phi);
    const bool crossed = !data.session_kind.empty();
    const SessionPosterior sessions = crossed ? session_posterior(data, now, run) : SessionPosterior{};
    std::vector<Moments> parts(parts_of(data), Moments(shape));
    run_athletes(data, run, parts.size(), MomentPart{data, now, sessions, parts});
    for (std::size_t p = 1; p < parts.size(); ++p)
        parts.front() += parts[p];
    gradient = gradient_of(shape, now, parts.front());
    if (!crossed)
        return parts.front().log_likelihood;
    for (Index s = 0; s < sessions.mean.size(); ++s) {
        const Index kind = data.session_kind[static_cast<std::size_t>(s)];
        const double squares = sessions.mean[s] * sessions.mean[s] + sessions.covariance(s, s);
        gradient[shape.sessions_at() + kind] += 0.5 * (squares / now.parts.session[kind] - 1);
    }
    return sessions.log_likelihood;
}

double joint_log_likelihood(const FlatData& data, const VectorXd& phi, const PartRunner& run) {
    return session_posterior(data, joint_model_now(data.shape, phi), run).log_likelihood;
}

double slope_gradient(const FlatData& data, const JointModelNow& now, const FlatAthlete& athlete,
                      const VectorXd& shifts, VectorXd& gradient) {
    Moments sums(data.shape);
    AthletePass(data, now).add(athlete, {shifts, MatrixXd(shifts.size(), 0)}, sums);
    VectorXd all = VectorXd::Zero(data.shape.size());
    pull_back(data.shape, now.parts.within, by_covariance(now.Q, sums.steps, sums.step_count),
              data.shape.within_at(), all);
    gradient = all.segment(data.shape.slope_at(data.shape.within_at(), 0), data.shape.predictors());
    return sums.log_likelihood;
}

} // namespace amentum
