// kit: what stands in a gym, label beside weighed mass; what each bar makes; the one purchase that would help most.
//
// Loads: equipment/load_table.h. Purchases: equipment/kit_purchases.h, for the lines of the kept blocks of throwers
// who train there; each line's target is the lower side of the thrower's maximum on the block's first day times the
// week's fraction, as plan_block aimed at it, or the line's own load where that does not give the line any more.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct KitRequest {
    std::optional<std::string> kit; // left out: the first
};
BOOST_DESCRIBE_STRUCT(KitRequest, (), (kit))

struct ShownItem {
    std::string label;
    std::string kind; // in words: "straight bar"
    int count;
    std::optional<double> stamped;     // the mass its label names, in the kit's unit
    std::optional<double> mass;        // what it counts as
    std::optional<double> off_percent; // mass over stamped, less 1
    bool can_be_weighed;
    std::string words; // "44.2 lb, 1.8 % under its stamp"; a height, a column's steps
};
BOOST_DESCRIBE_STRUCT(ShownItem, (), (label, kind, count, stamped, mass, off_percent, can_be_weighed, words))

struct LoadGap {
    double from;
    double to;
    double percent; // to over from, less 1
};
BOOST_DESCRIBE_STRUCT(LoadGap, (), (from, to, percent))

struct ShownLoads { // of one bar, or of all dumbbells, balls ...
    std::string what;
    std::string means;
    int loads; // distinct
    double lightest;
    double heaviest;
    double smallest_step;      // between two neighbours; 0 when there is one load only
    double usual_step;         // the middle one of all steps
    std::vector<LoadGap> gaps; // neighbours more than 10 % apart
};
BOOST_DESCRIBE_STRUCT(ShownLoads, (),
                      (what, means, loads, lightest, heaviest, smallest_step, usual_step, gaps))

struct ShownKitPurchase {
    std::string what;
    int more; // sets made with it that are not made now
    int made;
    int exactly;
    double lacking_percent; // mean over the sets
};
BOOST_DESCRIBE_STRUCT(ShownKitPurchase, (), (what, more, made, exactly, lacking_percent))

struct ShownPrescribed {
    std::vector<std::string> blocks; // "Marisol Quay, from 2026-06-01"
    int sets;                        // with a load
    int made;                        // less than one small step below the target
    int exactly;
    double small_step;
    double lacking_percent;
    std::vector<ShownKitPurchase> purchases; // best first
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ShownPrescribed, (),
                      (blocks, sets, made, exactly, small_step, lacking_percent, purchases, words))

struct KitAnswer {
    std::string kit;
    std::string name;
    std::string unit;
    std::vector<ShownItem> items;
    std::vector<ShownLoads> loads;
    ShownPrescribed prescribed;
    std::vector<std::string> notes;
};
BOOST_DESCRIBE_STRUCT(KitAnswer, (), (kit, name, unit, items, loads, prescribed, notes))

Result<KitAnswer> kit(Workplace&, const KitRequest&);

} // namespace amentum
