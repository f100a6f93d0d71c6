// The held throws of one athlete with balls of several masses: one family is the same throw with another ball.
//
// A family is the test's key without its ball: kneeling_overhead_throw_6lb and _4lb are kneeling_overhead_throw. Within a
// day only throws taken alike (way of measuring, device, place) make a line; the set with most balls is kept, and the
// others are said to be left out.
#pragma once

#include "measurement/ball_mass_line.h"
#include "operations/inside/facility_view.h"

#include <map>
#include <string>
#include <vector>

namespace amentum {

// The key without "_4lb"; the whole key when it does not end in its ball's mass in pounds.
std::string ball_family(const TestKind& kind);
std::string ball_family_name(const TestKind& kind); // "Overhead throw from both knees"

struct BallDay {
    Date date;
    std::vector<ThrowsOfBall> balls; // lightest first
    double trial_error;              // of the family's test kinds, as a fraction: the largest
    double shared_error;             // day and method together, as a fraction
    std::string taken;               // "by radar, radar 1, out_of_hand"
    std::vector<std::string> left_out;
    std::vector<std::string> warnings; // of the single throws
    std::vector<std::string> sources;
};

// By family, then by date. Days without any throw are not there.
std::map<std::string, std::vector<BallDay>> ball_days(const FacilityView&, const ReferenceTables&,
                                                      const Athlete&);

} // namespace amentum
