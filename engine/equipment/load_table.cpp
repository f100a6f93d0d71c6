#include "equipment/load_table.h"

#include "equipment/load_words.h"
#include "equipment/plates_of_kit.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <tuple>

namespace amentum {
namespace {

const ExactMass heaviest = exact_mass(Mass::kilograms(LoadTable::most_kilograms));

std::vector<ItemKind> kinds_for(LoadMeans means) {
    switch (means) {
    case LoadMeans::straight_bar:
    case LoadMeans::landmine:
        return {ItemKind::straight_bar};
    case LoadMeans::hex_bar:
        return {ItemKind::hex_bar};
    case LoadMeans::safety_bar:
        return {ItemKind::safety_bar};
    case LoadMeans::camber_bar:
        return {ItemKind::camber_bar};
    case LoadMeans::dumbbell_pair:
        return {ItemKind::dumbbell};
    case LoadMeans::dumbbell_single:
        return {ItemKind::dumbbell, ItemKind::kettlebell};
    case LoadMeans::added_plate:
        return {ItemKind::belt};
    case LoadMeans::column:
        return {ItemKind::column};
    case LoadMeans::ball:
        return {ItemKind::ball};
    case LoadMeans::sled:
        return {ItemKind::sled};
    case LoadMeans::band:
    case LoadMeans::body:
        return {};
    }
    return {};
}

Refusal refuse_absent(const Kit& kit, LoadMeans means, const std::optional<std::string>& item) {
    std::string what = word(means);
    std::replace(what.begin(), what.end(), '_', ' ');
    const std::string named = item ? " called \"" + *item + "\"" : "";
    return {RefusalCode::load_not_makeable,
            "The kit \"" + kit.name + "\" has nothing for " + what + " loads" + named + ".", "kit",
            item.value_or(kit.name), "a kit with what the lift needs"};
}

std::vector<const KitItem*> items_of(const Kit& kit, LoadMeans means,
                                     const std::optional<std::string>& item) {
    const auto kinds = kinds_for(means);
    std::vector<const KitItem*> all, whole_label, part_of_label;
    for (const auto& each : kit.items) {
        if (std::find(kinds.begin(), kinds.end(), each.kind) == kinds.end() || each.count < 1)
            continue;
        all.push_back(&each);
        if (item && each.label == *item)
            whole_label.push_back(&each);
        if (item && each.label.find(*item) != std::string::npos)
            part_of_label.push_back(&each);
    }
    if (!item)
        return all;
    return whole_label.empty() ? part_of_label : whole_label;
}

bool has_item(const Kit& kit, ItemKind kind) {
    return std::any_of(kit.items.begin(), kit.items.end(),
                       [&](const auto& i) { return i.kind == kind && i.count > 0; });
}

std::vector<LoadTable::Base> dumbbell_pairs(const std::vector<const KitItem*>& items) {
    std::map<ExactMass, std::pair<const KitItem*, int>> by_mass;
    for (const auto* item : items)
        by_mass.try_emplace(exact_mass(*item->mass), item, 0).first->second.second += item->count;
    std::vector<LoadTable::Base> bases;
    for (const auto& [each, owned] : by_mass) {
        if (owned.second < 2)
            continue;
        const std::string& label = owned.first->label;
        bases.push_back(
            {2 * each, label.ends_with("dumbbell") ? "pair of " + label + "s" : "pair: " + label, label});
    }
    return bases;
}

std::vector<LoadTable::Base> column_steps(const std::vector<const KitItem*>& items, MassUnit unit) {
    std::vector<LoadTable::Base> bases;
    for (const auto* column : items) {
        const ExactMass step = exact_mass(*column->step);
        assert(step > 0);
        for (ExactMass stack = step; stack <= exact_mass(*column->most); stack += step) {
            const Mass shown = mass_of(stack);
            bases.push_back({exact_mass(shown * *column->ratio),
                             column->label + ", stack at " + describe_mass(shown, unit), column->label});
        }
    }
    return bases;
}

std::vector<LoadTable::Base> bases_of(const Kit& kit, LoadMeans means,
                                      const std::vector<const KitItem*>& items) {
    if (means == LoadMeans::dumbbell_pair)
        return dumbbell_pairs(items);
    if (means == LoadMeans::column)
        return column_steps(items, kit.unit);
    std::vector<LoadTable::Base> bases;
    for (const auto* item : items) {
        if (means == LoadMeans::added_plate || means == LoadMeans::sled)
            bases.push_back({0, item->label, item->label});
        else if (means == LoadMeans::landmine)
            bases.push_back({exact_mass(*item->mass / 2), "landmine, " + item->label, item->label});
        else
            bases.push_back({exact_mass(*item->mass), item->label, item->label});
    }
    return bases;
}

// A mass, or a column's ratio, step and most, is what makes an item a load; the kit may lack it only by
// mistake.
std::optional<Refusal> refuse_unmeasured(const Kit& kit, const std::vector<const KitItem*>& items) {
    const auto missing = [](const KitItem& item, const char* what) {
        return refuse_missing(item.label, std::string(what) + " of this item of the kit");
    };
    const auto weighed = [](const std::optional<Mass>& mass) { return mass && *mass > Mass::kilograms(0); };
    for (const auto* item : items) {
        if (item->kind == ItemKind::belt || item->kind == ItemKind::sled)
            continue;
        if (item->kind != ItemKind::column && !weighed(item->mass))
            return missing(*item, "the mass");
        if (item->kind == ItemKind::column && (!item->ratio || !weighed(item->step) || !weighed(item->most)))
            return missing(*item, "the ratio, step and most");
    }
    for (const auto& item : kit.items)
        if (item.kind == ItemKind::plate && !weighed(item.mass))
            return missing(item, "the mass");
    return std::nullopt;
}

} // namespace

Result<LoadTable> LoadTable::of(const Kit& kit, LoadMeans means, const std::optional<std::string>& item) {
    if (means == LoadMeans::band || means == LoadMeans::body)
        return Refusal{RefusalCode::method_does_not_apply, "Band and body work has no load to make.", "means",
                       word(means), "a means with a load"};
    const auto items = items_of(kit, means, item);
    if (items.empty() || (means == LoadMeans::landmine && !has_item(kit, ItemKind::landmine)))
        return refuse_absent(kit, means, item);
    if (const auto refusal = refuse_unmeasured(kit, items))
        return *refusal;
    const auto [stacks, ending, most_plates] = stacking_of(means);
    PlateSums sums(stacks ? plates_owned(kit, stacks) : std::vector<PlateKind>{},
                   stacks ? heaviest / stacks : 0);
    LoadTable table(bases_of(kit, means, items), std::move(sums), stacks, ending, most_plates, kit.unit);
    if (table.entries_.empty())
        return refuse_absent(kit, means, item);
    return table;
}

LoadTable::LoadTable(std::vector<Base> bases, PlateSums sums, int stacks, std::string ending, int most_plates,
                     MassUnit unit)
    : bases_(std::move(bases)), sums_(std::move(sums)), ending_(std::move(ending)), unit_(unit) {
    for (std::size_t base = 0; base < bases_.size(); ++base)
        for (std::size_t sum = 0; sum < sums_.size(); ++sum) {
            const ExactMass total = bases_[base].mass + stacks * sums_.mass(sum);
            if (total > heaviest)
                break;
            if (total > 0 && sums_.plates(sum) <= most_plates)
                entries_.push_back({total, sums_.plates(sum), base, sum});
        }
    const auto better = [](const Entry& a, const Entry& b) {
        return std::tie(a.total, a.plates, a.base) < std::tie(b.total, b.plates, b.base);
    };
    if (!std::is_sorted(entries_.begin(), entries_.end(), better))
        std::sort(entries_.begin(), entries_.end(), better);
    const auto repeated = std::unique(entries_.begin(), entries_.end(),
                                      [](const Entry& a, const Entry& b) { return a.total == b.total; });
    entries_.erase(repeated, entries_.end());
}

MadeLoad LoadTable::made(std::size_t i) const {
    const Entry& entry = entries_[i];
    MadeLoad load{mass_of(entry.total), sums_.stack(entry.sum), bases_[entry.base].words,
                  bases_[entry.base].item};
    if (!load.one_side.empty())
        load.words += " + " + describe_plates(load.one_side, unit_) + ending_;
    else if (!ending_.empty())
        load.words += " alone";
    return load;
}

LoadChoice LoadTable::choose(Mass target) const {
    const ExactMass wanted = exact_mass(target);
    const auto first_above = std::upper_bound(entries_.begin(), entries_.end(), wanted,
                                              [](ExactMass mass, const Entry& e) { return mass < e.total; });
    const auto index = static_cast<std::size_t>(first_above - entries_.begin());
    std::optional<MadeLoad> not_above, above;
    if (index > 0)
        not_above = made(index - 1);
    if (index < entries_.size())
        above = made(index);
    const bool take_above =
        !not_above || (above && entries_[index].total - wanted < wanted - entries_[index - 1].total);
    MadeLoad nearest = take_above ? *above : *not_above;
    return {std::move(not_above), std::move(above), std::move(nearest)};
}

} // namespace amentum
