// Text of a comma-separated file <-> rows of fields, with the line each row began on.
//
// Reads RFC 4180 [Rfc4180, section 2] and what spreadsheets really write: UTF-8 with or without byte-order
// mark; lines ended by LF, CRLF or CR; ',' or ';' as the separator, whichever is more frequent in the header
// line outside quotes. Ours beyond the standard: lines before the header that begin with '#' are comments;
// blank lines, and rows in which every field is empty, are passed over. Fields are kept as they are, spaces
// included [Rfc4180, 2.4]; header names are trimmed. The parser is libcsv in its strict mode. Refuses
// (unreadable_file, field "line 7"): bytes that are not UTF-8, NUL, no header line, an empty or repeated
// header name, a row of more or fewer fields than the header, a quote inside an unquoted field, a quote never
// closed. What it cannot tell: which decimal mark the numbers use; that is asked for beside the file
// (DecimalMark).
//
// Example: parse_csv("name,load_lb\n\"Reyes, Ona\",185\n")->rows[0].fields[0] == "Reyes, Ona"
#pragma once

#include "values/refusal.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

struct CsvRow {
    int line;                        // of the file, 1 ..., where the row begins
    std::vector<std::string> fields; // as many as the header has
};

struct CsvTable {
    std::vector<std::string> comments; // the '#' lines at the top, without the '#' and the space after it
    std::vector<std::string> header;
    int header_line = 0;
    std::vector<CsvRow> rows;
    char separator = ',';

    std::optional<std::size_t> column(std::string_view name) const;
};

Result<CsvTable> parse_csv(std::string_view text);

// One line, CRLF included [Rfc4180, 2.1]. Quotes a field that holds ',' or ';' (either may be taken for the
// separator), a quote, CR or LF, that begins or ends with a space, or that would make the line blank or a
// comment.
std::string write_csv_line(std::span<const std::string> fields, char separator = ',');

} // namespace amentum
