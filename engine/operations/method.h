// method: any published method the tool uses, by itself; without a name, the list of them.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/method.h"
#include "values/refusal.h"

#include <map>

namespace amentum {

struct MethodRequest {
    std::optional<std::string> name;
    std::map<std::string, std::string> inputs;
};
BOOST_DESCRIBE_STRUCT(MethodRequest, (), (name, inputs))

struct ShownMethodInput {
    std::string name;
    std::string meaning;
    std::string allowed;
    bool needed;
};
BOOST_DESCRIBE_STRUCT(ShownMethodInput, (), (name, meaning, allowed, needed))

struct ShownMethod {
    std::string name;
    std::string question;
    std::vector<ShownMethodInput> inputs;
    std::vector<std::string> source;
};
BOOST_DESCRIBE_STRUCT(ShownMethod, (), (name, question, inputs, source))

struct ShownOutput {
    double value;
    std::string unit;
    std::optional<double> standard_error;
};
BOOST_DESCRIBE_STRUCT(ShownOutput, (), (value, unit, standard_error))

struct MethodRun {
    std::string method;
    std::map<std::string, std::string> inputs;
    std::map<std::string, ShownOutput> outputs;
    std::vector<std::string> notes;
    std::vector<std::string> source;
};

// The whole registry, in the order of the modules.
const std::vector<Method>& all_methods();

Result<std::vector<ShownMethod>> method_list();
Result<MethodRun> run_method(const std::string& name, const std::map<std::string, std::string>& inputs);

} // namespace amentum
