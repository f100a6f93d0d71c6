#include "measurement/measure_test.h"

#include "measurement/body_mass_lifts.h"
#include "measurement/day_value.h"
#include "measurement/radar.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double error_of_training_set = 0.03;   // of the value: proposal of this project, no source
constexpr double error_of_load_share = 0.05;     // of the value: proposal of this project, no source
constexpr double error_of_unnamed_device = 0.55; // m/s: 5.5 km/h / (1.96 sqrt 2) [JSportsSci2021Radar]
constexpr double ball_tolerance =
    0.03; // 1.8 kg is a 4-lb ball, 2 kg is not: proposal of this project, no source

Refusal not_usable(std::string field, std::string why, std::string given, std::string allowed) {
    return {RefusalCode::method_does_not_apply, std::move(why), std::move(field), std::move(given),
            std::move(allowed)};
}

bool serves_first(const Exercise& exercise, const std::string& quality) {
    const auto share = exercise.qualities.find(quality);
    if (share == exercise.qualities.end())
        return false;
    return std::all_of(exercise.qualities.begin(), exercise.qualities.end(),
                       [&](const auto& other) { return other.second <= share->second; });
}

Result<Done> check_about(const TestKind& kind, const Exercise& exercise) {
    if (exercise.load_test ? *exercise.load_test == kind.key
                           : kind.measure == Measure::ball_speed && serves_first(exercise, kind.quality))
        return Done{};
    return not_usable("exercise",
                      "A set of \"" + exercise.name + "\" tells nothing about \"" + kind.name + "\".",
                      exercise.key, "an exercise whose load is a share of " + kind.key);
}

Result<Done> check_reserve(const SetDone& set) {
    if (!set.reps)
        return refuse_missing("reps", "the clean repetitions done");
    if (!set.reps_in_reserve)
        return not_usable(
            "reps_in_reserve",
            "How many repetitions were left is not known, so the set does not tell the maximum.", "",
            "0 to 5");
    const double n = *set.reps + *set.reps_in_reserve;
    if (n > most_trusted_repetitions)
        return not_usable("reps",
                          "With " + format_shortest(n) +
                              " repetitions to failure, a training set says too little about the maximum.",
                          format_shortest(n), "10 or fewer, those in reserve counted");
    return Done{};
}

// The set as the test kind would have read it, on the test's own lift: divided by the load share.
Result<Reading> as_reading(const TestKind& kind, const Exercise& exercise, const SetDone& set,
                           std::optional<Mass> body_mass) {
    assert(exercise.load_share > 0);
    Reading reading{set.athlete, set.date, kind.key};
    reading.reps = set.reps;
    reading.body_mass = body_mass;
    std::optional<Mass> load = set.load;
    if (kind.measure == Measure::system_mass_max) {
        if (!body_mass)
            return refuse_missing("body_mass", "the athlete's body mass, which is part of what is lifted");
        if (!load && exercise.means == LoadMeans::body)
            load = Mass::kilograms(0);
        if (load)
            load = (*body_mass + *load) / exercise.load_share - *body_mass;
    } else if (load) {
        load = *load / exercise.load_share;
    }
    reading.load = load;
    return reading;
}

Result<DayValue> measure_lift_set(const TestKind& kind, const Exercise& exercise, const SetDone& set,
                                  std::optional<Mass> body_mass) {
    if (const auto usable = check_reserve(set); !usable)
        return usable.refusal();
    const auto reading = as_reading(kind, exercise, set, body_mass);
    if (!reading)
        return reading.refusal();
    const auto maximum = estimate_lift(kind, *reading, *set.reps_in_reserve);
    if (!maximum)
        return maximum.refusal();
    const double value = maximum->value.kilograms();
    if (const auto sound = check_plausible(kind, value, "load"); !sound)
        return sound.refusal();
    const double share = exercise.load_share == 1 ? 0 : error_of_load_share;
    const double error = value * std::hypot(maximum->relative_error, error_of_training_set, share);
    std::string method = "logged set, " + describe_set(kind, *set.reps, *set.reps_in_reserve);
    if (exercise.load_share != 1)
        method += ", load / " + format_shortest(exercise.load_share) + " for " + exercise.key;
    return DayValue{value, error, 1, 1, method, maximum->warnings, lift_sources(kind)};
}

Result<DayValue> measure_ball_set(const TestKind& kind, const SetDone& set) {
    if (!set.speed)
        return not_usable("speed", "Without its speed, a throw tells nothing about ball speed.", "",
                          "the ball's speed");
    if (!kind.ball_mass || !set.load || std::abs(*set.load / *kind.ball_mass - 1) > ball_tolerance)
        return not_usable(
            "load", "Only throws of the test's own ball count: speeds of two balls are not compared.",
            set.load ? format_fixed(set.load->kilograms(), 2) + " kg" : "",
            kind.ball_mass ? format_fixed(kind.ball_mass->kilograms(), 2) + " kg" : "no ball is known");
    const auto speed = radar_speed(*set.speed, Angle::degrees(0));
    if (!speed)
        return speed.refusal();
    const double value = speed->speed.metres_per_second();
    if (const auto sound = check_plausible(kind, value, "speed"); !sound)
        return sound.refusal();
    return DayValue{value, error_of_unnamed_device, 1, 1, "logged throw, device not named",
                    {},    {"JSportsSci2021Radar"}};
}

} // namespace

Result<TestResult> measure_logged_set(const TestKind& kind, const Exercise& exercise, const SetDone& set,
                                      std::optional<Mass> body_mass) {
    if (const auto about = check_about(kind, exercise); !about)
        return about.refusal();
    const auto measure = [&]() -> Result<DayValue> {
        switch (kind.measure) {
        case Measure::one_rep_max:
        case Measure::system_mass_max:
        case Measure::split_squat_max:
            return measure_lift_set(kind, exercise, set, body_mass);
        case Measure::ball_speed:
            return measure_ball_set(kind, set);
        default:
            return not_usable("exercise", "\"" + kind.name + "\" cannot be read off a logged set.",
                              exercise.key, "a lift or a ball throw");
        }
    };
    const auto day = measure();
    if (!day)
        return day.refusal();
    return state_result(kind, *day,
                        TestResult{set.athlete,
                                   set.date,
                                   kind.key,
                                   Side::none,
                                   0,
                                   0,
                                   0,
                                   "",
                                   {},
                                   {},
                                   "",
                                   "",
                                   PlaceMeasured::unknown});
}

} // namespace amentum
