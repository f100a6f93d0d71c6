// sides: how do this athlete's two sides differ, in every test that knows a side, and is it more than the error?
//
// Only sides of one day, tool and rater are compared. Ours is (main - other) / total, signed; other formulas in use
// stand beside it for reference. Angles have no zero to divide by: their difference is in degrees.
// Refuses an unknown athlete.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct SidesRequest {
    std::string athlete; // name or id
};
BOOST_DESCRIBE_STRUCT(SidesRequest, (), (athlete))

struct RivalFormulas { // per cent, for reading what others print
    double of_larger;
    double smaller_share;
    double over_mean;
    double symmetry_angle;
};
BOOST_DESCRIBE_STRUCT(RivalFormulas, (), (of_larger, smaller_share, over_mean, symmetry_angle))

struct SideLine {
    std::string test;
    std::string name;
    std::string date;
    std::string main_side; // "throwing side, right"
    std::string other_side;
    ShownEstimate main;
    ShownEstimate other;
    ShownEstimate difference;                // main less other, in the test's unit
    std::optional<ShownEstimate> over_total; // ours, per cent; none for angles
    std::optional<RivalFormulas> rivals;
    std::string verdict; // larger_than_error, cannot_tell, within_error
    int days_compared;   // of the same test, this one counted
    int days_same_way;   // of those, with the difference on the same side
    std::string words;
};
BOOST_DESCRIBE_STRUCT(SideLine, (),
                      (test, name, date, main_side, other_side, main, other, difference, over_total, rivals,
                       verdict, days_compared, days_same_way, words))

struct SidesAnswer {
    std::string athlete;
    std::string name;
    std::string today;
    std::vector<SideLine> tests;
    std::vector<std::string> not_compared; // and why
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(SidesAnswer, (), (athlete, name, today, tests, not_compared, words, stop_and_refer))

Result<SidesAnswer> sides(Workplace&, const SidesRequest&);

} // namespace amentum
