// explain_velocity: what goes with velocity in this roster: within athletes and between them, apart, errors allowed for.
//
// One joint model of all test days of everybody (inference/joint_model.h), kept until the records change. A quality is in it
// when one of its tests was done by at least 8 athletes, 5 of them on two days or more (proposal of this project); the test
// most athletes did speaks for it. Years below 18 stand in the model as growth; age, sex, sport and stature as what athletes
// differ by anyway. Beside it stands the correlation of all pairs of test days that a coach would compute, and why it differs.
// Refuses a roster the model cannot be fitted to, with the reason.
// What it cannot tell: causes. What goes with velocity here need not move it.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

namespace amentum {

struct ExplainVelocityRequest {};
BOOST_DESCRIBE_STRUCT(ExplainVelocityRequest, (), ())

struct GoesWith {
    std::string quality; // key
    std::string name;
    std::string test_name;      // the test that speaks for it
    int athletes;               // who did it
    ShownEstimate within;       // velocity for a usual twelve-week improvement
    double within_learned;      // 0: the prior alone, 1: these athletes alone
    std::string within_verdict; // goes_with, goes_against, cannot_tell
    ShownEstimate between;      // velocity for one SD more among athletes
    double between_learned;
    std::string between_verdict;
    std::optional<double> correlation; // of all pairs of test days, as observed; null below 10 pairs
    int pairs;
    std::string words; // one sentence, or two
};
BOOST_DESCRIBE_STRUCT(GoesWith, (),
                      (quality, name, test_name, athletes, within, within_learned, within_verdict, between,
                       between_learned, between_verdict, correlation, pairs, words))

struct LeftOutQuality {
    std::string quality;
    std::string name;
    std::string why;
};
BOOST_DESCRIBE_STRUCT(LeftOutQuality, (), (quality, name, why))

struct ExplainVelocityAnswer {
    int athletes;
    int test_days;
    int readings;
    std::vector<GoesWith> qualities; // surest within first
    std::vector<LeftOutQuality> left_out;
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::string model; // version, data and prior hashes, guards
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(ExplainVelocityAnswer, (),
                      (athletes, test_days, readings, qualities, left_out, words, cautions, model, sources))

Result<ExplainVelocityAnswer> explain_velocity(Workplace&, const ExplainVelocityRequest&);

} // namespace amentum
