// Every athlete's last result of every test held back, the model fitted without them, and each foretold from what came before
// its day.
//
// The rival is the last result of the same athlete and test, with the pooled SD of steps between neighbouring results.
// A test an athlete did on one day only is not held back. What each test's usual error is, and how long an athlete grows,
// still come from all records.
#pragma once

#include "inference/calibration.h"
#include "operations/inside/roster_model.h"

namespace amentum {

struct HeldResult {
    int quality; // number in the model; 0: velocity
    HeldForecast forecast;
};

struct HeldBack {
    std::string version; // of the model it was made for
    int athletes;        // with a result held back
    std::vector<HeldResult> results;
    RosterFit fit; // of the rest
};

Result<HeldBack> hold_back_last_results(const RosterModel& model, const FitControl& control);

// Rosters of this one's design, the within slopes drawn from what is believed of them, fitted with that belief as prior: for
// each slope the chance the fit gave to values below the truth. Uniform when the fit says what it knows.
struct KnownSlopeRanks {
    std::vector<double> ranks;
    int fitted = 0, refused = 0; // rosters
};
KnownSlopeRanks rank_known_slopes(const RosterModel& model, int rosters, const FitControl& control);

} // namespace amentum
