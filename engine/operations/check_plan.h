// check_plan: everything planned for a thrower, checked anew by the guard rails: block, games, steps, and the sets logged.
//
// Independent of whatever planned it. Findings that stop come first; each says who may answer for it, if anybody.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct CheckPlanRequest {
    std::optional<std::string> athlete; // left out: everybody; then only throwers with findings are named
};
BOOST_DESCRIBE_STRUCT(CheckPlanRequest, (), (athlete))

struct CheckedPlan {
    std::string athlete;
    std::string name;
    std::vector<std::string>
        checked; // "block of 2026-06-08, 4 weeks"; "3 starts to 2026-06-28"; "12 sets logged"
    std::vector<ShownFinding> findings;
};
BOOST_DESCRIBE_STRUCT(CheckedPlan, (), (athlete, name, checked, findings))

struct CheckPlanAnswer {
    std::string today;
    int checked; // throwers
    int stops;   // findings that stop
    std::vector<CheckedPlan> plans;
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(CheckPlanAnswer, (), (today, checked, stops, plans, words, stop_and_refer))

Result<CheckPlanAnswer> check_plan(Workplace&, const CheckPlanRequest&);

} // namespace amentum
