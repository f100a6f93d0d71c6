// Where does this athlete stand in a quality, compared with what is usual for that age, sex, size and sport?
//
// Over the other athletes of the roster (the athlete is left out): y = b0 + b . x + u, u ~ N(0, s^2 + error variance),
// with x = years under 18, sex, log stature, log body mass, softball, javelin, each standardised, and ridge priors
// b ~ N(0, (spread of y)^2) (proposal of this project). s^2 by iterated moments. Strength y is a log load beside log
// body mass, never a ratio: a ratio brings body mass in twice [BattermanGeorge1997 shows why no one exponent serves].
// Level: z = u / s of the athlete, with the test's error and the regression's uncertainty in its variance; an untested
// athlete is z ~ N(0, 1). Below 18 age, stature and mass explain most of velocity by themselves [Sgroi2015], so that a
// level not adjusted for them is growth, not a quality.
// Units: z is in SDs between athletes of the same kind. At least 6 others with that test, else "too few".
// What it cannot tell: whether "usual here" is usual elsewhere; the roster is its own yardstick.
#pragma once

#include "inference/trajectory.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

struct Body {
    double age_years;
    bool male;
    std::optional<double> stature_m;
    std::optional<double> mass_kg;
    bool softball;
    bool javelin;
};

struct Measured {
    Body body;
    double value;     // on the test's scale (test_scale.h)
    double variance;  // of the error of value
};

struct ReferenceLevel {
    StateOnDay z;                    // mean and variance, SDs
    double expected;                 // on the test's scale
    double spread;                   // s, on the test's scale
    int compared_with;               // number of other athletes
    std::string words;
};

// athlete: the one asked about, without value when not tested. Fewer than 6 others: z ~ N(0, 1) and words say so.
ReferenceLevel estimate_reference_level(std::span<const Measured> others, const Body& athlete,
                                        const std::optional<DatedValue>& measured);

}  // namespace amentum
