#include "operations/inside/kit_words.h"

#include "equipment/load_words.h"
#include "equipment/stamped_mass.h"
#include "operations/inside/inside.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {

Result<const Kit*> kit_or_first(const FacilityView& view, const std::optional<std::string>& name) {
    if (view.records.kits.empty())
        return Refusal{RefusalCode::too_few_data, "No kit is held yet: import one first.", "kit", "",
                       "a kit"};
    return name ? kit_named(view, *name) : Result<const Kit*>(&view.records.kits.front());
}

bool can_be_weighed(ItemKind kind) {
    switch (kind) {
    case ItemKind::straight_bar:
    case ItemKind::hex_bar:
    case ItemKind::safety_bar:
    case ItemKind::camber_bar:
    case ItemKind::plate:
    case ItemKind::dumbbell:
    case ItemKind::kettlebell:
    case ItemKind::ball:
        return true;
    default:
        return false;
    }
}

std::optional<LoadMeans> means_of_item(ItemKind kind) {
    switch (kind) {
    case ItemKind::straight_bar:
        return LoadMeans::straight_bar;
    case ItemKind::hex_bar:
        return LoadMeans::hex_bar;
    case ItemKind::safety_bar:
        return LoadMeans::safety_bar;
    case ItemKind::camber_bar:
        return LoadMeans::camber_bar;
    case ItemKind::column:
        return LoadMeans::column;
    default:
        return std::nullopt;
    }
}

std::string means_in_words(LoadMeans means) {
    switch (means) {
    case LoadMeans::dumbbell_pair:
        return "pairs of dumbbells";
    case LoadMeans::dumbbell_single:
        return "one dumbbell or kettlebell";
    case LoadMeans::ball:
        return "balls";
    case LoadMeans::landmine:
        return "bar end on the floor";
    case LoadMeans::added_plate:
        return "plates on a belt";
    case LoadMeans::sled:
        return "plates on the sled";
    default: {
        std::string words = word(means);
        std::replace(words.begin(), words.end(), '_', ' ');
        return words;
    }
    }
}

std::string mass_beside_stamp(const KitItem& item, MassUnit unit) {
    const std::string mass = describe_mass(*item.mass, unit);
    const auto stamped = stamped_mass(item.label);
    if (!stamped)
        return mass;
    const double off = 100 * (*item.mass / *stamped - 1);
    if (std::abs(off) < 0.005)
        return mass + ", as stamped";
    return mass + ", " + format_fixed(std::abs(off), 1) + " % " + (off > 0 ? "over" : "under") + " its stamp";
}

} // namespace amentum
