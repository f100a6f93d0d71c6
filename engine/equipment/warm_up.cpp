#include "equipment/warm_up.h"

#include "equipment/solve_load.h"
#include "equipment/stack_moves.h"

namespace amentum {
namespace {

struct Wanted {
    double fraction;
    int reps;
};

std::vector<Wanted> ramp_for(Mass working) {
    if (working <= Mass::kilograms(60))
        return {{0.4, 6}, {0.8, 3}};
    if (working <= Mass::kilograms(140))
        return {{0.4, 6}, {0.6, 4}, {0.8, 2}};
    return {{0.4, 6}, {0.6, 4}, {0.8, 2}, {0.9, 1}};
}

// One bar or column serves the whole ramp; dumbbells and balls change from set to set.
std::optional<std::string> item_of_ramp(LoadMeans means, const MadeLoad& working,
                                        const std::optional<std::string>& item) {
    const bool changes =
        means == LoadMeans::dumbbell_pair || means == LoadMeans::dumbbell_single || means == LoadMeans::ball;
    return changes ? item : std::optional(working.item);
}

} // namespace

Result<WarmUp> plan_warm_up(const Kit& kit, LoadMeans means, Mass working_load,
                            const std::optional<std::string>& item) {
    const auto asked = solve_load(kit, means, working_load, item);
    if (!asked)
        return asked.refusal();
    if (!asked->not_above)
        return Refusal{RefusalCode::load_not_makeable,
                       "The lightest load there is, " + asked->nearest.words + ", is above the working load.",
                       "working_load", "", "a load the kit can make"};
    const auto table = LoadTable::of(kit, means, item_of_ramp(means, *asked->not_above, item));
    if (!table)
        return table.refusal();

    WarmUp ramp{{}, *asked->not_above, 0, 0};
    const ExactMass working = exact_mass(ramp.working.total);
    std::vector<PlatesOnSide> on_the_bar;
    for (const auto& [fraction, reps] : ramp_for(ramp.working.total)) {
        const auto choice = table->choose(ramp.working.total * fraction);
        const MadeLoad& load = choice.not_above ? *choice.not_above : choice.nearest;
        if (exact_mass(load.total) >= working)
            break;
        if (!ramp.steps.empty() && exact_mass(load.total) == exact_mass(ramp.steps.back().load.total))
            continue;
        const int moves = stack_moves(on_the_bar, load.one_side);
        ramp.steps.push_back({fraction, load, reps, moves});
        ramp.moves += moves;
        on_the_bar = load.one_side;
    }
    ramp.moves_to_working = stack_moves(on_the_bar, ramp.working.one_side);
    ramp.moves += ramp.moves_to_working;
    return ramp;
}

} // namespace amentum
