// record_test: keep one test of one athlete and day, after measuring it; ask first when it is far from expected.
//
// A result outside the athlete's 99 % prediction interval is not saved but comes back as a question; sent again with
// keep = true it is saved. The same readings sent twice are saved once. Speeds, loads and lengths come in the unit
// their field's name says; give each quantity once.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct TrialGiven {
    std::optional<double> load_kg;
    std::optional<double> load_lb;
    std::optional<int> reps;
    std::optional<double> reps_in_reserve;
    std::optional<double> body_mass_kg;
    std::optional<double> body_mass_lb;
    std::optional<double> speed_ms;
    std::optional<double> speed_mph;
    std::optional<double> speed_kmh;
    std::optional<double> radar_angle_deg;
    std::optional<double> distance_m;
    std::optional<double> distance_ft;
    std::optional<double> release_height_m;
    std::optional<double> release_height_in;
    std::optional<double> release_angle_deg;
    std::optional<double> flight_time_s;
    std::optional<double> contact_time_s;
    std::optional<double> height_cm;
    std::optional<double> height_in;
    std::optional<double> angle_deg;
    std::optional<double> force_n;
    std::optional<double> power_w;
};
BOOST_DESCRIBE_STRUCT(TrialGiven, (),
                      (load_kg, load_lb, reps, reps_in_reserve, body_mass_kg, body_mass_lb, speed_ms,
                       speed_mph, speed_kmh, radar_angle_deg, distance_m, distance_ft, release_height_m,
                       release_height_in, release_angle_deg, flight_time_s, contact_time_s, height_cm,
                       height_in, angle_deg, force_n, power_w))

struct RecordTestRequest {
    std::string athlete;
    std::string date;
    std::string test;
    std::optional<std::string> side; // left, right; none when the test has no side
    std::vector<TrialGiven> trials;  // at least one
    std::optional<std::string> device;
    std::optional<std::string> rater;
    std::optional<std::string> place_measured;
    std::optional<std::string> note;
    std::optional<bool> keep; // yes, keep it although it is far from expected
};
BOOST_DESCRIBE_STRUCT(RecordTestRequest, (),
                      (athlete, date, test, side, trials, device, rater, place_measured, note, keep))

struct RecordTestAnswer {
    bool saved;
    bool held_before;                      // the very same readings were already held
    std::string question;                  // "keep it?" with its reason; empty when saved
    std::optional<ShownEstimate> result;   // the value, with its own 80 % interval
    std::optional<ShownEstimate> expected; // 99 % prediction interval from earlier tests
    std::string method;
    std::vector<std::string> warnings;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(RecordTestAnswer, (),
                      (saved, held_before, question, result, expected, method, warnings, words))

Result<RecordTestAnswer> record_test(Workplace&, const RecordTestRequest&);

} // namespace amentum
