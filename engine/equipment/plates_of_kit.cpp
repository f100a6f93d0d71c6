#include "equipment/plates_of_kit.h"

#include <limits>
#include <map>

namespace amentum {
namespace {

constexpr int most_on_a_belt = 4; // plates on one chain: proposal of this project, no source
constexpr int any_number = std::numeric_limits<int>::max();

} // namespace

Stacking stacking_of(LoadMeans means) {
    switch (means) {
    case LoadMeans::straight_bar:
    case LoadMeans::hex_bar:
    case LoadMeans::safety_bar:
    case LoadMeans::camber_bar:
        return {2, " a side", any_number};
    case LoadMeans::landmine:
        return {1, " on the sleeve", any_number};
    case LoadMeans::added_plate:
        return {1, " on it", most_on_a_belt};
    case LoadMeans::sled:
        return {1, " on it", any_number};
    default:
        return {0, "", 0};
    }
}

std::vector<PlateKind> plates_owned(const Kit& kit, int stacks) {
    std::map<ExactMass, PlateKind> by_mass;
    for (const auto& item : kit.items) {
        if (item.kind != ItemKind::plate)
            continue;
        const ExactMass each = exact_mass(*item.mass);
        by_mass.try_emplace(each, PlateKind{item.label, each, 0}).first->second.available += item.count;
    }
    std::vector<PlateKind> kinds;
    for (auto& [each, kind] : by_mass) {
        kind.available /= stacks;
        if (kind.available > 0)
            kinds.push_back(kind);
    }
    return kinds;
}

} // namespace amentum
