#include "recordings/inside/text_layout.h"

#include <algorithm>
#include <span>

namespace amentum {
namespace {

using Lines = std::span<const std::string_view>;

// Share of the characters that lie in numeric cells, when the lines are cut by the rule. A line without a number is one
// of words, and says nothing: in a short file it would speak for blanks, which cut names into more pieces.
// A separator that parts no line of numbers is none: nothing is its share.
double numeric_share(Lines lines, CellRule rule) {
    double numeric = 0, all = 0;
    bool parts = rule.separator == '\0';
    for (const std::string_view line : lines) {
        const auto cells = split_cells(line, rule.separator);
        if (!cells)
            continue;
        double in_numbers = 0, in_line = 0;
        for (const auto& cell : *cells) {
            in_line += static_cast<double>(cell.size());
            in_numbers += is_number(cell, rule.mark) ? static_cast<double>(cell.size()) : 0;
        }
        numeric += in_numbers;
        all += in_numbers > 0 ? in_line : 0;
        parts = parts || (in_numbers > 0 && cells->size() > 1);
    }
    return all == 0 || !parts ? 0 : numeric / all;
}

bool any_has(Lines lines, char c) {
    return std::any_of(lines.begin(), lines.end(), [&](auto line) { return line.find(c) != line.npos; });
}

// One comma a line and nothing else that parts: columns or decimals?
Result<CellRule> settle_comma(const std::vector<std::string_view>& all, Lines last) {
    const CellRule columns{',', '.'}, decimals{'\0', ','};
    const auto names = std::find_if(all.rbegin(), all.rend(), [](std::string_view line) {
        return !trimmed(line).empty() && !is_number(trimmed(line), ',') && !is_number(trimmed(line), '.');
    });
    if (names != all.rend())
        return names->find(',') != names->npos ? columns : decimals;
    for (const std::string_view line : last) {
        const std::string_view cell = trimmed(line);
        const std::size_t comma = cell.find(',');
        const std::string_view after = comma == cell.npos ? "" : cell.substr(comma + 1);
        if (after.size() > 1 && after[0] == '0')
            return decimals;
        if (comma == cell.npos || comma == 0 || after.empty())
            return decimals;
    }
    return refuse_line(
        all.size(),
        "Each line is like \"" + shown(trimmed(all.back())) +
            "\": the comma may part two columns or stand before decimals, and no line of names tells "
            "which. Please write a line of names above, or decimal points.",
        shown(trimmed(all.back())), "a line of column names, or points as decimal marks");
}

} // namespace

Result<CellRule> find_cell_rule(const std::vector<std::string_view>& lines) {
    const Lines last = Lines(lines).last(std::min<std::size_t>(lines.size(), 100));
    CellRule best;
    double most = 0;
    for (const char separator : {'\t', ';', '|', ',', ' ', '\0'})
        for (const char mark : {'.', ','}) {
            if (separator == mark || (separator != '\0' && !any_has(last, separator)) ||
                (mark == ',' && !any_has(last, mark)))
                continue;
            const double share = numeric_share(last, {separator, mark});
            if (share > most) {
                most = share;
                best = {separator, mark};
            }
        }
    if (most == 0)
        return refuse_line(1, "The file holds no line of numbers; a force trace has one line a sample.",
                           shown(trimmed(lines.front())),
                           "numbers parted by tab, semicolon, comma, vertical bar or blanks");
    const bool lone = best.separator == '\0' && best.mark == ',' && any_has(last, ',');
    return lone ? settle_comma(lines, last) : Result<CellRule>(best);
}

} // namespace amentum
