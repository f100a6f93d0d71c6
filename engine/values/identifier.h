// Names of things that must not be mixed up: an athlete's id is not a kit's.
//
// Ids are text made from what identifies the thing (a name, a date), so that the same record entered twice is the
// same record, on any machine: slug("Ona Reyes") == "ona-reyes". Letters outside ASCII are kept as they are.
#pragma once

#include <compare>
#include <string>
#include <string_view>

namespace amentum {

template <class Of>
struct Id {
    std::string text;
    friend auto operator<=>(const Id&, const Id&) = default;
};

struct Athlete;
struct Kit;
struct Block;
using AthleteId = Id<Athlete>;
using KitId = Id<Kit>;
using BlockId = Id<Block>;

std::string slug(std::string_view name);

} // namespace amentum
