// What shape a delimited text has, found in its first 64 kB: the separator, the decimal mark, where the numbers begin,
// and what the lines above them say.
//
// The separator and mark are the pair under which most characters of the last hundred lines lie in numeric cells.
// "812,3" alone on every line may be two columns or one decimal: the line of names decides, then a leading zero or a
// sign after the comma; otherwise it is refused rather than guessed.
// The numbers begin at the first line that is numeric wherever most lines are; the nearest line above with as many
// cells names the columns, unless it holds only units.
#pragma once

#include "recordings/inside/text_cells.h"
#include "values/refusal.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

inline constexpr std::size_t sniffed_bytes = 65536;

struct TextColumn {
    std::string name; // "column 3" when the file has no name for it
    bool named = false;
    std::string unit; // as written; empty when none
    bool numeric = false;
};

struct TextLayout {
    CellRule rule;
    char line_end = '\n';
    bool trailing_separator = false;
    std::vector<TextColumn> columns;
    std::size_t header_lines = 0;        // blank ones included
    std::size_t first_data_byte = 0;     // after a byte-order mark and the header lines
    std::optional<double> header_rate;   // Hz
    std::string header_rate_line;        // where it stands, "line 3"
    std::vector<std::string> first_rows; // the lines of numbers within the first bytes, whole ones only

    std::string column_list() const; // "1 'Time', 2 'Left Fz'"
};

// `whole`: the text is all there is, so that its last line counts even without a line end.
Result<TextLayout> find_layout(std::string_view beginning, bool whole);

// Its steps, in order.
std::optional<Refusal> check_is_text(std::string_view beginning);
std::vector<std::string_view> lines_of(std::string_view text, char line_end, bool whole);
Result<CellRule> find_cell_rule(const std::vector<std::string_view>& lines);
std::optional<Refusal> read_header(const std::vector<std::string_view>& lines, TextLayout& layout);

Refusal refuse_line(std::size_t line, std::string sentence, std::string given = "", std::string allowed = "");

} // namespace amentum
