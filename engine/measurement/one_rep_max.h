// How much could be lifted once, when a lighter load was lifted n times?
//
// Formulas, w the load, n the repetitions to failure (done + in reserve), 1RM = w f(n):
//   epley            1 + n / 30                           [Epley1985]; printed there as 1 + 0.0333 n
//   brzycki          36 / (37 - n)                        [Brzycki1993]; as usually rewritten
//   brzycki_decimal  1 / (1.0278 - 0.0278 n)              [Brzycki1993]; coefficients as printed
//   lander           100 / (101.3 - 2.67123 n)            [Lander1985]
//   lombardi         n^0.10                               [Lombardi1989]
//   mayhew           100 / (52.2 + 41.9 exp(-0.055 n))    [Mayhew1992]
//   oconner          1 + 0.025 n                          [OConner1989]
//   wathan           100 / (48.8 + 53.8 exp(-0.075 n))    [Wathen1994]
//   chart            1 / (textbook fraction of 1RM)       repetition_chart.h
// One repetition returns the load, whatever the equation (five of them would not); between 1 and 2 we go
// straight from 1 to f(2), so that f rises without a jump (proposal of this project, no source).
// Units: any mass. Valid: 0 < load, 1 <= n; the equations were fitted below about 10 repetitions
//   [Reynolds2006].
// Refusals: load or reps not above 0, a negative reserve (out_of_range); reserve above 5, n above 15, chart
//   above 12 (method_does_not_apply). Warning above 10.
//
// Standard error, as a fraction of the 1RM: square root of the sum of the squares of
//   the spread between the seven equations at n (their standard deviation over their mean);
//   0.010 sqrt(n - 1), for lifters who differ from one another: proposal of this project, no source, set so
//     that the whole is 3 % at 5 and 4.3 % at 10 repetitions, the range of published errors [Lacio2010]
//     [Sigvaldsen2023];
//   when the set stopped short of failure: 1 repetition of doubt [Hackett2017] times the slope of ln f at n.
// The known bias of the reserve (people stop 0.95 repetition earlier than they say [Halperin2022]) is not
//   corrected.
//
// Our equation, unless asked otherwise, is Epley's: up to 10 repetitions it stays within 2 % of the median
// of the seven, it has no pole, and its inverse is exact. Results of two equations are never compared as a
// trend: the difference between two equations at 10 repetitions is larger than a good block's gain.
//
// What it cannot tell: the lifter's own endurance. At 70 % of a squat's 1RM, trained lifters did 6 to 26
// repetitions [Zourdos2021]; deadlifts are underestimated [LeSuer1997] (from memory).
//
// Example: estimate_one_rep_max(epley, {Mass::kilograms(100), 10, 0})->value is 133.3333 kg
#pragma once

#include "values/enum_words.h"
#include "values/quantity.h"
#include "values/refusal.h"

#include <string>
#include <vector>

namespace amentum {

enum class OneRepMaxEquation {
    epley,
    brzycki,
    brzycki_decimal,
    lander,
    lombardi,
    mayhew,
    oconner,
    wathan,
    chart
};
template <>
inline constexpr std::array<std::pair<OneRepMaxEquation, std::string_view>, 9> words_of<OneRepMaxEquation>{
    {{OneRepMaxEquation::epley, "epley"},
     {OneRepMaxEquation::brzycki, "brzycki"},
     {OneRepMaxEquation::brzycki_decimal, "brzycki_decimal"},
     {OneRepMaxEquation::lander, "lander"},
     {OneRepMaxEquation::lombardi, "lombardi"},
     {OneRepMaxEquation::mayhew, "mayhew"},
     {OneRepMaxEquation::oconner, "oconner"},
     {OneRepMaxEquation::wathan, "wathan"},
     {OneRepMaxEquation::chart, "chart"}}};

inline constexpr OneRepMaxEquation our_equation = OneRepMaxEquation::epley;
inline constexpr double most_trusted_repetitions = 10; // [Reynolds2006]; above: warning
inline constexpr double most_repetitions = 15;         // above: refused; the seven span 131 to 164 % there
inline constexpr double most_reserve = 5;              // [Hackett2017]: beyond, guesses miss by more than 2

struct RepetitionSet {
    Mass load;
    double reps;            // clean repetitions done
    double reps_in_reserve; // 0 at failure
};

struct OneRepMax {
    Mass value;
    double relative_error; // standard error over value
    double repetitions_to_failure;
    std::vector<std::string> warnings;
};

struct LoadForRepetitions {
    Mass load;
    double fraction; // of the 1RM
    std::vector<std::string> warnings;
};

Result<OneRepMax> estimate_one_rep_max(OneRepMaxEquation equation, const RepetitionSet& set);

// The inverse: which load leaves `reps_in_reserve` after `reps`?
Result<LoadForRepetitions> estimate_load_for_repetitions(OneRepMaxEquation equation, Mass one_rep_max,
                                                         double reps, double reps_in_reserve);

// Standard deviation of the seven equations' f(n), over their mean; 0 for one repetition.
double spread_between_equations(double repetitions_to_failure);

} // namespace amentum
