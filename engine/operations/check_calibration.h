// check_calibration: how often were this tool's 80 % intervals right here?
//
// Every thrower's last result of every test is held back, the roster's model fitted to the rest, and each foretold from what
// came before its day: how many lay inside their 50, 80 and 95 % intervals, how the results lie within their forecasts, and
// whether the forecast beat "as last time". With `ranks`, rosters of this gym's own design are simulated with slopes drawn
// from the fit's own posterior, and fitted with that as prior: how the known slopes lie within what the fit says of them.
// Below 20 held-back results of a test, or in all, "cannot tell" is the verdict.
// Refuses what the model refuses, with its reason; ranks outside 0 to 200.
// What it cannot tell: whether next season is like this one. Results of one thrower go together, so the counts are somewhat
// less certain than their intervals say.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct CheckCalibrationRequest {
    std::optional<int> ranks; // simulated rosters, 0 to 200; left out: none
};
BOOST_DESCRIBE_STRUCT(CheckCalibrationRequest, (), (ranks))

struct CoverageShown {
    double stated; // 0 to 1
    int held;
    int all;
    double low; // 95 % interval of the true chance
    double high;
};
BOOST_DESCRIBE_STRUCT(CoverageShown, (), (stated, held, all, low, high))

struct CalibrationLine { // one test
    std::string test;
    std::string name;
    CoverageShown coverage; // of 80 % intervals
    std::string verdict;    // as_stated, too_sure, too_cautious, cannot_tell
    std::optional<ShownEstimate>
        better; // % by which the forecast beats "as last time"; null below 20 results
};
BOOST_DESCRIBE_STRUCT(CalibrationLine, (), (test, name, coverage, verdict, better))

struct RanksShown {
    int fitted;  // rosters
    int refused; // rosters that could not be fitted
    int slopes;
    std::vector<int> counts; // of 10 equal bins
    double chance;           // of counts at least as uneven, were the fit right
};
BOOST_DESCRIBE_STRUCT(RanksShown, (), (fitted, refused, slopes, counts, chance))

struct CheckCalibrationAnswer {
    int athletes;
    int results;
    std::vector<CoverageShown> coverage; // of 50, 80 and 95 %
    std::string verdict;                 // of the 80 %
    std::vector<int> transform;          // counts of 10 equal bins
    double transform_chance;             // of counts at least as uneven, were the forecasts right
    std::optional<ShownEstimate> better; // every test in units of its spread; null below 20 results
    std::vector<CalibrationLine> tests;  // velocity first
    std::optional<RanksShown> ranks;
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::string model;
};
BOOST_DESCRIBE_STRUCT(CheckCalibrationAnswer, (),
                      (athletes, results, coverage, verdict, transform, transform_chance, better, tests,
                       ranks, words, cautions, model))

Result<CheckCalibrationAnswer> check_calibration(Workplace&, const CheckCalibrationRequest&);

} // namespace amentum
