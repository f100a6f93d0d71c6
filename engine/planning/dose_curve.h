// What share of the effect of ten hard sets a week do fewer sets bring?
//
//   weekly sets   0     1      3      5      10    more
//   share         0   0.40   0.70   0.82   1.00   1.00
// Straight lines between. Read off: five sets and fewer against ten and more, effect sizes 0.82 and 1.01, difference
// 0.18 (0.06 to 0.30) [Ralston2017]; one set one to three times a week already brought trained men +12 kg (8 to 16) on
// the maximum [AndroulakisKorakakis2020]. The knots between are a proposal of this project, no source.
// The spread: at five sets a share of 0.70 to 0.94, as that difference's interval says; elsewhere what is missing to 1
// lies between a third and five thirds of what the curve says: share +- 0.12 (1 - share) / 0.18.
// Trials of strength; for jumps, throws and range the same curve is taken, for want of trials.
// Units: sets a week. Range: 0 and more. What it cannot tell: how this thrower responds.
//
// Example: usual_dose_curve().share(5) == 0.82
#pragma once

#include "values/interval.h"

#include <vector>

namespace amentum {

struct DoseKnot {
    double sets;
    double share;
};

struct DoseCurve {
    std::vector<DoseKnot> knots; // from (0, 0), rising, concave; constant beyond the last

    double share(double sets) const;
    Interval share_between(double sets) const; // 95 %, as published
};

const DoseCurve& usual_dose_curve();

} // namespace amentum
