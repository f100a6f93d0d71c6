// load_bar: which plates make this load in this gym; the nearest below and above; what to add; the warm-up on the way.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct LoadBarRequest {
    std::optional<std::string> kit;   // left out: the first kit
    std::optional<std::string> means; // straight_bar (when left out), hex_bar, dumbbell_pair, column ...
    std::optional<std::string> item;  // one bar or column by its label
    std::optional<double> target_lb;
    std::optional<double> target_kg;
};
BOOST_DESCRIBE_STRUCT(LoadBarRequest, (), (kit, means, item, target_lb, target_kg))

struct ShownPlates {
    std::string label;
    double mass;
    int count;
};
BOOST_DESCRIBE_STRUCT(ShownPlates, (), (label, mass, count))

struct ShownLoad {
    double total;
    std::string unit;
    std::vector<ShownPlates> one_side;
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ShownLoad, (), (total, unit, one_side, words))

struct WarmUpLine {
    int reps;
    ShownLoad load;
    double percent;  // of the working load
    int plate_moves; // on each side, from the set before
};
BOOST_DESCRIBE_STRUCT(WarmUpLine, (), (reps, load, percent, plate_moves))

struct LoadBarAnswer {
    std::string kit;
    double target;
    std::string unit;
    ShownLoad nearest;
    std::optional<ShownLoad> not_above;
    std::optional<ShownLoad> above;
    std::vector<std::string> to_add; // what to add to the kit to come nearer
    std::vector<WarmUpLine> warm_up; // towards the nearest load not above
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(LoadBarAnswer, (),
                      (kit, target, unit, nearest, not_above, above, to_add, warm_up, stop_and_refer))

Result<LoadBarAnswer> load_bar(Workplace&, const LoadBarRequest&);

} // namespace amentum
