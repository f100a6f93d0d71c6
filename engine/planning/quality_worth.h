// What is a set of an exercise worth to this athlete?
//
//   worth(e) = sum over qualities q of  w_q x share(e, q)
//   w_q      = 0.85 x weight_q / (sum of weights) + 0.15 / (number of trainable qualities)
// The second part keeps every quality ready whatever limits; both shares are a proposal of this project, no
// source.
// When the limiters cannot be told apart, or all weights are 0, w_q is the same for every trainable quality.
// Qualities that cannot be trained (body size, velocity itself) are worth nothing.
// What it cannot tell: how much velocity a set brings.
//
// Example: one priority, weight 1, two trainable qualities -> w = 0.925 and 0.075.
#pragma once

#include "planning/plan_block.h"

#include <map>
#include <string>
#include <vector>

namespace amentum {

class QualityWorth {
public:
    explicit QualityWorth(const BlockRequest& request);

    bool led() const { return led_; } // false: spread evenly
    double worth(const Exercise& exercise) const;
    std::string
    purpose(const Exercise& exercise) const; // the quality most of that worth comes from; may be empty
    std::string name(const std::string& quality) const;  // for a sentence, in lower case
    std::string words(const std::string& quality) const; // of its priority; may be empty
    int rank(const std::string& quality) const;          // 1: the leading limiter; 0: no limiter
    double weight(const std::string& quality) const;     // w_q; 0 for what cannot be trained
    bool trainable(const std::string& quality) const { return weight_.contains(quality); }

private:
    std::map<std::string, double> weight_;
    std::map<std::string, std::string> names_;
    std::map<std::string, std::string> words_;
    std::vector<std::string> ranked_;
    bool led_ = false;
};

} // namespace amentum
