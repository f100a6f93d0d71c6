// A fit of the roster as it is kept between nights: its numbers, and what they were found from.
//
// Kept as JSON in the store. A text that cannot be read, of an older program say, is as if there were none: the fit is found
// again.
#pragma once

#include "inference/joint_check.h"

#include <map>
#include <optional>
#include <string>

namespace amentum {

struct KeptSum { // of one quality's readings
    double count = 0, mean = 0;
};

struct FitChecked {                   // what the check of the fit found, when one was made
    std::optional<double> tail_shape; // none: could not be told
    double shape_limit;
    bool sampled;
    double worst_r_hat, least_worth;
    int divergences;
};

struct KeptFit {
    std::vector<std::string> tests;         // of each quality of the model, velocity first
    std::vector<std::string> session_names; // in the fit's order
    std::string priors_version;
    std::string version; // of records, model and priors
    std::vector<KeptSum> sums;
    RosterFit fit;
    std::map<std::string, std::vector<Estimate>> own_slopes; // by athlete
    Estimate own_spread{0, 0};
    double own_spread_learned = 0;
    std::optional<FitChecked> checked;
};

std::string kept_fit_text(const KeptFit&);
std::optional<KeptFit> parse_kept_fit(const std::string& text);

} // namespace amentum
