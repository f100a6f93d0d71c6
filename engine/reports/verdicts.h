// When may a direction be said, and in which words? The one set of rules of every screen that speaks of an effect.
//
//   chance of a direction >= 90 %   it is said; from 10 to 90 % "cannot tell"        (proposal of this project, no source)
//   never "causes"                  "goes with"; what was, beside what was expected anyway
//   a number                        never without its interval
//   whose word it is                learned = 1 - posterior variance / prior variance; below 0.3 the literature's more than
//                                   these throwers' (proposal of this project, no source)
//   no comparison group             is said, with what it leaves open
// Range: chances and shares from 0 to 1 (asserted).
// What it cannot tell: whether the chances handed in are right; check_calibration counts that.
//
// Example: verdict_of({0.9, 1.0}): P(above 0) = Phi(0.9) = 0.816, so cannot_tell; of {1.3, 1.0}: 0.903, so more.
#pragma once

#include "reports/shown_units.h"
#include "values/enum_words.h"
#include "values/interval.h"

#include <string>

namespace amentum {

inline constexpr double chance_said = 0.9;
inline constexpr double learned_enough = 0.3;

enum class EffectDirection { more, less, cannot_tell };
template <>
inline constexpr std::array<std::pair<EffectDirection, std::string_view>, 3> words_of<EffectDirection>{
    {{EffectDirection::more, "more"},
     {EffectDirection::less, "less"},
     {EffectDirection::cannot_tell, "cannot_tell"}}};

// Of chances that exclude each other: above a bound, below another one.
EffectDirection verdict_of(double chance_more, double chance_less);
// Of a normal estimate: above or below 0.
EffectDirection verdict_of(const Estimate& effect);

// "more", "less" or "cannot tell" chosen by the verdict; the words are the caller's.
std::string said_by(EffectDirection verdict, const std::string& more, const std::string& less,
                    const std::string& cannot_tell);

// "that is the literature's word more than these throwers': 12 % is their own"; "45 % of that is these throwers' own
// records". A part of a sentence, without its end.
std::string describe_whose_word(double learned);
bool mostly_literature(double learned);

// "No comparison group: ...": what stays open when nobody without the block was tested over the same weeks.
std::string describe_no_comparison_group(int others, int fewest);

// "Velocity: +2.1 mph (80 %: +0.8 to +3.4) beside the forecast without the block: more than forecast."
std::string describe_beside_forecast(const std::string& quality, double excess, Interval band,
                                     EffectDirection verdict, const ShownUnit& unit);

} // namespace amentum
