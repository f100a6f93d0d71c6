// Lifts that carry the body, growth of the body, and strength for its size, against published numbers.
#include "measurement/allometry.h"
#include "measurement/body_mass_lifts.h"
#include "measurement/growth.h"
#include "measurement/split_squat.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

double added_kg(OneRepMaxEquation equation) {
    const auto maximum = estimate_pull_up_max(equation, Mass::kilograms(80), {Mass::kilograms(10), 5, 0});
    REQUIRE(maximum);
    return maximum->added.kilograms();
}

double lead_leg_kg(LeadLegModel model, Sex sex) {
    const auto load = estimate_lead_leg_load(model, sex, Mass::kilograms(85), Mass::kilograms(80));
    REQUIRE(load);
    return load->value;
}

double offset(OffsetEquation equation, Sex sex, double age, double stature, double sitting, double kg) {
    const auto result =
        estimate_maturity_offset(equation, {sex, age, Length::centimetres(stature),
                                            Length::centimetres(sitting), Mass::kilograms(kg)});
    REQUIRE(result);
    return result->value;
}

} // namespace

TEST_CASE("Pull-up, 80 kg + 10 kg for 5: the equations applied to 90 kg, less body mass (recomputed)") {
    check_near(added_kg(OneRepMaxEquation::epley), 25.0, 1e-6);
    check_near(added_kg(OneRepMaxEquation::brzycki), 21.25, 1e-6);
    check_near(added_kg(OneRepMaxEquation::wathan), 24.92, 0.005);
    check_near(added_kg(OneRepMaxEquation::mayhew), 27.11, 0.005);
}

TEST_CASE(
    "Johnson et al., JSCR 23:1022-1028, 2009: 8.1 +- 1.9 pull-ups (men) at 80 % of the system maximum") {
    // So 80 % must lie between the fractions for 8.1 - 1.9 and for 8.1 + 1.9 repetitions.
    const auto fraction = [](double repetitions) {
        const auto load =
            estimate_load_for_repetitions(OneRepMaxEquation::epley, Mass::kilograms(92.8), repetitions, 0);
        REQUIRE(load);
        return load->fraction;
    };
    CHECK(fraction(8.1 - 1.9) > 0.80);
    CHECK(fraction(8.1 + 1.9) < 0.80);
}

TEST_CASE("Split squat, 85 kg with 80 kg: Helme et al., JSCR, 2020 (84.36 %); de Leva, J Biomech "
          "29:1223-1230, 1996; "
          "McCurdy, Strength Cond J 39(6), 2017 (75 %)") {
    check_near(lead_leg_kg(LeadLegModel::model_a, Sex::male), 139.194, 1e-3);
    check_near(lead_leg_kg(LeadLegModel::model_b, Sex::male), 148.119, 1e-3);
    check_near(lead_leg_kg(LeadLegModel::model_b, Sex::female), 165 - 0.2088 * 85, 1e-9);
    check_near(lead_leg_kg(LeadLegModel::split_squat, Sex::male), 123.75, 1e-6);
    const auto load =
        estimate_lead_leg_load(LeadLegModel::model_a, Sex::male, Mass::kilograms(85), Mass::kilograms(80));
    REQUIRE(load);
    check_near(load->standard_error, 5.94, 1e-9); // 3.6 % of 165 kg
}

TEST_CASE("Push-up: Ebben et al., JSCR 25:2891-2894, 2011: 64 % of 80 kg (numbers read in two summaries)") {
    const auto load = estimate_push_up_load(PushUp::regular, Mass::kilograms(80));
    REQUIRE(load);
    check_near(load->kilograms(), 51.2, 1e-6);
    const auto knees = estimate_push_up_load(PushUp::knees, Mass::kilograms(80));
    REQUIRE(knees);
    check_near(knees->kilograms(), 39.2, 1e-6);
}

TEST_CASE(
    "Strength for size: b 0.67; Oba et al., JSCR 28:3330-3337, 2014: 0.559 bench, 0.496 squat (recomputed)") {
    const auto scaled = [](double exponent) {
        const auto result = allometric_strength(Mass::kilograms(150), Mass::kilograms(80), exponent);
        REQUIRE(result);
        return *result;
    };
    check_near(scaled(0.67), 7.9620, 1e-3);
    check_near(scaled(0.559), 12.9498, 1e-3);
    check_near(scaled(0.496), 17.0671, 1e-3);
    check_near(scaled(1), 1.8750, 1e-9);
}

TEST_CASE("Mirwald et al., Med Sci Sports Exerc 34:689-694, 2002: recomputed, weight/height ratio x 100") {
    check_near(offset(OffsetEquation::mirwald, Sex::male, 13.0, 156, 80, 45), -1.0668, 1e-3);
    check_near(offset(OffsetEquation::mirwald, Sex::male, 14.5, 172, 89, 60), 0.8748, 1e-3);
    check_near(offset(OffsetEquation::mirwald, Sex::female, 12.0, 152, 79, 42), -0.0401, 1e-3);
}

TEST_CASE(
    "Moore et al., Med Sci Sports Exerc 47:1755-1764, 2015: recomputed (girls' coefficients from memory)") {
    check_near(offset(OffsetEquation::moore, Sex::male, 13.0, 156, 80, 45), -0.6740, 1e-3);
    check_near(offset(OffsetEquation::moore, Sex::female, 12.0, 152, 79, 42), -0.0060, 1e-3);
}

TEST_CASE("Sgroi et al., J Shoulder Elbow Surg 24:1339, 2015: one year and two inches are 3.9 mph") {
    check_near(growth_velocity(1, Length::inches(2)).miles_per_hour(), 3.9, 0.01);
}

} // namespace amentum
