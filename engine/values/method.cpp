#include "values/method.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <sstream>

namespace amentum {
namespace {

Result<Done> check_names(const std::vector<MethodInput>& inputs,
                         const std::map<std::string, std::string>& given) {
    std::vector<std::string> names;
    for (const auto& input : inputs)
        names.push_back(input.name);
    for (const auto& [name, text] : given) {
        if (std::find(names.begin(), names.end(), name) != names.end())
            continue;
        Refusal refusal = refuse_unknown("input", name, names);
        refusal.code = RefusalCode::unknown_field;
        refusal.field = name;
        return refusal;
    }
    return Done{};
}

Result<std::vector<double>> parse_numbers(const MethodInput& input, const std::string& text) {
    std::vector<double> numbers;
    std::istringstream parts(text);
    for (std::string part; std::getline(parts, part, input.list ? ',' : '\n');) {
        const auto number = parse_number(part);
        if (!number)
            return Refusal{RefusalCode::wrong_type,
                           input.name + " is \"" + text + "\", but must be a number.", input.name, text,
                           input.list ? "numbers with commas between" : "a number"};
        if (*number < input.low || *number > input.high)
            return refuse_range(input.name, *number, input.low, input.high, "");
        numbers.push_back(*number);
    }
    if (numbers.empty())
        return refuse_missing(input.name, input.meaning);
    return numbers;
}

} // namespace

Result<MethodArguments> check_arguments(const std::vector<MethodInput>& inputs,
                                        const std::map<std::string, std::string>& given) {
    if (const auto names = check_names(inputs, given); !names)
        return names.refusal();
    MethodArguments arguments;
    for (const auto& input : inputs) {
        const auto found = given.find(input.name);
        if (found == given.end() && !input.otherwise)
            return refuse_missing(input.name, input.meaning);
        const std::string text = found != given.end() ? found->second : *input.otherwise;
        if (text.empty() && found == given.end())
            continue;
        if (!input.choices.empty()) {
            if (std::find(input.choices.begin(), input.choices.end(), text) == input.choices.end())
                return refuse_choice(input.name, text, input.choices);
            arguments.words_[input.name] = text;
            continue;
        }
        auto numbers = parse_numbers(input, text);
        if (!numbers)
            return numbers.refusal();
        arguments.numbers_[input.name] = *std::move(numbers);
    }
    return arguments;
}

} // namespace amentum
