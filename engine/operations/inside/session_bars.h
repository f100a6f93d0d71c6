// The bar lines of one session of a kept block, as ramps for one rack: which sets, on which bar, what they are called.
//
// Lines follow each other as on the sheet; neighbours on one bar are one ramp. Before the first line of a main lift on a
// bar comes the warm-up on the way (equipment/warm_up.h). A line of one load stands once, whatever its sets: repeating
// it moves no plate. Lines without a load yet, and lines ahead that an open pain entry blocks, are named in a note.
// Refuses an unknown block, a week or session that is not there, and a session without a loaded bar.
#pragma once

#include "equipment/load_racks.h"
#include "operations/inside/inside.h"

#include <string>
#include <vector>

namespace amentum {

struct NamedSet {
    std::string what; // "Back squat, warm-up"
    std::string dose; // "x 6", "4 x 5"
};

struct NamedRack {
    RackWanted wanted;
    std::vector<std::vector<NamedSet>> names; // as wanted.bars and their loads
    std::vector<std::string> notes;
};

Result<NamedRack> session_bars(const Workplace::Inside&, const FacilityView&, const Kit&, const Block&,
                               int week, int session);

} // namespace amentum
