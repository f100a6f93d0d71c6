// Repeated trials of one thing: each becomes a value, their mean becomes the day's value.
#include "measurement/day_value.h"

#include "measurement/ball_flight.h"
#include "measurement/body_mass_lifts.h"
#include "measurement/jump_height.h"
#include "measurement/radar.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace amentum {
namespace {

enum class Way { direct, radar, distance, least_speed, flight_time, take_off_velocity };

struct Trial {
    double value;
    double method_error;
    Way way;
    std::string field;  // what to look at when the value cannot be
    std::vector<std::string> warnings;
};

// The words of a way, for the method; a direct reading needs none.
std::string words_of_way(Way way) {
    switch (way) {
    case Way::direct: return "";
    case Way::radar: return "read by radar";
    case Way::distance: return "from distance and angle";
    case Way::least_speed: return "least speed that reaches the distance";
    case Way::flight_time: return "from flight time";
    case Way::take_off_velocity: return "from take-off velocity";
    }
    assert(!"every way has words");
    return "";
}

std::string words_or_direct(Way way) { return way == Way::direct ? "read directly" : words_of_way(way); }

Result<Trial> trial_by_radar(const Reading& reading) {
    const auto speed = radar_speed(*reading.speed, reading.radar_angle.value_or(Angle::degrees(0)));
    if (!speed) return speed.refusal();
    return Trial{speed->speed.metres_per_second(), speed->method_error, Way::radar, "speed", speed->warnings};
}

Result<Trial> trial_by_distance(const Reading& reading) {
    if (!reading.release_height)
        return refuse_missing("release_height", "how high above the landing place the ball left the hand");
    const BallThrow thrown{*reading.distance, *reading.release_height};
    const auto speed = reading.release_angle ? ball_speed_from_distance(thrown, *reading.release_angle)
                                             : least_ball_speed_from_distance(thrown);
    if (!speed) return speed.refusal();
    const Way way = reading.release_angle ? Way::distance : Way::least_speed;
    return Trial{speed->speed.metres_per_second(), speed->method_error, way, "distance", {}};
}

Result<Trial> ball_trial(const TestKind& kind, const Reading& reading) {
    if (reading.load && kind.ball_mass && std::abs(*reading.load / *kind.ball_mass - 1) > 0.03)
        return Refusal{RefusalCode::method_does_not_apply,
                       kind.name + " is thrown with a ball of " + format_fixed(kind.ball_mass->pounds(), 1) + " lb (" +
                           format_fixed(kind.ball_mass->kilograms(), 2) + " kg); speeds of two balls are not compared.",
                       "load", format_fixed(reading.load->kilograms(), 2) + " kg",
                       format_fixed(kind.ball_mass->kilograms(), 2) + " kg"};
    if (reading.speed) return trial_by_radar(reading);
    if (reading.distance) return trial_by_distance(reading);
    return refuse_missing("speed", "the ball's speed by radar, or its distance with release_height");
}

Result<Trial> jump_trial(const Reading& reading) {
    if (reading.flight_time) {
        const auto height = jump_height_from_flight_time(*reading.flight_time);
        if (!height) return height.refusal();
        return Trial{height->metres(), 0, Way::flight_time, "flight_time", {}};
    }
    if (reading.height) return Trial{reading.height->metres(), 0, Way::direct, "height", {}};
    if (!reading.speed) return refuse_missing("flight_time", "the time in the air, or the height of the jump");
    const auto height = jump_height_from_take_off_velocity(*reading.speed);
    if (!height) return height.refusal();
    return Trial{height->metres(), 0, Way::take_off_velocity, "speed", {}};
}

template <class Q>
Result<Trial> direct_trial(const std::optional<Q>& read, double (Q::*in_unit)() const, std::string field,
                           std::string what) {
    if (!read) return refuse_missing(field, what);
    return Trial{((*read).*in_unit)(), 0, Way::direct, field, {}};
}

Result<Trial> measure_trial(const TestKind& kind, const Reading& r) {
    switch (kind.measure) {
    case Measure::ball_speed: return ball_trial(kind, r);
    case Measure::jump_height: return jump_trial(r);
    case Measure::session_velocity:
        if (!r.speed) return refuse_missing("speed", "the speed of the throw");
        return trial_by_radar(r);
    case Measure::bound_distance: return direct_trial(r.distance, &Length::metres, "distance", "the distance reached");
    case Measure::joint_angle: return direct_trial(r.angle, &Angle::degrees, "angle", "the joint's angle");
    case Measure::isometric_force: return direct_trial(r.force, &Force::newtons, "force", "the highest force held");
    case Measure::body_mass: return direct_trial(r.body_mass, &Mass::kilograms, "body_mass", "the mass on the scale");
    case Measure::stature: return direct_trial(r.height, &Length::metres, "height", "the athlete's height");
    case Measure::one_rep_max:
    case Measure::system_mass_max:
    case Measure::split_squat_max: break;
    }
    assert(!"lifts are measured by their best set");
    return refuse_missing("load", "the load");
}

Result<std::vector<Trial>> measure_each(const TestKind& kind, const std::vector<Reading>& readings) {
    std::vector<Trial> trials;
    for (const auto& reading : readings) {
        auto trial = measure_trial(kind, reading);
        if (!trial) return trial.refusal();
        if (const auto sound = check_plausible(kind, trial->value, trial->field); !sound) return sound.refusal();
        if (!trials.empty() && trials.front().way != trial->way) {
            const std::string one = words_or_direct(trials.front().way), two = words_or_direct(trial->way);
            return Refusal{RefusalCode::method_does_not_apply,
                           kind.name + ": one trial is \"" + one + "\", another \"" + two +
                               "\". The two differ by themselves, so they do not make one result.",
                           trial->field, one + ", " + two, "one way of measuring in a result"};
        }
        trials.push_back(*std::move(trial));
    }
    return trials;
}

std::string name_of_trials(Measure measure, std::size_t n) {
    const bool thrown = measure == Measure::ball_speed || measure == Measure::session_velocity;
    const bool jumped = measure == Measure::jump_height || measure == Measure::bound_distance;
    const std::string one = thrown ? "throw" : (jumped ? "jump" : "reading");
    return n == 1 ? "one " + one : "mean of " + std::to_string(n) + " " + one + "s";
}

std::string describe_method(const TestKind& kind, const Reading& first, Way way, std::size_t n) {
    std::string text = name_of_trials(kind.measure, n);
    if (way != Way::direct) text += ", " + words_of_way(way);
    if (!first.device.empty()) text += ", " + first.device;
    if (first.place != PlaceMeasured::unknown) text += ", " + word(first.place);
    if (!first.rater.empty()) text += ", rater " + first.rater;
    return text;
}

double mean_of(const std::vector<Trial>& trials, double Trial::*member) {
    double sum = 0;
    for (const auto& trial : trials) sum += trial.*member;
    return sum / static_cast<double>(trials.size());
}

// Is the spread beyond the 99.9th percentile of what the kind's trial error gives? Chi-squared by the cube-root
// normal approximation [WilsonHilferty1931].
bool spread_is_unusual(const TestKind& kind, const std::vector<Trial>& trials, double mean) {
    const double usual = in_test_unit(kind, kind.trial_error, mean);
    if (trials.size() < 2 || usual <= 0) return false;
    double squares = 0;
    for (const auto& trial : trials) squares += std::pow(trial.value - mean, 2);
    const double freedom = static_cast<double>(trials.size()) - 1;
    const double z = 3.090232306167813;  // 99.9th percentile of N(0, 1)
    const double limit = freedom * std::pow(1 - 2 / (9 * freedom) + z * std::sqrt(2 / (9 * freedom)), 3);
    return squares / (usual * usual) > limit;
}

std::vector<std::string> warnings_about(const TestKind& kind, const std::vector<Trial>& trials, const Reading& first) {
    std::vector<std::string> warnings;
    if (spread_is_unusual(kind, trials, mean_of(trials, &Trial::value)))
        warnings.push_back("The trials lie further apart than is usual for this test: was one misread?");
    if (trials.front().way == Way::least_speed)
        warnings.push_back("The angle of release is not known: this is the least speed that reaches the distance.");
    if (kind.measure == Measure::session_velocity && first.place == PlaceMeasured::unknown)
        warnings.push_back("Where the speed was read (out of the hand, at the plate) is not known; a ball loses about a "
                           "tenth of its speed between the two.");
    if (kind.measure == Measure::session_velocity && first.device.empty())
        warnings.push_back("The radar is not named: two radars are not compared.");
    if (kind.measure == Measure::joint_angle && (first.rater.empty() || first.device.empty()))
        warnings.push_back("Rater or tool is not named: angles by two raters or tools are not compared.");
    for (const auto& trial : trials)
        for (const auto& warning : trial.warnings)
            if (std::find(warnings.begin(), warnings.end(), warning) == warnings.end()) warnings.push_back(warning);
    return warnings;
}

std::vector<std::string> sources_of(Way way, Measure measure) {
    if (measure == Measure::session_velocity) return {"Weir2005"};
    if (way == Way::flight_time || way == Way::take_off_velocity) return {"Baumgart2017"};
    if (way == Way::distance || way == Way::least_speed) return {"Taylor2005"};
    return {};
}

}  // namespace

Result<DayValue> measure_mean_of_trials(const TestKind& kind, const std::vector<Reading>& readings) {
    const auto trials = measure_each(kind, readings);
    if (!trials) return trials.refusal();
    const Reading& first = readings.front();
    const Way way = trials->front().way;
    const int n = static_cast<int>(trials->size());
    return DayValue{mean_of(*trials, &Trial::value),
                    mean_of(*trials, &Trial::method_error),
                    n,
                    n,
                    describe_method(kind, first, way, trials->size()),
                    warnings_about(kind, *trials, first),
                    sources_of(way, kind.measure)};
}

}  // namespace amentum
