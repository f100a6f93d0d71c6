#include "inference/athlete_states.h"

#include "inference/inside/athlete_pass.h"
#include "inference/inside/roster_scaling.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double far_in_sds = 4;

JointShape shape_of(const RosterMode& mode) {
    JointShape shape{mode.qualities, mode.covariates, mode.growths};
    for (int k = 0; k < mode.qualities; ++k)
        if (mode.session_spread[static_cast<std::size_t>(k)] > 0)
            shape.session_qualities.push_back(k);
    assert(shape.size() == static_cast<Index>(mode.phi.size()));
    return shape;
}

// A session's shift is taken off, its doubt added to the error; both in units of the fit.
FlatReading reading_of(const RosterMode& mode, const JointParameters& parts, const RosterReading& r) {
    const auto k = static_cast<std::size_t>(r.quality);
    double value = r.value, doubt = 0;
    if (r.session >= 0 && static_cast<std::size_t>(r.session) < mode.session.size()) {
        const Estimate& shift = mode.session[static_cast<std::size_t>(r.session)];
        value -= shift.value;
        doubt = shift.standard_error;
    } else if (r.session >= 0) {
        doubt = mode.session_spread[k];
    }
    const double inside = doubt / mode.unit[k];
    return {r.quality, (value - mode.centre[k]) / mode.unit[k],
            r.share + inside * inside / parts.error[r.quality]};
}

// One athlete's test days, and days without readings between and after them.
FlatData one_athlete(const RosterMode& mode, const JointParameters& parts, const RosterAthlete& athlete,
                     std::span<const int> days) {
    FlatData flat{shape_of(mode), {}, {}, {}};
    flat.athletes.push_back({0, days.size(),
                             Eigen::Map<const VectorXd>(athlete.covariates.data(), mode.covariates),
                             Eigen::Map<const VectorXd>(athlete.growth.data(), mode.growths)});
    auto next = athlete.days.begin();
    for (std::size_t t = 0; t < days.size(); ++t) {
        const std::size_t first = flat.readings.size();
        if (next != athlete.days.end() && next->day == days[t])
            for (const auto& r : next++->readings)
                flat.readings.push_back(reading_of(mode, parts, r));
        flat.days.push_back(
            {t == 0 ? 0 : (days[t] - days[t - 1]) / days_a_unit, first, flat.readings.size() - first});
    }
    return flat;
}

std::vector<int> all_days(const RosterAthlete& athlete, std::span<const int> also_on) {
    std::vector<int> days(also_on.begin(), also_on.end());
    for (const auto& day : athlete.days)
        days.push_back(day.day);
    std::sort(days.begin(), days.end());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    assert(!days.empty() && (athlete.days.empty() || days.front() == athlete.days.front().day));
    return days;
}

std::vector<double> rows(const auto& m) {
    std::vector<double> out;
    for (Index i = 0; i < m.rows(); ++i)
        for (Index j = 0; j < m.cols(); ++j)
            out.push_back(m(i, j));
    return out;
}

// In the order of the readings; each against its forecast from all before it.
std::vector<ReadingSurprise> surprises_of(const RosterMode& mode, const FlatData& flat,
                                          const JointModelNow& now, const RosterAthlete& athlete) {
    std::vector<ReadingSurprise> surprises;
    std::size_t next = 0;
    const auto seen = AthletePass(flat, now).innovations(flat.athletes.front());
    for (const auto& day : athlete.days)
        for (const auto& r : day.readings) {
            const auto [e, F] = seen[next++];
            const double unit = mode.unit[static_cast<std::size_t>(r.quality)];
            surprises.push_back({day.day, r.quality, r.value, r.value - e * unit, F * unit * unit,
                                 std::abs(e) > far_in_sds * std::sqrt(F)});
        }
    return surprises;
}

} // namespace

