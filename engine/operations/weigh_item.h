// weigh_item: put the mass an item was weighed at in the place of the mass it counted as.
//
// Up to 7 % off its stamp is taken as it is: unweighed plates are off by 1 to 7 % (common practice, no source). Up to
// 15 % it comes back as a question; sent again with keep = true it is kept. Further off it is refused: then the label
// is wrong, or the unit. An item whose label names no mass is compared with the mass it counted as, and asked about
// beyond 15 %. The limits are a proposal of this project, no source.
// The same mass again changes nothing and says so. All pieces of one label count as one mass: weigh them together and
// give the mean, or give the odd one a label of its own.
// Refuses an item that has no mass to weigh (column, band, rack ...), and a mass no kit may hold (records/limits.h).
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct WeighItemRequest {
    std::optional<std::string> kit; // left out: the first
    std::string item;               // its label
    std::optional<double> mass_kg;
    std::optional<double> mass_lb;
    std::optional<bool> keep; // yes, although it is far off
};
BOOST_DESCRIBE_STRUCT(WeighItemRequest, (), (kit, item, mass_kg, mass_lb, keep))

struct WeighItemAnswer {
    bool saved;
    bool held_before;     // it counted as this mass already
    std::string question; // empty when saved or held
    std::string kit;
    std::string item;
    std::optional<double> before;
    double mass;
    std::string unit;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(WeighItemAnswer, (),
                      (saved, held_before, question, kit, item, before, mass, unit, words))

Result<WeighItemAnswer> weigh_item(Workplace&, const WeighItemRequest&);

} // namespace amentum
