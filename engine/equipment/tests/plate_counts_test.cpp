// Eight counts at a time beside one count after another, over the whole range of a count.
#include "equipment/plate_counts.h"

#include <doctest/doctest.h>

#include <random>

using namespace amentum;

TEST_CASE("counts compared eight at a time are counts compared one by one") {
    std::mt19937 random(5);
    const auto drawn = [&](bool near) {
        PlateCounts counts;
        for (auto& count : counts.of)
            count = static_cast<std::uint8_t>(near ? random() % 3 : random() % 128);
        return counts;
    };
    int within = 0;
    for (int round = 0; round < 2000; ++round) {
        const PlateCounts a = drawn(round % 2 == 0);
        PlateCounts b = drawn(round % 4 < 2);
        if (round % 3 == 0)
            b = b.joined_with(a);
        bool fits = true;
        int more = 0;
        for (std::size_t k = 0; k < PlateCounts::most_kinds; ++k) {
            fits = fits && a.of[k] <= b.of[k];
            more += std::max(0, a.of[k] - b.of[k]);
            CHECK(a.joined_with(b).of[k] == std::max(a.of[k], b.of[k]));
            CHECK(a.met_with(b).of[k] == std::min(a.of[k], b.of[k]));
        }
        CHECK(a.within(b) == fits);
        CHECK(a.without(b) == more);
        within += fits;
    }
    CHECK(within > 500);
    PlateCounts most, none;
    most.of.fill(PlateCounts::most_of_a_kind);
    CHECK(most.without(none) == 32 * 127);
    CHECK(most.plates() == 32 * 127);
    CHECK(none.within(most));
    CHECK_FALSE(most.within(none));
}
