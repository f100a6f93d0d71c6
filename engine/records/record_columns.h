// Which columns may a file of each kind have, and what stands in them?
//
// A quantity's unit stands in the column's name: the column `load` of a mass is written load_kg, load_lb, load_oz or
// load_g, whichever the file likes; exports write the first. A line may give one quantity in one unit only.
// Mass kg, lb, oz, g; length m, cm, in, ft; speed ms (m/s), mph, kmh (km/h); time s, ms; angle deg;
// force n (newton), kg and lb (of force); fraction plain or percent [NistSp811, appendix B.8].
//
// Example: header_names(*find_column(RecordKind::throws, "effort")) == {"effort", "effort_percent"}
#pragma once

#include "records/record_kind.h"

#include <string>

namespace amentum {

enum class Holds { text, date, whole, number, mass, length, speed, time, angle, force, power, fraction };
enum class Need { needed, optional };

// What tells one record of the kind from another; names are told apart by their slug ("Ona Reyes" = "ona reyes").
enum class Identity { none, exact, by_slug };

struct RecordColumn {
    std::string name; // without unit
    Holds holds;
    Need need;
    Identity identity;
    std::string meaning; // for the coach: what stands there, which words, which range
    std::string also;    // another name the column may have; empty for none
};

const std::vector<RecordColumn>& record_columns(RecordKind kind);
const RecordColumn* find_column(const std::vector<RecordColumn>&,
                                std::string_view name); // null when there is none
const RecordColumn* find_column(RecordKind kind, std::string_view name);

// Every name the column may have in a file's header line, the one that exports write first.
std::vector<std::string> header_names(const RecordColumn& column);

} // namespace amentum
