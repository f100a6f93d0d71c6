// Where does one athlete stand in every quality, on any day, by the joint model's fit?
//
// Kalman filter and smoother of the athlete's own readings with the roster's numbers held at their mode (joint_model.h): a
// new test moves one athlete in microseconds, without a new fit. Readings of a known session have its shift taken off and
// its doubt added to their error; those of an unknown session have the spread of sessions added.
// Days: every test day, and the days asked for beside them; after the last test a forecast. State of a quality: in the
// readings' units.
// Contract: days of the athlete rise; days asked for are not before the first test; qualities as in the fit. An athlete
// without tests stands where covariates say, on the first day asked for.
// What it cannot tell: the doubt about the roster's numbers themselves is not in these variances; check_calibration
// counts how often the intervals were right all the same.
#pragma once

#include "inference/joint_model.h"
#include "inference/trajectory.h"

#include <optional>
#include <span>

namespace amentum {

struct ReadingSurprise { // one reading against its forecast from all before it
    int day;
    int quality;
    double value;
    double forecast;          // mean
    double forecast_variance; // of a reading, its error and session in it
    bool far_from_expected;   // more than 4 SD
};

// The state on a day after `last_known` from the readings up to then, and the variance of a reading of it (share 1, of a
// session not yet known when its quality comes in sessions).
struct StateForecast {
    StateOnDay state;
    double reading_variance;
};
StateForecast forecast_state(const RosterMode& mode, const RosterAthlete& athlete, int last_known, int day,
                             int quality);

class AthleteStates {
public:
    AthleteStates(const RosterMode& mode, const RosterAthlete& athlete, std::span<const int> also_on = {});

    std::span<const int> days() const { return days_; } // rising
    StateOnDay smoothed(int day, int quality) const;    // given all readings; day: one of days()
    StateOnDay known_then(int day, int quality) const;  // given the readings up to and with that day
    double covariance(int earlier, int later, int quality) const; // of the smoothed states of two of days()
    double covariance_on(int day, int one, int other) const;      // of two qualities' smoothed states
    StateOnDay change(int quality, int from, int to) const;       // of the true state, between two of days()
    std::span<const ReadingSurprise> surprises() const { return surprises_; }

private:
    std::size_t index_of(int day) const;
    double entry(const std::vector<double>& rows, int i,
                 int j) const; // of a square one, in the readings' units

    std::vector<int> days_;
    std::size_t qualities_;
    std::vector<double> unit_, centre_;
    // By day, row by row, in the fit's units: smoothed, known then, and the smoother's gain to the day after.
    std::vector<std::vector<double>> means_, variances_, known_means_, known_variances_, gains_;
    std::vector<ReadingSurprise> surprises_;
};

} // namespace amentum
