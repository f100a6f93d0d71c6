// Every method of this module has its page, and every example on it gives the numbers printed there; the numbers come
// from the published equations by hand (jump power: Sayers, Harman, Lewis for three athletes) or from closed form.
#include "force_traces/jump_power.h"
#include "force_traces/methods.h"
#include "values/shortest_decimal.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <fstream>
#include <sstream>

namespace amentum {
namespace {

std::vector<std::string> lines_of_examples(const std::string& name) {
    std::ifstream page(std::string(AMENTUM_SOURCE_DIR) + "/docs/methods/" + name + ".md");
    std::vector<std::string> lines;
    bool inside = false;
    for (std::string line; std::getline(page, line);) {
        if (line.rfind("```", 0) == 0)
            inside = line == "```example";
        else if (inside)
            lines.push_back(line);
    }
    return lines;
}

std::vector<std::string> answered(const Method& method, const std::string& call) {
    std::istringstream words(call);
    std::map<std::string, std::string> given;
    for (std::string word; words >> word;)
        if (const auto at = word.find('='); at != std::string::npos)
            given[word.substr(0, at)] = word.substr(at + 1);
    const auto arguments = check_arguments(method.inputs, given);
    REQUIRE(arguments);
    const auto answer = method.run(*arguments);
    REQUIRE(answer);
    std::vector<std::string> lines;
    for (const auto& output : answer->outputs)
        lines.push_back(output.name + " = " + format_fixed(output.value, 4) +
                        (output.unit == "1" ? "" : " " + output.unit));
    return lines;
}

} // namespace

TEST_CASE("The examples of the pages hold") {
    CHECK(force_traces::methods().size() == 4);
    for (const auto& method : force_traces::methods()) {
        CAPTURE(method.name);
        CHECK(method.question.back() == '?');
        const auto lines = lines_of_examples(method.name);
        REQUIRE_FALSE(lines.empty());
        std::vector<std::string> expected;
        for (const auto& line : lines) {
            if (line.rfind("amentum method " + method.name + " ", 0) == 0) {
                CHECK(expected.empty());
                expected = answered(method, line);
            } else {
                REQUIRE_FALSE(expected.empty());
                CHECK(line == expected.front());
                expected.erase(expected.begin());
            }
        }
        CHECK(expected.empty());
    }
}

TEST_CASE("Jump power by five equations for three athletes") {
    struct Row {
        double mass, height;
        std::array<double, 5> watts; // Sayers squat, Sayers countermovement, Harman peak, Harman mean, Lewis
    };
    const std::array<Row, 3> rows{{{75, 60, {4984.5, 4774.5, 4592.0, 1604.0, 1261.55}},
                                   {80, 40, {3997.0, 3981.0, 3534.0, 1295.0, 1098.72}},
                                   {65, 30, {2710.5, 2728.5, 2375.0, 738.0, 773.11}}}};
    const std::array<PowerEquation, 5> equations{
        PowerEquation::sayers_squat, PowerEquation::sayers_countermovement, PowerEquation::harman_peak,
        PowerEquation::harman_mean, PowerEquation::lewis};
    for (const auto& row : rows)
        for (std::size_t i = 0; i < equations.size(); ++i) {
            CAPTURE(word(equations[i]));
            const auto watts = jump_power(equations[i], row.height, row.mass);
            REQUIRE(watts);
            CHECK(std::abs(*watts - row.watts[i]) < 0.01);
        }
}

TEST_CASE("The sign of Harman's constant: the group means of Canavan and Vescovi belong together") {
    // They print 2920.8 W (Sayers, squat), 2925.1 (Sayers, countermovement) and 2585.0 (Harman) for one group; the first
    // two fix its height and mass.
    const double height = 32.3, mass = 66.6;
    CHECK(std::abs(*jump_power(PowerEquation::sayers_squat, height, mass) - 2920.8) < 10);
    CHECK(std::abs(*jump_power(PowerEquation::sayers_countermovement, height, mass) - 2925.1) < 10);
    CHECK(std::abs(*jump_power(PowerEquation::harman_peak, height, mass) - 2585.0) < 20);
}

TEST_CASE("Jumps too small for an equation, and sizes outside, are refused") {
    CHECK(jump_power(PowerEquation::harman_peak, 5, 30).refusal().code == RefusalCode::method_does_not_apply);
    CHECK(jump_power(PowerEquation::lewis, 120, 75).refusal().field == "height_cm");
    CHECK(jump_power(PowerEquation::lewis, 40, 20).refusal().field == "body_mass_kg");
}

} // namespace amentum
