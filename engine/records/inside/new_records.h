// The new records of a file as a set, each list in the order of its identity, as a store gives it back.
#pragma once

#include "records/inside/cells.h"

namespace amentum {

RecordSet new_records(const std::vector<RecordOnLine>& records, const RecordSet& held);

} // namespace amentum
