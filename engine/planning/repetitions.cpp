#include "planning/repetitions.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

constexpr double most_reserve = 5;

} // namespace

int repetitions_possible(double fraction) {
    assert(fraction > 0);
    constexpr double rounding = 1e-9; // 30 x (1 / 0.75 - 1) is ten, not the double below it
    return std::max(1, static_cast<int>(std::floor(30.0 * (1.0 / fraction - 1.0) + rounding)));
}

// Youth 6 to 15 in strength work and 3 to 6 in speed work [Faigenbaum2009] (details from memory); 1 to 12 for
// trained and 8 to 12 for new lifters [ACSM2009], speed at most 5 so that no repetition is slow (proposal of
// this project).
RepetitionRange repetition_range(Part part, Loading loading) {
    if (part == Part::speed)
        return {3, loading == Loading::youth ? 6 : 5};
    if (loading == Loading::youth)
        return {6, 15};
    if (part == Part::main_lift)
        return loading == Loading::novice ? RepetitionRange{5, 12} : RepetitionRange{2, 12};
    return {6, 15};
}

int reserve_wanted(Part part, Loading loading) {
    const int main = loading == Loading::youth ? 4 : loading == Loading::novice ? 3 : 2;
    return part == Part::shoulder || part == Part::trunk ? std::max(3, main) : main;
}

Repetitions repetitions_leaving(int reserve, double fraction, Part part, Loading loading) {
    const int possible = repetitions_possible(fraction);
    const auto [fewest, most] = repetition_range(part, loading);
    const int done = std::clamp(possible - reserve, std::min(fewest, possible), most);
    return {done, std::min(static_cast<double>(possible - done), most_reserve)};
}

} // namespace amentum
