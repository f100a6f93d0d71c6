#include "records/write_records.h"

#include "records/csv.h"
#include "records/inside/cells.h"
#include "records/record_columns.h"

namespace amentum {
namespace {

std::vector<std::string> header_of(RecordKind kind) {
    std::vector<std::string> header;
    for (const auto& column : record_columns(kind))
        header.push_back(header_names(column).front());
    return header;
}

} // namespace

std::vector<RecordFile> write_records(const RecordSet& records) {
    const NamesOf names(records);
    std::vector<RecordFile> files;
    for (const RecordKind kind : import_order()) {
        std::string text = write_csv_line(header_of(kind));
        for (const auto& record : records_on_lines(kind, records))
            text += write_csv_line(cells_of(record, names));
        files.push_back({word(kind) + ".csv", std::move(text)});
    }
    return files;
}

} // namespace amentum
