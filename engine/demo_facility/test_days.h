// What the test days, throws, seasons and logged sets of one simulated thrower would have been written down as.
#pragma once

#include "demo_facility/simulation.h"
#include "values/record_set.h"

#include <array>
#include <string>
#include <string_view>

namespace amentum {

// The errors the simulation really adds: SDs between days and between trials of one day, and what each test really
// is of. Logarithmic ones are fractions of the value. The engine believes data/test_kinds.csv, which says otherwise
// for body mass and stature.
struct TrueTest {
    const char* test;
    const char* error_unit; // "fraction", "deg", "m", "m/s"
    double day, trial;
    int quality; // index into true_effects; -1: none
};
inline constexpr std::array<TrueTest, 20> true_tests{{
    {"body_mass", "fraction", 0.008, 0, -1},
    {"external_rotation_force", "fraction", 0.06, 0.05, 8},
    {"grip_force", "fraction", 0.04, 0.03, 9},
    {"hex_bar_high_max", "fraction", 0.034, 0.025, 1},
    {"hip_internal_rotation", "deg", 1.8, 1.3, -1},
    {"jump_height_flight", "fraction", 0.042, 0.04, 4},
    {"kneeling_overhead_throw_4lb", "fraction", 0.025, 0.03, 6},
    {"kneeling_overhead_throw_6lb", "fraction", 0.025, 0.03, 6},
    {"lateral_bound", "fraction", 0.03, 0.03, 5},
    {"press_max", "fraction", 0.034, 0.025, 3},
    {"pull_up_max", "fraction", 0.024, 0.018, 2},
    {"rotational_throw_6lb", "fraction", 0.03, 0.03, 7},
    {"shoulder_external_rotation", "deg", 1.9, 1.5, -1},
    {"shoulder_internal_rotation", "deg", 1.9, 1.5, -1},
    {"split_squat_max", "fraction", 0.034, 0.025, 0},
    {"standing_overhead_throw_4lb", "fraction", 0.025, 0.03, 6},
    {"standing_overhead_throw_6lb", "fraction", 0.025, 0.03, 6},
    {"standing_overhead_throw_8lb", "fraction", 0.025, 0.03, 6},
    {"stature", "m", 0, 0, -1},
    {"throwing_velocity", "m/s", 0.358, 0.447, -1},
}};
const TrueTest& true_test(std::string_view test); // contract: it stands in true_tests

void add_test_days(RecordSet&, const Athlete&, const TrueThrower&, Date last_day, std::uint64_t seed);
void add_season(RecordSet&, const Athlete&, const TrueThrower&, Date last_day, std::uint64_t seed);
void add_logged_sets(RecordSet&, const Athlete&, const TrueThrower&, Date last_day, std::uint64_t seed);

// The hall's usual value of a test for this thrower on that day, at z = 0, in SI.
double usual_test_value(const Athlete&, double age, double body_mass_kg, const std::string& test);
double true_test_value(const Athlete&, const TrueThrower&, Date last_day, int day, const std::string& test);

} // namespace amentum
