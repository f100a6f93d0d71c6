// Which quality, improved as far as twelve weeks can improve it, is expected to bring this thrower most velocity?
//
//   gain_k = beta_k . sigma_v . a_k . h(z_k)
//   beta_k  standardised slope of velocity on quality k, N(mean, sd^2) from priors.h
//   sigma_v SD of velocity between athletes of the same kind (reference_level.h)
//   a_k     attainable change in twelve weeks at the usual level, SDs, N(mean, sd^2), at least 0
//   h(z)    headroom: 1 - z/2, kept between 0.2 and 2: behind what is usual there is more to gain, ahead of it less
//           (proposal of this project, no source)
// Below 18 the attainable change's effect is taken x 0.37: resistance training moved throwing velocity by 0.49 SD in
// teenagers against 1.34 in adults [MartinezGarcia2021].
// 4,000 draws from a seeded stream give E gain, 80 % interval, P(best), regret, and EVPI = E max - max E.
// "Cannot tell" when the best chance is below 0.6 or EVPI exceeds half the smallest worthwhile change of velocity
// (proposal of this project). Test next: the quality whose test would raise the expected gain of the choice most,
// by integrating over what the test may show (its remaining variance after the test: 0.1).
// Units: m/s. Range: at least two trainable qualities; z within 6 SDs.
// What it cannot tell: that training a quality will move velocity. The slopes are between athletes, from small
// samples; `information` says how much of a slope these athletes themselves contributed (0: none yet).
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
    StateOnDay z;      // N(0, 1) when not tested
    bool tested;
};

struct LimiterQuestion {
    std::vector<QualityState> qualities;
    double velocity_spread;             // sigma_v, m/s
    double smallest_worthwhile;         // of velocity, m/s
    bool under_18;
    std::uint64_t seed;
};

struct LimiterGain {
    std::string quality;
    double expected;         // m/s
    Interval central_80;
    double chance_best;
    double regret;           // E[max gain - this gain], m/s
    bool tested;
    double information;      // 1 - Var(slope | data) / Var(slope); 0 while slopes come from the literature alone
    std::vector<std::string> sources;
};

struct LimiterAnswer {
    std::vector<LimiterGain> gains;          // largest expected first
    bool can_tell;
    double value_of_knowing;                 // EVPI, m/s
    std::optional<std::string> test_next;    // quality
    double value_of_test;                    // m/s
};

// Contract: every quality has a prior and an attainable change; spread and smallest worthwhile above 0.
LimiterAnswer estimate_limiters(const LimiterQuestion&, std::span<const VelocityPrior>, std::span<const AttainableChange>);

double headroom(double z);

}  // namespace amentum
