// Every method of this module has its page, and every example on it gives the numbers printed there.
#include "measurement/methods.h"
#include "values/shortest_decimal.h"

#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace amentum {
namespace {

struct Example {
    std::map<std::string, std::string> given;
    std::vector<std::string> printed;
};

// The fenced blocks marked `example`: the first line calls the method, the others are its outputs.
std::vector<Example> examples_of(const std::string& name) {
    std::ifstream page(std::string(AMENTUM_SOURCE_DIR) + "/docs/methods/" + name + ".md");
    std::vector<Example> examples;
    bool inside = false;
    for (std::string line; std::getline(page, line);) {
        if (line.rfind("```", 0) == 0) {
            inside = line == "```example";
        } else if (inside && line.rfind("amentum method ", 0) == 0) {
            std::istringstream words(line.substr(15));
            std::string word;
            words >> word;
            CHECK(word == name);
            examples.emplace_back();
            while (words >> word)
                examples.back().given[word.substr(0, word.find('='))] = word.substr(word.find('=') + 1);
        } else if (inside) {
            REQUIRE_FALSE(examples.empty());
            examples.back().printed.push_back(line);
        }
    }
    return examples;
}

std::vector<std::string> print(const MethodAnswer& answer) {
    std::vector<std::string> lines;
    for (const auto& output : answer.outputs)
        lines.push_back(output.name + " = " + format_fixed(output.value, 4) +
                        (output.unit == "1" ? "" : " " + output.unit));
    return lines;
}

} // namespace

TEST_CASE("The examples of the methods pages hold") {
    for (const auto& method : measurement::methods()) {
        CAPTURE(method.name);
        const auto examples = examples_of(method.name);
        CHECK_FALSE(examples.empty());
        for (const auto& example : examples) {
            const auto arguments = check_arguments(method.inputs, example.given);
            REQUIRE(arguments);
            const auto answer = method.run(*arguments);
            REQUIRE(answer);
            CHECK(print(*answer) == example.printed);
        }
    }
}

TEST_CASE("Method names are unique nouns with a question and inputs") {
    std::set<std::string> names;
    for (const auto& method : measurement::methods()) {
        CAPTURE(method.name);
        CHECK(names.insert(method.name).second);
        CHECK(method.question.back() == '?');
        CHECK_FALSE(method.inputs.empty());
        CHECK_FALSE(method.sources.empty());
    }
    CHECK(names.size() == 48);
}

TEST_CASE("Methods refuse what they cannot answer, naming the input") {
    const auto refusal_of = [](const std::string& name, const std::map<std::string, std::string>& given) {
        for (const auto& method : measurement::methods()) {
            if (method.name != name)
                continue;
            const auto arguments = check_arguments(method.inputs, given);
            if (!arguments)
                return arguments.refusal();
            const auto answer = method.run(*arguments);
            REQUIRE_FALSE(answer);
            return answer.refusal();
        }
        FAIL("no method of that name");
        return Refusal{};
    };
    CHECK(refusal_of("one_rep_max", {{"load_kg", "100"}, {"reps", "0"}}).field == "reps");
    const auto long_set = refusal_of("one_rep_max", {{"load_kg", "100"}, {"reps", "16"}});
    CHECK(long_set.code == RefusalCode::method_does_not_apply);
    CHECK(long_set.field == "reps");
    CHECK(refusal_of("smallest_detectable_change", {{"sd", "20"}}).field == "icc");
    CHECK(refusal_of("smallest_detectable_change", {}).field == "sem");
    CHECK(refusal_of("typical_error", {{"first", "1,2"}, {"second", "1"}}).field == "second");
    CHECK(refusal_of("expected_maximum", {{"readings", "2.5"}}).field == "readings");
    CHECK(
        refusal_of("maturity_offset", {{"sex", "male"}, {"age_years", "13"}, {"stature_cm", "156"}}).field ==
        "sitting_height_cm");
    CHECK(refusal_of("radar_speed", {{"speed_ms", "40"}, {"angle_deg", "60"}}).field == "angle_deg");
}

} // namespace amentum
