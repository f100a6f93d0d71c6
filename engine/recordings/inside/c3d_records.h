// The records of a C3D parameter section, one after the other; see c3d_parameters.h.
#pragma once

#include "recordings/c3d_parameters.h"

namespace amentum {

// Reads from head.records_end to the last record, into groups and parameters. `section` is the file up to the section's
// end. Every step goes forward by at least five bytes, so that no file makes it run for ever.
std::optional<Refusal> read_records(std::string_view section, C3dHead& head);

// Fills head.places; says what belongs to no group and what stands there twice.
void index_parameters(C3dHead& head);

} // namespace amentum
