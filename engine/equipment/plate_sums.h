// Every distinct mass a stack of plates can have, each with its best stack: fewest plates, then heaviest
// inside.
//
//   sums = { sum of count_k x each_k : 0 <= count_k <= available_k },  not above `most`.
// Bounded subset-sum by reachability: the kinds are added one after another, lightest first, and of the ways
// to one sum only the best is kept. The best stack of a sum is the best over count_k of (count_k, best stack
// of the rest), so keeping one is exact. Work grows with the number of distinct sums, not with the number of
// stacks.
// Source: own enumeration, checked against brute force (tests/laws/plate_loading_test.cpp).
// Units: ExactMass. Range: `exact_limit` distinct sums are kept exactly. A kit beyond that (many plates, each
// weighed to the gram) is thinned: of each 5 g only the sum with fewest plates stays. 5 g is half of what a
// disc of up to 5 kg may be too heavy by [IwfRules, from memory]. Each sum kept is still a true sum of plates
// owned.
// What it cannot tell: whether the sleeve is long enough.
//
// Example: kinds 20 kg x 2, 10, 5, 2.5, 1.25 x 1 -> 48 sums, the largest 58.75 kg.
#pragma once

#include "equipment/exact_mass.h"

#include <string>
#include <vector>

namespace amentum {

struct PlatesOnSide {
    std::string label;
    Mass each;
    int count;
};

// Plates of one mass: how many may be on the stack (pairs owned, for the stack on one side of a bar).
struct PlateKind {
    std::string label;
    ExactMass each; // above 0
    int available;  // 0 or more
};

class PlateSums {
public:
    static constexpr std::size_t exact_limit = 65536;

    PlateSums(std::vector<PlateKind> kinds, ExactMass most);

    std::size_t size() const { return sums_.size(); }
    ExactMass mass(std::size_t i) const { return sums_[i].mass; } // ascending; the first is 0
    int plates(std::size_t i) const { return sums_[i].plates; }
    std::vector<PlatesOnSide> stack(std::size_t i) const; // heaviest first

private:
    struct Sum {
        ExactMass mass;
        int plates;
        int last; // index of the step that put the heaviest plates on, -1 for the empty stack
    };
    struct Step {
        int kind;
        int count;
        int rest; // the step before
    };
    struct Candidate {
        ExactMass mass;
        int plates;
        int count; // of the kind being added
        int rest;
    };
    void add_kind(int kind, ExactMass most);
    static std::vector<Candidate> merged(const std::vector<Candidate>& fewer,
                                         const std::vector<Candidate>& more);
    static void thin(std::vector<Candidate>& sums);

    std::vector<PlateKind> kinds_; // lightest first
    std::vector<Sum> sums_;
    std::vector<Step> steps_;
};

} // namespace amentum
