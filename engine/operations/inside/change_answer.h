// The judgement of one series between two of its test days, in shown units and words.
#pragma once

#include "operations/inside/inside.h"
#include "operations/judge_change.h"

namespace amentum {

// Judged by the roster's joint model when that holds the test and its fit stands, else by the series alone.
// `from` and `to` are indices of the series' trajectory, from < to.
JudgeChangeAnswer change_answer(const Workplace::Inside&, const FacilityView&, const RosterModel&,
                                const Athlete&, const Series&, std::size_t from, std::size_t to);

// The fit's answer for the test and athlete, or why there is none.
struct JointPart {
    const RosterAthlete* athlete = nullptr; // null: judged by the test alone
    int quality = 0;                        // in the fit
    std::string why;
};
JointPart joint_part(const RosterModel&, const Athlete&, const TestKind&);

bool tested_on(const JointPart&, int day); // whether the fit holds a result of that day

// What growth alone brings between two days by the fit, on the kind's scale; nothing from 18 on.
std::optional<Estimate> growth_by_fit(const RosterModel&, const JointPart&, int from_day, int to_day);

} // namespace amentum
