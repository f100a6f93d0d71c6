#include "equipment/bar_ramp.h"

#include "equipment/load_words.h"
#include "equipment/solve_load.h"
#include "equipment/stack_moves.h"

#include <algorithm>

namespace amentum {
namespace {

ExactMass side_of(const MadeLoad& load) {
    ExactMass side = 0;
    for (const auto& plates : load.one_side)
        side += plates.count * exact_mass(plates.each);
    return side;
}

std::optional<Refusal> refuse_loads(const RampWanted& wanted) {
    if (stacking_of(wanted.means).stacks == 0)
        return Refusal{RefusalCode::method_does_not_apply, "Only what takes plates has plates to handle.",
                       "means", word(wanted.means),
                       "straight_bar, hex_bar, safety_bar, camber_bar, landmine, added_plate or sled"};
    if (wanted.loads.empty())
        return refuse_missing("loads", "the loads of the sets, in order");
    if (wanted.loads.size() > most_ramp_sets)
        return refuse_range("loads", static_cast<double>(wanted.loads.size()), 1,
                            static_cast<double>(most_ramp_sets), "sets");
    for (const Mass load : wanted.loads)
        if (load <= Mass::kilograms(0) || load > Mass::kilograms(LoadTable::most_kilograms))
            return refuse_range("loads", load.kilograms(), 0, LoadTable::most_kilograms, "kg");
    return std::nullopt;
}

std::vector<PlatesOnSide> runs_of(const std::vector<std::size_t>& kinds, const PlateStock& stock) {
    std::vector<PlatesOnSide> runs;
    for (std::size_t i = 0; i < kinds.size(); ++i)
        if (i > 0 && kinds[i] == kinds[i - 1])
            ++runs.back().count;
        else
            runs.push_back({stock.labels[kinds[i]], mass_of(stock.each[kinds[i]]), 1});
    return runs;
}

int moves_through(const std::vector<MadeLoad>& loads) {
    std::vector<PlatesOnSide> on;
    int moves = 0;
    for (const auto& load : loads) {
        moves += stack_moves(on, load.one_side);
        on = load.one_side;
    }
    return moves + stack_moves(on, {});
}

} // namespace

Result<PlateStock> stock_of(const Kit& kit) {
    auto kinds = plates_owned(kit, 1);
    if (kinds.size() > PlateCounts::most_kinds)
        return refuse_range("kit", static_cast<double>(kinds.size()), 0,
                            static_cast<double>(PlateCounts::most_kinds), "different plate masses");
    std::reverse(kinds.begin(), kinds.end());
    PlateStock stock;
    for (auto& kind : kinds) {
        stock.labels.push_back(std::move(kind.label));
        stock.each.push_back(kind.each);
        stock.singly.push_back(kind.available);
    }
    return stock;
}

Result<BarRamp> bar_ramp(const Kit& kit, const RampWanted& wanted) {
    if (const auto refusal = refuse_loads(wanted))
        return *refusal;
    const Mass heaviest = *std::max_element(wanted.loads.begin(), wanted.loads.end());
    const auto best = solve_load(kit, wanted.means, heaviest, wanted.item);
    if (!best)
        return best.refusal();
    const auto table = LoadTable::of(kit, wanted.means, best->nearest.item);
    if (!table)
        return table.refusal();
    BarRamp ramp{wanted, best->nearest.item, 0, stacking_of(wanted.means), {}, {}};
    for (const Mass load : wanted.loads) {
        ramp.usual.push_back(table->choose(load).nearest);
        ramp.sides.push_back({side_of(ramp.usual.back())});
    }
    ramp.bar = exact_mass(ramp.usual.front().total) - ramp.stacking.stacks * ramp.sides.front().mass;
    return ramp;
}

PlateCounts most_on(const BarRamp& ramp, const PlateStock& stock) {
    PlateCounts most;
    for (std::size_t kind = 0; kind < stock.each.size(); ++kind)
        most.of[kind] = static_cast<std::uint8_t>(
            std::min(stock.singly[kind] / ramp.stacking.stacks, PlateCounts::most_of_a_kind));
    return most;
}

LoadRamp ramp_with(const BarRamp& ramp, const PlateStock& stock, const RampStacks& stacks, MassUnit unit) {
    LoadRamp done{ramp.item, ramp.stacking.stacks, {}, 0, 0, moves_through(ramp.usual), stacks.proven};
    const std::string bar = (ramp.wanted.means == LoadMeans::landmine ? "landmine, " : "") + ramp.item;
    std::vector<PlatesOnSide> on;
    for (std::size_t t = 0; t < stacks.sets.size(); ++t) {
        auto runs = runs_of(stacks.sets[t], stock);
        ExactMass side = 0;
        for (const auto kind : stacks.sets[t])
            side += stock.each[kind];
        const int moves = stack_moves(on, runs);
        const std::string words =
            runs.empty() ? bar + " alone" : bar + " + " + describe_plates(runs, unit) + ramp.stacking.ending;
        on = runs;
        done.sets.push_back(
            {ramp.wanted.loads[t],
             {mass_of(ramp.bar + ramp.stacking.stacks * side), std::move(runs), words, ramp.item},
             moves});
        done.moves += moves;
    }
    done.strip = stack_moves(on, {});
    done.moves += done.strip;
    return done;
}

} // namespace amentum
