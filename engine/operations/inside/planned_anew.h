// A block planned from nothing takes the place of the kept one of the same thrower and start; that one stays within reach of undo.
#pragma once

#include "operations/inside/own_words.h"

#include <string>

namespace amentum {

// Call while `writing` is held. Answers a sentence when changes made by hand ended with it; else nothing.
std::string save_planned_anew(Workplace::Inside&, const Block&);

// Both read the store itself: a squad saves too often for a new view each time.
// Refuses when sets of the kept block of the same id are logged: it is not replaced.
Result<Done> check_not_begun(Workplace::Inside&, const Block&);

} // namespace amentum
