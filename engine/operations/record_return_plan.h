// record_return_plan: keep the steps back to throwing that a clinician wrote, as they were written.
//
// From then on it gates throwing: the next step only after one that was pain-free during, and without soreness left the next
// day. The tool writes no such plan, changes none and ends none by itself: a later one, or one without steps, does.
// Refuses a plan without the clinician's name or the name of the adult who enters it, and numbers outside their limits.
#pragma once

#include "operations/plan_ramp.h"

namespace amentum {

struct RecordReturnPlanRequest {
    std::string athlete;
    std::string clinician;            // by name and trade
    std::optional<std::string> start; // left out: today
    std::optional<int> days_between;  // days without throwing between two steps, 0 to 6; left out: 1
    std::vector<RampStep> steps;      // none: the plan in force ends
    std::optional<std::string> note;
    std::string recorded_by;
};
BOOST_DESCRIBE_STRUCT(RecordReturnPlanRequest, (),
                      (athlete, clinician, start, days_between, steps, note, recorded_by))

struct RecordReturnPlanAnswer {
    int number;
    std::vector<ArmSteps> in_force;
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(RecordReturnPlanAnswer, (), (number, in_force, words, stop_and_refer))

Result<RecordReturnPlanAnswer> record_return_plan(Workplace&, const RecordReturnPlanRequest&);

} // namespace amentum
