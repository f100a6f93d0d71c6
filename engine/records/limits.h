// What can be true at all, in SI, whatever the test: wide enough for every athlete, narrow enough to catch a wrong unit.
//
// A test's own range is narrower (data/test_kinds.csv); these hold for fields that no test judges.
// All proposals of this project, no source.
#pragma once

namespace amentum {

struct Limits {
    double low, high;
};

namespace limits {

inline constexpr Limits age_years{6, 80};
inline constexpr Limits stature_m{1.0, 2.4}, sitting_height_m{0.5, 1.3}, training_years{0, 40};
inline constexpr Limits load_kg{-100, 600}; // below 0: help, on pull-ups
inline constexpr Limits body_mass_kg{15, 250}, speed_ms{0, 60}, radar_angle_deg{0, 90},
    release_angle_deg{-90, 90};
inline constexpr Limits distance_m{0.01, 160}, release_height_m{0, 10}, flight_time_s{0.05, 2},
    height_m{0.01, 2.6};
inline constexpr Limits angle_deg{-90, 360}, force_n{0, 10000}, power_w{1, 20000}, contact_time_s{0.03, 3};
inline constexpr Limits trial{1, 60}, reps{1, 100}, reps_in_reserve{0, 20}, set_number{1, 40};
inline constexpr Limits throws{1, 400}, effort{0.1, 1}, ball_mass_kg{0.02, 10}, soreness{0, 10};
inline constexpr Limits item_count{1, 500}, item_mass_kg{0.02, 500}, item_height_m{0, 3},
    item_ratio{0.05, 10};
inline constexpr Limits item_step_kg{0.05, 100}, item_most_kg{0.5, 1000};
inline constexpr Limits weeks{4, 16}, sessions_per_week{1, 5}, session_minutes{20, 120};
inline constexpr Limits line_order{1, 99}, line_sets{1, 40}, intensity{0, 1.2}, rest_minutes{0, 60};

inline constexpr Limits prior_edit{1, 100000};

inline constexpr Limits occasion{1, 9}, outs{0, 60};
inline constexpr Limits running_number{1, 100000}; // of tables, pain entries, steps
inline constexpr Limits table_year{1900, 2200}, age_band{0, 99}, pitches{1, 400}, pitches_or_none{0, 400};
inline constexpr Limits month{1, 12}, day_of_month{1, 31}, days_running{1, 7}, yearly_innings{1, 400};
inline constexpr Limits innings_caught{1, 20}, months_off{0, 12};
inline constexpr Limits step{1, 99}, days_between_steps{0, 6};
inline constexpr unsigned long time_zone_characters = 64;

inline constexpr int calendar_days = 400; // the longest unbroken run of days

} // namespace limits
} // namespace amentum
