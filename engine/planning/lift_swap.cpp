#include "planning/lift_swap.h"

#include "planning/allowed_exercises.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

double relative_error(const BlockRequest& request, const Exercise& exercise) {
    const auto& test = request.maxima.at(*exercise.load_test);
    return test.standard_error / test.value;
}

double given_to(const std::string& quality, const Exercise& exercise) {
    const auto found = exercise.qualities.find(quality);
    return found == exercise.qualities.end() ? 0.0 : found->second;
}

} // namespace

std::optional<Mass> moved_mass(const BlockRequest& request, const Exercise& exercise, Mass load) {
    if (!moves_body_mass(exercise))
        return load;
    if (!request.body_mass)
        return std::nullopt;
    return Mass::kilograms(request.body_mass->value) + load;
}

std::optional<EqualLoad> usual_equal(const BlockRequest& request, const Exercise& from, Mass load,
                                     const Exercise& to) {
    const auto moved = moved_mass(request, from, load);
    if (!moved || !from.load_test || !to.load_test)
        return std::nullopt;
    if (*from.load_test == *to.load_test) {
        const Mass same = *moved * (to.load_share / from.load_share);
        const double error = from.key == to.key ? 0 : error_of_usual_share;
        return EqualLoad{same, same.kilograms() * error, IntentBasis::load};
    }
    const auto max_from = lower_maximum(request, from), max_to = lower_maximum(request, to);
    if (!max_from || !max_to)
        return std::nullopt;
    const Mass same = *max_to * (*moved / *max_from);
    const double error =
        std::hypot(error_of_usual_share, relative_error(request, from), relative_error(request, to));
    return EqualLoad{same, same.kilograms() * error, IntentBasis::load};
}

double share_served_of(const std::string& quality, const Exercise& from, const Exercise& to) {
    const double wanted = given_to(quality, from);
    return wanted > 0 ? std::min(1.0, given_to(quality, to) / wanted) : 1;
}

double share_served(const std::string& purpose, const Exercise& from, const Exercise& to) {
    if (from.key == to.key)
        return 1;
    if (given_to(purpose, from) > 0 && given_to(purpose, to) <= 0)
        return 0;
    double wanted = 0, served = 0;
    for (const auto& [quality, share] : from.qualities) {
        wanted += share;
        served += std::min(share, given_to(quality, to));
    }
    const double pace = (from.part == Part::speed) == (to.part == Part::speed) ? 1 : share_at_other_pace;
    return wanted > 0 ? pace * served / wanted : 0;
}

} // namespace amentum
