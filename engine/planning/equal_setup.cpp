#include "planning/equal_setup.h"

#include "body_mechanics/rear_share.h"
#include "body_mechanics/search_setup.h"

#include <cmath>

namespace amentum {
namespace {

constexpr double least_lean = -5, most_lean = 60; // degrees
constexpr double hardly_other = 0.01;             // of the share

} // namespace

std::optional<EqualSetup> solve_equal_setup(const Body& body, const Setup& from, const Setup& to) {
    if (!rear_share_of(from.lift) || !rear_share_of(to.lift) || !to.trunk_lean)
        return std::nullopt;
    const auto was = solve_pose(body, from), is = solve_pose(body, to);
    if (!was || !is || !was->hip_share() || !is->hip_share())
        return std::nullopt;
    EqualSetup equal{to, *was->hip_share(), *is->hip_share(), *is->hip_share()};
    if (std::abs(equal.share_wanted - equal.share_usual) < hardly_other)
        return equal;
    const auto found = search_setup(
        body, to, {}, {Target::hip_share, equal.share_wanted, Varied::trunk_lean, least_lean, most_lean});
    if (!found)
        return equal;
    equal.setup = found->setup;
    equal.share_found = found->value;
    return equal;
}

} // namespace amentum
