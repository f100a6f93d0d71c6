// How the sets of a test day become one maximum, and which sets are refused.
#include "measurement/measure_test.h"
#include "measurement/one_rep_max.h"
#include "readings_of_a_day.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

using namespace tests;

bool has_warning(const TestResult& result, const std::string& part) {
    for (const auto& warning : result.warnings)
        if (warning.find(part) != std::string::npos)
            return true;
    return false;
}

} // namespace

TEST_CASE("The best set is the day's value; the sets before it are its warm-up") {
    const auto result = measure_test(squat_kind(), {set_of(60, 5, 1), set_of(80, 3, 2), set_of(90, 2, 3)});
    REQUIRE(result);
    CHECK(result->value == doctest::Approx(96)); // 90 (1 + 2/30); 80 x 3 gives 88
    CHECK(result->trials == 3);
    CHECK(result->method == "Epley, 2 repetitions, best of 3 sets");
    CHECK(result->athlete.text == "ona-reyes");
    CHECK(result->sources.front() == "the kind's source");
}

TEST_CASE("The error is day, trial and equation together; a best set is one trial, however many were done") {
    const auto one = measure_test(squat_kind(), {set_of(90, 5, 1)});
    const auto three = measure_test(squat_kind(), {set_of(60, 5, 1), set_of(80, 3, 2), set_of(90, 5, 3)});
    REQUIRE(one);
    REQUIRE(three);
    const auto equation = estimate_one_rep_max(our_equation, {Mass::kilograms(90), 5, 0});
    REQUIRE(equation);
    CHECK(one->standard_error == doctest::Approx(105 * std::hypot(0.03, 0.02, equation->relative_error)));
    CHECK(three->standard_error == doctest::Approx(one->standard_error));
    TestKind linear = squat_kind();
    linear.scale = Scale::linear;
    linear.day_error = 3;
    linear.trial_error = 4;
    const auto single = measure_test(linear, {set_of(100, 1)});
    REQUIRE(single);
    CHECK(single->standard_error == doctest::Approx(5)); // kilograms; a single has no equation error
}

TEST_CASE("A single is its own maximum") {
    const auto result = measure_test(squat_kind(), {set_of(102.5, 1)});
    REQUIRE(result);
    CHECK(result->value == 102.5);
    CHECK(result->method == "one repetition");
    CHECK(result->warnings.empty());
}

TEST_CASE("A missing reserve is taken as failure, and said") {
    const auto silent = measure_test(squat_kind(), {set_of(90, 5)});
    REQUIRE(silent);
    CHECK(has_warning(*silent, "taken as ended at failure"));
    Reading stated = set_of(90, 5);
    stated.reps_in_reserve = 2;
    const auto with_reserve = measure_test(squat_kind(), {stated});
    REQUIRE(with_reserve);
    CHECK_FALSE(has_warning(*with_reserve, "taken as ended at failure"));
    CHECK(with_reserve->value == doctest::Approx(111)); // 90 (1 + 7/30)
    CHECK(with_reserve->method == "Epley, 5 repetitions + 2 in reserve");
}

TEST_CASE("A set of more than 10 is trusted only when there is no shorter one") {
    const auto both = measure_test(squat_kind(), {set_of(80, 14, 1), set_of(90, 5, 2)});
    REQUIRE(both);
    CHECK(both->value == doctest::Approx(105)); // not 80 (1 + 14/30) = 117.3
    const auto only = measure_test(squat_kind(), {set_of(80, 14, 1)});
    REQUIRE(only);
    CHECK(only->value == doctest::Approx(117.3333));
    CHECK(has_warning(*only, "More than 10 repetitions"));
}

TEST_CASE("A set beyond 15 is left out and named; alone it is refused") {
    const auto both = measure_test(squat_kind(), {set_of(40, 20, 1), set_of(90, 5, 2)});
    REQUIRE(both);
    CHECK(both->value == doctest::Approx(105));
    CHECK(has_warning(*both, "Trial 1 was left out"));
    const auto alone = measure_test(squat_kind(), {set_of(40, 16)});
    REQUIRE_FALSE(alone);
    CHECK(alone.refusal().code == RefusalCode::method_does_not_apply);
    CHECK(alone.refusal().field == "reps");
    CHECK(measure_test(squat_kind(), {set_of(40, 15)}));
}

