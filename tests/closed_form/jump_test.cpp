// Height of a jump from its time in the air or its take-off velocity: uniform gravity, g 9.80665 m/s^2
// (closed form).
#include "measurement/jump_height.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {

TEST_CASE("0.550 s in the air") {
    const auto height = jump_height_from_flight_time(Duration::seconds(0.550));
    REQUIRE(height);
    CHECK(std::abs(height->metres() - 0.37081) <= 1e-5);
}

TEST_CASE("2.70 m/s at take-off") {
    const auto height = jump_height_from_take_off_velocity(Speed::metres_per_second(2.70));
    REQUIRE(height);
    CHECK(std::abs(height->metres() - 0.37169) <= 1e-5);
}

TEST_CASE("Without bent legs both ways agree: t = 2 v / g") {
    for (double v = 0.6; v < 5.5; v += 0.1) {
        CAPTURE(v);
        const auto by_velocity = jump_height_from_take_off_velocity(Speed::metres_per_second(v));
        const auto by_time = jump_height_from_flight_time(Duration::seconds(2 * v / 9.80665));
        REQUIRE(by_velocity);
        REQUIRE(by_time);
        CHECK(std::abs(*by_velocity / *by_time - 1) <= 1e-12);
    }
}

} // namespace amentum
