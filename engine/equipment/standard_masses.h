// The masses that plates, dumbbells, balls and bars are sold in.
//
// Plates: the discs of international weightlifting, 0.5 to 25 kg [IwfRules]; pound plates and micro-plates:
// common practice, no source. Bars of 20 and 15 kg [IwfRules]; 10 kg and the pound bars: common practice, no
// source. Dumbbells in steps of 2.5 lb up to 20 lb and 5 lb to 100 lb, or 1 kg up to 10 kg and 2.5 kg to 50 kg;
// balls of 2 to 12 lb or 1 to 6 kg: common practice, no source. Hex and safety-type bars follow no standard and
// are not listed.
// Units: as the kit speaks. What it cannot tell: what a shop near the gym has.
//
// Example: standard_masses(ItemKind::straight_bar, MassUnit::kg) == {10 kg, 15 kg, 20 kg}
#pragma once

#include "values/kit.h"

#include <vector>

namespace amentum {

// Ascending; empty for items that are not sold by mass.
std::vector<Mass> standard_masses(ItemKind kind, MassUnit unit);

} // namespace amentum
