// What is a written block worth, line by line, by the same account as a plan (block_problem.h), and what would dropping a
// line cost? For blocks of any origin: planned here, changed by hand, brought in from a coach's file.
//
// Added up from the written lines of every full week, by other code than price_plan.h: a block just planned must come out
// the same where no line stands in for another near a start. Full weeks are those the wave (wave.h) would not reduce.
// Lines whose exercise the athlete may not do here bring nothing.
//   dropping a line   total points of the block less those without this exercise in this session of every week of its meso
//   held back by      what one more set of the line would break, in a coach's words; else that it would cost more than it
//                     brings
// What it cannot tell: what block_problem.h cannot.
#pragma once

#include "planning/plan_block.h"
#include "planning/price_plan.h"

namespace amentum {

struct PricedLine {
    double dropping;       // points lost without it; below 0: the block would be better without
    double minutes;        // it takes in a full week's session
    std::string held_back; // "session 2 would have 64 minutes, at most 60"
};

struct PricedBlock {
    std::vector<std::string> qualities; // keys, as in `price`
    std::vector<double> weights;
    PlanPrice price;
    std::vector<Interval> share_between; // by quality: the published spread of the dose, 95 %
    std::optional<double> bound;         // points no plan of this request can exceed (exact_plan.h)
    std::vector<PricedLine> lines;       // in the order of the block's lines
    std::vector<Breach> breaches;        // of the plan's limits; guard_rails looks at the rest
};

// The request is that of the block: its athlete, kit, first day, weeks, sessions and minutes. None: no exercise is left to
// choose from, so nothing can be told.
std::optional<PricedBlock> price_block(const BlockRequest&, const Block&);

} // namespace amentum
