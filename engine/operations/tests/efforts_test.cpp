// Which readings a measured trace leaves: by hand, each effort's numbers and the test kind and field they belong to.
#include "operations/inside/efforts.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

std::vector<Reading> readings(TraceTest effort, Legs legs,
                              const std::vector<std::pair<std::string, double>>& numbers) {
    TraceMeasurement measured{{effort, legs, {}, {}, {}}, 700, 0.1, {}, {}, {}, {}, {}, {}};
    for (const auto& [key, value] : numbers)
        measured.metrics.push_back({key, key, value, "", 0, {}, {}, "", ""});
    KeptTrace trace{"a-trace",
                    {"ona-reyes"},
                    *parse_date("2026-06-01", "date"),
                    word(effort),
                    word(legs),
                    4,
                    "x.txt",
                    9,
                    "00",
                    {},
                    {},
                    "plate 1",
                    "",
                    {}};
    return readings_of_trace(trace, measured);
}

} // namespace

TEST_CASE("a countermovement jump leaves its height and its power, a squat jump its height") {
    const auto jump =
        readings(TraceTest::countermovement_jump, Legs::both,
                 {{"jump_height_flight", 0.33}, {"jump_height_impulse", 0.31}, {"peak_power", 3100}});
    REQUIRE(jump.size() == 2);
    CHECK(jump[0].test == "jump_height_plate");
    CHECK(jump[0].height == Length::metres(0.31)); // never the one from flight time
    CHECK(jump[1].test == "jump_peak_power");
    CHECK(jump[1].power == Power::watts(3100));
    CHECK(jump[1].trial == 4);
    CHECK(jump[1].device == "plate 1");
    CHECK(jump[1].note == "force trace a-trace");
    const auto squat = readings(TraceTest::squat_jump, Legs::both, {{"jump_height_impulse", 0.29}});
    REQUIRE(squat.size() == 1);
    CHECK(squat[0].test == "squat_jump_height_plate");
}

TEST_CASE("a drop jump leaves its two times, a pull its force, a side bound its speed and side") {
    const auto drop =
        readings(TraceTest::drop_jump, Legs::both,
                 {{"reactive_strength_flight", 2.5}, {"flight_time", 0.5}, {"contact_time", 0.2}});
    REQUIRE(drop.size() == 1);
    CHECK(drop[0].test == "drop_jump_ratio");
    CHECK(drop[0].flight_time == Duration::seconds(0.5));
    CHECK(drop[0].contact_time == Duration::seconds(0.2));
    const auto pull = readings(TraceTest::isometric_pull, Legs::both,
                               {{"net_peak_force", 1500}, {"gross_peak_force", 2200}});
    REQUIRE(pull.size() == 1);
    CHECK(pull[0].test == "mid_thigh_pull_force");
    CHECK(pull[0].force == Force::newtons(2200));
    const auto bound = readings(TraceTest::lateral_bound, Legs::left, {{"take_off_speed_sideways", 2.1}});
    REQUIRE(bound.size() == 1);
    CHECK(bound[0].test == "lateral_bound_speed");
    CHECK(bound[0].speed == Speed::metres_per_second(2.1));
    CHECK(bound[0].side == Side::left);
}

TEST_CASE("what is shown only leaves no reading: one leg's jump, hops, a bound without a sideways channel") {
    CHECK(readings(TraceTest::countermovement_jump, Legs::left,
                   {{"jump_height_impulse", 0.2}, {"peak_power", 1500}})
              .empty());
    CHECK(readings(TraceTest::repeated_hops, Legs::both, {{"reactive_strength_flight", 2.0}}).empty());
    CHECK(readings(TraceTest::lateral_bound, Legs::right, {{"jump_height_impulse", 0.1}}).empty());
}

TEST_CASE("no test kind of a force plate is without an effort that feeds it") {
    for (const char* test : {"jump_height_plate", "jump_peak_power", "squat_jump_height_plate",
                             "drop_jump_ratio", "mid_thigh_pull_force", "lateral_bound_speed"}) {
        CAPTURE(test);
        bool found = false;
        for (const auto& effort : all_efforts())
            for (const Legs legs : {Legs::both, Legs::left})
                for (const char* metric : {"jump_height_impulse", "peak_power", "reactive_strength_flight",
                                           "gross_peak_force", "take_off_speed_sideways"})
                    found = found || test_of_metric({effort.effort, legs, {}, {}, {}}, metric) == test;
        CHECK(found);
    }
}
