// How few plates can a ramp possibly put on, whatever the order on the sleeve?
//
//   a plate of set t+1 that is not among those of set t has to be put on:
//   put on >= |M_1| + sum over t of |M_t+1 without M_t|,   least over all sequences of choices
// The order on the sleeve is left out, so no stacking can do with fewer: what a sequence through some choice needs
// at least may show that the choice is hopeless, and then the answer found is proven.
// Source: relaxation of ramp_stacks.h; own. Work grows with the square of the choices of a set.
//
// Example: choices {20} | {15, 10} | {20} -> 1 + 2 + 1 = 4 plates put on at least
#pragma once

#include "equipment/ramp_programme.h"

#include <cstdint>
#include <vector>

namespace amentum {

// Out goes every choice through which no sequence puts on at most `limit` plates; a set may lose all of them.
void drop_beyond(ChoicesOfSets& choices, int limit);

// The plates of each choice of a set that are not among those of each choice of the set before.
class PutOnBetween {
public:
    explicit PutOnBetween(const ChoicesOfSets& choices);

    // Onto that choice of a set, not the first: for each choice of the set before, how many.
    const std::uint8_t* onto(std::size_t set, std::size_t choice) const {
        return tables_[set].data() + choice * before_[set];
    }

private:
    std::vector<std::vector<std::uint8_t>> tables_; // of each set
    std::vector<std::size_t> before_;               // choices of the set before
};

// [from][to]: plates on in the sets from..to, counted once for each time they are put on.
std::vector<std::vector<int>> least_put_on(const ChoicesOfSets& choices, const PutOnBetween& between);

// [to][set][choice]: plates put on in the sets after this one up to `to`, when this set has that choice.
std::vector<std::vector<std::vector<int>>> least_put_on_after(const ChoicesOfSets& choices,
                                                              const PutOnBetween& between);

} // namespace amentum
