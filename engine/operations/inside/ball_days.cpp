#include "operations/inside/ball_days.h"

#include "measurement/ball_flight_drag.h"
#include "measurement/measure_test.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace amentum {
namespace {

enum class Taken { radar, distance, least_speed };

Taken taken_by(const Reading& r) {
    if (r.speed)
        return Taken::radar;
    return r.release_angle ? Taken::distance : Taken::least_speed;
}

using Alike = std::tuple<Taken, std::string, PlaceMeasured>; // how, device, where
using Balls = std::map<const TestKind*, std::vector<Reading>>;

std::string said(const Alike& alike) {
    const auto& [taken, device, place] = alike;
    std::string text = taken == Taken::radar      ? "by radar"
                       : taken == Taken::distance ? "from distance and angle"
                                                  : "from distance, angle not read";
    if (!device.empty())
        text += ", " + device;
    if (place != PlaceMeasured::unknown)
        text += ", " + word(place);
    return text;
}

std::size_t balls_thrown_twice(const Balls& balls) {
    return static_cast<std::size_t>(
        std::count_if(balls.begin(), balls.end(), [](const auto& b) { return b.second.size() >= 2; }));
}

std::size_t throws_of(const Balls& balls) {
    std::size_t n = 0;
    for (const auto& [kind, readings] : balls)
        n += readings.size();
    return n;
}

// Mean distance and height of one ball's throws, with the mean angle, or the best one when none was read.
Result<Estimate> drag_of(const std::vector<Reading>& readings, Mass ball) {
    const double n = static_cast<double>(readings.size());
    double distance = 0, height = 0, angle = 0;
    for (const auto& r : readings) {
        distance += r.distance->metres() / n;
        height += r.release_height->metres() / n;
        angle += r.release_angle.value_or(Angle::degrees(0)).degrees() / n;
    }
    const BallThrow thrown{Length::metres(distance), Length::metres(height)};
    const Angle released =
        readings.front().release_angle ? Angle::degrees(angle) : best_release_angle(thrown);
    return estimate_drag_correction(thrown, released, ball, usual_diameter(ball));
}

void add_once(std::vector<std::string>& list, const std::vector<std::string>& more) {
    for (const auto& each : more)
        if (std::find(list.begin(), list.end(), each) == list.end())
            list.push_back(each);
}

void add_ball(BallDay& day, const TestKind& kind, const std::vector<Reading>& readings, Taken taken) {
    ThrowsOfBall ball{*kind.ball_mass, {}};
    double method = 0;
    std::vector<Reading> measured;
    for (const auto& reading : readings) {
        const auto one = measure_test(kind, {reading});
        if (!one) {
            day.left_out.push_back(one.refusal().sentence);
            continue;
        }
        ball.speeds.push_back(Speed::metres_per_second(one->value));
        measured.push_back(reading);
        const double fraction = one->standard_error / one->value;
        method = std::max(method, fraction * fraction - kind.day_error * kind.day_error -
                                      kind.trial_error * kind.trial_error);
        add_once(day.warnings, one->warnings);
        add_once(day.sources, one->sources);
    }
    if (measured.empty())
        return;
    if (taken != Taken::radar) {
        const auto drag = drag_of(measured, *kind.ball_mass);
        if (drag) {
            ball.drag = drag->value;
            ball.drag_error = drag->standard_error;
        } else {
            day.warnings.push_back("No correction for drag: " + drag.refusal().sentence);
        }
    }
    day.trial_error = std::max(day.trial_error, kind.trial_error);
    day.shared_error =
        std::max(day.shared_error, std::hypot(kind.day_error, std::sqrt(std::max(0.0, method))));
    day.balls.push_back(ball);
}

BallDay day_of(Date date, const std::map<Alike, Balls>& ways) {
    const auto most = std::max_element(ways.begin(), ways.end(), [](const auto& a, const auto& b) {
        return std::pair(balls_thrown_twice(a.second), throws_of(a.second)) <
               std::pair(balls_thrown_twice(b.second), throws_of(b.second));
    });
    BallDay day{date, {}, 0, 0, said(most->first), {}, {}, {}};
    for (const auto& [kind, readings] : most->second)
        add_ball(day, *kind, readings, std::get<0>(most->first));
    for (const auto& way : ways)
        if (way.first != most->first)
            day.left_out.push_back(std::to_string(throws_of(way.second)) + " throws taken " +
                                   said(way.first) +
                                   " are not in this line: speeds taken in two ways are not compared.");
    std::sort(day.balls.begin(), day.balls.end(),
              [](const ThrowsOfBall& a, const ThrowsOfBall& b) { return a.mass < b.mass; });
    return day;
}

} // namespace

std::string ball_family(const TestKind& kind) {
    if (!kind.ball_mass)
        return kind.key;
    const std::string ending = "_" + format_shortest(std::round(kind.ball_mass->pounds() * 10) / 10) + "lb";
    return kind.key.ends_with(ending) ? kind.key.substr(0, kind.key.size() - ending.size()) : kind.key;
}

std::string ball_family_name(const TestKind& kind) {
    return kind.name.ends_with(" ball") ? kind.name.substr(0, kind.name.rfind(',')) : kind.name;
}

std::map<std::string, std::vector<BallDay>> ball_days(const FacilityView& view, const ReferenceTables& tables,
                                                      const Athlete& athlete) {
    std::map<std::string, std::map<int, std::map<Alike, Balls>>> found; // family, day, way
    for (const auto& reading : view.records.readings) {
        const TestKind* kind = tables.test_kind(reading.test);
        if (reading.athlete != athlete.id || !kind || kind->measure != Measure::ball_speed)
            continue;
        const Side wanted = wanted_side(*kind, athlete);
        if (wanted != Side::none && reading.side != wanted)
            continue;
        found[ball_family(*kind)][reading.date.days_since_1970()]
             [{taken_by(reading), reading.device, reading.place}][kind]
                 .push_back(reading);
    }
    std::map<std::string, std::vector<BallDay>> all;
    for (const auto& [family, days] : found)
        for (const auto& [day, ways] : days)
            all[family].push_back(day_of(Date::from_days(day), ways));
    return all;
}

} // namespace amentum
