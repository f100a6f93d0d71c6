// Which one thing, bought, would let this gym make the most of what it has been asked for?
//
//   lacking  = target - heaviest load not above it          (all of the target when there is none)
//   made     = lacking is under one small step: 5 lb or 2.5 kg of load, a pair of the smallest common plates
//   exactly  = lacking is under 10 g
// Tried one at a time: a pair of each plate, a pair of dumbbells, a ball, a straight bar of the masses that are
// sold (standard_masses.h), as far as some target is loaded with it. Best first: most targets made that are not made
// now, then most made exactly, then least lacking on average, then the lighter; five at most, each of which makes
// more of them, more exactly, or takes a tenth off what is lacking. The small step and the 10 g are a proposal of this project, no source.
// Targets are counted with their sets: `times`. Each is a load on its own: that two athletes want the same plates at
// once is for load_racks.h.
// Units: kg. Range: targets above 0 and at most 600 kg. Targets of means without a load (band, body) are not counted.
// What it cannot tell: the price, the room, or whether the athlete needs the last two kilograms.
//
// Example: bar 20 kg, pairs 20, 15, 10; ten sets at 62.5 kg (60 is made, 2.5 lacking) -> a pair of 1.25 kg plates
#pragma once

#include "equipment/load_table.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct PrescribedLoad {
    LoadMeans means;
    std::optional<std::string> item;
    Mass target; // before it was made to fit the kit
    int times;   // sets
};

struct LoadsMade {
    int asked = 0; // sets
    int made = 0;  // within one small step below
    int exactly = 0;
    double lacking = 0; // mean over the sets, as a fraction of the target
};

struct KitPurchase {
    std::string what; // "a pair of 1.25 lb plates"
    ItemKind kind;
    Mass each;
    int count;
    LoadsMade then;
};

struct KitPurchases {
    LoadsMade now;
    std::vector<KitPurchase> best; // best first
};

Mass small_step(MassUnit unit); // of a load: 5 lb or 2.5 kg

KitPurchases solve_kit_purchases(const Kit& kit, const std::vector<PrescribedLoad>& wanted);

} // namespace amentum
