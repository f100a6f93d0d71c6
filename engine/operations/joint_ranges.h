// joint_ranges: which ranges of the joints were measured, how sure are they, and what is worth measuring again?
//
// By day: each angle's readings, their mean and error, total rotation of shoulder and hip, differences between sides.
// Only angles of one day, tool and rater are compared; what is missing to compare is said.
// Refuses an unknown athlete, and a date without an angle. The answer never says anything about injury.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct JointRangesRequest {
    std::string athlete;             // name or id
    std::optional<std::string> date; // left out: every day with an angle, newest first
};
BOOST_DESCRIBE_STRUCT(JointRangesRequest, (), (athlete, date))

struct AngleLine {
    std::string test;
    std::string name;
    std::string side; // "throwing side, right"
    std::vector<double> trials;
    ShownEstimate mean;
    double spread;
    double spread_allowed; // 0 when there is one reading
    bool one_more;
    std::string device;
    std::string rater;
    std::string words;
};
BOOST_DESCRIBE_STRUCT(AngleLine, (),
                      (test, name, side, trials, mean, spread, spread_allowed, one_more, device, rater,
                       words))

struct RangeTotal {
    std::string joint; // shoulder, hip
    std::string side;
    ShownEstimate total; // outward and inward rotation together
};
BOOST_DESCRIBE_STRUCT(RangeTotal, (), (joint, side, total))

struct RangeDifference {
    std::string what;
    ShownEstimate difference;      // throwing side (lead leg) less the other
    std::optional<double> cut_off; // a published one for the deficit; none where there is none
    std::string finding;           // none_seen, measure_again, show_clinician; or the verdict on its error
    int days_found;                // up to this one, with a deficit above the cut-off
    std::string words;
};
BOOST_DESCRIBE_STRUCT(RangeDifference, (), (what, difference, cut_off, finding, days_found, words))

struct JointDay {
    std::string date;
    std::vector<AngleLine> angles;
    std::vector<RangeTotal> totals;
    std::vector<RangeDifference> differences;
    std::vector<std::string> missing; // to compare
};
BOOST_DESCRIBE_STRUCT(JointDay, (), (date, angles, totals, differences, missing))

struct AngleProtocol {
    std::string test;
    std::string name;
    std::string protocol; // position and landmarks
    double trial_error;   // degrees
    double day_error;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(AngleProtocol, (), (test, name, protocol, trial_error, day_error, sources))

struct JointRangesAnswer {
    std::string athlete;
    std::string name;
    std::string today;
    std::vector<JointDay> days; // newest first
    std::vector<AngleProtocol> protocols;
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(JointRangesAnswer, (), (athlete, name, today, days, protocols, words, stop_and_refer))

Result<JointRangesAnswer> joint_ranges(Workplace&, const JointRangesRequest&);

} // namespace amentum
