#include "planning/next_load.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr double a_repetition = 1 - 1e-9; // (ratio - 1)(30 + n) is one, not the double below it

double repetitions_shown(const SetShown& set) {
    return set.reps + std::min(set.reserve.value_or(0), most_trusted_reserve);
}

double capacity(double lifted, double repetitions) {
    return lifted * epley_factor(repetitions);
}

} // namespace

double epley_factor(double repetitions) {
    return repetitions <= 1 ? 1 : 1 + repetitions / 30;
}

bool failed(const SetWritten& written, const SetShown& shown) {
    return shown.reps < written.reps && shown.reserve.value_or(0) == 0;
}

std::optional<SetDifference> measure_difference(const SetWritten& written,
                                                const std::vector<SetShown>& sets) {
    const double asked = written.reps + std::min(written.reserve, most_trusted_reserve);
    if (asked > most_repetitions_of_line || written.lifted <= 0)
        return std::nullopt;
    std::vector<SetDifference> seen;
    for (const auto& set : sets) {
        const bool fell_short = failed(written, set);
        const double shown = repetitions_shown(set);
        if ((!set.reserve && !fell_short) || shown > most_repetitions_of_line || set.lifted <= 0)
            continue;
        const double ratio = capacity(set.lifted, shown) / capacity(written.lifted, asked);
        seen.push_back({ratio, (ratio - 1) * (30 + asked), fell_short, set.lifted});
    }
    const bool any_failed =
        std::any_of(seen.begin(), seen.end(), [](const SetDifference& each) { return each.failed; });
    if (any_failed)
        std::erase_if(seen, [](const SetDifference& each) { return !each.failed; });
    if (seen.empty())
        return std::nullopt;
    std::stable_sort(seen.begin(), seen.end(),
                     [](const auto& a, const auto& b) { return a.ratio < b.ratio; });
    return any_failed ? seen.front() : seen[(seen.size() - 1) / 2];
}

Direction direction_of(const SetDifference& difference) {
    if (difference.failed)
        return Direction::down;
    if (difference.repetitions >= a_repetition)
        return Direction::up;
    return difference.repetitions <= -a_repetition ? Direction::down : Direction::as_written;
}

double next_factor(const SetDifference& difference, bool legs) {
    switch (direction_of(difference)) {
    case Direction::up:
        return std::clamp(difference.ratio, 1 + least_step_up, 1 + most_step_up);
    case Direction::down:
        return difference.failed
                   ? std::min(difference.ratio, 1 - (legs ? least_step_down_legs : least_step_down_other))
                   : difference.ratio;
    case Direction::as_written:
        break;
    }
    return 1;
}

} // namespace amentum
