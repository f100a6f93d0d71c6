#include "planning/methods.h"

#include "planning/repetitions.h"
#include "planning/wave.h"

#include <cmath>

namespace amentum::planning {
namespace {

Loading loading_called(const std::string& name) {
    return name == "youth" ? Loading::youth : name == "novice" ? Loading::novice : Loading::trained;
}

Result<MethodAnswer> run_training_wave(const MethodArguments& given) {
    const int weeks = static_cast<int>(given.number("weeks")), week = static_cast<int>(given.number("week"));
    for (const char* name : {"week", "weeks"})
        if (given.number(name) != std::floor(given.number(name)))
            return refuse_range(name, given.number(name), 1, 16, "", "A week is a whole number.");
    if (week > weeks)
        return refuse_range("week", week, 1, weeks, "", "The week must lie in the block.");
    const Loading loading = loading_called(given.word("athlete"));
    const WeekOfWave here = plan_wave(weeks, loading)[static_cast<std::size_t>(week - 1)];
    const int reserve = reserve_wanted(Part::main_lift, loading);
    const auto sets = repetitions_leaving(reserve, here.fraction, Part::main_lift, loading);
    return MethodAnswer{{{"fraction_of_maximum", here.fraction, "1"},
                         {"repetitions", static_cast<double>(sets.done), "1"},
                         {"reps_in_reserve", sets.reserve, "1"},
                         {"share_of_sets", here.reduced ? 0.5 : 1.0, "1"}}};
}

} // namespace

std::vector<Method> methods() {
    return {{"training_wave",
             "How hard is a main lift in one week of a block: fraction of the maximum, repetitions, reserve?",
             {{"week", "which week of the block", 1, 16},
              {"weeks", "how long the block is", 4, 16, {}, "4"},
              {"athlete", "who trains", 0, 0, {"youth", "novice", "trained"}, "trained"}},
             {"Epley1985", "Zourdos2016", "Rhea2003", "Schoenfeld2017"},
             run_training_wave}};
}

} // namespace amentum::planning
