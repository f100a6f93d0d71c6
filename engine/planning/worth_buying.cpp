#include "planning/worth_buying.h"

#include "equipment/load_words.h"
#include "planning/kit_loads.h"
#include "planning/stand_ins.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

constexpr double least_gain = 0.01;
constexpr std::size_t most_shown = 3;

struct Option {
    std::string what;
    KitItem item;
};

KitItem item_of(ItemKind kind, std::string label, int count, std::optional<Mass> mass = {}) {
    return {kind, std::move(label), count, mass, {}, {}, {}, {}};
}

Mass usual(const Kit& kit, double lb, double kg) {
    return kit.unit == MassUnit::lb ? Mass::pounds(lb) : Mass::kilograms(kg);
}

// Dumbbells heavier than the heaviest pair, lightest first.
std::vector<Option> dumbbells(const Kit& kit) {
    Mass heaviest = Mass::kilograms(0);
    for (const auto& item : kit.items)
        if (item.kind == ItemKind::dumbbell && item.mass)
            heaviest = std::max(heaviest, *item.mass);
    std::vector<Option> options;
    for (int step = 1; step <= 20; ++step) {
        const Mass one = usual(kit, 5, 2.5) * step;
        if (exact_mass(one) <= exact_mass(heaviest))
            continue;
        const std::string size = describe_mass(one, kit.unit);
        options.push_back({"a pair of " + size + " dumbbells",
                           item_of(ItemKind::dumbbell, size + " dumbbell, bought", 2, one)});
    }
    return options;
}

std::string called(ItemKind kind) {
    std::string name = word(kind);
    std::replace(name.begin(), name.end(), '_', ' ');
    return kind == ItemKind::open_floor ? name : "a " + name;
}

// Balls come in whole pounds or kilograms.
Mass usual_ball(const Kit& kit, Mass wanted) {
    const Mass step = usual(kit, 1, 1);
    return step * std::max(1.0, std::round(wanted / step));
}

// What would carry the exercise's load, when nothing here does.
std::optional<KitItem> carrier(const Kit& kit, const Exercise& exercise, const BlockLine& line) {
    const auto bar = [&](ItemKind kind, double lb, double kg) {
        return item_of(kind, exercise.item.value_or(std::string(word(kind))) + ", bought", 1,
                       usual(kit, lb, kg));
    };
    const bool plates = KitLoads(kit).has(ItemKind::plate); // a bar alone is no gym
    switch (exercise.means) {
    case LoadMeans::straight_bar:
    case LoadMeans::hex_bar:
    case LoadMeans::safety_bar:
        if (!plates)
            return std::nullopt;
        break;
    default:
        break;
    }
    switch (exercise.means) {
    case LoadMeans::straight_bar:
        return bar(ItemKind::straight_bar, 45, 20);
    case LoadMeans::hex_bar:
        return bar(ItemKind::hex_bar, 60, 27.5);
    case LoadMeans::safety_bar:
        return bar(ItemKind::safety_bar, 65, 30);
    case LoadMeans::band:
        return item_of(ItemKind::band, "band, bought", 1);
    case LoadMeans::ball:
        return line.load
                   ? std::optional(item_of(ItemKind::ball, "ball, bought", 1, usual_ball(kit, *line.load)))
                   : std::nullopt;
    case LoadMeans::column: {
        KitItem column = item_of(ItemKind::column, "column, bought", 1);
        column.ratio = 1;
        column.step = usual(kit, 5, 2.5);
        column.most = usual(kit, 200, 90);
        return column;
    }
    default:
        return std::nullopt;
    }
}

// The one item whose want keeps the first exercise out; none when nothing or more than one is wanting.
std::optional<Option> wanting(const Kit& kit, const Exercise& exercise, const BlockLine& line) {
    const KitLoads loads(kit);
    std::set<ItemKind> missing;
    for (const ItemKind need : exercise.needs)
        if (!loads.has(need))
            missing.insert(need);
    Exercise bare = exercise;
    bare.needs.clear();
    if (loads.has_all_for(bare)) {
        if (missing.size() != 1)
            return std::nullopt;
        return Option{called(*missing.begin()), item_of(*missing.begin(), called(*missing.begin()), 1)};
    }
    const auto item = missing.empty() ? carrier(kit, exercise, line) : std::nullopt;
    if (!item)
        return std::nullopt;
    const std::string name = item->kind == ItemKind::ball
                                 ? "a " + describe_mass(*item->mass, kit.unit) + " ball"
                                 : called(item->kind);
    return Option{name, *item};
}

std::vector<Option> single_options(const Kit& kit, const RetargetedBlock& made,
                                   std::span<const Exercise> catalogue) {
    std::map<std::string, Option> by_name; // each once
    bool plates_bind = false;
    for (const auto& line : made.lines) {
        const Exercise* from = exercise_in(catalogue, line.from.exercise);
        if (!from || line.kept >= worth_saying)
            continue;
        if (const auto option = wanting(kit, *from, line.from))
            by_name.try_emplace(option->what, *option);
        const Exercise* to = line.to ? exercise_in(catalogue, line.to->exercise) : nullptr;
        const bool bar = to && (to->means == LoadMeans::straight_bar || to->means == LoadMeans::hex_bar ||
                                to->means == LoadMeans::safety_bar || to->means == LoadMeans::camber_bar);
        plates_bind = plates_bind || (bar && line.limit.ends_with(heaviest_here));
    }
    std::vector<Option> options;
    for (auto& [name, option] : by_name)
        options.push_back(std::move(option));
    if (plates_bind) {
        const Mass plate = usual(kit, 45, 20);
        const std::string size = describe_mass(plate, kit.unit);
        options.push_back(
            {"a pair of " + size + " plates", item_of(ItemKind::plate, size + " plate, bought", 2, plate)});
    }
    return options;
}

bool dumbbells_bind(const RetargetedBlock& made, std::span<const Exercise> catalogue) {
    return std::any_of(made.lines.begin(), made.lines.end(), [&](const auto& line) {
        const Exercise* to = line.to ? exercise_in(catalogue, line.to->exercise) : nullptr;
        return to && line.limit.ends_with(heaviest_here) &&
               (to->means == LoadMeans::dumbbell_pair || to->means == LoadMeans::dumbbell_single);
    });
}

} // namespace

std::vector<Purchase> worth_buying(const Kit& kit, const RetargetedBlock& made,
                                   std::span<const Exercise> catalogue, const KeptWith& kept_with) {
    const auto kept = [&](const Option& option) {
        Kit with = kit;
        with.items.push_back(option.item);
        return kept_with(with);
    };
    std::vector<Purchase> found;
    for (const auto& option : single_options(kit, made, catalogue))
        found.push_back({option.what, kept(option)});
    if (dumbbells_bind(made, catalogue)) {
        const auto sizes = dumbbells(kit);
        const double most = sizes.empty() ? 0 : kept(sizes.back());
        for (const auto& size : sizes)
            if (const double here = kept(size); here >= most - least_gain) {
                found.push_back({size.what, here});
                break;
            }
    }
    std::erase_if(found, [&](const auto& each) { return each.kept < made.kept + least_gain; });
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.kept > b.kept; });
    if (found.size() > most_shown)
        found.resize(most_shown);
    return found;
}

} // namespace amentum
