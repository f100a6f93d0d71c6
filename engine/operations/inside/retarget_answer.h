// A block in another gym as sheets and pages show it: both sides line by line, in each gym's own unit.
#pragma once

#include "operations/inside/inside.h"
#include "operations/retarget_block.h"
#include "planning/retarget_block.h"

namespace amentum {

// What the answer is made of, beside the view: `request` and what came of it.
struct RetargetedHere {
    const RetargetRequest& request;
    const RetargetedBlock& made;
    const Athlete& athlete;
};

RetargetBlockAnswer retarget_answer(const Workplace::Inside&, const FacilityView&, const RetargetedHere&);

} // namespace amentum
