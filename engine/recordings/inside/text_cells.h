// The cells of one line of delimited text.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

// How the cells of a line are told apart. '\0': the whole line is one cell; ' ': by runs of blanks and tabs.
struct CellRule {
    char separator = '\0';
    char mark = '.'; // decimal
};

// Trimmed, quotes taken off; an empty line has no cells. Nothing when a quote is not closed on its line.
std::optional<std::vector<std::string>> split_cells(std::string_view line, char separator);

std::string_view trimmed(std::string_view text);
std::string in_lower_case(std::string_view text);
bool is_number(std::string_view cell, char mark);
bool is_utf8(std::string_view text);

// The words of a name in lower case: "LeftFz (N)" is left, fz, n.
std::vector<std::string> words_in(std::string_view name);

// A cell to be shown in a refusal: at most 40 characters, nothing that is not printable.
std::string shown(std::string_view cell);

// 1000000 is "1,000,000"; 450.5 is "450.5".
std::string with_thousands(double x);

} // namespace amentum
