// What can this kit load, asked many times during one plan: each table of loads is made once and kept.
//
// Has a kit what an exercise needs? All of `needs`, and the item that its means implies (for bars and columns
// one whose label holds the exercise's `item`; for balls one inside the exercise's range and, for linear
// throws, of at most 8 lb). Body work needs nothing more.
// What it cannot tell: whether somebody else is using it.
#pragma once

#include "equipment/load_table.h"
#include "values/exercise.h"
#include "values/kit.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace amentum {

class KitLoads {
public:
    explicit KitLoads(const Kit& kit) : kit_(kit) {}

    const Kit& kit() const { return kit_; }
    bool has(ItemKind kind) const;
    bool has_all_for(const Exercise& exercise) const;
    const LoadTable* table(const Exercise& exercise) const;          // null: band, body, or nothing for it
    std::vector<MadeLoad> balls_for(const Exercise& exercise) const; // lightest first
    std::vector<std::string> bands() const;
    const std::set<std::string>& faults() const {
        return faults_;
    } // items without a mass, in whole sentences

    // Between the exercise's lightest and heaviest; linear throws at most 8 lb. Compared exactly, as loads
    // are made.
    static bool suits(const Exercise& exercise, Mass load);

private:
    bool in_range(const Exercise& exercise) const; // some load between its lightest and heaviest
    const Kit& kit_;
    mutable std::map<std::pair<LoadMeans, std::optional<std::string>>, std::optional<LoadTable>> tables_;
    mutable std::set<std::string> faults_;
};

} // namespace amentum
