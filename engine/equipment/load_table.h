// All loads one kit can make by one means, built once and asked often.
//
// Where solve_load builds the table and asks it once, a caller with many targets (a planner, a warm-up ramp)
// keeps the table: an answer is then one binary search.
// How each means counts its load, and what it refuses: solve_load.h.
// Range: loads above 600 kg are left out. An empty belt or sled is no load and is not listed.
// What it cannot tell: that two athletes want the same plates at once.
//
// Example: LoadTable::of(kit, LoadMeans::straight_bar)->choose(Mass::kilograms(101)).nearest.total == 100 kg
#pragma once

#include "equipment/plate_sums.h"
#include "values/exercise.h"
#include "values/kit.h"
#include "values/refusal.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct MadeLoad {
    Mass total; // as the lift counts it (solve_load.h)
    std::vector<PlatesOnSide>
        one_side;          // heaviest first (innermost); one side of a bar, or the whole of one stack
    std::string words;     // "hex bar, high handles + 45, 25 a side"; "pair of 50 lb dumbbells"
    std::string item = {}; // label of the kit's item that carries it: "hex bar, high handles"
};

struct LoadChoice {
    std::optional<MadeLoad> not_above; // the heaviest that is not above the target; none when even the bar is
    std::optional<MadeLoad> above;     // the lightest above it; none at the top of what the gym has
    MadeLoad nearest;
};

class LoadTable {
public:
    static constexpr double most_kilograms = 600;

    static Result<LoadTable> of(const Kit& kit, LoadMeans means,
                                const std::optional<std::string>& item = std::nullopt);

    std::size_t size() const { return entries_.size(); }                   // at least 1
    Mass total(std::size_t i) const { return mass_of(entries_[i].total); } // ascending, without repeats
    MadeLoad made(std::size_t i) const;
    LoadChoice choose(Mass target) const;

    // What stands under the plates, or the whole load where there are none: a bar, a dumbbell, a step of a
    // column.
    struct Base {
        ExactMass mass;
        std::string words;
        std::string item;
    };

private:
    struct Entry {
        ExactMass total;
        int plates;
        std::size_t base;
        std::size_t sum;
    };
    LoadTable(std::vector<Base> bases, PlateSums sums, int stacks, std::string ending, int most_plates,
              MassUnit unit);

    std::vector<Base> bases_;
    PlateSums sums_;
    std::string ending_; // " a side"
    MassUnit unit_;
    std::vector<Entry> entries_;
};

} // namespace amentum
