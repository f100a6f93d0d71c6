// How fast does one thrower send balls of other masses, and how steeply does speed fall with mass?
//
//   v = level (m / reference)^slope, a straight line of ln v on ln m, weighted least squares (straight_line.h)
//   each ball one point: the ln of its mean speed, standard error trial_error / sqrt(throws)
//   level     speed at the reference mass, the middle of the masses thrown: sqrt(lightest x heaviest)
//             SE(ln level)^2 = line^2 + shared_error^2
//   slope     exponent of mass; SE from the line alone
// What all balls of a day share (the athlete's day, the radar) moves every point alike: it is counted once, in the
// level, and not at all in the slope. A straight line on these logarithms: v proportional to m^b, as [Cross2004].
// trial_error is the test kind's, or the spread of the throws themselves (pooled within balls) where that is larger
// and rests on 4 degrees of freedom or more. Points that miss the line by more than their errors widen all errors
// (widened_by_misfit) and are named.
//
// Balls thrown for distance come with a correction for drag (ball_flight_drag.h): it is largest for the light balls, so
// leaving it out does not cancel across masses but flattens the slope. Its error is taken as one error of all balls.
//
// What the slope goes with (proposal of this project, no source): toward -0.5 (distance falls as 1 / mass, heavy
// implements [Ijssc2024]) as where strength limits; about -0.21 (over balls of 60-fold mass [Cross2004]) as where the
// speed of the limb itself does. It is said only when the 80 % interval of the slope holds one of the two and not the
// other, or lies beyond one of them; else `cannot_tell`.
//
// Units: kg, m/s, J, N s. Valid: masses 0.2 to 10 kg, speeds 0.5 to 60 m/s, trial_error above 0.
// Refusals: fewer than 3 different masses, or fewer than 2 throws of one (too_few_data, with what to throw next);
//   speed_at outside the masses thrown (method_does_not_apply); outside the ranges (out_of_range).
// What it cannot tell: why. Technique changes with the ball; the line belongs to the throw it was measured in. Speeds by
//   radar and by distance, of two devices or of two days do not belong in one line.
// Example: 4, 6 and 8 lb at 12, 10.5 and 9.6 m/s, three throws each: slope -0.32
#pragma once

#include "measurement/straight_line.h"
#include "values/enum_words.h"
#include "values/quantity.h"
#include "values/refusal.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

// Common practice, no source: masses that are thrown for speed, and the mass that is not gone beyond. [CommonPractice]
inline constexpr Mass working_mass_low = Mass::pounds(4);
inline constexpr Mass working_mass_high = Mass::pounds(6);
inline constexpr Mass heaviest_advised = Mass::pounds(8);
std::string describe_working_masses();

inline constexpr double slope_of_light_balls = -0.21380; // -ln 2.4 / ln 60 [Cross2004]
inline constexpr double slope_of_heavy_balls = -0.5;     // speed goes as the root of distance [Ijssc2024]

struct ThrowsOfBall {
    Mass mass;
    std::vector<Speed> speeds;
    double drag = 0;       // added to ln speed: 0 by radar
    double drag_error = 0; // standard deviation of `drag`, shared by all balls
};

struct BallOnLine {
    Mass mass;
    int throws;
    Estimate speed;     // mean as thrown (drag taken in); error of the trials alone
    Estimate fitted;    // the line there, without the error the day shares
    Estimate energy;    // m v^2 / 2 of the mean, J
    Estimate momentum;  // m v, N s
    double of_lightest; // its speed over the lightest ball's
    double misses_by;   // standard errors between point and line
    bool in_working_range;
    bool above_advised;
};

enum class SlopeGoesWith { strength, limb_speed, cannot_tell };
template <>
inline constexpr std::array<std::pair<SlopeGoesWith, std::string_view>, 3> words_of<SlopeGoesWith>{
    {{SlopeGoesWith::strength, "strength"},
     {SlopeGoesWith::limb_speed, "limb_speed"},
     {SlopeGoesWith::cannot_tell, "cannot_tell"}}};

struct BallMassLine {
    Mass reference;
    Estimate level; // m/s
    Interval level_band;
    Estimate slope;
    Mass lightest, heaviest;
    std::vector<BallOnLine> balls; // lightest first
    double trial_error;            // of one throw, as a fraction: what was believed
    bool trial_error_from_throws;
    bool straight;             // the points miss the line by no more than chance
    double slope_without_drag; // as it would read uncorrected; equal to the slope by radar
    SlopeGoesWith goes_with;
    std::vector<std::string> warnings;

    StraightLine line; // of ln(v in m/s) on ln(m / reference)
    double shared_error;
};

Result<BallMassLine> estimate_ball_mass_line(const std::vector<ThrowsOfBall>& balls, double trial_error,
                                             double shared_error);

// Speed at a mass, with the 80 % band of the level (shared error included). Only inside the masses thrown.
struct SpeedAtMass {
    Estimate speed;
    Interval band;
};
Result<SpeedAtMass> speed_at(const BallMassLine& line, Mass mass);

// What to throw so that a line can be laid: whole sentences, empty when there is enough.
std::vector<std::string> describe_throws_needed(const std::vector<ThrowsOfBall>& balls);

} // namespace amentum
