// Kept force traces as files: an index of who, when and what, and each trace as delimited text record_trace reads back.
//
//   force_traces.csv          one line a trace, with every word record_trace needs and its moves as JSON
//   force_trace_<id>.csv      the rate, the plates' names, then a line a sample; each sample the shortest decimal that
//                             is read back as the same 32-bit float
#pragma once

#include "operations/export_records.h"
#include "recordings/kept_trace.h"

namespace amentum {

ExportedFile index_of_traces(const std::vector<KeptTrace>& traces);
ExportedFile samples_of_trace(const KeptTrace& trace); // with its samples

} // namespace amentum
