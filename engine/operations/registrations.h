// How an operation joins the list: its function, its summary, the meaning of each request field, its words.
//
// Each group of operations registers itself in one registrations_*.cpp; registered_operations() joins them in the
// order a coach meets them.
#pragma once

#include "operations/operation.h"

#include <vector>

namespace amentum {

std::vector<Operation> registered_operations();
std::vector<Operation> record_operations();       // records in and out, tests, throws, sets, demo
std::vector<Operation> answer_operations();       // roster, thrower, limiters, changes, test day
std::vector<Operation> judgement_operations();    // did the block work, which test next
std::vector<Operation> prior_operations();        // the table of priors, and its edits
std::vector<Operation> trace_operations();        // force traces: measure, keep, look again
std::vector<Operation> line_operations();         // over ball masses, over bar loads
std::vector<Operation> setup_operations();        // postures of lifts: body, set-up, equal demand
std::vector<Operation> landing_operations();      // an instant measured: lead leg, overhead throw
std::vector<Operation> repeat_operations();       // a test's own error, joint ranges, the two sides
std::vector<Operation> prescription_operations(); // blocks, loads, cautions, catalogue, methods
std::vector<Operation> arm_operations();          // what an arm has thrown, may pitch, its steps back
std::vector<Operation> care_operations();         // pain, clearances, the signs to stop
std::vector<Operation> season_operations();       // tables of limits, teams, days spoken for
std::vector<Operation> kit_operations();          // what stands in a gym, weighing it, racks at once
std::vector<Operation> squad_operations();        // own changes of a block, a whole squad at once
std::vector<Operation> kept_block_operations();   // what to lift next, calendar, a coach's own block

} // namespace amentum
