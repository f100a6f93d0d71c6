#include "inference/limiters.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

using namespace amentum;

namespace {

const std::vector<VelocityPrior> slopes{{"jump_power", 0.40, 0.20, "", {"A"}},
                                        {"single_leg_strength", 0.25, 0.25, "", {"B"}},
                                        {"pulling_strength", 0.20, 0.25, "", {"C"}}};
const std::vector<AttainableChange> changes{{"jump_power", 0.35, 0.20, "", {"A"}},
                                            {"single_leg_strength", 0.50, 0.25, "", {"B"}},
                                            {"pulling_strength", 0.40, 0.20, "", {"C"}}};

LimiterQuestion usual_question() {
    return {{{"jump_power", {0, 0.2}, true},
             {"single_leg_strength", {0, 1}, false},
             {"pulling_strength", {0.5, 0.2}, true}},
            2.0,
            0.4,
            false,
            7};
}

const LimiterGain& gain_of(const LimiterAnswer& answer, const std::string& quality) {
    return *std::find_if(answer.gains.begin(), answer.gains.end(),
                         [&](const auto& g) { return g.quality == quality; });
}

bool says(const LimiterAnswer& answer, const std::string& part) {
    return std::any_of(answer.words.begin(), answer.words.end(),
                       [&](const auto& sentence) { return sentence.find(part) != std::string::npos; });
}

} // namespace

TEST_CASE("the expected gain is the product of the means, when nothing is cut off") {
    // E beta . sigma . E max(0, a) . E h; at z = 0 with hardly any doubt h = 1; E max(0, N(0.35, 0.05^2)) =
    // 0.35.
    auto narrow = changes;
    for (auto& change : narrow)
        change.sd = 0.05;
    auto question = usual_question();
    for (auto& each : question.qualities)
        each.z = {0, 1e-6};
    const auto answer = estimate_limiters(question, slopes, narrow);
    // 4,000 draws of beta have a standard error of 0.2 / sqrt(4000) = 0.0032; x 2 x 0.35: 0.0022. Four of
    // those:
    CHECK(std::abs(gain_of(answer, "jump_power").expected - 0.40 * 2 * 0.35) < 0.009);
    CHECK(std::abs(gain_of(answer, "single_leg_strength").expected - 0.25 * 2 * 0.50) < 0.016);
}

TEST_CASE("interval, chance and regret hang together") {
    const auto answer = estimate_limiters(usual_question(), slopes, changes);
    double chances = 0;
    for (const auto& gain : answer.gains) {
        chances += gain.chance_best;
        CHECK(gain.central_80.low < gain.expected);
        CHECK(gain.expected < gain.central_80.high);
        CHECK(gain.information == 0);
    }
    CHECK(std::abs(chances - 1) < 1e-9);
    CHECK(std::abs(answer.gains.front().regret - answer.value_of_knowing) < 1e-12);
    CHECK(answer.value_of_knowing > 0);
}

TEST_CASE("close calls are not called") {
    const auto answer = estimate_limiters(usual_question(), slopes, changes);
    CHECK(!answer.can_tell);
    CHECK(says(answer, "cannot tell"));
    CHECK(says(answer, "the literature's"));
    CHECK(!says(answer, "Below 18"));
}

TEST_CASE("a clear lead is called") {
    auto sure = slopes;
    for (auto& slope : sure)
        slope.sd = 0.05;
    auto question = usual_question();
    question.qualities = {{"jump_power", {-2, 0.05}, true},
                          {"single_leg_strength", {2, 0.05}, true},
                          {"pulling_strength", {2, 0.05}, true}};
    const auto answer = estimate_limiters(question, sure, changes);
    CHECK(answer.can_tell);
    CHECK(answer.gains.front().quality == "jump_power");
    CHECK(answer.gains.front().chance_best > 0.9);
    CHECK(!says(answer, "cannot tell"));
}

TEST_CASE("below 18 gains are smaller, and growth is spoken of") {
    auto question = usual_question();
    const auto adult = estimate_limiters(question, slopes, changes);
    question.under_18 = true;
    const auto young = estimate_limiters(question, slopes, changes);
    CHECK(says(young, "Below 18"));
    for (const auto& gain : young.gains) {
        const double share = gain.expected / gain_of(adult, gain.quality).expected;
        CHECK(share > 0.30); // 0.49 / 1.34 = 0.37, cut off at 0.05 and 1
        CHECK(share < 0.45);
        CHECK(gain.chance_best == gain_of(adult, gain.quality).chance_best); // one share for all qualities
    }
}

TEST_CASE("gains follow the weeks and the years of training") {
    auto question = usual_question();
    const double twelve = estimate_limiters(question, slopes, changes).gains.front().expected;
    question.weeks = 6;
    CHECK(std::abs(estimate_limiters(question, slopes, changes).gains.front().expected - twelve / 2) < 1e-12);
    question.weeks = 12;
    question.training_years = 8;
    CHECK(std::abs(estimate_limiters(question, slopes, changes).gains.front().expected - 0.4 * twelve) <
          1e-12);
    CHECK(training_share(0.5) == 2.0);
    CHECK(training_share(3) == 1.0);
    CHECK(training_share(std::nullopt) == 1.0);
}

TEST_CASE("headroom is one at the usual level and stays in its bounds") {
    CHECK(headroom(0) == 1);
    CHECK(headroom(-1) == 1.5);
    CHECK(headroom(-9) == 2);
    CHECK(headroom(9) == 0.2);
}

TEST_CASE("slopes of one's own take the place of the literature's, with what is shared of their doubt") {
    auto question = usual_question();
    for (auto& each : question.qualities) {
        each.z = {0, 1e-6};
        each.slope = Estimate{0.4, 0.1};
        each.information = 0.5;
        each.attainable = Estimate{0.5, 0.05};
    }
    const auto apart = estimate_limiters(question, slopes, changes);
    for (const auto& gain : apart.gains) { // 4,000 draws: SE of the mean slope 0.0016, x 2 x 0.5
        CHECK(std::abs(gain.expected - 0.4 * 2 * 0.5) < 0.008);
        CHECK(gain.information == 0.5);
        CHECK(std::abs(gain.chance_best - 1.0 / 3) < 0.04); // alike: 4 SE of a share of 4,000 draws is 0.03
    }
    CHECK(!says(apart, "the literature's"));
    // Doubts that rise and fall together leave less to know.
    question.slope_correlation = {1, 0.9, 0.9, 0.9, 1, 0.9, 0.9, 0.9, 1};
    CHECK(estimate_limiters(question, slopes, changes).value_of_knowing < 0.8 * apart.value_of_knowing);
}

TEST_CASE("what is attainable lies between the roster's most improved tenth and the published change") {
    // 1.755 x 0.1 x sqrt(84 / 30) = 0.29367, relative error sqrt(1 / 36 + 0.09) = 0.34319; published 0.5, sd 0.25.
    const AttainableChange published{"jump_power", 0.5, 0.25, "", {}};
    const Estimate here = attainable_here(0.1, 36, published);
    // Precisions 1 / 0.100785^2 = 98.449 and 16: (0.29367 x 98.449 + 8) / 114.449.
    CHECK(here.value == doctest::Approx(0.32252).epsilon(1e-3));
    CHECK(here.standard_error == doctest::Approx(0.16126).epsilon(1e-3));
}
