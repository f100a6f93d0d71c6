#include "equipment/stack_moves.h"

#include <algorithm>

namespace amentum {
namespace {

std::vector<ExactMass> one_by_one(const std::vector<PlatesOnSide>& stack) {
    std::vector<ExactMass> plates;
    for (const auto& plate : stack)
        plates.insert(plates.end(), static_cast<std::size_t>(plate.count), exact_mass(plate.each));
    return plates;
}

} // namespace

int stack_moves(const std::vector<PlatesOnSide>& from, const std::vector<PlatesOnSide>& to) {
    const auto a = one_by_one(from);
    const auto b = one_by_one(to);
    const auto parting = std::mismatch(a.begin(), a.end(), b.begin(), b.end());
    return static_cast<int>((a.end() - parting.first) + (b.end() - parting.second));
}

} // namespace amentum
