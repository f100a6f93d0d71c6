#include "equipment/methods.h"

#include "equipment/load_ramp.h"
#include "equipment/solve_load.h"
#include "equipment/stack_moves.h"
#include "values/shortest_decimal.h"

namespace amentum::equipment {
namespace {

Kit bar_and_pairs(double bar_kg, const std::vector<double>& pairs_kg) {
    Kit kit{KitId{"method"}, "of the method", MassUnit::kg, {}};
    const auto item = [](ItemKind kind, std::string label, int count, double kg) {
        return KitItem{kind, std::move(label), count, Mass::kilograms(kg), {}, {}, {}, {}};
    };
    kit.items.push_back(item(ItemKind::straight_bar, "bar", 1, bar_kg));
    for (const double kg : pairs_kg)
        kit.items.push_back(item(ItemKind::plate, format_shortest(kg) + " kg plate", 2, kg));
    return kit;
}

Result<MethodAnswer> run_makeable_load(const MethodArguments& given) {
    const Kit kit = bar_and_pairs(given.number("bar_kg"), given.list("pairs_kg"));
    const auto choice = solve_load(kit, LoadMeans::straight_bar, Mass::kilograms(given.number("target_kg")));
    if (!choice)
        return choice.refusal();
    const auto table = LoadTable::of(kit, LoadMeans::straight_bar);
    if (!table)
        return table.refusal();
    MethodAnswer answer;
    answer.outputs.push_back({"nearest", choice->nearest.total.kilograms(), "kg"});
    if (choice->not_above)
        answer.outputs.push_back({"not_above", choice->not_above->total.kilograms(), "kg"});
    if (choice->above)
        answer.outputs.push_back({"above", choice->above->total.kilograms(), "kg"});
    answer.outputs.push_back({"distinct_loads", static_cast<double>(table->size()), "1"});
    answer.notes.push_back("Nearest: " + choice->nearest.words + ".");
    if (!choice->above)
        answer.notes.push_back("The plates make nothing heavier.");
    if (!choice->not_above)
        answer.notes.push_back("The empty bar is already above the target.");
    return answer;
}

std::vector<PlatesOnSide> stack_of(const std::vector<double>& plates_kg) {
    std::vector<PlatesOnSide> stack;
    for (const double kg : plates_kg)
        if (kg > 0)
            stack.push_back({format_shortest(kg), Mass::kilograms(kg), 1});
    return stack;
}

Result<MethodAnswer> run_stack_moves(const MethodArguments& given) {
    const int moves = stack_moves(stack_of(given.list("from_kg")), stack_of(given.list("to_kg")));
    return MethodAnswer{{{"moves", static_cast<double>(moves), "1"}}};
}

Result<MethodAnswer> run_ramp_moves(const MethodArguments& given) {
    const Kit kit = bar_and_pairs(given.number("bar_kg"), given.list("pairs_kg"));
    RampWanted wanted{LoadMeans::straight_bar, {}, {}};
    for (const double kg : given.list("loads_kg"))
        wanted.loads.push_back(Mass::kilograms(kg));
    const auto ramp = solve_load_ramp(kit, wanted);
    if (!ramp)
        return ramp.refusal();
    MethodAnswer answer{{{"moves", static_cast<double>(ramp->moves), "1"},
                         {"usual_moves", static_cast<double>(ramp->usual_moves), "1"}}};
    for (const auto& set : ramp->sets)
        answer.notes.push_back("From the inside: " + set.load.words + ".");
    answer.notes.push_back(ramp->proven ? "Proven: no stacking handles fewer."
                                        : "The best found; that none handles fewer is not proven.");
    return answer;
}

} // namespace

std::vector<Method> methods() {
    return {
        {"makeable_load",
         "Which loads next to the target can a bar and these pairs of plates make?",
         {{"bar_kg", "mass of the bar", 0.1, 60},
          {"pairs_kg",
           "mass of one plate of each pair owned, a number for each pair",
           0.01,
           50,
           {},
           {},
           true},
          {"target_kg", "load wanted, bar included", 0.1, 600}},
         {"NistSp811"},
         run_makeable_load},
        {"stack_moves",
         "How many plates of one side are handled to change one stack into another?",
         {{"from_kg", "plates on the sleeve, innermost first; 0 for an empty sleeve", 0, 50, {}, {}, true},
          {"to_kg", "plates wanted, innermost first; 0 for an empty sleeve", 0, 50, {}, {}, true}},
         {},
         run_stack_moves},
        {"ramp_moves",
         "How many plates of one side are handled at least to load these sets one after the other?",
         {{"bar_kg", "mass of the bar", 0.1, 60},
          {"pairs_kg",
           "mass of one plate of each pair owned, a number for each pair",
           0.01,
           50,
           {},
           {},
           true},
          {"loads_kg", "loads of the sets in order, bar included", 0.1, 600, {}, {}, true}},
         {},
         run_ramp_moves},
    };
}

} // namespace amentum::equipment
