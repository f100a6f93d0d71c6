#include "planning/kit_loads.h"

#include "planning/exercise_classes.h"

#include <algorithm>

namespace amentum {

bool KitLoads::has(ItemKind kind) const {
    return std::any_of(kit_.items.begin(), kit_.items.end(),
                       [&](const auto& item) { return item.kind == kind && item.count > 0; });
}

bool KitLoads::has_all_for(const Exercise& exercise) const {
    const auto& needs = exercise.needs;
    if (!std::all_of(needs.begin(), needs.end(), [&](ItemKind kind) { return has(kind); }))
        return false;
    switch (exercise.means) {
    case LoadMeans::body:
        return true;
    case LoadMeans::band:
        return has(ItemKind::band);
    case LoadMeans::ball:
        return !balls_for(exercise).empty();
    default:
        return in_range(exercise);
    }
}

bool KitLoads::suits(const Exercise& exercise, Mass load) {
    const ExactMass mass = exact_mass(load);
    const bool light = exercise.lightest && mass < exact_mass(*exercise.lightest);
    const bool heavy = exercise.heaviest && mass > exact_mass(*exercise.heaviest);
    return !light && !heavy && !(linear_throw(exercise) && mass > exact_mass(linear_throw_most));
}

bool KitLoads::in_range(const Exercise& exercise) const {
    const LoadTable* all = table(exercise);
    if (!all)
        return false;
    if (!exercise.lightest && !exercise.heaviest)
        return true;
    for (std::size_t i = 0; i < all->size(); ++i)
        if (suits(exercise, all->total(i)))
            return true;
    return false;
}

const LoadTable* KitLoads::table(const Exercise& exercise) const {
    if (exercise.means == LoadMeans::band || exercise.means == LoadMeans::body)
        return nullptr;
    const auto [place, fresh] = tables_.try_emplace({exercise.means, exercise.item});
    if (fresh) {
        auto made = LoadTable::of(kit_, exercise.means, exercise.item);
        if (made)
            place->second = *std::move(made);
        else if (made.refusal().code == RefusalCode::missing_field)
            faults_.insert(made.refusal().sentence);
    }
    return place->second ? &*place->second : nullptr;
}

std::vector<MadeLoad> KitLoads::balls_for(const Exercise& exercise) const {
    std::vector<MadeLoad> balls;
    const LoadTable* all = table(exercise);
    for (std::size_t i = 0; all && i < all->size(); ++i)
        if (suits(exercise, all->total(i)))
            balls.push_back(all->made(i));
    return balls;
}

std::vector<std::string> KitLoads::bands() const {
    std::vector<std::string> labels;
    for (const auto& item : kit_.items)
        if (item.kind == ItemKind::band && item.count > 0)
            labels.push_back(item.label);
    return labels;
}

} // namespace amentum
