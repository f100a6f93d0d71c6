// Do two sides differ by more than the error of measuring them, and by how much?
//
// For the values L = other (or left) and R = throwing (or right), rival definitions, all in per cent:
//   over the total        100 (R - L) / (R + L)                       ours: signed, the same whichever side leads
//   of the larger         100 (max - min) / max                       no direction
//   other in per cent     100 min / max                               no direction; often called an index of symmetry
//   over the mean         100 (R - L) / ((R + L) / 2)                 [Robinson1987]: twice ours
//   angle of symmetry     100 (45 deg - atan(L / R)) / 90 deg         [Zifchock2008]
// At least nine are in use [Bishop2016]; the numbers of two of them are never compared.
//   SE of ours  2 sqrt(L^2 SE_R^2 + R^2 SE_L^2) / (R + L)^2           first order; errors taken as independent
// On one day the sides share part of the day's error, so the stated error is on the large side.
// Verdict, as within-side variation decides [Exell2012]:
//   larger_than_error   zero lies outside the central 95 % interval (about twice the standard error)
//   cannot_tell         outside the 80 % interval but inside the 95 %: measure again
//   within_error        inside the 80 % interval
// No fixed line, such as 15 %, is used: little prospective support for one was found.
// A test of one side at a time (one-leg jump, one-arm row) and one of both at once (the shares of a two-leg jump)
// answer different questions and are never compared [Bishop2018]; compare_sides names which it was.
// Valid: values above 0 with a natural zero (loads, distances, forces, speeds), errors above 0 up to the value.
// Refusals: outside that; angles belong to joint_range.h, for they have no zero to divide by.
// What it cannot tell: injury, now or later; whether a difference is in the way of anything. Throwers differ between
// sides because they throw.
// Example: 900 and 1000 -> 5.263 over the total; 10.0, 90.0, 10.526, 3.348 by the others
#pragma once

#include "values/enum_words.h"
#include "values/interval.h"
#include "values/refusal.h"

namespace amentum {

struct SideFormulas { // per cent
    double over_total;
    double of_larger;
    double smaller_share;
    double over_mean;
    double symmetry_angle;
};
Result<SideFormulas> side_formulas(double other, double throwing);

enum class SidesTested { one_at_a_time, both_at_once };
template <>
inline constexpr std::array<std::pair<SidesTested, std::string_view>, 2> words_of<SidesTested>{
    {{SidesTested::one_at_a_time, "one_at_a_time"}, {SidesTested::both_at_once, "both_at_once"}}};

enum class SideVerdict { larger_than_error, cannot_tell, within_error };
template <>
inline constexpr std::array<std::pair<SideVerdict, std::string_view>, 3> words_of<SideVerdict>{
    {{SideVerdict::larger_than_error, "larger_than_error"},
     {SideVerdict::cannot_tell, "cannot_tell"},
     {SideVerdict::within_error, "within_error"}}};
SideVerdict judge_difference(const Estimate& difference); // of sides, in any unit

struct SideComparison {
    Estimate over_total; // per cent; above 0: the throwing side has more
    SideFormulas rivals;
    SideVerdict verdict;
    SidesTested tested;
};
Result<SideComparison> compare_sides(const Estimate& other, const Estimate& throwing, SidesTested tested);

// By how much did the difference change? Refuses one of each kind of test.
Result<Estimate> change_between(const SideComparison& before, const SideComparison& after);

} // namespace amentum
