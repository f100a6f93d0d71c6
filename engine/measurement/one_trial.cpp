#include "measurement/one_trial.h"

#include "measurement/ball_flight.h"
#include "measurement/jump_height.h"
#include "measurement/radar.h"
#include "values/shortest_decimal.h"

#include <cmath>

namespace amentum {
namespace {

Result<Trial> trial_by_radar(const Reading& reading) {
    const auto speed = radar_speed(*reading.speed, reading.radar_angle.value_or(Angle::degrees(0)));
    if (!speed)
        return speed.refusal();
    return Trial{speed->speed.metres_per_second(), speed->method_error, Way::radar, "speed", speed->warnings};
}

Result<Trial> trial_by_distance(const Reading& reading) {
    if (!reading.release_height)
        return refuse_missing("release_height", "how high above the landing place the ball left the hand");
    const BallThrow thrown{*reading.distance, *reading.release_height};
    const auto speed = reading.release_angle ? ball_speed_from_distance(thrown, *reading.release_angle)
                                             : least_ball_speed_from_distance(thrown);
    if (!speed)
        return speed.refusal();
    const Way way = reading.release_angle ? Way::distance : Way::least_speed;
    return Trial{speed->speed.metres_per_second(), speed->method_error, way, "distance", {}};
}

Result<Trial> ball_trial(const TestKind& kind, const Reading& reading) {
    if (reading.load && kind.ball_mass && std::abs(*reading.load / *kind.ball_mass - 1) > 0.03)
        return Refusal{RefusalCode::method_does_not_apply,
                       kind.name + " is thrown with a ball of " + format_fixed(kind.ball_mass->pounds(), 1) +
                           " lb (" + format_fixed(kind.ball_mass->kilograms(), 2) +
                           " kg); speeds of two balls are not compared.",
                       "load", format_fixed(reading.load->kilograms(), 2) + " kg",
                       format_fixed(kind.ball_mass->kilograms(), 2) + " kg"};
    if (reading.speed)
        return trial_by_radar(reading);
    if (reading.distance)
        return trial_by_distance(reading);
    return refuse_missing("speed", "the ball's speed by radar, or its distance with release_height");
}

Result<Trial> jump_trial(const Reading& reading) {
    if (reading.flight_time) {
        const auto height = jump_height_from_flight_time(*reading.flight_time);
        if (!height)
            return height.refusal();
        return Trial{height->metres(), 0, Way::flight_time, "flight_time", {}};
    }
    if (reading.height)
        return Trial{reading.height->metres(), 0, Way::direct, "height", {}};
    if (!reading.speed)
        return refuse_missing("flight_time", "the time in the air, or the height of the jump");
    const auto height = jump_height_from_take_off_velocity(*reading.speed);
    if (!height)
        return height.refusal();
    return Trial{height->metres(), 0, Way::take_off_velocity, "speed", {}};
}

template <class Q>
Result<Trial> direct_trial(const std::optional<Q>& read, double (Q::*in_unit)() const, std::string field,
                           std::string what) {
    if (!read)
        return refuse_missing(field, what);
    return Trial{((*read).*in_unit)(), 0, Way::direct, field, {}};
}

Result<Trial> rebound_trial(const Reading& reading) {
    if (!reading.flight_time)
        return refuse_missing("flight_time", "the time in the air after the rebound");
    if (!reading.contact_time)
        return refuse_missing("contact_time", "the time on the ground, from touch-down to take-off");
    return Trial{*reading.flight_time / *reading.contact_time, 0, Way::direct, "contact_time", {}};
}

} // namespace

std::string words_of_way(Way way) {
    switch (way) {
    case Way::direct:
        return "";
    case Way::radar:
        return "read by radar";
    case Way::distance:
        return "from distance and angle";
    case Way::least_speed:
        return "least speed that reaches the distance";
    case Way::flight_time:
        return "from flight time";
    case Way::take_off_velocity:
        return "from take-off velocity";
    }
    assert(!"every way has words");
    return "";
}

Result<Trial> measure_trial(const TestKind& kind, const Reading& r) {
    switch (kind.measure) {
    case Measure::ball_speed:
        return ball_trial(kind, r);
    case Measure::jump_height:
        return jump_trial(r);
    case Measure::session_velocity:
        if (!r.speed)
            return refuse_missing("speed", "the speed of the throw");
        return trial_by_radar(r);
    case Measure::bound_distance:
        return direct_trial(r.distance, &Length::metres, "distance", "the distance reached");
    case Measure::joint_angle:
        return direct_trial(r.angle, &Angle::degrees, "angle", "the joint's angle");
    case Measure::isometric_force:
        return direct_trial(r.force, &Force::newtons, "force", "the highest force held");
    case Measure::jump_power:
        return direct_trial(r.power, &Power::watts, "power", "the highest power of the jump");
    case Measure::reactive_ratio:
        return rebound_trial(r);
    case Measure::take_off_speed:
        return direct_trial(r.speed, &Speed::metres_per_second, "speed", "the speed at take-off");
    case Measure::body_mass:
        return direct_trial(r.body_mass, &Mass::kilograms, "body_mass", "the mass on the scale");
    case Measure::stature:
        return direct_trial(r.height, &Length::metres, "height", "the athlete's height");
    case Measure::taped_length:
        return direct_trial(r.height, &Length::metres, "height", "the length between the two landmarks");
    case Measure::one_rep_max:
    case Measure::system_mass_max:
    case Measure::split_squat_max:
        break;
    }
    assert(!"lifts are measured by their best set");
    return refuse_missing("load", "the load");
}

} // namespace amentum
