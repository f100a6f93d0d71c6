// Numbers as an answer shows them: already in the facility's units, with the interval and the number of decimals.
//
// low and high are the central 80 % interval. Pages and terminal print what stands here and compute nothing.
#pragma once

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct ShownEstimate {
    double value;
    double low;
    double high;
    std::string unit;
    int decimals;
};
BOOST_DESCRIBE_STRUCT(ShownEstimate, (), (value, low, high, unit, decimals))

struct ShownPoint { // one day of a trajectory
    std::string date;
    double value;
    double low;
    double high;
};
BOOST_DESCRIBE_STRUCT(ShownPoint, (), (date, value, low, high))

struct ShownTest { // one measured test day
    std::string date;
    double value;
    double standard_error;
    std::string side;
    std::string method;
    std::vector<std::string> warnings;
    bool far_from_expected; // more than four standard deviations from what the earlier tests foretold
    bool from_logged_set;
    std::string left_out; // why it is not in the line (another side, another radar); empty when it is
};
BOOST_DESCRIBE_STRUCT(ShownTest, (),
                      (date, value, standard_error, side, method, warnings, far_from_expected,
                       from_logged_set, left_out))

struct ShownRefusal {
    int code;
    std::string name;
    std::string sentence;
    std::string field;
    std::string given;
    std::string allowed;
};
BOOST_DESCRIBE_STRUCT(ShownRefusal, (), (code, name, sentence, field, given, allowed))

} // namespace amentum
