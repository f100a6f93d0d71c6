// What is held already, by identity; and what differs when the same record comes with other values.
#pragma once

#include "records/inside/line_reader.h"
#include "records/inside/read_line.h"

namespace amentum {

class HeldRecords {
public:
    HeldRecords(RecordKind kind, const RecordSet& held, const NamesOf& names);

    // The cells of the record of that identity; null when none is held.
    const std::vector<std::string>* cells(const std::string& identity) const;

private:
    std::map<std::string, std::vector<std::string>> by_identity_;
};

// "load is held as 180 lb, the file says 185 lb", in the file's units; column: the first that differs.
struct Difference {
    std::string words, column, held, given;
};
Difference describe_difference(RecordKind kind, const std::vector<std::string>& held,
                               const std::vector<std::string>& given, const LineReader& line);

} // namespace amentum
