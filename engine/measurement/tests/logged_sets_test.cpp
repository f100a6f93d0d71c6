// What a training set tells about a test, and when it tells nothing.
#include "measurement/measure_test.h"
#include "readings_of_a_day.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

using namespace tests;

Exercise lift(double load_share = 1.0) {
    Exercise exercise;
    exercise.key = "split_squat_dumbbell";
    exercise.name = "Split squat, dumbbells";
    exercise.means = LoadMeans::dumbbell_pair;
    exercise.qualities = {{"quality", 1.0}};
    exercise.load_test = "kind";
    exercise.load_share = load_share;
    return exercise;
}

SetDone done(double kg, int reps, std::optional<double> reserve) {
    SetDone set{"set-00000001", AthleteId{"ona-reyes"}, Date::from_days(20501), "split_squat_dumbbell", 1};
    set.load = Mass::kilograms(kg);
    set.reps = reps;
    set.reps_in_reserve = reserve;
    return set;
}

} // namespace

TEST_CASE("A logged set is the test's lift, with more doubt than a test") {
    const auto logged = measure_logged_set(squat_kind(), lift(), done(90, 5, 0), std::nullopt);
    const auto tested = measure_test(squat_kind(), {set_of(90, 5)});
    REQUIRE(logged);
    REQUIRE(tested);
    CHECK(logged->value == doctest::Approx(tested->value));
    CHECK(logged->standard_error ==
          doctest::Approx(std::hypot(tested->standard_error, 0.03 * tested->value)));
    CHECK(logged->test == "kind");
    CHECK(logged->side == Side::none);
    CHECK(logged->method == "logged set, Epley, 5 repetitions");
}

TEST_CASE("The load share turns one lift into another, at a price") {
    const auto shared = measure_logged_set(squat_kind(), lift(0.8), done(72, 5, 0), std::nullopt);
    const auto own = measure_logged_set(squat_kind(), lift(), done(90, 5, 0), std::nullopt);
    REQUIRE(shared);
    REQUIRE(own);
    CHECK(shared->value == doctest::Approx(own->value));
    CHECK(shared->standard_error == doctest::Approx(std::hypot(own->standard_error, 0.05 * own->value)));
}

TEST_CASE("Pull-ups: the share is one of body and load together") {
    Exercise pull = lift();
    pull.means = LoadMeans::added_plate;
    const auto added = measure_logged_set(pull_up_kind(), pull, done(10, 5, 0), Mass::kilograms(80));
    REQUIRE(added);
    CHECK(added->value == doctest::Approx(105));
    Exercise chin = pull;
    chin.load_share = 0.9;
    const auto share = measure_logged_set(pull_up_kind(), chin, done(1, 5, 0), Mass::kilograms(80));
    REQUIRE(share);
    CHECK(share->value == doctest::Approx(81 / 0.9 * (1 + 5.0 / 30)));
    SetDone bare = done(1, 5, 0);
    bare.load.reset();
    CHECK_FALSE(measure_logged_set(pull_up_kind(), pull, bare, Mass::kilograms(80)));
    pull.means = LoadMeans::body;
    const auto body = measure_logged_set(pull_up_kind(), pull, bare, Mass::kilograms(80));
    REQUIRE(body);
    CHECK(body->value == doctest::Approx(80 * (1 + 5.0 / 30)));
    const auto unknown = measure_logged_set(pull_up_kind(), pull, bare, std::nullopt);
    REQUIRE_FALSE(unknown);
    CHECK(unknown.refusal().field == "body_mass");
}

TEST_CASE(
    "Sets that tell nothing: reserve unknown or large, too many repetitions, another lift, another measure") {
    const auto code = [](const Result<TestResult>& result) {
        REQUIRE_FALSE(result);
        return result.refusal().code;
    };
    using enum RefusalCode;
    CHECK(code(measure_logged_set(squat_kind(), lift(), done(90, 5, std::nullopt), {})) ==
          method_does_not_apply);
    CHECK(code(measure_logged_set(squat_kind(), lift(), done(90, 2, 6), {})) == method_does_not_apply);
    CHECK(code(measure_logged_set(squat_kind(), lift(), done(60, 8, 3), {})) == method_does_not_apply);
    CHECK(measure_logged_set(squat_kind(), lift(), done(60, 8, 2), {}));
    Exercise other = lift();
    other.load_test = "another_kind";
    CHECK(code(measure_logged_set(squat_kind(), other, done(90, 5, 0), {})) == method_does_not_apply);
    other.load_test.reset();
    CHECK(code(measure_logged_set(squat_kind(), other, done(90, 5, 0), {})) == method_does_not_apply);
    CHECK(code(measure_logged_set(velocity_kind(), lift(), done(90, 5, 0), {})) == method_does_not_apply);
    CHECK(code(measure_logged_set(squat_kind(), lift(), done(900, 1, 0), {})) == out_of_range);
    CHECK(code(measure_logged_set(squat_kind(), lift(), done(90, 0, 0), {})) == out_of_range);
}

TEST_CASE("A throw counts with its speed, when the ball is the test's own") {
    TestKind kind = kind_of(Measure::ball_speed, TestUnit::metre_per_second, 2, 25);
    kind.ball_mass = Mass::pounds(4);
    Exercise toss;
    toss.key = "overhead_throw";
    toss.name = "Overhead throw";
    toss.means = LoadMeans::ball;
    toss.qualities = {{"quality", 0.8}, {"other", 0.2}};
    SetDone set = done(0, 5, std::nullopt);
    set.load = Mass::pounds(4);
    set.speed = Speed::metres_per_second(11);
    const auto result = measure_logged_set(kind, toss, set, std::nullopt);
    REQUIRE(result);
    CHECK(result->value == doctest::Approx(11));
    CHECK(result->standard_error == doctest::Approx(std::hypot(0.4, 0.3, 0.55)));
    set.load = Mass::pounds(6);
    CHECK_FALSE(measure_logged_set(kind, toss, set, std::nullopt));
    set.load = Mass::pounds(4);
    set.speed.reset();
    CHECK_FALSE(measure_logged_set(kind, toss, set, std::nullopt));
    set.speed = Speed::metres_per_second(11);
    toss.qualities = {{"quality", 0.2}, {"other", 0.8}};
    CHECK_FALSE(measure_logged_set(kind, toss, set, std::nullopt));
}

} // namespace amentum
