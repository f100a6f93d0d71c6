#include "recordings/inside/text_layout.h"
#include "recordings/inside/text_number.h"
#include "recordings/inside/text_units.h"

#include <algorithm>
#include <map>

namespace amentum {
namespace {

constexpr std::size_t most_columns = 512;

using Row = std::optional<std::vector<std::string>>;
using Rows = std::vector<Row>;

std::size_t first_judged(const Rows& rows) {
    return rows.size() - std::min<std::size_t>(rows.size(), 100);
}

std::size_t numbers_in(const Row& row, char mark) {
    return !row ? 0 : static_cast<std::size_t>(std::count_if(row->begin(), row->end(), [&](const auto& cell) {
        return is_number(cell, mark);
    }));
}

// How many cells the lines of numbers have: the count that most of the last hundred share.
std::size_t usual_cells(const Rows& rows, char mark) {
    std::map<std::size_t, std::size_t> lines;
    for (std::size_t i = first_judged(rows); i < rows.size(); ++i)
        if (numbers_in(rows[i], mark) > 0)
            ++lines[rows[i]->size()];
    const auto most = std::max_element(lines.begin(), lines.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == lines.end() ? 0 : most->first;
}

// A column is numeric when at least half of the last hundred lines are; a last one always empty is none.
void find_columns(const Rows& rows, TextLayout& layout) {
    const char mark = layout.rule.mark;
    const std::size_t cells = usual_cells(rows, mark);
    std::vector<std::size_t> numeric(cells), filled(cells);
    std::size_t lines = 0;
    for (std::size_t i = first_judged(rows); i < rows.size(); ++i) {
        if (numbers_in(rows[i], mark) == 0 || rows[i]->size() != cells)
            continue;
        ++lines;
        for (std::size_t c = 0; c < cells; ++c) {
            numeric[c] += is_number((*rows[i])[c], mark);
            filled[c] += !(*rows[i])[c].empty();
        }
    }
    layout.trailing_separator = cells > 1 && filled.back() == 0;
    layout.columns.resize(cells - layout.trailing_separator);
    for (std::size_t c = 0; c < layout.columns.size(); ++c)
        layout.columns[c].numeric = 2 * numeric[c] >= lines;
}

bool says_missing(const std::string& cell) {
    const std::string lower = in_lower_case(cell);
    return lower == "nan" || lower == "inf" || lower == "-inf" || lower == "n/a" || lower == "#n/a" ||
           lower == "-";
}

bool has_all_cells(const Row& row, const TextLayout& layout) {
    const std::size_t columns = layout.columns.size();
    return row && (row->size() == columns || (row->size() == columns + 1 && row->back().empty()));
}

enum class RowKind { header, spoilt, numbers };

// A line of numbers, one with a fault in it (which must not pass for a header), or neither.
RowKind kind_of(const Row& row, const TextLayout& layout) {
    if (!has_all_cells(row, layout))
        return RowKind::header;
    bool all = true, begins = false, missing = false, first = true;
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        if (!layout.columns[c].numeric)
            continue;
        const bool number = is_number((*row)[c], layout.rule.mark);
        begins = first ? number : begins;
        first = false;
        all = all && number;
        missing = missing || says_missing((*row)[c]);
    }
    return all ? RowKind::numbers : begins || missing ? RowKind::spoilt : RowKind::header;
}

std::size_t next_numbers(const Rows& rows, const TextLayout& layout, std::size_t from) {
    while (from < rows.size() && kind_of(rows[from], layout) != RowKind::numbers)
        ++from;
    return from;
}

bool names_columns(const Row& row, const TextLayout& layout) {
    return has_all_cells(row, layout) && numbers_in(row, layout.rule.mark) == 0;
}

// The first line of numbers, or the faulty ones right above it; a line of numbers above the names belongs to the
// header.
std::size_t find_first_numbers(const Rows& rows, const TextLayout& layout) {
    std::size_t first = next_numbers(rows, layout, 0);
    const auto names = [&](const Row& row) { return names_columns(row, layout); };
    const bool named = std::any_of(rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(first), names);
    if (!named && first + 1 < rows.size() && names(rows[first + 1])) {
        const std::size_t later = next_numbers(rows, layout, first + 1);
        first = later <= first + 3 && later < rows.size() ? later : first;
    }
    while (first > 0 && kind_of(rows[first - 1], layout) == RowKind::spoilt)
        --first;
    return first;
}

// "Sampling rate: 1000 Hz", "Frequency (Hz);1000", "1000 Hz"; never a filter's frequency.
std::optional<double> rate_in(const std::string& line, char mark) {
    const auto words = words_in(line);
    const auto any_begins = [&](std::initializer_list<std::string_view> beginnings) {
        return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
            return std::any_of(beginnings.begin(), beginnings.end(),
                               [&](auto beginning) { return word.starts_with(beginning); });
        });
    };
    if (any_begins({"filter", "cut", "low", "high", "band", "notch", "heart", "development"}))
        return std::nullopt;
    std::optional<double> number;
    std::string cell;
    for (const char c : line + " ") {
        if ((c >= '0' && c <= '9') || c == '.' || c == mark) {
            cell += c;
            continue;
        }
        while (!cell.empty() && (cell.back() == '.' || cell.back() == ','))
            cell.pop_back();
        if (const auto value = parse_time(cell, mark); value && number)
            return std::nullopt; // two numbers: which is the rate?
        else if (value)
            number = value;
        cell.clear();
    }
    const bool bare = words.size() == 2 && words[1] == "hz";
    if (!number || !(bare || any_begins({"rate", "samplerate", "samplingrate", "freq", "samplingfreq"})))
        return std::nullopt;
    return *number * (in_lower_case(line).find("khz") != line.npos ? 1000 : 1);
}