TEST_CASE("Reps of 0, no load, too much reserve") {
    const auto none = measure_test(squat_kind(), {set_of(90, 0)});
    REQUIRE_FALSE(none);
    CHECK(none.refusal().code == RefusalCode::out_of_range);
    CHECK(none.refusal().field == "reps");
    const auto air = measure_test(squat_kind(), {set_of(0, 5)});
    REQUIRE_FALSE(air);
    CHECK(air.refusal().field == "load");
    Reading easy = set_of(60, 3);
    easy.reps_in_reserve = 6;
    const auto refused = measure_test(squat_kind(), {easy});
    REQUIRE_FALSE(refused);
    CHECK(refused.refusal().field == "reps_in_reserve");
    easy.reps_in_reserve = 5;
    CHECK(measure_test(squat_kind(), {easy}));
    easy.reps_in_reserve = -1;
    const auto negative = measure_test(squat_kind(), {easy});
    REQUIRE_FALSE(negative);
    CHECK(negative.refusal().code == RefusalCode::out_of_range);
}

TEST_CASE("A 900-lb split squat is refused in words, in both units") {
    Reading heavy = set_of(1, 1);
    heavy.load = Mass::pounds(900);
    const auto result = measure_test(squat_kind(), {heavy});
    REQUIRE_FALSE(result);
    CHECK(result.refusal().code == RefusalCode::out_of_range);
    CHECK(result.refusal().field == "load");
    CHECK(result.refusal().sentence ==
          "Rear-foot-elevated split squat: 408.2 kg (900 lb) is outside what athletes show there, "
          "5 to 250 kg (11 to 551.2 lb). Please check the load and its unit.");
}

TEST_CASE("Missing fields are named as the forms name them") {
    Reading bare = reading();
    const auto no_load = measure_test(squat_kind(), {bare});
    REQUIRE_FALSE(no_load);
    CHECK(no_load.refusal().code == RefusalCode::missing_field);
    CHECK(no_load.refusal().field == "load");
    bare.load = Mass::kilograms(50);
    const auto no_reps = measure_test(squat_kind(), {bare});
    REQUIRE_FALSE(no_reps);
    CHECK(no_reps.refusal().field == "reps");
    const auto no_body = measure_test(pull_up_kind(), {set_of(10, 5)});
    REQUIRE_FALSE(no_body);
    CHECK(no_body.refusal().field == "body_mass");
}

TEST_CASE("A pull-up is the body and what hangs from it; help counts below 0") {
    Reading pull = set_of(10, 5);
    pull.body_mass = Mass::kilograms(80);
    const auto added = measure_test(pull_up_kind(), {pull});
    REQUIRE(added);
    CHECK(added->value == doctest::Approx(105));
    CHECK(added->method == "Epley, 5 repetitions, on body mass + load");
    pull.load = Mass::kilograms(-20);
    const auto helped = measure_test(pull_up_kind(), {pull});
    REQUIRE(helped);
    CHECK(helped->value == doctest::Approx(70));
    pull.load = Mass::kilograms(-80);
    const auto carried = measure_test(pull_up_kind(), {pull});
    REQUIRE_FALSE(carried);
    CHECK(carried.refusal().field == "load");
}

TEST_CASE("A side is asked for where the test is about a side") {
    TestKind kind = squat_kind();
    kind.side_rule = SideRule::lead_leg;
    const auto none = measure_test(kind, {set_of(60, 5)});
    REQUIRE_FALSE(none);
    CHECK(none.refusal().field == "side");
    Reading left = set_of(60, 5);
    left.side = Side::left;
    const auto result = measure_test(kind, {left});
    REQUIRE(result);
    CHECK(result->side == Side::left);
}

} // namespace amentum
