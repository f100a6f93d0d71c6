// What each field of BodyRequest means, for every operation that asks whose body it is.
#pragma once

#include "operations/make_operation.h"

namespace amentum {

const Meanings& body_meanings();

Meanings joined(std::initializer_list<Meanings> groups);

} // namespace amentum
