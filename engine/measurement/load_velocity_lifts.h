// At which bar speed does the last repetition that succeeds go up? And what a speed says without a line of one's own.
//
// minimal_velocity  mean (or mean propulsive) velocity at the one-repetition maximum, and its standard deviation
//                   between people, which goes into every interval that rests on it:
//   back_squat        0.32, SD 0.03   [SanchezMedina2017]
//   bench_press       0.17, SD 0.04   free bar [GeneralThreshold2021]; SD from a guided bar [GonzalezBadillo2010]
//   hex_bar_deadlift  0.25, SD 0.05   [Janicijevic2024]; SD not read: that of powerlifters' deadlifts [Helms2017]
//   deadlift          0.24, SD 0.03   [BenavidesUbric2020], from memory
//   pull_up           0.20, SD 0.05   [SanchezMoreno2017], from memory; SD a proposal of this project, no source
//   bench_pull        0.52, SD 0.05   [SanchezMedina2014], from memory; SD a proposal of this project, no source
//   Powerlifters grind slower: squat 0.23, bench press 0.10, deadlift 0.14, SD 0.04 to 0.05 [Helms2017].
// percent_of_max    general equations, all coefficients from memory:
//   bench_press   8.4326 v^2 - 73.501 v + 112.33    [GonzalezBadillo2010], SEE 3.56
//   back_squat   -5.961 v^2 - 50.71 v + 117.0       [SanchezMedina2017], SEE 4.02
//   bench_pull   18.5797 v^2 - 104.182 v + 147.94   [SanchezMedina2014], SEE taken as 4
// pull-ups      repetitions to failure = -6.661 + 25.556 v of the first one, n = 49, R^2 0.841 [Beckham2018]; the
//               standard error, 2 repetitions, is a proposal of this project, no source
// Units: m/s. Valid: v from the lift's minimal velocity less two SDs to where an equation says 30 %; pull-ups 0.35 to
//   1.2 m/s. Refusals: a lift without an equation (method_does_not_apply); outside (out_of_range).
// What it cannot tell: the lifter's own speeds. In people who do not train for strength, speed at one percentage
//   differs by 9 to 25 % between them [Ijerph2022]: the equations are not for novices, a line of one's own is better
//   for all [GarciaRamos2024]. Repetitions left in the hex-bar deadlift are not read from bar speed: no condition tried
//   met an error of two repetitions [Chen2026].
// Example: bench press at 0.62 m/s: 70.0 % of the maximum
#pragma once

#include "values/enum_words.h"
#include "values/interval.h"
#include "values/quantity.h"
#include "values/refusal.h"

#include <string>
#include <vector>

namespace amentum {

enum class SpeedLift { back_squat, bench_press, hex_bar_deadlift, deadlift, pull_up, bench_pull };
template <>
inline constexpr std::array<std::pair<SpeedLift, std::string_view>, 6> words_of<SpeedLift>{
    {{SpeedLift::back_squat, "back_squat"},
     {SpeedLift::bench_press, "bench_press"},
     {SpeedLift::hex_bar_deadlift, "hex_bar_deadlift"},
     {SpeedLift::deadlift, "deadlift"},
     {SpeedLift::pull_up, "pull_up"},
     {SpeedLift::bench_pull, "bench_pull"}}};

struct MinimalVelocity {
    SpeedLift lift;
    Speed speed;
    double between_people; // standard deviation, m/s
    std::vector<std::string> sources;
    bool from_memory;
};
const MinimalVelocity& minimal_velocity(SpeedLift lift);
std::string describe_minimal_velocity(const MinimalVelocity&);

Result<Estimate> percent_of_max(SpeedLift lift, Speed speed);
Result<Estimate> pull_up_repetitions(Speed of_first);

// How much slower was the slowest repetition than the fastest, as a fraction? Usual stops: strength 0.10 to 0.20, power
// 0.05 to 0.10 (proposal of this project from [HernandezBelmonte2022], [ParejaBlanco2017], the latter from memory).
// Refusals: fewer than 2 repetitions; a speed not above 0 to 4 m/s.
Result<double> velocity_loss(const std::vector<Speed>& repetitions);

} // namespace amentum
