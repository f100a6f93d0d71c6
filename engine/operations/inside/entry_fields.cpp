#include "operations/inside/entry_fields.h"

#include "records/limits.h"

#include <cassert>
#include <map>

namespace amentum {
namespace {

Refusal two_units(const std::string& name) {
    return {RefusalCode::two_units, "Give " + name + " once, in one unit.", name, "two units", "one unit"};
}

template <class T>
Result<std::optional<T>> one_of(const std::string& name, std::initializer_list<std::optional<T>> given) {
    std::optional<T> found;
    for (const auto& each : given) {
        if (!each)
            continue;
        if (found)
            return two_units(name);
        found = each;
    }
    return found;
}

template <class T, class Make>
std::optional<T> made(std::optional<double> x, Make make) {
    return x ? std::optional<T>(make(*x)) : std::nullopt;
}

struct Held {
    const char* field;
    std::optional<double> value;
    Limits limits;
    const char* unit;
};

template <class Q, class Read>
std::optional<double> number_of(const std::optional<Q>& quantity, Read read) {
    return quantity ? std::optional<double>(read(*quantity)) : std::nullopt;
}

Result<Done> check_limits(const Reading& r) {
    const auto kg = [](Mass x) { return x.kilograms(); };
    const auto m = [](Length x) { return x.metres(); };
    const auto deg = [](Angle x) { return x.degrees(); };
    for (const Held& held :
         {Held{"load", number_of(r.load, kg), limits::load_kg, "kg"},
          Held{"reps", number_of(r.reps, [](int x) { return x; }), limits::reps, ""},
          Held{"reps_in_reserve", r.reps_in_reserve, limits::reps_in_reserve, ""},
          Held{"body_mass", number_of(r.body_mass, kg), limits::body_mass_kg, "kg"},
          Held{"speed", number_of(r.speed, [](Speed x) { return x.metres_per_second(); }), limits::speed_ms,
               "m/s"},
          Held{"radar_angle", number_of(r.radar_angle, deg), limits::radar_angle_deg, "deg"},
          Held{"distance", number_of(r.distance, m), limits::distance_m, "m"},
          Held{"release_height", number_of(r.release_height, m), limits::release_height_m, "m"},
          Held{"release_angle", number_of(r.release_angle, deg), limits::release_angle_deg, "deg"},
          Held{"flight_time", number_of(r.flight_time, [](Duration x) { return x.seconds(); }),
               limits::flight_time_s, "s"},
          Held{"contact_time", number_of(r.contact_time, [](Duration x) { return x.seconds(); }),
               limits::contact_time_s, "s"},
          Held{"height", number_of(r.height, m), limits::height_m, "m"},
          Held{"angle", number_of(r.angle, deg), limits::angle_deg, "deg"},
          Held{"force", number_of(r.force, [](Force x) { return x.newtons(); }), limits::force_n, "N"},
          Held{"power", number_of(r.power, [](Power x) { return x.watts(); }), limits::power_w, "W"}})
        if (held.value && (*held.value < held.limits.low || *held.value > held.limits.high))
            return refuse_range(held.field, *held.value, held.limits.low, held.limits.high, held.unit);
    return Done{};
}

std::string mass_suffix(const Facility& facility) {
    return facility.mass_unit == MassUnit::lb ? "lb" : "kg";
}

} // namespace

TestField entry_field(const std::string& field, const Facility& facility, bool needed) {
    const std::string mass = mass_suffix(facility);
    const bool inches = facility.length_unit == LengthUnit::inches;
    const std::string speed = word(facility.speed_unit);
    const std::string speed_suffix = speed == "mph" ? "mph" : speed == "m/s" ? "ms" : "kmh";
    const std::map<std::string, TestField> fields{
        {"load", {"load_" + mass, "load", mass, needed}},
        {"reps", {"reps", "repetitions", "", needed}},
        {"reps_in_reserve", {"reps_in_reserve", "left in reserve", "", needed}},
        {"body_mass", {"body_mass_" + mass, "body mass", mass, needed}},
        {"speed", {"speed_" + speed_suffix, "speed", speed, needed}},
        {"radar_angle", {"radar_angle_deg", "radar's angle to the ball's path", "deg", needed}},
        {"distance", {inches ? "distance_ft" : "distance_m", "distance", inches ? "ft" : "m", needed}},
        {"release_height",
         {inches ? "release_height_in" : "release_height_m", "height of release", inches ? "in" : "m",
          needed}},
        {"release_angle", {"release_angle_deg", "angle of release", "deg", needed}},
        {"flight_time", {"flight_time_s", "time in the air", "s", needed}},
        {"contact_time", {"contact_time_s", "time on the ground", "s", needed}},
        {"height", {inches ? "height_in" : "height_cm", "height", inches ? "in" : "cm", needed}},
        {"angle", {"angle_deg", "angle", "deg", needed}},
        {"force", {"force_n", "force", "N", needed}},
        {"power", {"power_w", "highest power", "W", needed}}};
    const auto found = fields.find(field);
    assert(found != fields.end());
    return found->second;
}

Result<std::optional<Mass>> mass_given(std::string name, std::optional<double> kg, std::optional<double> lb) {
    return one_of<Mass>(name, {made<Mass>(kg, [](double x) { return Mass::kilograms(x); }),
                               made<Mass>(lb, [](double x) { return Mass::pounds(x); })});
}

Result<std::optional<Speed>> speed_given(std::string name, std::optional<double> ms,
                                         std::optional<double> mph, std::optional<double> kmh) {
    return one_of<Speed>(name, {made<Speed>(ms, [](double x) { return Speed::metres_per_second(x); }),
                                made<Speed>(mph, [](double x) { return Speed::miles_per_hour(x); }),
                                made<Speed>(kmh, [](double x) { return Speed::kilometres_per_hour(x); })});
}

Result<std::optional<Length>> length_given(std::string name, std::optional<Length> first,
                                           std::optional<Length> second) {
    return one_of<Length>(name, {first, second});
}

Result<Reading> reading_from(const TrialGiven& trial, Reading reading) {
    const auto load = mass_given("load", trial.load_kg, trial.load_lb);
    if (!load)
        return load.refusal();
    const auto body = mass_given("body_mass", trial.body_mass_kg, trial.body_mass_lb);
    if (!body)
        return body.refusal();
    const auto speed = speed_given("speed", trial.speed_ms, trial.speed_mph, trial.speed_kmh);
    if (!speed)
        return speed.refusal();
    const auto distance =
        length_given("distance", made<Length>(trial.distance_m, [](double x) { return Length::metres(x); }),
                     made<Length>(trial.distance_ft, [](double x) { return Length::feet(x); }));
    if (!distance)
        return distance.refusal();
    const auto release = length_given(
        "release_height", made<Length>(trial.release_height_m, [](double x) { return Length::metres(x); }),
        made<Length>(trial.release_height_in, [](double x) { return Length::inches(x); }));
    if (!release)
        return release.refusal();
    const auto height =
        length_given("height", made<Length>(trial.height_cm, [](double x) { return Length::centimetres(x); }),
                     made<Length>(trial.height_in, [](double x) { return Length::inches(x); }));
    if (!height)
        return height.refusal();
    reading.load = *load;
    reading.body_mass = *body;
    reading.speed = *speed;
    reading.distance = *distance;
    reading.release_height = *release;
    reading.height = *height;
    reading.reps = trial.reps;
    reading.reps_in_reserve = trial.reps_in_reserve;
    reading.radar_angle = made<Angle>(trial.radar_angle_deg, [](double x) { return Angle::degrees(x); });
    reading.release_angle = made<Angle>(trial.release_angle_deg, [](double x) { return Angle::degrees(x); });
    reading.angle = made<Angle>(trial.angle_deg, [](double x) { return Angle::degrees(x); });
    reading.flight_time = made<Duration>(trial.flight_time_s, [](double x) { return Duration::seconds(x); });
    reading.contact_time =
        made<Duration>(trial.contact_time_s, [](double x) { return Duration::seconds(x); });
    reading.power = made<Power>(trial.power_w, [](double x) { return Power::watts(x); });
    reading.force = made<Force>(trial.force_n, [](double x) { return Force::newtons(x); });
    if (const auto inside = check_limits(reading); !inside)
        return inside.refusal();
    return reading;
}

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

} // namespace amentum
