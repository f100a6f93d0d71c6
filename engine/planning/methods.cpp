#include "planning/methods.h"

#include "planning/next_load.h"
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

Result<MethodAnswer> run_next_load(const MethodArguments& given) {
    const SetWritten written{given.number("written_load_kg"), static_cast<int>(given.number("written_reps")),
                             given.number("written_reserve")};
    SetShown shown{given.number("load_kg"), static_cast<int>(given.number("reps")), {}};
    if (given.has("reserve"))
        shown.reserve = given.number("reserve");
    const auto difference = measure_difference(written, {shown});
    if (!difference)
        return Refusal{RefusalCode::method_does_not_apply,
                       "The set says nothing about what was left, or lies above 15 repetitions and reserve.",
                       "reserve", "", "a reserve, or fewer repetitions than written; 15 in all at most"};
    const double factor = next_factor(*difference, given.word("region") == "legs");
    return MethodAnswer{{{"ratio", difference->ratio, "1"},
                         {"difference", difference->repetitions, "1"},
                         {"factor", factor, "1"},
                         {"next_load", written.lifted * factor, "kg"}}};
}

} // namespace

std::vector<Method> methods() {
    return {{"training_wave",
             "How hard is a main lift in one week of a block: fraction of the maximum, repetitions, reserve?",
             {{"week", "which week of the block", 1, 16},
              {"weeks", "how long the block is", 4, 16, {}, "4"},
              {"athlete", "who trains", 0, 0, {"youth", "novice", "trained"}, "trained"}},
             {"Epley1985", "Zourdos2016", "Rhea2003", "Schoenfeld2017"},
             run_training_wave},
            {"next_load",
             "What load follows a set, by its repetitions and what was left, against what was written?",
             {{"written_load_kg", "load that was written, lifted in all", 0.5, 600},
              {"written_reps", "repetitions that were written", 1, 15},
              {"written_reserve", "that were to be left", 0, 20, {}, "2"},
              {"load_kg", "load of the set done, lifted in all", 0.5, 600},
              {"reps", "repetitions done", 1, 15},
              {"reserve", "that were left; left out: not said", 0, 20, {}, ""},
              {"region", "what works", 0, 0, {"legs", "other"}, "legs"}},
             {"Epley1985", "Zourdos2016", "ACSM2009", "Halperin2022", "Hackett2017"},
             run_next_load}};
}

} // namespace amentum::planning
