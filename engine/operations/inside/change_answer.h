// The judgement of one series between two of its test days, in shown units and words.
#pragma once

#include "operations/inside/inside.h"
#include "operations/judge_change.h"

namespace amentum {

// `from` and `to` are indices of the series' trajectory, from < to.
JudgeChangeAnswer change_answer(const Workplace::Inside&, const FacilityView&, const Athlete&, const Series&,
                                std::size_t from, std::size_t to);

} // namespace amentum
