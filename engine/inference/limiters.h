// Which quality, improved as far as a block can improve it, is expected to bring this thrower most
// velocity?
//
//   gain_k = beta_k . sigma_v . y . a_k . g . (weeks / 12) . h(z_k)
//   beta_k  standardised slope of velocity on quality k: this athlete's own by the joint model (individual_slopes.h),
//           with the correlation of what is not known of them; where that model has none, N(mean, sd^2) from priors.h
//   sigma_v SD of velocity between athletes of the same kind (reference_level.h)
//   a_k     attainable change in twelve weeks at the usual level, SDs, N(mean, sd^2), at least 0: what this roster
//           shows (attainable_here), else from priors.h
//   g       x 2 in the first year of strength training, x 0.4 after five, as published rates of gain fall
//           (caps of 2.5, 1 and 0.3 % a week: a synthesis of [ACSM2009], [Helms2018]; factors: a proposal)
//   h(z)    headroom: 1 - c z, kept between 0.2 and 2, c ~ N(0.5, 0.15^2), at least 0: behind what is usual
//           there is more to gain, ahead of it less (proposal of this project, no source)
//   y       below 18: N(0.37, 0.26^2) kept in 0.05 to 1, one draw for all qualities: resistance training
//           moved throwing velocity by 0.49 SD (-0.18 to 1.17) in teenagers, 1.34 in adults
//           [MartinezGarcia2021]; from 18 on: 1
// 4,000 draws from a seeded stream give E gain, 80 % interval, P(best), regret, and EVPI = E max - max E
// [Raiffa1961].
// "Cannot tell" when the best chance is below 0.6 or EVPI exceeds half the smallest worthwhile change of
// velocity (proposal of this project).
// Which test would help the choice most: next_test.h.
// Units: m/s.
// Range: at least two trainable qualities, each named once; weeks 4 to 16.
// The answer does not depend on the order in which the qualities are given.
// What it cannot tell: that training a quality will move velocity. Slopes say what goes together, and gains of two
// qualities must not be added up. `information` says how much of a slope these athletes themselves contributed (0: the
// literature's, between athletes, from small samples; below 0.3 for all, the answer's words say so).
//
// Example: docs/methods/limiters.md
#pragma once

#include "inference/priors.h"
#include "inference/trajectory.h"
#include "values/interval.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

struct QualityState {
    std::string quality;
    StateOnDay z; // N(0, 1) when not tested
    bool tested;
    std::optional<Estimate> slope = {};      // standardised, of this athlete; none: the prior's
    double information = 0;                  // of that slope
    std::optional<Estimate> attainable = {}; // SDs in twelve weeks; none: the table's
};

struct LimiterQuestion {
    std::vector<QualityState> qualities;
    double velocity_spread;     // sigma_v, m/s
    double smallest_worthwhile; // of velocity, m/s
    bool under_18;
    std::uint64_t seed;
    std::optional<double> training_years =
        {};            // of supervised strength training; unknown: taken as one to five
    double weeks = 12; // of the block
    // Correlation of what is not known of the slopes given, row by row in the order of `qualities`; empty: none.
    std::vector<double> slope_correlation = {};
};

struct LimiterGain {
    std::string quality;
    double expected; // m/s
    Interval central_80;
    double chance_best;
    double regret; // E[max gain - this gain], m/s
    bool tested;
    double information; // 1 - Var(slope | data) / Var(slope); 0 while slopes come from the literature alone
    std::vector<std::string> sources;
};

struct LimiterAnswer {
    std::vector<LimiterGain> gains; // largest expected first
    bool can_tell;
    double value_of_knowing;             // EVPI, m/s
    std::vector<std::string> words = {}; // whole sentences that must stand beside the ranking
};

// Contract: every quality has a prior and an attainable change; spread and smallest worthwhile above 0.
LimiterAnswer estimate_limiters(const LimiterQuestion&, std::span<const VelocityPrior>,
                                std::span<const AttainableChange>);

// What the most improved tenth of twelve-week spells in this roster reach, by the joint model's random walk: 1.755 SD of such
// a change; few of them aimed at this quality. Pooled with the published change by their precision, relative error of the
// roster's sqrt(1 / athletes + 0.3^2). All in SDs between athletes; the doubt about one athlete stays the published one's
// share. Tenth and 0.3: proposals of this project, no source.
Estimate attainable_here(double drift_sd_30_days, int athletes, const AttainableChange& published);

double headroom(double z, double slope = 0.5);
double training_share(std::optional<double> training_years);

} // namespace amentum
