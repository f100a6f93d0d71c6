// load_racks: the plates of one to four racks at once, set after set, with the fewest handled; drawn as they stand.
//
// A rack is given by a bar and its loads, or by a session of a kept block: then its bar lines in order, each main lift
// with the warm-up on the way. What is searched, and what is proven: equipment/load_racks.h. The usual habit it is
// compared with: each set with the fewest plates, the heaviest inside.
// Refuses what equipment/load_racks.h refuses; a rack with both loads and a block, or neither; a session without a bar.
#pragma once

#include "operations/load_bar.h"

namespace amentum {

struct RackGiven {
    std::optional<std::string> name;  // left out: "Rack 1" ..., or the thrower's name
    std::optional<std::string> means; // straight_bar (when left out), hex_bar, safety_bar ...
    std::optional<std::string> item;  // one bar by its label
    std::vector<double> loads_lb;     // of the sets, in order
    std::vector<double> loads_kg;
    std::optional<std::string> block; // its id, or a thrower's name for the newest
    std::optional<int> week;          // left out: 1
    std::optional<int> session;       // left out: 1
};
BOOST_DESCRIBE_STRUCT(RackGiven, (), (name, means, item, loads_lb, loads_kg, block, week, session))

struct LoadRacksRequest {
    std::optional<std::string> kit; // left out: the block's, or the first
    std::vector<RackGiven> racks;   // the last gives way when plates are short
};
BOOST_DESCRIBE_STRUCT(LoadRacksRequest, (), (kit, racks))

struct RackSet {
    std::string what; // "Back squat, warm-up"; "set 2"
    std::string dose; // "4 x 5"; empty when only loads were given
    double wanted;
    ShownLoad load; // one_side: innermost first, in runs of equal plates
    int moves;      // plates handled on one side, from the set before
};
BOOST_DESCRIBE_STRUCT(RackSet, (), (what, dose, wanted, load, moves))

struct RackBar {
    std::string item;
    std::string means;
    int sides; // that take plates: 2, or 1
    double bar;
    std::vector<RackSet> sets;
    int strip; // plates taken off one side at the end
    int moves; // of one side, from the empty bar to the empty bar
    int usual_moves;
};
BOOST_DESCRIBE_STRUCT(RackBar, (), (item, means, sides, bar, sets, strip, moves, usual_moves))

struct ShownRack {
    std::string name;
    std::vector<RackBar> bars;
    std::vector<ShownPlates> plates; // single plates to put beside the rack, heaviest first
    int moves;
    int usual_moves;
    std::vector<std::string> notes; // lines without a load yet
};
BOOST_DESCRIBE_STRUCT(ShownRack, (), (name, bars, plates, moves, usual_moves, notes))

struct ContestedPlate {
    std::string label;
    int wanted;
    int owned;
};
BOOST_DESCRIBE_STRUCT(ContestedPlate, (), (label, wanted, owned))

struct LoadRacksAnswer {
    std::string kit;
    std::string unit;
    std::vector<ShownRack> racks;
    int moves; // of one side, all racks
    int usual_moves;
    bool proven;  // no stacking of these loads has fewer
    int at_least; // none has fewer than this; 0 when that is not known
    std::vector<ContestedPlate> contested;
    std::vector<std::string> lightened; // racks whose loads may be a step lower, so that all fit
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(LoadRacksAnswer, (),
                      (kit, unit, racks, moves, usual_moves, proven, at_least, contested, lightened, words,
                       stop_and_refer))

Result<LoadRacksAnswer> load_racks(Workplace&, const LoadRacksRequest&);

} // namespace amentum
