#include "recordings/inside/text_table.h"

#include "recordings/inside/text_number.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

std::optional<std::size_t> decimals_of(std::string_view line, const TextLayout& layout) {
    const auto cells = split_cells(line, layout.rule.separator);
    if (!cells || cells->size() < layout.columns.size())
        return std::nullopt;
    const std::string& cell = (*cells)[layout.columns.size() - 1];
    const std::size_t mark = cell.find(layout.rule.mark);
    return mark == cell.npos ? 0 : cell.size() - mark - 1;
}

std::optional<std::size_t> usual_decimals(const TextLayout& layout) {
    std::optional<std::size_t> usual;
    for (const auto& row : layout.first_rows) {
        const auto here = decimals_of(row, layout);
        if (!here || (usual && *usual != *here))
            return std::nullopt;
        usual = here;
    }
    return usual;
}

// The time first, when there is one.
std::vector<std::size_t> wanted_columns(const ChosenColumns& chosen) {
    std::vector<std::size_t> wanted;
    if (chosen.time)
        wanted.push_back(chosen.time->column);
    for (const auto* columns : {&chosen.vertical, &chosen.lateral})
        for (const auto& column : *columns)
            wanted.push_back(column.column);
    return wanted;
}

} // namespace

TextTable::TextTable(TextLayout layout, ChosenColumns chosen)
    : layout_(std::move(layout)), chosen_(std::move(chosen)),
      shapes_(layout_.rule, layout_.line_end, layout_.columns.size(), wanted_columns(chosen_)),
      line_(layout_.header_lines) {
    for (const auto* columns : {&chosen_.vertical, &chosen_.lateral})
        for (const auto& column : *columns)
            columns_.push_back(column.column);
    series_.resize(columns_.size());
    usual_decimals_ = usual_decimals(layout_);
    std::size_t bytes = 0;
    for (const auto& row : layout_.first_rows) {
        narrow_ = narrow_ && row.size() <= longest_shape - 6;
        bytes += row.size() + 1;
    }
    usual_bytes_ = std::max<std::size_t>(2, bytes / std::max<std::size_t>(1, layout_.first_rows.size()));
}

std::optional<Refusal> TextTable::take(std::string_view text, std::size_t& taken) {
    taken = 0;
    while (taken < text.size()) {
        const std::size_t plain = narrow_ ? take_narrow_lines(text, taken) : take_wide_lines(text, taken);
        taken += plain;
        if (plain > 0)
            continue;
        const std::size_t end = text.find(layout_.line_end, taken); // a line that needs care, or the rest
        if (end == text.npos)
            break;
        if (auto fault = take_line(text.substr(taken, end - taken)))
            return fault->refusal;
        taken = end + 1;
    }
    return std::nullopt;
}

std::optional<Refusal> TextTable::take_last(std::string_view line) {
    if (trimmed(line).empty())
        return std::nullopt;
    const std::size_t before = samples_;
    const auto fault = last_cell_is_short(line) ? std::optional<Fault>() : take_line(line);
    if (fault && !fault->in_last_cell)
        return fault->refusal;
    if (samples_ == before && !blank_line_)
        chosen_.notes.push_back("The last line, \"" + shown(trimmed(line)) +
                                "\", is cut off and was left out: nothing ends it.");
    return std::nullopt;
}

bool TextTable::last_cell_is_short(std::string_view line) const {
    const auto here = decimals_of(line, layout_);
    return usual_decimals_ && here && *here < *usual_decimals_;
}

} // namespace amentum
