#include "demo_facility/hall_loads.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

struct Ladder {
    double lowest_lb;
    double step_lb;
    int steps;
};

Ladder ladder_of(HallTool tool) {
    constexpr int pairs = 160; // 800 lb of plates: fewer than the hall owns
    switch (tool) {
    case HallTool::straight_bar:
        return {straight_bar_lb, 5, pairs};
    case HallTool::high_hex_bar:
        return {high_hex_bar_lb, 5, pairs};
    case HallTool::safety_bar:
        return {safety_bar_lb, 5, pairs};
    case HallTool::dumbbell_pair:
        break;
    }
    return {20, 10, 18}; // two of 10 lb to two of 100 lb
}

} // namespace

std::optional<HallSet> hall_set(HallTool tool, Mass maximum, int reps_wanted, int fewest) {
    const Ladder ladder = ladder_of(tool);
    const auto mass_at = [&](int step) { return Mass::pounds(ladder.lowest_lb + step * ladder.step_lb); };
    const auto reps_at = [&](int step) {
        return static_cast<int>(std::round(30 * (maximum.kilograms() / mass_at(step).kilograms() - 1)));
    };
    const double wanted = maximum.pounds() / (1 + reps_wanted / 30.0);
    int step = std::clamp(static_cast<int>(std::round((wanted - ladder.lowest_lb) / ladder.step_lb)), 0,
                          ladder.steps);
    while (reps_at(step) > 10 && step < ladder.steps)
        ++step;
    while (reps_at(step) < fewest && step > 0 && reps_at(step - 1) <= 10)
        --step;
    if (reps_at(step) < fewest || reps_at(step) > 10)
        return std::nullopt;
    return HallSet{mass_at(step), reps_at(step)};
}

} // namespace amentum
