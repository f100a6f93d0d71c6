// A recording of gait that others have read: two plates of type 4, whole numbers, DEC. Its provenance is not stated, so
// it is not in the repository; where a person has put it beside, the greatest forces after taking off the mean of
// FORCE_PLATFORM:ZERO (frames 1 to 10) must be 798.5 and 871.4 N. Those were found by a separate short reader.
#include "c3d_reading.h"

#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <iostream>
#include <iterator>

namespace amentum {

TEST_CASE("An open recording of gait on two plates of type 4") {
    std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/../shared/open_data/Gait.c3d", std::ios::binary);
    if (!file) {
        std::cout << "SKIPPED the open gait recording: ../shared/open_data/Gait.c3d is not there\n";
        return;
    }
    const std::string bytes((std::istreambuf_iterator<char>(file)), {});
    const auto read = tests::read_c3d(bytes);
    REQUIRE_MESSAGE(read, (read ? "" : read.refusal().sentence));
    REQUIRE(read->plates.size() == 2);
    CHECK(read->rate_hz == 1000);
    const double published[] = {798.5, 871.4};
    for (std::size_t plate = 0; plate < 2; ++plate) {
        const auto& forces = read->plates[plate].vertical;
        REQUIRE(forces.size() == 4870);
        double empty = 0, greatest = 0;
        for (std::size_t i = 0; i < 100; ++i)
            empty += static_cast<double>(forces[i]) / 100;
        for (const float force : forces)
            greatest = std::max(greatest, static_cast<double>(force) - empty);
        CHECK(greatest == doctest::Approx(published[plate]).epsilon(0.1 / published[plate]));
    }
}

} // namespace amentum
