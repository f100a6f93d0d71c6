// The joint model's likelihood against the dense normal density it is a shortcut for, and its gradient against differences.
#include "inference/inside/joint_likelihood.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace amentum;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

int local_number(FlatAthlete& athlete, Eigen::Index session) {
    const auto found = std::find(athlete.sessions.begin(), athlete.sessions.end(), session);
    const auto at = static_cast<int>(found - athlete.sessions.begin());
    if (found == athlete.sessions.end())
        athlete.sessions.push_back(session);
    return at;
}

// Three qualities, one covariate, one growth, three athletes with one to four days; readings missing here and there;
// with sessions: three of quality 0 and two of quality 2, shared by athletes.
FlatData small_roster(bool sessions) {
    FlatData data{{3, 1, 1, sessions ? std::vector<int>{0, 2} : std::vector<int>{}}, {}, {}, {}};
    if (sessions)
        data.session_kind = {0, 0, 0, 1, 1};
    std::mt19937_64 random(11);
    const auto number = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(random() >> 11) / 9007199254740992.0;
    };
    for (const int days : {1, 3, 4}) {
        data.athletes.push_back({data.days.size(), static_cast<std::size_t>(days),
                                 VectorXd::Constant(1, number(-1, 1)), VectorXd::Constant(1, number(-1, 1))});
        for (int t = 0; t < days; ++t) {
            const std::size_t first = data.readings.size();
            for (int k = 0; k < 3; ++k)
                if (number(0, 1) > 0.25 || (k == 0 && t == 0))
                    data.readings.push_back({k, number(-2, 2), number(0.3, 1),
                                             sessions && k != 1 && t < 3
                                                 ? local_number(data.athletes.back(), k == 0 ? t : 3 + t % 2)
                                                 : -1});
            data.days.push_back({t == 0 ? 0 : number(0.5, 3), first, data.readings.size() - first});
        }
    }
    return data;
}

VectorXd some_phi(const JointShape& shape) {
    VectorXd phi(shape.size());
    std::mt19937_64 random(5);
    for (Eigen::Index i = 0; i < phi.size(); ++i)
        phi[i] = -0.6 + 0.9 * static_cast<double>(random() >> 11) / 9007199254740992.0;
    return phi;
}

// All readings as one normal vector: cov(theta_s, theta_t) = S + Q min(s, t) within an athlete; sessions across them.
double dense_log_density(const FlatData& data, const JointParameters& parts) {
    struct Seen {
        const FlatAthlete* athlete;
        double time; // since the first day
        FlatReading reading;
        double expected;
        Eigen::Index session() const {
            return reading.session < 0 ? -1 : athlete->sessions[static_cast<std::size_t>(reading.session)];
        }
    };
    const MatrixXd S = parts.between.whole(), Q = parts.within.whole();
    std::vector<Seen> all;
    for (const auto& athlete : data.athletes) {
        double time = 0;
        const VectorXd start = parts.mean + parts.covariate_effect * athlete.covariates;
        const VectorXd grows = parts.growth_effect * athlete.growth;
        for (std::size_t t = 0; t < athlete.days; ++t) {
            const FlatDay& day = data.days[athlete.first_day + t];
            time += day.gap;
            for (std::size_t i = 0; i < day.readings; ++i) {
                const FlatReading& r = data.readings[day.first_reading + i];
                all.push_back({&athlete, time, r, start[r.quality] + time * grows[r.quality]});
            }
        }
    }
    const auto n = static_cast<Eigen::Index>(all.size());
    MatrixXd V = MatrixXd::Zero(n, n);
    VectorXd e(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const Seen& a = all[static_cast<std::size_t>(i)];
        e[i] = a.reading.value - a.expected;
        for (Eigen::Index j = 0; j < n; ++j) {
            const Seen& b = all[static_cast<std::size_t>(j)];
            const int k = a.reading.quality, l = b.reading.quality;
            if (a.athlete == b.athlete)
                V(i, j) += S(k, l) + Q(k, l) * std::min(a.time, b.time);
            if (a.session() >= 0 && a.session() == b.session())
                V(i, j) += parts.session[data.session_kind[static_cast<std::size_t>(a.session())]];
        }
        V(i, i) += parts.error[a.reading.quality] * a.reading.share;
    }
    const Eigen::LLT<MatrixXd> L(V);
    const double log_determinant = 2 * L.matrixLLT().diagonal().array().log().sum();
    return -0.5 *
           (static_cast<double>(n) * std::log(2 * std::numbers::pi) + log_determinant + e.dot(L.solve(e)));
}

} // namespace

TEST_CASE("the filter's likelihood is the dense normal density") {
    for (const bool sessions : {false, true}) {
        const FlatData data = small_roster(sessions);
        const VectorXd phi = some_phi(data.shape);
        const double dense = dense_log_density(data, joint_parameters(data.shape, phi));
        VectorXd gradient;
        CAPTURE(sessions);
        CHECK(joint_log_likelihood(data, phi, gradient) == doctest::Approx(dense).epsilon(1e-12));
        CHECK(joint_log_likelihood(data, phi) == doctest::Approx(dense).epsilon(1e-12));
    }
}

TEST_CASE("the gradient is the likelihood's own, by central differences") {
    for (const bool sessions : {false, true}) {
        const FlatData data = small_roster(sessions);
        const VectorXd phi = some_phi(data.shape);
        VectorXd gradient, unused;
        joint_log_likelihood(data, phi, gradient);
        for (Eigen::Index i = 0; i < phi.size(); ++i) {
            constexpr double h = 1e-5;
            VectorXd up = phi, down = phi;
            up[i] += h;
            down[i] -= h;
            const double slope =
                (joint_log_likelihood(data, up, unused) - joint_log_likelihood(data, down, unused)) / (2 * h);
            CAPTURE(sessions);
            CAPTURE(i);
            CHECK(gradient[i] == doctest::Approx(slope).epsilon(4e-7));
        }
    }
}

TEST_CASE("a covariance's slopes are its regression of the first on the others, and what is left is left") {
    const JointShape shape{3, 0};
    const JointParameters parts = joint_parameters(shape, some_phi(shape));
    const MatrixXd C = parts.within.whole();
    const VectorXd slope = C.bottomRightCorner(2, 2).llt().solve(C.bottomLeftCorner(2, 1));
    CHECK((slope - parts.within.slope).norm() < 1e-12);
    CHECK(C(0, 0) - slope.dot(C.bottomLeftCorner(2, 1).col(0)) == doctest::Approx(parts.within.rest));
}
