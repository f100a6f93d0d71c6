// Heights of an invented boy, month by month. Slopes and errors by hand: SE of a slope = error / sqrt(sum (x - mean)^2).
// Offsets: values recomputed from Mirwald and others, 2002, as the facts of this project print them.
#include "guard_rails/check_growth.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace amentum;

namespace {

const Date birth = *parse_date("2013-03-01", "date");
const Date thirteen = *parse_date("2026-03-01", "date");

Athlete boy() {
    return {AthleteId{"ira"}, "Ira", birth, Sex::male, Hand::right, Sport::baseball, Role::pitcher,
            Level::youth,     {},    {},    {},        {},          KitId{"k"},      ""};
}

TestResult result(const std::string& test, Date date, double value, double error) {
    return {AthleteId{"ira"}, date, test, Side::none, value, error, 1, "", {}, {}, "", ""};
}

// Heights every 30 days, the last on `last`.
std::vector<TestResult> heights(std::vector<double> centimetres, double error_cm, Date last = thirteen) {
    std::vector<TestResult> all;
    for (std::size_t i = 0; i < centimetres.size(); ++i)
        all.push_back(result("stature", last - 30 * static_cast<int>(centimetres.size() - 1 - i),
                             centimetres[i] / 100, error_cm / 100));
    return all;
}

std::vector<std::string> codes(const std::vector<TestResult>& results, Date today = thirteen) {
    std::vector<std::string> found;
    for (const auto& finding : check_growth(boy(), results, today).findings)
        found.push_back(finding.code);
    return found;
}

using Codes = std::vector<std::string>;

} // namespace

TEST_CASE("never measured, or once: cannot tell how fast, and a note to measure") {
    CHECK(codes({}) == Codes{"measure_height"});
    CHECK(codes(heights({150}, 0.6)) == Codes{});
    CHECK(codes(heights({150}, 0.6), thirteen + 31) == Codes{});
    CHECK(codes(heights({150}, 0.6), thirteen + 32) == Codes{"measure_height"});
    CHECK_FALSE(check_growth(boy(), heights({150}, 0.6), thirteen).rate);
}

TEST_CASE("from 18 years on nothing is watched") {
    const Date day_before = *parse_date("2031-02-28", "date");
    CHECK(codes({}, day_before) == Codes{"measure_height"});
    CHECK(codes({}, day_before + 1) == Codes{});
    CHECK(check_growth(boy(), {}, day_before + 1).words.empty());
}

// Seven heights, 30 days apart: sum (x - mean)^2 = 28 (30 / 30.4375)^2 = 27.20; SE = 0.58 / 5.215 = 0.1112 cm a month.
TEST_CASE("a steady centimetre in 30 days over half a year is a spurt") {
    const auto growing = heights({150, 151, 152, 153, 154, 155, 156}, 0.58);
    const auto watch = check_growth(boy(), growing, thirteen);
    REQUIRE(watch.rate);
    CHECK(watch.rate->value == doctest::Approx(30.4375 / 30).epsilon(1e-6));
    CHECK(watch.rate->standard_error == doctest::Approx(0.1112).epsilon(1e-3));
    CHECK(codes(growing) == Codes{"growth_spurt"});
    CHECK(watch.findings[0].severity == Severity::warns);
    CHECK(watch.findings[0].sentence ==
          "Height 156.0 cm on 2026-03-01, growing 1.01 cm a month (likely 0.87 to 1.16). That is "
          "above 0.6 cm a month beyond the error of the heights.");
    // 156 / 2.54 = 61.4; (1.0146, 0.8721, 1.1571, 0.6) / 2.54 = 0.40, 0.34, 0.46, 0.24
    CHECK(check_growth(boy(), growing, thirteen, LengthUnit::inches).findings[0].sentence ==
          "Height 61.4 inches on 2026-03-01, growing 0.40 inches a month (likely 0.34 to 0.46). That is "
          "above 0.24 inches a month beyond the error of the heights.");
    CHECK(codes(growing, thirteen + 60) == Codes{"growth_spurt", "measure_height"});
    CHECK(codes(growing, thirteen + 93) == Codes{"measure_height"}); // history
}

// 0.6 + 1.645 x 0.1112 = 0.783 cm a month = 0.772 cm in 30 days.
TEST_CASE("above 0.6 cm a month, but not beyond the error: no finding") {
    const auto at = [](double step) {
        std::vector<double> each;
        for (int i = 0; i < 7; ++i)
            each.push_back(150 + step * i);
        return heights(each, 0.58);
    };
    CHECK(codes(at(0.75)) == Codes{});
    CHECK(codes(at(0.79)) == Codes{"growth_spurt"});
}

TEST_CASE("two heights a month apart show no spurt: a centimetre and a half may be error") {
    const auto two = heights({150, 151.5}, 0.58); // 1.52 a month, SE 0.58 sqrt(2) 30.4375 / 30 = 0.832
    const auto watch = check_growth(boy(), two, thirteen);
    CHECK(watch.rate->standard_error == doctest::Approx(0.832).epsilon(1e-3));
    CHECK(codes(two) == Codes{});
    CHECK(watch.heights[1].rate->value == doctest::Approx(1.522).epsilon(1e-3));
    CHECK_FALSE(watch.heights[0].rate);
}

TEST_CASE("one height misread by 8 cm widens the error instead of making a spurt") {
    CHECK(codes(heights({150, 150.2, 150.4, 158.4, 150.8, 151, 159.2}, 0.58)) == Codes{});
}

TEST_CASE("heights older than half a year do not count; order is free; other athletes are left out") {
    auto old = heights({140, 156}, 0.58);
    old[0].date = thirteen - 184;
    CHECK(codes(old) == Codes{});
    old[0].date = thirteen - 183;
    CHECK(codes(old) == Codes{"growth_spurt"});
    std::reverse(old.begin(), old.end());
    CHECK(codes(old) == Codes{"growth_spurt"});
    old[0].athlete = old[1].athlete = AthleteId{"another"};
    CHECK(codes(old) == Codes{"measure_height"});
}

TEST_CASE("where in growth: mirwald with sitting height and body mass, else moore; a band with its bias") {
    auto taped = boy();
    auto results = heights({156}, 0.58);
    const auto moore = check_growth(taped, results, thirteen);
    CHECK(moore.equation == OffsetEquation::moore);
    CHECK(std::abs(moore.offset->value - -0.6740) < 0.005); // age 13.0 by days / 365.25
    taped.sitting_height = Length::centimetres(80);
    CHECK(check_growth(taped, results, thirteen).equation == OffsetEquation::moore); // no body mass
    results.push_back(result("body_mass", thirteen - 90, 45, 0.45));
    const auto mirwald = check_growth(taped, results, thirteen);
    CHECK(mirwald.equation == OffsetEquation::mirwald);
    CHECK(std::abs(mirwald.offset->value - -1.0668) < 0.005);
    CHECK(mirwald.words.back() == "Probably before the time of fastest growth, by the equation of Mirwald "
                                  "and others: standard error 0.6 years, and "
                                  "early maturers look 1.15 years less mature than they are, average ones "
                                  "0.36. A rough band, no date; never for "
                                  "selection.");
    results.back().date = thirteen - 93;
    CHECK(check_growth(taped, results, thirteen).equation == OffsetEquation::moore);
}
