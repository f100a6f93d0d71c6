// adjust_block: the coach's own word on a line of a kept block; the rest is planned again around it, as little changed as can be.
//
//   hold       this exercise stays (in this session, with these sets), whatever else is planned
//   leave_out  this exercise goes (from this session, or from all)
//   swap       this exercise gives way to `with` in this session
//   undo       the last change is taken back, and the block is as it was before it
// Every change is kept with its day, and shows on the block until it is undone. A block whose sets are being logged may be
// changed too: weeks with a logged set stay as they are. What moved is listed with the reason.
// Refuses: an unknown exercise; one the athlete may not do or the gym cannot equip, with the reason; limits that then leave no
// block, with the smallest set of them in conflict; undo without a change.
#pragma once

#include "operations/plan_block.h"

namespace amentum {

struct AdjustBlockRequest {
    std::string block; // its id, or an athlete's name for that athlete's newest block
    std::string step;  // hold, leave_out, swap, undo
    std::optional<std::string> exercise;
    std::optional<std::string> with;
    std::optional<int> session; // of the week, 1 ...; left out: all
    std::optional<int> sets;
};
BOOST_DESCRIBE_STRUCT(AdjustBlockRequest, (), (block, step, exercise, with, session, sets))

struct MovedLine {
    int week;
    int session;
    std::string exercise;
    std::string name;
    std::string what; // "3 sets, not 2", "added", "left out"
    std::string why;
};
BOOST_DESCRIBE_STRUCT(MovedLine, (), (week, session, exercise, name, what, why))

struct AdjustBlockAnswer {
    BlockAnswer block;
    std::vector<MovedLine> moved;
    std::string words; // "2 lines changed; the block has 61 points, 0.4 fewer than before."
};
BOOST_DESCRIBE_STRUCT(AdjustBlockAnswer, (), (block, moved, words))

Result<AdjustBlockAnswer> adjust_block(Workplace&, const AdjustBlockRequest&);

} // namespace amentum
