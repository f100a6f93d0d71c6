#include "measurement/methods.h"

#include <utility>

namespace amentum::measurement {
namespace {

// The measuring functions name fields without a unit ("sitting_height"); the caller gave "sitting_height_cm".
Refusal named_as_given(Refusal refusal, const std::vector<MethodInput>& inputs) {
    for (const auto& input : inputs)
        if (input.name == refusal.field)
            return refusal;
    for (const auto& input : inputs)
        if (input.name.rfind(refusal.field + "_", 0) == 0)
            refusal.field = input.name;
    return refusal;
}

Method naming_inputs(Method method) {
    method.run = [inputs = method.inputs, run = method.run](const MethodArguments& given) {
        auto answer = run(given);
        return answer ? answer : Result<MethodAnswer>(named_as_given(answer.refusal(), inputs));
    };
    return method;
}

} // namespace

std::vector<Method> methods() {
    std::vector<Method> all;
    for (const auto topic : {methods_of_lifts, methods_of_balls, methods_of_bodies, methods_of_errors,
                             methods_of_units, methods_of_lines, methods_of_repeats, methods_of_sides})
        for (auto& method : topic())
            all.push_back(naming_inputs(std::move(method)));
    return all;
}

} // namespace amentum::measurement
