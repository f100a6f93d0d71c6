#include "body_mechanics/equivalent_load.h"

#include "body_mechanics/inside/assumption_moves.h"
#include "body_mechanics/inside/balance_root.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double heaviest = 500; // kg

Setup loaded(Setup setup, double kilograms) {
    setup.load = Mass::kilograms(kilograms);
    return setup;
}

Result<double> equal_load(const Body& body, const Setup& to, Demand kind, double demand) {
    const auto miss = [&](double kilograms) {
        const auto pose = solve_pose(body, loaded(to, kilograms));
        return pose ? demand_of_leg(*pose, kind) - demand : no_posture_here;
    };
    const BalanceRoot root = find_balance(miss, 0, heaviest, 10, 1000);
    if (root.at)
        return *root.at;
    if (!root.any_posture)
        return solve_pose(body, loaded(to, 0)).refusal();
    return Refusal{RefusalCode::method_does_not_apply,
                   root.nearest_miss > 0 ? "Held this way the body alone already asks more of the lead leg."
                                         : "Held this way no load up to 500 kg asks as much of the lead leg.",
                   "to_hold", std::string(word(to.hold)), "a hold that can ask the same"};
}

enum class In { both, from, to };

// The load with one assumption moved. Body, rear share and pressure are the same in both set-ups and move together where
// both rest on them (a squat has no rear share); where two different bars sit on the trunk are two different errors.
std::optional<double> moved_load(Cause cause, In in, double amount, Demand kind, Body body, Setup from,
                                 Setup to) {
    Body once = body;
    if (in != In::to)
        move_assumption(cause, amount, body, from);
    if (in != In::from)
        move_assumption(cause, amount, once, to);
    const auto pose = solve_pose(body, from);
    if (!pose)
        return std::nullopt;
    const auto load = equal_load(body, to, kind, demand_of_leg(*pose, kind));
    return load ? std::optional(*load) : std::nullopt;
}

// Adds the error of the load to `same`, and the causes that cannot be moved.
void add_error(EquivalentLoad& same, const Body& body, const Setup& from, const Setup& to, Demand kind) {
    double variance = 0;
    const double load = to.load.kilograms();
    const auto add = [&](Cause cause, In in) {
        const double error = error_of(cause, body, in == In::to ? to : from);
        const auto more = moved_load(cause, in, error, kind, body, from, to);
        const auto less = moved_load(cause, in, -error, kind, body, from, to);
        if (!more && !less) {
            same.not_moved.push_back(cause);
            return;
        }
        const double change = (more.value_or(load) - less.value_or(load)) / (more && less ? 2 : 1);
        variance += change * change;
    };
    const auto rests_on = [](const Setup& setup, Cause cause) {
        const auto causes = causes_of(setup);
        return std::find(causes.begin(), causes.end(), cause) != causes.end();
    };
    for (const auto& [cause, name] : words_of<Cause>) {
        const bool in_from = rests_on(from, cause), in_to = rests_on(to, cause);
        if (in_from && in_to && cause != Cause::hold) {
            add(cause, In::both);
            continue;
        }
        if (in_from)
            add(cause, In::from);
        if (in_to)
            add(cause, In::to);
    }
    same.standard_error = std::sqrt(variance);
}

} // namespace

double demand_of_leg(const Pose& pose, Demand demand) {
    const double hip = demand == Demand::knee ? 0 : pose.lead->hip;
    const double knee = demand == Demand::hip ? 0 : pose.lead->knee;
    return (hip + knee) / pose.legs;
}

Result<Mass> solve_load_of_demand(const Body& body, const Setup& to, double demand, Demand kind) {
    const auto load = equal_load(body, to, kind, demand);
    return load ? Result<Mass>(Mass::kilograms(*load)) : Result<Mass>(load.refusal());
}

Result<EquivalentLoad> solve_equivalent_load(const Body& body, const Setup& from, const Setup& to,
                                             Demand kind) {
    for (const Setup* setup : {&from, &to})
        if (setup->lift == Lift::pull_up)
            return Refusal{RefusalCode::method_does_not_apply, "A pull-up asks nothing of the legs.", "lift",
                           "pull_up", "a lift on the feet"};
    auto asked = solve_pose(body, from);
    if (!asked)
        return asked.refusal();
    const double demand = demand_of_leg(*asked, kind);
    const auto load = equal_load(body, to, kind, demand);
    if (!load)
        return load.refusal();
    auto matched = solve_pose(body, loaded(to, *load));
    if (!matched)
        return matched.refusal();
    EquivalentLoad same{Mass::kilograms(*load), 0, demand, *std::move(asked), *std::move(matched), {}};
    add_error(same, body, from, loaded(to, *load), kind);
    return same;
}

} // namespace amentum
