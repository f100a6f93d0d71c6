// fit_roster: fit the joint model to the whole roster now and keep it, so that every page answers at once and agrees.
//
// Without it a fit is made when first asked for, and kept in memory while it holds: until the tests in the model, its
// priors, or more than 2 % of the readings change. With `thorough` its errors are checked by weighted draws and, where the
// quick approximation will not do (always for fewer than 60 throwers), by sampling: a minute or so for a small gym. A fit that
// is stopped leaves the one before in place. One fit runs at a time.
// Refuses what the model refuses, with its reason.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>
#include <boost/describe/enum.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct FitRosterRequest {
    std::optional<std::string> step; // begin, look, stop; left out: begin
    std::optional<bool> thorough;    // left out: no
    std::optional<bool> wait;        // left out: yes
};
BOOST_DESCRIBE_STRUCT(FitRosterRequest, (), (step, thorough, wait))

struct KeptFitShown {
    std::string version; // of records, model and priors
    int athletes;
    int test_days;
    int readings;
    bool same_records;         // false: a few readings came since
    double gradient;           // at the mode, largest, an athlete: near 0
    double smallest_curvature; // above 0: a best fit, and one only nearby
    bool checked;
    bool sampled;
    std::optional<double> tail_shape; // of the check; below shape_limit the quick errors hold
    double shape_limit;
    double worst_r_hat; // 1: the chains agree; 0 when not sampled
    double least_worth; // independent draws the worst slope rests on
    int divergences;
};
BOOST_DESCRIBE_STRUCT(KeptFitShown, (),
                      (version, athletes, test_days, readings, same_records, gradient, smallest_curvature,
                       checked, sampled, tail_shape, shape_limit, worst_r_hat, least_worth, divergences))

struct FitRosterAnswer {
    std::string state;               // none, running, done, stopped, refused
    double share;                    // of the work, 0 to 1, as a guess
    std::optional<KeptFitShown> fit; // as it stands now; null while there is none
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(FitRosterAnswer, (), (state, share, fit, words))

Result<FitRosterAnswer> fit_roster(Workplace&, const FitRosterRequest&);

} // namespace amentum
