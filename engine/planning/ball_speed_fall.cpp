#include "planning/ball_speed_fall.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double a_gram = 0.001;  // kg
constexpr double rounding = 1e-9; // 1 - 19 / 20 is five per cent, not the double below it

bool of_ball(const SetDone& set, const std::optional<Mass>& ball) {
    if (!set.load || !ball)
        return !set.load && !ball;
    return std::abs((*set.load - *ball).kilograms()) < a_gram;
}

std::optional<double> fastest(const std::vector<const SetDone*>& sets, const std::optional<Mass>& ball) {
    std::optional<double> best;
    for (const SetDone* set : sets)
        if (set->speed && of_ball(*set, ball))
            best = std::max(best.value_or(0), set->speed->metres_per_second());
    return best;
}

const SetDone* last_with_speed(const std::vector<const SetDone*>& sets) {
    const auto found = std::find_if(sets.rbegin(), sets.rend(), [](const SetDone* s) { return s->speed; });
    return found == sets.rend() ? nullptr : *found;
}

BallFall fall(double from, double to) {
    return {1 - to / from, from, to};
}

} // namespace

BallStep step_of(double share) {
    if (share >= stop_throwing_from - rounding)
        return BallStep::stop;
    return share >= lighter_ball_from - rounding ? BallStep::lighter : BallStep::as_written;
}

std::optional<BallFall> fall_within(const std::vector<const SetDone*>& sets) {
    const SetDone* last = last_with_speed(sets);
    if (!last)
        return std::nullopt;
    const auto with_ball = std::count_if(sets.begin(), sets.end(), [&](const SetDone* set) {
        return set->speed && of_ball(*set, last->load);
    });
    if (with_ball < 2)
        return std::nullopt;
    return fall(*fastest(sets, last->load), last->speed->metres_per_second());
}

std::optional<BallFall> fall_between(const std::vector<const SetDone*>& before,
                                     const std::vector<const SetDone*>& last) {
    const SetDone* newest = last_with_speed(last);
    if (!newest)
        return std::nullopt;
    const auto earlier = fastest(before, newest->load);
    if (!earlier)
        return std::nullopt;
    return fall(*earlier, *fastest(last, newest->load));
}

} // namespace amentum
