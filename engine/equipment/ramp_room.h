// Which choices are still open in a state of the ramp's programme, and what they leave room for?
//
// A state is a run of sets and the plates that are on during all of it. Open are, of each set, the choices that hold
// those plates and that some sequence of choices through the run passes with at most `limit` plates put on, whatever
// the order on the sleeve (ramp_bound.h). With one plate more on, what is open is among what was open before; so each
// state leaves its sets of choices behind, as bits, for those.
// Range: at most 24 sets; the words of all states looked at live until their state is left.
// What it cannot tell: whether some order on the sleeve does with so few.
//
// Example: choices {20, 5}, {15, 10} | {25}; nothing on, limit 3 -> all open; 20 on -> the second set has none.
#pragma once

#include "equipment/ramp_bound.h"

#include <array>
#include <cstdint>

namespace amentum {

struct OpenSets {
    std::array<std::size_t, most_ramp_sets> first; // where the bits of each set begin
};

struct RampRoom {
    PlateCounts most; // of each kind what some open choice of every set holds
    PlateCounts
        sure; // of each kind what every open choice of every set has: best put on now, once for all of them
    std::array<int, most_ramp_sets> up_to; // plates put on in the first sets of the run, up to each, at least
    std::array<int, most_ramp_sets> starting; // and in the last sets, from each
    int fewest;                               // in the whole run; no_limit: some set has no open choice
};

class RampRooms {
public:
    explicit RampRooms(const ChoicesOfSets& choices);

    // `among`: what a state of the same sets with fewer plates on left open; `open`: what this one leaves.
    RampRoom look(std::size_t from, std::size_t to, const PlateCounts& held, int limit, const OpenSets* among,
                  OpenSets& open);

    std::size_t mark() const { return bits_.size(); }
    void forget_after(std::size_t mark) { bits_.resize(mark); } // what was left open since then

    // Plates put on whatever is open: in those sets, and in the set after that one when it has that choice.
    int least(std::size_t from, std::size_t to) const { return least_[from][to]; }
    int least_in_next(std::size_t set, std::size_t choice) const { return after_[set + 1][set][choice]; }

private:
    using Words = std::vector<std::uint64_t>; // a bit for each choice of a set
    struct Reached {
        std::size_t choice;
        int put_on; // in the sets of the run up to its own, at least
    };
    struct OnKind {
        std::size_t kind, count;
    };

    std::uint64_t those_with_what_is_on(std::size_t set, std::size_t word) const;
    int put_on_up_to(std::size_t set, std::size_t choice) const; // coming from those reached

    const ChoicesOfSets& choices_;
    PutOnBetween between_;
    std::vector<std::vector<int>> least_;
    std::vector<std::vector<std::vector<int>>> after_;
    std::vector<Words> all_; // of each set
    std::vector<std::vector<Words>>
        holders_;            // [set][kind]: those with at least 1, 2, ... of it, one after another
    Words bits_;             // left open, one state's after another's
    std::vector<OnKind> on_; // of the state looked at
    std::vector<Reached> reached_, next_; // of the set before, and of the set looked at
};

} // namespace amentum
