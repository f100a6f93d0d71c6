#include "recordings/inside/text_number.h"
#include "recordings/inside/text_table.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {

TextTable::Fault TextTable::fault_in(std::size_t column, RefusalCode code, std::string sentence,
                                     const std::string& given, std::string allowed) const {
    return {{code, std::move(sentence),
             "line " + std::to_string(line_ + 1) + ", column " + std::to_string(column + 1), given,
             std::move(allowed)},
            column + 1 == layout_.columns.size()};
}

// A line that is not plain: blank, with another number of cells, with quotes or blanks, or wrong.
std::optional<TextTable::Fault> TextTable::take_line(std::string_view line) {
    if (line.size() > longest_line)
        return Fault{refuse_long_line(), false};
    const auto cells = split_cells(line, layout_.rule.separator);
    if (!cells)
        return Fault{refuse_line(line_ + 1, "A quote is not closed on its line.", shown(trimmed(line)),
                                 "\"quoted cells\", closed on the same line"),
                     true};
    const bool blank =
        std::all_of(cells->begin(), cells->end(), [](const auto& cell) { return cell.empty(); });
    if (blank) {
        blank_line_ = blank_line_.value_or(line_ + 1);
        ++line_;
        return std::nullopt;
    }
    if (blank_line_)
        return Fault{refuse_line(*blank_line_, "The line is blank, but numbers or text follow it.", "",
                                 "blank lines at the end only"),
                     false};
    if (auto fault = check_cells(*cells))
        return fault;
    if (samples_ == most_samples)
        return Fault{{RefusalCode::out_of_range,
                      "The file has more than " + with_thousands(static_cast<double>(most_samples)) +
                          " samples, 35 minutes at 2,000 Hz. Please cut it to one trial.",
                      "line " + std::to_string(line_ + 1),
                      "more than " + with_thousands(static_cast<double>(most_samples)) + " samples",
                      "at most " + with_thousands(static_cast<double>(most_samples)) + " samples"},
                     false};
    if (auto fault = take_cells(*cells))
        return fault;
    ++line_;
    return std::nullopt;
}

Refusal TextTable::refuse_long_line() const {
    return refuse_line(line_ + 1,
                       "The line is longer than 65,536 bytes; a force trace has one short line a sample.",
                       "more than 65,536 bytes without a line end", "at most 65,536 bytes a line");
}

std::optional<TextTable::Fault> TextTable::check_cells(const std::vector<std::string>& cells) const {
    const std::size_t columns = layout_.columns.size();
    if (cells.size() == columns || (cells.size() == columns + 1 && cells.back().empty()))
        return std::nullopt;
    return Fault{refuse_line(line_ + 1,
                             "The line has " + std::to_string(cells.size()) +
                                 (cells.size() == 1 ? " cell" : " cells") + ", the lines of numbers have " +
                                 std::to_string(columns) + ".",
                             std::to_string(cells.size()) + (cells.size() == 1 ? " cell" : " cells"),
                             std::to_string(columns) + (columns == 1 ? " cell" : " cells")),
                 cells.size() < columns};
}

std::optional<TextTable::Fault> TextTable::take_cells(const std::vector<std::string>& cells) {
    const char mark = layout_.rule.mark;
    std::vector<float> samples;
    for (const std::size_t column : columns_) {
        const auto sample = parse_sample(cells[column], mark);
        if (!sample && layout_.columns[column].named && cells[column] == layout_.columns[column].name)
            return Fault{refuse_line(line_ + 1, "The line of column names stands again among the numbers.",
                                     shown(cells[column]), "one trial a file, with one line of names"),
                         false};
        if (!sample)
            return fault_in(column, RefusalCode::unreadable_file,
                            cells[column].empty()
                                ? "The cell is empty where a force belongs."
                                : "The cell holds \"" + shown(cells[column]) + "\" where a force belongs.",
                            shown(cells[column]),
                            std::string("a number with decimal ") + (mark == ',' ? "comma" : "point"));
        samples.push_back(*sample);
    }
    if (chosen_.time)
        if (auto fault = take_time(cells[chosen_.time->column]))
            return fault;
    for (std::size_t s = 0; s < samples.size(); ++s)
        series_[s].push_back(samples[s]);
    ++samples_;
    return std::nullopt;
}

std::optional<TextTable::Fault> TextTable::take_time(const std::string& cell) {
    const TimeColumn& time = *chosen_.time;
    const auto now = parse_time(cell, layout_.rule.mark);
    if (!now)
        return fault_in(time.column, RefusalCode::unreadable_file,
                        "The cell holds \"" + shown(cell) + "\" where a time belongs.", shown(cell),
                        "a number of seconds or milliseconds");
    if (samples_ > 0 && !is_even_step(*now - last_time_, time.step, allowed_off(time.step, time.quantum))) {
        const std::string unit = time.seconds == 1 ? " s" : " ms";
        return fault_in(time.column, RefusalCode::wrong_rate,
                        "The times are not even: from the line before, the time moves by " +
                            format_shortest(*now - last_time_) + unit + ", but elsewhere by " +
                            format_shortest(time.step) + unit + ".",
                        shown(cell), "equal steps of about " + format_shortest(time.step) + unit);
    }
    first_time_ = samples_ == 0 ? *now : first_time_;
    last_time_ = *now;
    return std::nullopt;
}

} // namespace amentum
