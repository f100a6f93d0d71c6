// find_limiters: which physical quality holds this thrower's velocity back, how sure that is, and what to test next.
//
// The ranking is by expected gain in velocity from an attainable improvement; "goes with", never "causes".
// Refuses an unknown athlete. Without any test of a trainable quality the answer is still given: it is the published
// prior, and says so.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct FindLimitersRequest {
    std::string athlete; // name or id
};
BOOST_DESCRIBE_STRUCT(FindLimitersRequest, (), (athlete))

struct LimiterLine {
    std::string quality;
    std::string name;
    ShownEstimate gain; // in velocity, from an attainable improvement over twelve weeks
    double chance_best; // 0 to 1
    double regret;      // expected loss of velocity, in the gain's unit, if this were chosen and not the best
    std::optional<ShownEstimate> level; // where the athlete stands, in standard deviations from what is usual
    std::string level_words;            // what it was compared with
    bool tested;
    double information; // 0: the slope is the literature's; 1: all from these athletes
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(LimiterLine, (),
                      (quality, name, gain, chance_best, regret, level, level_words, tested, information,
                       sources))

struct FindLimitersAnswer {
    std::string athlete;
    std::string name;
    std::string today;
    std::string verdict;               // a quality's key, or "cannot_tell"
    std::vector<std::string> words;    // the answer in plain sentences
    std::vector<LimiterLine> limiters; // largest expected gain first
    std::string test_next;             // test kind's key; empty when nothing would help
    std::string test_next_words;
    ShownEstimate value_of_knowing; // expected gain lost because the best lever is not known
    std::string model;              // versions and data hash
};
BOOST_DESCRIBE_STRUCT(FindLimitersAnswer, (),
                      (athlete, name, today, verdict, words, limiters, test_next, test_next_words,
                       value_of_knowing, model))

Result<FindLimitersAnswer> find_limiters(Workplace&, const FindLimitersRequest&);

} // namespace amentum
