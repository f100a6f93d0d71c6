// What did the test show, with what error? One day's readings of one athlete, test and side make one result.
//
// How several trials become one value (the TestResult's `method` says which):
//   lifts (one_rep_max, system_mass_max, split_squat_max): the best set, that is the highest estimate among
//   the
//     sets of at most 10 repetitions to failure, because the sets before it are a warm-up, not repeats of it;
//   all others: the mean, because the best of n grows with n (expected_maximum) and a mean does not.
// Standard error of the day's value as a measure of the athlete's level, in the test kind's unit:
//   SE^2 = day_error^2 + trial_error^2 / n + method_error^2;  n = 1 for a best set; a logarithmic kind's
//   errors are fractions of the value. method_error is that of the equation (one_rep_max.h, ball_flight.h,
//   radar.h); 0 where the quantity is read directly.
//
// Contract (asserted): the readings share athlete, date, test and side, and the test is kind.key.
// Refusals: no readings (too_few_data); a field the measure needs is missing (missing_field; fields are named
//   as in fields_needed); a field outside its range; no side where the kind is about the lead leg or the
//   throwing arm; two devices, raters or places in one result, or two ways of measuring
//   (method_does_not_apply); a value outside the kind's plausible range (out_of_range).
// Missing in a test: reps_in_reserve is taken as 0 (tests end at failure) and a warning says so.
// Two ways of measuring: a speed by radar and one by distance, a jump by flight time and one read directly.
// What it cannot tell: whether the protocol was followed; whether device, rater and place are those of
// another day.
//
// Example: three readings {.load 100 kg, .reps 5}, {.load 110 kg, .reps 3}, {.load 110 kg, .reps 2}
//   -> 121 kg, "Epley, 3 repetitions, best of 3 sets"
#pragma once

#include "values/block.h"
#include "values/exercise.h"
#include "values/reading.h"
#include "values/test_kind.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

Result<TestResult> measure_test(const TestKind& kind,
                                const std::vector<Reading>& readings_of_one_day_and_side);

// A logged training set as a (less certain) result of the test kind whose value the load is a share of.
//
// Lifts: the load (pull-ups: load + body mass) is divided by exercise.load_share, then estimated as in a
// test.
//   Needs the repetitions in reserve, because a training set seldom ends at failure.
// Ball throws: the set's speed, when the ball is the test kind's ball.
// The result's side is `none`: one logged line stands for both sides.
// Error added to a test's: 3 % for a set among others, 5 % more when load_share is not 1 (both proposals of
//   this project, no source); ball speed: 0.55 m/s for the unnamed device [JSportsSci2021Radar].
// Refusals (method_does_not_apply): an exercise that is not about this test; reps in reserve unknown or
//   above 5; reps + reserve above 10; another ball; measures that no set can show (angles, jumps, body mass
//   ...).
Result<TestResult> measure_logged_set(const TestKind& kind, const Exercise& exercise, const SetDone& set,
                                      std::optional<Mass> body_mass);

// Fields of Reading, without unit, in the order a person enters them: load, reps, reps_in_reserve,
// body_mass, speed, radar_angle, distance, release_height, release_angle, flight_time, contact_time, height,
// angle, force, power.
// Where either of two ways will do, fields_needed is empty and fields_optional names the usual one first
// (ball_speed: speed, or distance with release_height; jump_height: flight_time, or height, or take-off
// velocity as speed).
std::vector<std::string> fields_needed(Measure measure);
std::vector<std::string> fields_optional(Measure measure);

} // namespace amentum
