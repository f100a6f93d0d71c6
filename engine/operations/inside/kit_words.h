// A kit's items in words, and which of them can stand on a scale.
#pragma once

#include "operations/inside/facility_view.h"
#include "values/exercise.h"
#include "values/kit.h"
#include "values/refusal.h"

#include <optional>
#include <string>

namespace amentum {

// The kit of that name; the first when none is named. Refuses a store without a kit (too_few_data).
Result<const Kit*> kit_or_first(const FacilityView&, const std::optional<std::string>& name);

bool can_be_weighed(ItemKind kind); // bars, plates, dumbbells, kettlebells, balls

// Of a bar or a column, which the coach may name one by one.
std::optional<LoadMeans> means_of_item(ItemKind kind);

std::string means_in_words(LoadMeans means); // "pairs of dumbbells"

// "44.2 lb, 1.8 % under its stamp"; "45 lb, as stamped"; "56.2 lb" when the label names no mass.
std::string mass_beside_stamp(const KitItem& item, MassUnit unit);

} // namespace amentum
