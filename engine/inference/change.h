// Is this change real? The chance that the true change exceeds the smallest worthwhile one, given noise and
// prior.
//
// Measured d with standard error s_d, true change delta ~ N(m, v) before measuring (the roster's usual
// change over such a time):  posterior mean = (d v + m s_d^2) / (v + s_d^2), variance = v s_d^2 / (v +
// s_d^2).
// flat: the same without a prior, P = Phi((d - w) / s_d); with df degrees of freedom of the typical error,
// Student's t.
// MDC95 = 1.96 sqrt(2) TE for single tests, 1.96 as printed [Weir2005].
// Smallest worthwhile change w = 0.2 x the between-athlete SD with the error variance taken out
// [Hopkins2004], unless the coach sets it.
// Verdict: gained or lost only when its chance is at least 90 %; otherwise "cannot tell" (proposal of this
// project). The flat chance is given for comparison only: where it says 90 % it is right far less often
// than the prior's.
// "Cannot tell" also covers a change that is surely small: 1 - chance_gained - chance_lost is the chance of
// that.
// Units: any one unit throughout; on a logarithmic scale differences are those of logarithms
// (test_scale.h).
// What it cannot tell: why something changed; season and practice must be taken out by who calls, growth by
// expected_drift (expected_growth.h).
//
// Example: d = 1.5, TE = 0.8 for each test, w = 0.6, prior N(0, 1): mean 0.657895, sd 0.749269, P =
// 0.530795.
#pragma once

#include "inference/trajectory.h"
#include "values/enum_words.h"
#include "values/interval.h"

#include <optional>
#include <span>

namespace amentum {

enum class ChangeVerdict { gained, lost, cannot_tell };
template <>
inline constexpr std::array<std::pair<ChangeVerdict, std::string_view>, 3> words_of<ChangeVerdict>{
    {{ChangeVerdict::gained, "gained"},
     {ChangeVerdict::lost, "lost"},
     {ChangeVerdict::cannot_tell, "cannot_tell"}}};

struct MeasuredChange {
    double difference;
    double standard_error;                         // of the difference
    double smallest_worthwhile;                    // above 0
    StateOnDay prior;                              // of the true change
    std::optional<double> degrees_of_freedom = {}; // of the typical error, when it was estimated here
};

struct ChangeJudgement {
    Estimate likely;                          // posterior of the true change
    double chance_gained;                     // P(true change > smallest worthwhile)
    double chance_lost;                       // P(true change < -smallest worthwhile)
    std::optional<double> flat_chance_gained; // without a prior; none when judged from a trajectory
    ChangeVerdict verdict;
};

ChangeJudgement judge_measured_change(const MeasuredChange&);

// Between two of the athlete's test days, from the whole smoothed trajectory, less an expected drift
// (growth).
ChangeJudgement judge_trajectory_change(const Trajectory&, std::size_t earlier, std::size_t later,
                                        double smallest_worthwhile, double expected_drift = 0,
                                        double drift_standard_error = 0);

// The same of a change already known from elsewhere: a joint model's (athlete_states.h).
ChangeJudgement judge_known_change(const StateOnDay& change, double smallest_worthwhile,
                                   double expected_drift = 0, double drift_standard_error = 0);

double smallest_detectable_difference(double standard_error_first, double standard_error_second); // 95 %

// 0.2 x sqrt(max(0, Var(values) - mean error variance)); at least two athletes. 0 when error explains the
// spread.
double smallest_worthwhile_change(std::span<const DatedValue> one_value_an_athlete);

} // namespace amentum