AthleteStates::AthleteStates(const RosterMode& mode, const RosterAthlete& athlete,
                             std::span<const int> also_on)
    : days_(all_days(athlete, also_on)), qualities_(static_cast<std::size_t>(mode.qualities)),
      unit_(mode.unit), centre_(mode.centre) {
    const JointShape shape = shape_of(mode);
    const JointModelNow now =
        joint_model_now(shape, Eigen::Map<const VectorXd>(mode.phi.data(), shape.size()));
    const FlatData flat = one_athlete(mode, now.parts, athlete, days_);
    AthletePass pass(flat, now);
    double unused = 0;
    const auto& filtered = pass.filter(flat.athletes.front(), {VectorXd(0), MatrixXd(0, 0)}, unused);
    const std::size_t n = days_.size();
    means_.resize(n), variances_.resize(n), gains_.resize(n);
    MatrixXd mean = filtered.back().mean;
    SmallMatrix variance = filtered.back().variance;
    for (std::size_t t = n; t-- > 0;) {
        if (t + 1 < n) {
            const SmoothedStep step = AthletePass::step_back(filtered[t], filtered[t + 1], mean, variance);
            gains_[t] = rows(step.gain);
            mean = step.mean;
            variance = step.variance;
        }
        means_[t] = rows(mean);
        variances_[t] = rows(variance);
    }
    for (const auto& day : filtered) {
        known_means_.push_back(rows(day.mean));
        known_variances_.push_back(rows(day.variance));
    }
    surprises_ = surprises_of(mode, flat, now, athlete);
}

std::size_t AthleteStates::index_of(int day) const {
    const auto found = std::lower_bound(days_.begin(), days_.end(), day);
    assert(found != days_.end() && *found == day);
    return static_cast<std::size_t>(found - days_.begin());
}

double AthleteStates::entry(const std::vector<double>& matrix, int i, int j) const {
    const auto a = static_cast<std::size_t>(i), b = static_cast<std::size_t>(j);
    return matrix[a * qualities_ + b] * unit_[a] * unit_[b];
}

StateOnDay AthleteStates::smoothed(int day, int quality) const {
    const std::size_t t = index_of(day), k = static_cast<std::size_t>(quality);
    return {centre_[k] + unit_[k] * means_[t][k], entry(variances_[t], quality, quality)};
}

StateOnDay AthleteStates::known_then(int day, int quality) const {
    const std::size_t t = index_of(day), k = static_cast<std::size_t>(quality);
    return {centre_[k] + unit_[k] * known_means_[t][k], entry(known_variances_[t], quality, quality)};
}

// Cov(theta_s, theta_t given all) = J_s J_s+1 ... J_t-1 P_t.
double AthleteStates::covariance(int earlier, int later, int quality) const {
    const std::size_t from = index_of(earlier), to = index_of(later);
    assert(from <= to);
    using Rows = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
    const auto n = static_cast<Index>(qualities_);
    MatrixXd product = Eigen::Map<const Rows>(variances_[to].data(), n, n);
    for (std::size_t t = to; t-- > from;)
        product = Eigen::Map<const Rows>(gains_[t].data(), n, n) * product;
    const double unit = unit_[static_cast<std::size_t>(quality)];
    return product(quality, quality) * unit * unit;
}

double AthleteStates::covariance_on(int day, int one, int other) const {
    return entry(variances_[index_of(day)], one, other);
}

StateOnDay AthleteStates::change(int quality, int from, int to) const {
    const StateOnDay before = smoothed(from, quality), after = smoothed(to, quality);
    return {after.mean - before.mean,
            std::max(0.0, before.variance + after.variance - 2 * covariance(from, to, quality))};
}

StateForecast forecast_state(const RosterMode& mode, const RosterAthlete& athlete, int last_known, int day,
                             int quality) {
    assert(day > last_known);
    RosterAthlete known = athlete;
    std::erase_if(known.days, [&](const auto& d) { return d.day > last_known; });
    const int asked[] = {day};
    const AthleteStates states(mode, known, asked);
    const auto k = static_cast<std::size_t>(quality);
    const StateOnDay state = states.known_then(day, quality);
    const JointShape shape = shape_of(mode);
    const double error =
        std::exp(mode.phi[static_cast<std::size_t>(shape.errors_at()) + k]) * mode.unit[k] * mode.unit[k];
    return {state, state.variance + error + mode.session_spread[k] * mode.session_spread[k]};
}

} // namespace amentum
