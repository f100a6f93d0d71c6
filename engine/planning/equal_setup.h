// How must the other lift be set up so that hip and knee share the work as they did?
//
// The load held otherwise moves hip share, not their sum (equivalent_load.h). The trunk's lean is searched for between -5
// and 60 degrees, everything else held, until the hip's share is what it was (search_setup.h); where it cannot be, the
// nearest lean a body can stand in. Only for lifts on split feet whose lean was chosen.
// What it cannot tell: whether the athlete holds that lean; joint limits beyond usual ends.
//
// Example: from a bar on the back to dumbbells hanging, trunk 20 -> some 10 degrees, hip share 0.56 in both.
#pragma once

#include "body_mechanics/body.h"
#include "body_mechanics/setup.h"

#include <optional>

namespace amentum {

struct EqualSetup {
    Setup setup;
    double share_wanted; // of the hip, 0 to 1
    double share_usual;  // as usually set up
    double share_found;
};

std::optional<EqualSetup> solve_equal_setup(const Body& body, const Setup& from, const Setup& to);

} // namespace amentum
