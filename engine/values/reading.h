// One trial of one test, as it was read off the device, before any method touches it.
//
// A reading is identified by athlete, date, test, side and trial. Which of the optional fields a test needs is its
// Measure (test_kind.h). Ranges are those of the measurement functions; the importer converts lb, mph, in, oz.
#pragma once

#include "values/athlete.h"
#include "values/calendar_date.h"
#include "values/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

enum class Side { none, left, right };
template <>
inline constexpr std::array<std::pair<Side, std::string_view>, 3> words_of<Side>{
    {{Side::none, "none"}, {Side::left, "left"}, {Side::right, "right"}}};

// Where along its flight a thrown ball's speed was read; speeds read at different places are not compared.
enum class PlaceMeasured { unknown, out_of_hand, at_plate };
template <>
inline constexpr std::array<std::pair<PlaceMeasured, std::string_view>, 3> words_of<PlaceMeasured>{
    {{PlaceMeasured::unknown, "unknown"},
     {PlaceMeasured::out_of_hand, "out_of_hand"},
     {PlaceMeasured::at_plate, "at_plate"}}};

struct Reading {
    AthleteId athlete;
    Date date;
    std::string test; // key of data/test_kinds.csv
    Side side = Side::none;
    int trial = 1; // 1 to 60

    std::optional<Mass> load;              // external load; pull-ups: added load, negative when assisted
    std::optional<int> reps;               // clean repetitions
    std::optional<double> reps_in_reserve; // 0 when the set ended at failure
    std::optional<Mass> body_mass;
    std::optional<Speed> speed;
    std::optional<Angle> radar_angle;     // between the radar's line and the ball's path
    std::optional<Length> distance;       // of a throw, from the point of release; of a bound
    std::optional<Length> release_height; // above the landing place
    std::optional<Angle> release_angle;   // above level
    std::optional<Duration> flight_time;
    std::optional<Duration> contact_time; // of a rebound: from touch-down to take-off
    std::optional<Length> height;         // of a jump measured directly; of the athlete
    std::optional<Angle> angle;
    std::optional<Force> force;
    std::optional<Power> power; // highest of a jump, from a force plate

    std::string device; // "radar 1", "mat 2": never compared with another device without saying so
    std::string rater;
    PlaceMeasured place = PlaceMeasured::unknown;
    std::string note;

    friend bool operator==(const Reading&, const Reading&) = default;
};

// What a test showed on one day: measured from that day's readings of one athlete, test and side.
struct TestResult {
    AthleteId athlete;
    Date date;
    std::string test;
    Side side;
    double value; // in the test kind's unit
    double
        standard_error; // of this day's value as a measure of the athlete's level: trial and day error together
    int trials;
    std::string method;                // "Epley, 5 repetitions", "mean of 5 throws, radar 1, out_of_hand"
    std::vector<std::string> warnings; // whole sentences
    std::vector<std::string> sources;
    std::string device;
    std::string rater;
    PlaceMeasured place = PlaceMeasured::unknown;
};

} // namespace amentum
