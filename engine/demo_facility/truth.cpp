#include "demo_facility/truth.h"

#include "demo_facility/test_days.h"
#include "values/shortest_decimal.h"

#include <map>

namespace amentum {
namespace {

using Members = std::map<std::string, std::string>; // in alphabetical order, values as JSON text

std::string number(double x) {
    return format_fixed(x, 3);
}
std::string
quoted(const std::string& text) { // keys, slugs and our own words: nothing in them needs an escape
    return "\"" + text + "\"";
}
std::string object(const Members& members) {
    std::string text;
    for (const auto& [key, value] : members)
        text += (text.empty() ? "" : ", ") + quoted(key) + ": " + value;
    return "{" + text + "}";
}
std::string list(const std::vector<std::string>& items, const std::string& between = ", ") {
    std::string text;
    for (const auto& item : items)
        text += (text.empty() ? "" : between) + item;
    return text;
}
std::string lines(const std::vector<std::string>& items) {
    return "[\n    " + list(items, ",\n    ") + "\n  ]";
}

std::string effects() {
    std::vector<std::string> all;
    for (const auto& e : true_effects)
        all.push_back(object({{"quality", quoted(e.quality)},
                              {"between", number(e.between)},
                              {"within", number(e.within)},
                              {"log_spread", number(e.log_spread)}}));
    return lines(all);
}

std::string test_errors() {
    std::vector<std::string> all;
    for (const auto& t : true_tests)
        all.push_back(object(
            {{"test", quoted(t.test)},
             {"unit", quoted(t.error_unit)},
             {"day_sd", number(t.day)},
             {"trial_sd", number(t.trial)},
             {"quality",
              t.quality < 0 ? "null" : quoted(true_effects[static_cast<std::size_t>(t.quality)].quality)}}));
    return lines(all);
}

std::string blocks(const TrueThrower& thrower) {
    std::vector<std::string> all;
    for (const auto& block : thrower.blocks)
        all.push_back(
            object({{"quality", quoted(true_effects[static_cast<std::size_t>(block.quality)].quality)},
                    {"first_day", std::to_string(block.first_day)},
                    {"gain_sd", number(block.gain)}}));
    return "[" + list(all) + "]";
}

std::string levels(const TrueThrower& thrower) {
    Members all;
    for (std::size_t k = 0; k < demo_qualities; ++k)
        all[true_effects[k].quality] = number(thrower.state.back()[k]);
    return object(all);
}

std::string one_thrower(const Athlete& athlete, const TrueThrower& thrower) {
    const TrueLimiter limiter = true_limiter(thrower);
    const double change = thrower.velocity.back() - thrower.velocity.front();
    Members all{{"athlete", quoted(athlete.id.text)},
                {"blocks", blocks(thrower)},
                {"findable", thrower.findable ? "true" : "false"},
                {"levels_sd", levels(thrower)},
                {"limiter", quoted(limiter.quality)},
                {"limiter_gain_ms", number(limiter.gain_ms)},
                {"velocity_change_ms", number(change)},
                {"velocity_change_of_growth_ms", number(thrower.grown_ms)},
                {"velocity_ms", number(thrower.velocity.back())}};
    if (!thrower.findable)
        all["few_tests"] = quoted("three test days in 20 months");
    return object(all);
}

} // namespace

TrueLimiter true_limiter(const TrueThrower& thrower) {
    TrueLimiter best{true_effects.front().quality, 0};
    for (std::size_t k = 0; k < demo_qualities; ++k) {
        const double gain =
            true_velocity_spread * true_effects[k].within * usual_gain_at(thrower.state.back()[k]);
        if (gain > best.gain_ms)
            best = {true_effects[k].quality, gain};
    }
    return best;
}

std::string describe_truth(const std::vector<Athlete>& athletes, const std::vector<TrueThrower>& throwers,
                           std::uint64_t seed, Date last_day) {
    std::vector<std::string> everybody;
    for (std::size_t i = 0; i < athletes.size(); ++i)
        everybody.push_back(one_thrower(athletes[i], throwers[i]));
    const Members all{{"block", object({{"days", std::to_string(block_days)},
                                        {"gain_sd", number(usual_block_gain)},
                                        {"kept_share", number(kept_after_block)}})},
                      {"drift_sd_per_sqrt_day", number(true_drift_sd_per_sqrt_day)},
                      {"effects", effects()},
                      {"facility", quoted("Saltgrass Throwing Hall")},
                      {"growth", object({{"metres_a_year", number(metres_a_year)},
                                         {"mph_per_inch", number(growth_mph_per_inch)},
                                         {"mph_per_year", number(growth_mph_per_year)}})},
                      {"invented", "true"},
                      {"last_day", quoted(last_day.text())},
                      {"own_residual_ms", number(own_residual_sd)},
                      {"second_radar", object({{"bias_ms", number(second_radar_bias)},
                                               {"share_of_sessions", number(second_radar_share)}})},
                      {"seed", std::to_string(seed)},
                      {"test_errors", test_errors()},
                      {"throwers", lines(everybody)},
                      {"velocity_spread_ms", number(true_velocity_spread)}};
    std::string text;
    for (const auto& [key, value] : all)
        text += (text.empty() ? "" : ",\n") + ("  " + quoted(key)) + ": " + value;
    return "{\n" + text + "\n}\n";
}

} // namespace amentum
