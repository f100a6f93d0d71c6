// Every method of the module has its page, and the examples on it are what the method answers.
#include "inference/methods.h"
#include "values/shortest_decimal.h"

#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <sstream>
#include <string>

using namespace amentum;

namespace {

Result<MethodAnswer> answer_to(const std::string& name, const std::map<std::string, std::string>& given) {
    for (const auto& method : inference::methods()) {
        if (method.name != name)
            continue;
        const auto arguments = check_arguments(method.inputs, given);
        if (!arguments)
            return arguments.refusal();
        return method.run(*arguments);
    }
    return refuse_unknown("method", name, {});
}

struct PageCheck {
    int commands = 0;
    int numbers = 0;
};

void check_output(const MethodAnswer& answer, const std::string& name, const std::string& number) {
    CAPTURE(name);
    for (const auto& output : answer.outputs)
        if (output.name == name) {
            const auto point = number.find('.');
            const int decimals = point == std::string::npos ? 0 : static_cast<int>(number.size() - point - 1);
            CHECK(format_fixed(output.value, decimals) == number);
            return;
        }
    FAIL("no such output");
}

PageCheck check_page(const std::string& method) {
    std::ifstream page(std::string(AMENTUM_SOURCE_DIR) + "/docs/methods/" + method + ".md");
    CAPTURE(method);
    REQUIRE(page.good());
    PageCheck seen;
    bool inside = false;
    std::optional<MethodAnswer> answer;
    for (std::string line; std::getline(page, line);) {
        if (line.rfind("```", 0) == 0) {
            inside = line == "```example";
            continue;
        }
        if (!inside)
            continue;
        std::istringstream words(line);
        std::string first, second, name;
        words >> first >> second >> name;
        if (first == "amentum") {
            std::map<std::string, std::string> given;
            for (std::string pair; words >> pair;)
                given[pair.substr(0, pair.find('='))] = pair.substr(pair.find('=') + 1);
            const auto result = answer_to(name, given);
            REQUIRE(bool(result));
            answer = *result;
            ++seen.commands;
        } else {
            REQUIRE(answer);
            check_output(*answer, first, name);
            ++seen.numbers;
        }
    }
    return seen;
}

} // namespace

TEST_CASE("each method has a page with an example that holds") {
    for (const auto& method : inference::methods()) {
        const auto seen = check_page(method.name);
        CHECK(seen.commands >= 1);
        CHECK(seen.numbers >= 1);
        CHECK(!method.sources.empty());
    }
}

TEST_CASE("wrong lists are refused in words") {
    const auto refused = [](std::map<std::string, std::string> given) {
        const auto answer = answer_to("trajectory", given);
        REQUIRE(!answer);
        return answer.refusal();
    };
    std::map<std::string, std::string> given{
        {"days", "0,10"}, {"values", "80,81"}, {"variances", "1"}, {"drift_per_day", "0.01"}};
    CHECK(bool(answer_to("trajectory", given)));
    auto wrong = given;
    wrong["values"] = "80,81,82";
    CHECK(refused(wrong).sentence == "values has 3 numbers, but there are 2 days.");
    wrong = given;
    wrong["days"] = "10,0";
    CHECK(refused(wrong).sentence == "days must rise, but 0 follows 10.");
    wrong = given;
    wrong["days"] = "0,0.5";
    CHECK(refused(wrong).code == RefusalCode::out_of_range);
    wrong = given;
    wrong["variances"] = "0";
    CHECK(refused(wrong).code == RefusalCode::out_of_range);
    wrong = given;
    wrong["prior_mean"] = "80";
    CHECK(refused(wrong).field == "prior_variance");
    CHECK(answer_to("series_variances", {{"days", "0,1"}, {"values", "1,2"}}).refusal().code ==
          RefusalCode::too_few_data);
    CHECK(answer_to("smallest_worthwhile_change", {{"values", "1"}, {"error", "1"}}).refusal().code ==
          RefusalCode::too_few_data);
}
