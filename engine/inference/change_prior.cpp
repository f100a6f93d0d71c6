#include "inference/change_prior.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

constexpr std::size_t fewest_changes = 6; // proposal of this project, no source
constexpr double least_share_of_variance =
    0.25; // of the prior otherwise taken; proposal of this project, no source

struct Weighted {
    double mean;
    double variance; // of the mean
    double squares;  // sum of the weighted squared distances to it
};

Weighted weighted_with(std::span<const RosterChange> roster, double spread) {
    double weights = 0, sum = 0, squares = 0;
    for (const auto& change : roster) {
        weights += 1 / (spread + change.variance);
        sum += change.difference / (spread + change.variance);
    }
    const double mean = sum / weights;
    for (const auto& change : roster)
        squares += (change.difference - mean) * (change.difference - mean) / (spread + change.variance);
    return {mean, 1 / weights, squares};
}

// The weighted squares fall as the spread rises, so that the equation has at most one root.
double paule_mandel(std::span<const RosterChange> roster) {
    const double wanted = static_cast<double>(roster.size()) - 1;
    double low = 0, high = 1e-12;
    if (weighted_with(roster, low).squares <= wanted)
        return 0;
    while (weighted_with(roster, high).squares > wanted)
        high *= 4;
    for (int step = 0; step < 200 && high - low > 1e-12 * high; ++step) {
        const double middle = (low + high) / 2;
        (weighted_with(roster, middle).squares > wanted ? low : high) = middle;
    }
    return (low + high) / 2;
}

} // namespace

ChangePrior estimate_change_prior(std::span<const RosterChange> roster, const StateOnDay& otherwise) {
    assert(otherwise.variance > 0);
    assert(std::all_of(roster.begin(), roster.end(), [](const auto& change) { return change.variance > 0; }));
    if (roster.size() < fewest_changes)
        return {otherwise, 0};
    const double spread = std::max(paule_mandel(roster), least_share_of_variance * otherwise.variance);
    const Weighted at = weighted_with(roster, spread);
    return {{at.mean, spread + at.variance}, static_cast<int>(roster.size())};
}

} // namespace amentum
