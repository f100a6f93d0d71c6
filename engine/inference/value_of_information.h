// What is it worth to know which of several uncertain gains is the largest?
//
// EVPI = E[max_k g_k] - max_k E[g_k]: the gain lost, on average, by choosing on what is known today
// [Raiffa1961]. Two jointly normal gains have closed forms [Clark1961]: with s^2 = s1^2 + s2^2 - 2 r s1 s2
// and d = (m1 - m2) / s, P(first best) = Phi(d), E max = m1 Phi(d) + m2 Phi(-d) + s phi(d).
// Units: those of the gains.
// What it cannot tell: what a test costs in minutes.
//
// Example: N(1.2, 0.5^2), N(0.8, 0.9^2), r = 0.3: P 0.673657, E max 1.389901, EVPI 0.189901.
#pragma once

#include "values/interval.h"

namespace amentum {

struct TwoLevers {
    double chance_first_best;
    double expected_best;
    double value_of_knowing; // EVPI
};

TwoLevers compare_two_levers(Estimate first, Estimate second, double correlation);

} // namespace amentum
