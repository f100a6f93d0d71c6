// A published method that can be called by itself, so that a scientist can check any number the tool shows.
//
// Each module lists its own methods (measurement/methods.h, inference/methods.h, ...); operations joins the lists
// into the one registry that feeds `amentum method`, its route, the methods pages and the documentation tests.
// A method converts and checks nothing twice: MethodArguments hands out arguments already inside their range.
#pragma once

#include "values/refusal.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct MethodInput {
    std::string name; // ends in its unit: load_kg, distance_m, angle_deg, reps
    std::string meaning;
    double low = 0; // ignored when choices are given
    double high = 0;
    std::vector<std::string> choices = {}; // when given, the input is one of these words
    std::optional<std::string> otherwise =
        {};            // the value when it is left out; without it the input is needed
    bool list = false; // several numbers: "84.1,84.9,85.2"
};

struct MethodOutput {
    std::string name;
    double value;
    std::string unit; // "kg", "m/s", "1" for a ratio or a chance
    std::optional<double> standard_error = {};
};

struct MethodAnswer {
    std::vector<MethodOutput> outputs;
    std::vector<std::string> notes = {}; // warnings in whole sentences
};

class MethodArguments {
public:
    double number(const std::string& name) const { return numbers_.at(name).at(0); }
    const std::vector<double>& list(const std::string& name) const { return numbers_.at(name); }
    const std::string& word(const std::string& name) const { return words_.at(name); }
    bool has(const std::string& name) const { return numbers_.contains(name) || words_.contains(name); }

private:
    friend Result<MethodArguments> check_arguments(const std::vector<MethodInput>&,
                                                   const std::map<std::string, std::string>&);
    std::map<std::string, std::vector<double>> numbers_;
    std::map<std::string, std::string> words_;
};

struct Method {
    std::string name;     // snake_case, a noun: one_rep_max
    std::string question; // what it answers, one line
    std::vector<MethodInput> inputs;
    std::vector<std::string> sources; // keys of docs/sources.md
    std::function<Result<MethodAnswer>(const MethodArguments&)> run;
};

// An input whose `otherwise` is the empty text may be left out: has() then says no.
Result<MethodArguments> check_arguments(const std::vector<MethodInput>& inputs,
                                        const std::map<std::string, std::string>& given);

} // namespace amentum
