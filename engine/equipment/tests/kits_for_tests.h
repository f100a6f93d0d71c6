// Small kits written as a coach would list them; invented.
#pragma once

#include "values/kit.h"

namespace amentum::equipment_tests {

inline KitItem item(ItemKind kind, std::string label, int count, std::optional<Mass> mass = std::nullopt) {
    return {kind, std::move(label), count, mass, {}, {}, {}, {}};
}

inline Kit kilogram_kit(std::initializer_list<std::pair<double, int>> plates) {
    Kit kit{KitId{"kg"}, "Kilogram corner", MassUnit::kg, {}};
    kit.items.push_back(item(ItemKind::straight_bar, "bar", 1, Mass::kilograms(20)));
    for (const auto& [kg, count] : plates) {
        std::string label = std::to_string(kg);
        label.erase(label.find_last_not_of('0') + 1);
        if (label.ends_with('.'))
            label.pop_back();
        kit.items.push_back(item(ItemKind::plate, label + " kg plate", count, Mass::kilograms(kg)));
    }
    return kit;
}

inline Kit pound_kit() {
    Kit kit{KitId{"lb"}, "Old net loft", MassUnit::lb, {}};
    const auto lb = [](double x) { return Mass::pounds(x); };
    kit.items = {
        item(ItemKind::straight_bar, "straight bar", 2, lb(45)),
        item(ItemKind::hex_bar, "hex bar, low handles", 1, lb(60)),
        item(ItemKind::hex_bar, "hex bar, high handles", 1, lb(60)),
        item(ItemKind::plate, "45 lb plate", 6, lb(45)),
        item(ItemKind::plate, "35 lb plate", 2, lb(35)),
        item(ItemKind::plate, "25 lb plate", 2, lb(25)),
        item(ItemKind::plate, "10 lb plate", 4, lb(10)),
        item(ItemKind::plate, "5 lb plate", 2, lb(5)),
        item(ItemKind::plate, "2.5 lb plate", 2, lb(2.5)),
        item(ItemKind::dumbbell, "50 lb dumbbell", 2, lb(50)),
        item(ItemKind::dumbbell, "40 lb dumbbell", 2, lb(40)),
        item(ItemKind::dumbbell, "45 lb dumbbell", 1, lb(45)),
        item(ItemKind::kettlebell, "24 kg kettlebell", 1, Mass::kilograms(24)),
        item(ItemKind::ball, "4 lb ball", 3, lb(4)),
        item(ItemKind::ball, "6 lb ball", 2, lb(6)),
        item(ItemKind::landmine, "landmine", 1),
        item(ItemKind::belt, "belt", 1),
        item(ItemKind::sled, "sled", 1),
        {ItemKind::column, "cable column", 1, {}, {}, 0.5, lb(10), lb(200)},
    };
    return kit;
}

} // namespace amentum::equipment_tests
