#include "measurement/measure_test.h"

#include "measurement/day_value.h"

namespace amentum {
namespace {

bool is_lift(Measure measure) {
    return measure == Measure::one_rep_max || measure == Measure::system_mass_max ||
           measure == Measure::split_squat_max;
}

TestUnit unit_of(Measure measure) {
    switch (measure) {
    case Measure::one_rep_max:
    case Measure::system_mass_max:
    case Measure::split_squat_max:
    case Measure::body_mass:
        return TestUnit::kilogram;
    case Measure::ball_speed:
    case Measure::session_velocity:
    case Measure::take_off_speed:
        return TestUnit::metre_per_second;
    case Measure::jump_height:
    case Measure::bound_distance:
    case Measure::stature:
    case Measure::taped_length:
        return TestUnit::metre;
    case Measure::joint_angle:
        return TestUnit::degree;
    case Measure::isometric_force:
        return TestUnit::newton;
    case Measure::jump_power:
        return TestUnit::watt;
    case Measure::reactive_ratio:
        return TestUnit::one;
    }
    assert(!"every measure has a unit");
    return TestUnit::kilogram;
}

Refusal refuse_two(std::string field, std::string what, const std::string& one, const std::string& two) {
    const auto named = [](const std::string& name) {
        return name.empty() ? std::string("none named") : name;
    };
    return {RefusalCode::method_does_not_apply,
            "The trials were taken with two " + what + " (" + named(one) + "; " + named(two) +
                "): they do not make one result. Please record them on their own, or correct the name.",
            std::move(field), named(one) + "; " + named(two), "one and the same in a result"};
}

Result<Done> check_taken_alike(const std::vector<Reading>& readings) {
    const Reading& first = readings.front();
    for (const auto& each : readings) {
        assert(each.athlete == first.athlete && each.date == first.date && each.test == first.test &&
               each.side == first.side);
        if (each.device != first.device)
            return refuse_two("device", "devices", first.device, each.device);
        if (each.rater != first.rater)
            return refuse_two("rater", "raters", first.rater, each.rater);
        if (each.place != first.place)
            return refuse_two("place", "places of measuring", word(first.place), word(each.place));
    }
    return Done{};
}

Result<Done> check_side(const TestKind& kind, Side side) {
    if (kind.side_rule == SideRule::none || side != Side::none)
        return Done{};
    return refuse_missing(
        "side", "left or right: this test is about the " +
                    std::string(kind.side_rule == SideRule::lead_leg ? "lead leg" : "throwing arm"));
}

} // namespace

Result<TestResult> measure_test(const TestKind& kind, const std::vector<Reading>& readings) {
    assert(kind.unit == unit_of(kind.measure));
    if (readings.empty())
        return Refusal{RefusalCode::too_few_data, kind.name + ": nothing was read.", "", "0 readings",
                       "1 or more"};
    const Reading& first = readings.front();
    assert(first.test == kind.key);
    if (const auto side = check_side(kind, first.side); !side)
        return side.refusal();
    if (const auto alike = check_taken_alike(readings); !alike)
        return alike.refusal();
    const auto day =
        is_lift(kind.measure) ? measure_best_set(kind, readings) : measure_mean_of_trials(kind, readings);
    if (!day)
        return day.refusal();
    return state_result(kind, *day,
                        TestResult{first.athlete,
                                   first.date,
                                   first.test,
                                   first.side,
                                   0,
                                   0,
                                   0,
                                   "",
                                   {},
                                   {},
                                   first.device,
                                   first.rater,
                                   first.place});
}

std::vector<std::string> fields_needed(Measure measure) {
    switch (measure) {
    case Measure::one_rep_max:
    case Measure::split_squat_max:
        return {"load", "reps"};
    case Measure::system_mass_max:
        return {"load", "reps", "body_mass"};
    case Measure::ball_speed:
    case Measure::jump_height:
        return {};
    case Measure::bound_distance:
        return {"distance"};
    case Measure::joint_angle:
        return {"angle"};
    case Measure::isometric_force:
        return {"force"};
    case Measure::jump_power:
        return {"power"};
    case Measure::reactive_ratio:
        return {"flight_time", "contact_time"};
    case Measure::take_off_speed:
    case Measure::session_velocity:
        return {"speed"};
    case Measure::body_mass:
        return {"body_mass"};
    case Measure::stature:
    case Measure::taped_length:
        return {"height"};
    }
    assert(!"every measure has its fields");
    return {};
}

std::vector<std::string> fields_optional(Measure measure) {
    switch (measure) {
    case Measure::one_rep_max:
    case Measure::split_squat_max:
    case Measure::system_mass_max:
        return {"reps_in_reserve"};
    case Measure::ball_speed:
        return {"speed", "radar_angle", "distance", "release_height", "release_angle"};
    case Measure::jump_height:
        return {"flight_time", "height", "speed"};
    case Measure::session_velocity:
        return {"radar_angle"};
    case Measure::bound_distance:
    case Measure::joint_angle:
    case Measure::isometric_force:
    case Measure::jump_power:
    case Measure::reactive_ratio:
    case Measure::take_off_speed:
    case Measure::body_mass:
    case Measure::stature:
    case Measure::taped_length:
        return {};
    }
    assert(!"every measure has its fields");
    return {};
}

} // namespace amentum
