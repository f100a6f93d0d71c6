// The limiter question of one athlete, put together from the view: levels against the others, priors, velocity's spread.
#pragma once

#include "inference/limiters.h"
#include "inference/reference_level.h"
#include "operations/inside/facility_view.h"
#include "operations/inside/roster_model.h"

#include <map>
#include <string>

namespace amentum {

// SD of velocity within a college team, m/s: 1.5 to 3 [GuidoWerner2012]; taken when too few are tested here.
inline constexpr double usual_velocity_spread = 2.0;

struct LimiterWork {
    LimiterAnswer answer;
    std::map<std::string, ReferenceLevel> levels; // by quality
    double velocity_spread;                       // m/s
    double smallest_worthwhile;                   // m/s
    bool under_18;
    bool spread_from_here; // false: the usual within-team spread was taken
    std::string model;
};

// Slopes, their own share and attainable changes from the roster's joint model where its fit stands, else from the literature.
LimiterWork limiter_work(const FacilityView&, const ReferenceTables&, const RosterModel&, const Athlete&,
                         Date today);
// Where the athlete stands in one test kind against the others here, on the kind's scale.
ReferenceLevel level_in(const FacilityView&, const TestKind&, const Athlete&, Date today);
BodySize body_of(const FacilityView&, const Athlete&, Date today);

} // namespace amentum