std::optional<Refusal> find_rate(const std::vector<std::string_view>& lines, TextLayout& layout) {
    for (std::size_t i = 0; i < layout.header_lines; ++i) {
        const auto rate = rate_in(std::string(lines[i]), layout.rule.mark);
        if (!rate)
            continue;
        const std::string place = "line " + std::to_string(i + 1);
        if (layout.header_rate && *layout.header_rate != *rate)
            return Refusal{RefusalCode::wrong_rate,
                           "The header gives two rates: " + with_thousands(*layout.header_rate) + " Hz in " +
                               layout.header_rate_line + " and " + with_thousands(*rate) + " Hz in " + place +
                               ".",
                           place, with_thousands(*rate) + " Hz", "one rate"};
        layout.header_rate = rate;
        layout.header_rate_line = place;
    }
    return std::nullopt;
}

// The nearest line above the numbers with a cell for each column; a line of units alone is looked at as such.
void name_columns(const Rows& rows, TextLayout& layout) {
    std::size_t above = layout.header_lines;
    const auto next_above = [&]() -> const Row* {
        while (above > 0)
            if (names_columns(rows[--above], layout))
                return &rows[above];
        return nullptr;
    };
    const Row* names = next_above();
    if (names && std::all_of((*names)->begin(), (*names)->end(),
                             [](const auto& cell) { return cell.empty() || is_unit(cell); })) {
        for (std::size_t c = 0; c < layout.columns.size(); ++c)
            layout.columns[c].unit = bare_unit((**names)[c]);
        names = next_above();
    }
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        TextColumn& column = layout.columns[c];
        column.named = names && !(**names)[c].empty();
        column.name = column.named ? (**names)[c] : "column " + std::to_string(c + 1);
        if (column.unit.empty() && column.named)
            column.unit = unit_in_name(column.name);
    }
}

} // namespace

std::optional<Refusal> read_header(const std::vector<std::string_view>& lines, TextLayout& layout) {
    Rows rows;
    for (const std::string_view line : lines)
        rows.push_back(split_cells(line, layout.rule.separator));
    find_columns(rows, layout);
    layout.header_lines = find_first_numbers(rows, layout);
    if (layout.header_lines == rows.size())
        return refuse_line(rows.size(), "No line is numeric in every column that is mostly numeric.", "",
                           "one line of numbers a sample");
    if (layout.columns.size() > most_columns)
        return refuse_line(layout.header_lines + 1,
                           "The line has " + with_thousands(static_cast<double>(layout.columns.size())) +
                               " columns.",
                           std::to_string(layout.columns.size()), "at most " + std::to_string(most_columns));
    for (std::size_t i = 0; i < layout.header_lines; ++i)
        if (!is_utf8(lines[i]))
            return refuse_line(i + 1, "The header line is not in UTF-8; save the file again as UTF-8 text.",
                               shown(lines[i]), "UTF-8 text");
    name_columns(rows, layout);
    return find_rate(lines, layout);
}

} // namespace amentum
