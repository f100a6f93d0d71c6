// plan_ramp: back to a week's throws after time off, in absolute throws, with days between; the steps can be edited.
//
// Keeps the steps when recorded_by is given; then check_arm says which step is next and whether its gate is open. `steps`
// given: those are checked and taken instead. A ramp of zero steps (steps given empty with end = yes) ends the one in force.
// While a clinician's plan is in force the tool plans no ramp: that plan gates throwing, and is neither written nor
// changed here (record_return_plan keeps it).
// Refuses what throwing_workload/throw_ramp.h refuses; a plan over an open pain entry that stops throwing.
#pragma once

#include "operations/check_arm.h"

namespace amentum {

struct PlanRampRequest {
    std::string athlete;
    std::optional<int> target_week;       // throws, of the last week of the ramp; left out only with end
    std::optional<int> week_before;       // throws of the week before the ramp; left out: the last seven days
    std::optional<std::string> start;     // left out: tomorrow
    std::optional<double> rise_percent;   // of the target, each week: 10 to 20; left out: 15
    std::optional<int> sessions_per_week; // 1 to 6; left out: 3
    std::vector<RampStep> steps;          // edited: taken as they stand, and checked
    std::optional<bool> end;              // end the ramp in force
    std::optional<std::string> recorded_by; // keep it; left out: only look
};
BOOST_DESCRIBE_STRUCT(PlanRampRequest, (),
                      (athlete, target_week, week_before, start, rise_percent, sessions_per_week, steps, end,
                       recorded_by))

struct RampWeek {
    std::string monday;
    int throws;
};
BOOST_DESCRIBE_STRUCT(RampWeek, (), (monday, throws))

struct PlanRampAnswer {
    std::string athlete;
    std::string name;
    bool kept;
    int number; // 0: only looked at
    std::vector<RampStep> steps;
    std::vector<RampWeek> weeks;
    std::vector<std::string> notes; // of edited steps: rises above the share
    std::vector<ArmSteps> in_force; // how far, after this
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(PlanRampAnswer, (),
                      (athlete, name, kept, number, steps, weeks, notes, in_force, words, stop_and_refer))

Result<PlanRampAnswer> plan_ramp(Workplace&, const PlanRampRequest&);

} // namespace amentum
