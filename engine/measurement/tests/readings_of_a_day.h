// Invented readings and test kinds, short enough that a test case shows only what it is about.
#pragma once

#include "values/reading.h"
#include "values/test_kind.h"

#include <string>
#include <vector>

namespace amentum::tests {

inline TestKind kind_of(Measure measure, TestUnit unit, double low, double high) {
    return {"kind",
            "Test of the day",
            "quality",
            measure,
            unit,
            Scale::linear,
            SideRule::none,
            0.3,
            0.4,
            low,
            high,
            std::nullopt,
            "",
            {"the kind's source"}};
}

inline TestKind squat_kind() {
    TestKind kind = kind_of(Measure::split_squat_max, TestUnit::kilogram, 5, 250);
    kind.name = "Rear-foot-elevated split squat";
    kind.scale = Scale::logarithmic;
    kind.trial_error = 0.02;
    kind.day_error = 0.03;
    return kind;
}

inline TestKind pull_up_kind() {
    TestKind kind = kind_of(Measure::system_mass_max, TestUnit::kilogram, 20, 260);
    kind.scale = Scale::logarithmic;
    kind.trial_error = 0.01;
    kind.day_error = 0.02;
    return kind;
}

inline TestKind velocity_kind() {
    return kind_of(Measure::session_velocity, TestUnit::metre_per_second, 10, 48);
}

inline Reading reading(int trial = 1) {
    Reading each{AthleteId{"ona-reyes"}, Date::from_days(20500), "kind"};
    each.trial = trial;
    return each;
}

inline Reading set_of(double kg, int reps, int trial = 1) {
    Reading each = reading(trial);
    each.load = Mass::kilograms(kg);
    each.reps = reps;
    return each;
}

inline Reading throw_of(double metres_per_second, int trial = 1) {
    Reading each = reading(trial);
    each.speed = Speed::metres_per_second(metres_per_second);
    each.device = "radar 1";
    each.place = PlaceMeasured::out_of_hand;
    return each;
}

} // namespace amentum::tests
