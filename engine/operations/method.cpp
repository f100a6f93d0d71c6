#include "operations/method.h"

#include "body_mechanics/methods.h"
#include "equipment/methods.h"
#include "force_traces/methods.h"
#include "inference/methods.h"
#include "measurement/methods.h"
#include "operations/inside/inside.h"
#include "planning/methods.h"
#include "throwing_workload/methods.h"
#include "values/shortest_decimal.h"

#include <iterator>

namespace amentum {
namespace {

std::string allowed_words(const MethodInput& input) {
    std::string words;
    for (const auto& choice : input.choices)
        words += (words.empty() ? "" : ", ") + choice;
    if (input.choices.empty())
        words = format_shortest(input.low) + " to " + format_shortest(input.high);
    if (input.list)
        words = "numbers with commas between, each " + words;
    if (input.otherwise && !input.otherwise->empty())
        words += "; when left out " + *input.otherwise;
    return words;
}

std::vector<Method> joined() {
    std::vector<Method> all;
    for (auto methods : {equipment::methods(), force_traces::methods(), measurement::methods(),
                         body_mechanics::methods(built_in_tables().segments), inference::methods(),
                         throwing_workload::methods(), planning::methods()})
        std::move(methods.begin(), methods.end(), std::back_inserter(all));
    return all;
}

} // namespace

const std::vector<Method>& all_methods() {
    static const std::vector<Method> all = joined();
    return all;
}

Result<std::vector<ShownMethod>> method_list() {
    std::vector<ShownMethod> list;
    for (const auto& method : all_methods()) {
        ShownMethod shown{method.name, method.question, {}, method.sources};
        for (const auto& input : method.inputs)
            shown.inputs.push_back({input.name, input.meaning, allowed_words(input), !input.otherwise});
        list.push_back(std::move(shown));
    }
    return list;
}

Result<MethodRun> run_method(const std::string& name, const std::map<std::string, std::string>& inputs) {
    std::vector<std::string> names;
    for (const auto& method : all_methods()) {
        names.push_back(method.name);
        if (method.name != name)
            continue;
        const auto arguments = check_arguments(method.inputs, inputs);
        if (!arguments)
            return arguments.refusal();
        const auto answer = method.run(*arguments);
        if (!answer)
            return answer.refusal();
        MethodRun run{name, inputs, {}, answer->notes, method.sources};
        for (const auto& output : answer->outputs)
            run.outputs.emplace(output.name, ShownOutput{output.value, output.unit, output.standard_error});
        return run;
    }
    return refuse_unknown("method", name, names);
}

} // namespace amentum
