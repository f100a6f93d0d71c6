// growth: the heights of a young thrower month by month, how fast, and roughly where in growth; whom to measure next.
//
// Of one thrower, or, when nobody is named, of every thrower under 18 in a line. The maturity offset stands with its
// standard error and its known bias; it is a band and no date, never for selection.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct GrowthRequest {
    std::optional<std::string> athlete;
};
BOOST_DESCRIBE_STRUCT(GrowthRequest, (), (athlete))

struct ShownHeight {
    std::string date;
    ShownEstimate height;
    std::optional<ShownEstimate> rate; // a month, since the height before that is a month or more older
};
BOOST_DESCRIBE_STRUCT(ShownHeight, (), (date, height, rate))

struct ShownGrowth {
    std::string athlete;
    std::string name;
    int age;
    std::string guardian;
    std::vector<ShownHeight> heights;
    std::optional<ShownEstimate> rate;   // a month, over the last half year
    std::optional<ShownEstimate> offset; // years from the fastest growth; negative: before
    std::string offset_words;
    std::optional<int> days_since_height;
    std::vector<ShownFinding> findings;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(ShownGrowth, (),
                      (athlete, name, age, guardian, heights, rate, offset, offset_words, days_since_height,
                       findings, words))

struct GrowthAnswer {
    std::string today;
    std::vector<ShownGrowth> throwers; // those to measure first
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(GrowthAnswer, (), (today, throwers, words))

Result<GrowthAnswer> growth(Workplace&, const GrowthRequest&);

} // namespace amentum
