#include "planning/leg_demand.h"

#include "body_mechanics/rear_share.h"

namespace amentum {
namespace {

Setup loaded(Setup setup, Mass load) {
    setup.load = load;
    return setup;
}

// The two exercises stand in the key: a load alone is the same number for many pairs.
std::pair<std::string, double> key_of(const Exercise& from, Mass load, const Exercise& to) {
    return {from.key + ">" + to.key, load.kilograms()};
}

} // namespace

const Setup* LegDemand::setup(Gym gym, const Exercise& exercise) const {
    if (!body_)
        return nullptr;
    const auto& setups = gym == Gym::first ? first_ : other_;
    const auto found = setups.find(exercise.key);
    return found == setups.end() ? nullptr : &found->second;
}

bool LegDemand::compares(const Exercise& from, const Exercise& to) const {
    const Setup *a = setup(Gym::first, from), *b = setup(Gym::other, to);
    if (!a || !b || a->lift == Lift::pull_up || b->lift == Lift::pull_up)
        return false;
    const bool split = rear_share_of(a->lift) && rear_share_of(b->lift);
    return split || from.pattern == to.pattern;
}

bool LegDemand::same_lift(const Exercise& from, const Exercise& to) const {
    return compares(from, to) && setup(Gym::first, from)->lift == setup(Gym::other, to)->lift;
}

std::optional<double> LegDemand::demand(Gym gym, const Exercise& exercise, Mass load) const {
    const Setup* known = setup(gym, exercise);
    if (!known)
        return std::nullopt;
    const auto [place, fresh] =
        demands_[gym == Gym::other].try_emplace({exercise.key, load.kilograms()}, std::nullopt);
    if (fresh)
        if (const auto pose = solve_pose(*body_, loaded(*known, load)); pose && pose->lead)
            place->second = demand_of_leg(*pose);
    return place->second;
}

std::optional<Mass> LegDemand::equal_load(const Exercise& from, Mass load, const Exercise& to) const {
    if (!compares(from, to))
        return std::nullopt;
    const auto [place, fresh] = loads_.try_emplace(key_of(from, load, to), std::nullopt);
    if (!fresh)
        return place->second;
    const auto wanted = demand(Gym::first, from, load);
    const auto found =
        wanted ? solve_load_of_demand(*body_, *setup(Gym::other, to), *wanted) : Result<Mass>(Refusal{});
    if (found)
        place->second = *found;
    return place->second;
}

std::optional<EquivalentLoad> LegDemand::equal_with_band(const Exercise& from, Mass load,
                                                         const Exercise& to) const {
    if (!compares(from, to))
        return std::nullopt;
    const auto [place, fresh] = bands_.try_emplace(key_of(from, load, to), std::nullopt);
    if (fresh)
        if (auto found =
                solve_equivalent_load(*body_, loaded(*setup(Gym::first, from), load), *setup(Gym::other, to)))
            place->second = *std::move(found);
    return place->second;
}

} // namespace amentum
