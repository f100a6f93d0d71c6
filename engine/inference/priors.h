// What the literature says before this gym's own athletes are asked, as data with sources.
//
// VelocityPrior: the standardised partial slope of throwing velocity on a quality, between athletes of one
// level with body size in the model: velocity changes by `mean` of its within-level SD for one SD of the
// quality. The published correlations are small-sample and are shrunk by about 0.55 for that
// (data/velocity_priors.csv says why, line by line). AttainableChange: what twelve weeks of training that
// aims at a quality change in it, in SDs of the quality.
// What they cannot tell: an effect of training from a difference between athletes; that is why they are
// wide.
#pragma once

#include <string>
#include <vector>

namespace amentum {

struct VelocityPrior {
    std::string quality;
    double mean; // standardised slope, -1 to 1
    double sd;   // above 0
    std::string why;
    std::vector<std::string> sources;
};

struct AttainableChange {
    std::string quality;
    double mean; // SDs of the quality in twelve weeks, for an athlete at the usual level
    double sd;   // above 0
    std::string why;
    std::vector<std::string> sources;
};

} // namespace amentum
