// The true state of each thrower on each day, and the effects that made it.
#pragma once

#include "values/athlete.h"

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace amentum {

inline constexpr int demo_qualities = 10;

struct TrueEffect {
    const char* quality;
    double between;    // g_k: velocity SDs for one SD between throwers
    double within;     // b_k: velocity SDs for one SD of change within a thrower
    double log_spread; // s_k: one SD of the quality in the logarithm of its test
};
// Chosen, not measured: between follows the direction of published correlations, within differs on purpose.
inline constexpr std::array<TrueEffect, demo_qualities> true_effects{{
    {"single_leg_strength", 0.25, 0.40, 0.14},
    {"two_leg_strength", 0.20, 0.05, 0.13},
    {"pulling_strength", 0.15, 0.10, 0.09},
    {"pressing_strength", 0.15, 0.00, 0.14},
    {"jump_power", 0.30, 0.30, 0.10},
    {"lateral_power", 0.15, 0.10, 0.07},
    {"overhead_ball_speed", 0.35, 0.45, 0.07},
    {"rotational_ball_speed", 0.40, 0.45, 0.08},
    {"external_rotation_strength", 0.05, 0.00, 0.14},
    {"grip_strength", 0.10, 0.00, 0.12},
}};
inline constexpr double true_velocity_spread = 1.6;         // sigma_v, m/s, within a kind of thrower
inline constexpr double true_drift_sd_per_sqrt_day = 0.012; // SDs
inline constexpr double growth_mph_per_year = 1.5;          // below 18 [Sgroi2015]
inline constexpr double growth_mph_per_inch = 1.2;          // beside it [Sgroi2015]

inline constexpr double metres_a_year = 0.055; // of stature, until 16.5 years
// What no quality here explains, m/s: 1.6 sqrt(1 - sum of g_k^2), so that throwers of a kind do differ by sigma_v.
inline constexpr double own_residual_sd = 1.07;
inline constexpr int block_days = 84;
inline constexpr double usual_block_gain = 0.5; // SDs, for whoever stands at 0
inline constexpr double kept_after_block = 0.7; // of the gain, for good; the rest fades
inline constexpr double second_radar_bias = 0.9, second_radar_share = 0.08; // m/s too high; of sessions

struct TrueBlock {
    int first_day; // 0 ... demo_days
    int days;
    int quality; // index into true_effects
    double gain; // SDs at its end
};

struct TrueThrower {
    std::array<double, demo_qualities> level;              // z_k
    std::vector<std::array<double, demo_qualities>> state; // x_k by day
    std::vector<double> velocity;                          // m/s by day
    std::vector<double> body_mass_kg;                      // by day
    std::vector<TrueBlock> blocks;
    bool findable;   // false: three test days only (what that hides: docs/guide/demo_facility.md)
    double grown_ms; // part of the velocity's change from first to last day that age and stature brought
};

TrueThrower simulate_thrower(const Athlete&, Date last_day, std::uint64_t seed);
double usual_gain_at(double z);                            // of one block, SDs: more for whoever is behind
double stature_on(const Athlete&, Date last_day, int day); // m; of usual size when never taped
double age_on(const Athlete&, Date last_day, int day);     // day 0 is demo_days before last_day

} // namespace amentum
