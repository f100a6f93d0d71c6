// Where does this athlete stand in a quality, compared with what is usual for that age, sex, size and
// sport?
//
// Over the other athletes of the roster (the athlete is left out): y = b0 + b . x + u, u ~ N(0, s^2 + error
// variance), with x = years under 18, sex, log stature, log body mass, softball, javelin, each in units of
// about one SD of a mixed roster, and ridge priors b ~ N(0, (spread of y)^2) (proposal of this project).
// s^2 by iterated moments:
//   s^2 = mean of (residual^2 + x' C x - error variance), C that of b, at least 1 % of Var y
// Strength y is a log load beside log body mass, never a ratio: a ratio brings body mass in twice
// [BatterhamGeorge1997 shows why no one exponent serves].
// Level: the posterior of z = u / s, with z ~ N(0, 1) before the test, the test's error and the
// regression's uncertainty in it; an untested athlete is z ~ N(0, 1). An adult without stature or body mass
// is taken as of usual size for the sex, and the words say so.
// Below 18 age, stature and mass explain most of velocity by themselves [Sgroi2015], so that a level not
// adjusted for them is growth, not a quality: a young athlete without stature or body mass gets z ~ N(0, 1)
// and words that say why, and young others without them are not compared with.
// Units: z is in SDs between athletes of the same kind. At least 6 others with that test, else z ~ N(0, 1).
// What it cannot tell: whether "usual here" is usual elsewhere; the roster is its own yardstick. The
// uncertainty of s itself is not in the level's variance: with 6 to 15 others its interval is somewhat too
// short.
//
// Example: docs/methods/reference_level.md
#pragma once

#include "inference/trajectory.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

struct BodySize {
    double age_years;
    bool male;
    std::optional<double> stature_m;
    std::optional<double> mass_kg;
    bool softball;
    bool javelin;
};

struct Measured {
    BodySize body;
    double value;    // on the test's scale (test_scale.h)
    double variance; // of the error of value
};

struct ReferenceLevel {
    StateOnDay z;      // mean and variance, SDs
    double expected;   // on the test's scale
    double spread;     // s, on the test's scale
    int compared_with; // number of other athletes; 0 when none could be used
    std::string words;
};

// measured: empty when the athlete was not tested. Contract: variances above 0, statures and masses above 0.
ReferenceLevel estimate_reference_level(std::span<const Measured> others, const BodySize& athlete,
                                        const std::optional<DatedValue>& measured);

} // namespace amentum
