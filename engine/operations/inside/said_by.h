// Who says so, and why: the two fields of everything that a named adult answers for.
#pragma once

#include "values/refusal.h"

#include <string>

namespace amentum {

// A name of a person, at least three letters long: initials tell nobody apart. `what` says whose.
Result<std::string> person_given(const std::string& field, const std::string& given, const std::string& what);

// A reason of at least ten characters, which is kept.
Result<std::string> reason_given(const std::string& field, const std::string& given);

} // namespace amentum
