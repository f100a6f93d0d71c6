#include "recordings/inside/text_shapes.h"

#include <algorithm>

namespace amentum {
namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

std::string_view without_blanks(std::string_view cell) {
    while (!cell.empty() && cell.front() == ' ')
        cell.remove_prefix(1);
    while (!cell.empty() && cell.back() == ' ')
        cell.remove_suffix(1);
    return cell;
}

// Quotes right around the whole cell come off; any other quote needs more care than a shape gives.
bool take_quotes_off(std::string_view& cell) {
    if (cell.size() >= 2 && cell.front() == '"' && cell.back() == '"')
        cell = without_blanks(cell.substr(1, cell.size() - 2));
    return cell.find('"') == cell.npos;
}

TwoWords bytes_from_to(std::size_t from, std::size_t to) {
    TwoWords word = 0;
    for (std::size_t i = from; i < to; ++i)
        word |= TwoWords{0x0F} << (8 * i);
    return word;
}

// Digits with at most one mark and a minus; anything else is read with care each time.
WantedCell describe_cell(const char* line, std::string_view cell, char mark) {
    WantedCell wanted{};
    wanted.kind = CellKind::any_cell;
    wanted.begin = static_cast<std::uint8_t>(cell.data() - line);
    wanted.end = static_cast<std::uint8_t>(wanted.begin + cell.size());
    const bool negative = cell.front() == '-';
    cell.remove_prefix(negative);
    const std::size_t at = cell.find(mark);
    const auto others = std::count_if(cell.begin(), cell.end(), [](char c) { return !is_digit(c); });
    const bool marked = at != cell.npos;
    if (others != marked || cell.size() == static_cast<std::size_t>(marked))
        return wanted;
    if (cell.size() > 64 || (cell.size() > 16 && (!marked || at >= 16)))
        return wanted;
    wanted.kind = cell.size() <= 8    ? CellKind::short_cell
                  : cell.size() <= 16 ? CellKind::wide_cell
                                      : CellKind::cut_cell;
    const std::size_t used = std::min<std::size_t>(cell.size(), 16);
    const std::size_t first = 16 - used; // byte of the word in which the cell begins
    wanted.read_end = static_cast<std::uint8_t>(cell.data() - line + static_cast<std::ptrdiff_t>(used));
    const std::size_t mark_byte =
        marked ? first + at : first; // without a mark all digits stay where they are
    wanted.below = bytes_from_to(first, mark_byte);
    wanted.above = bytes_from_to(marked ? mark_byte + 1 : first, 16);
    wanted.divisor = ten_to_the[(marked ? used - at - 1 : 0) + (negative ? 16 : 0)];
    return wanted;
}

} // namespace

bool read_longer(const char* line, const WantedCell& cell, char mark, float& sample) {
    if (cell.kind == CellKind::any_cell)
        return read_sample(line + cell.begin, line + cell.end, mark, sample);
    const std::uint64_t digits = digits_of<TwoWords>(line, cell);
    const double near = over(digits, cell);
    sample = static_cast<float>(near);
    if (!halfway_between_floats(near)) {
        if (cell.kind == CellKind::wide_cell)
            return true;
        const double beyond = over(digits + 1, cell);
        if (static_cast<float>(beyond) == sample && !halfway_between_floats(beyond))
            return true;
    }
    return read_sample(line + cell.begin, line + cell.end, mark, sample);
}

bool read_longer(const char* line, const WantedCell& cell, char mark, double& time) {
    if (cell.kind == CellKind::any_cell)
        return read_time(line + cell.begin, line + cell.end, mark, time);
    time = over(digits_of<TwoWords>(line, cell), cell);
    return true;
}

bool LineShapes::find_cells(std::string_view line, std::vector<std::string_view>& cells) const {
    if (rule_.separator == '\0') {
        cells.push_back(without_blanks(line));
        return take_quotes_off(cells.back());
    }
    while (true) {
        if (rule_.separator == ' ')
            line = without_blanks(line);
        const std::size_t end = std::min(line.find(rule_.separator), line.size());
        cells.push_back(without_blanks(line.substr(0, end)));
        if (!take_quotes_off(cells.back()))
            return false;
        if (end == line.size())
            return true;
        line.remove_prefix(end + 1);
    }
}

bool LineShapes::learn(const char* line, std::uint64_t places, LineShape& shape) const {
    const auto length = static_cast<std::size_t>(63 - std::countl_zero(places));
    std::string_view text(line, length);
    if (line_end_ == '\n' && text.ends_with('\r'))
        text.remove_suffix(1);
    std::vector<std::string_view> cells;
    if (!find_cells(text, cells) ||
        !(cells.size() == columns_ || (cells.size() == columns_ + 1 && cells.back().empty())))
        return false;
    LineShape made;
    for (std::size_t w = 0; w < wanted_.size(); ++w) {
        const std::string_view cell = cells[wanted_[w]];
        if (cell.empty() || cell.find_first_not_of("0123456789.,+-eE") != cell.npos)
            return false;
        made.wanted[w] = describe_cell(line, cell, rule_.mark);
    }
    made.places = places;
    made.words = length / 8 + 1;
    for (std::size_t i = 0; i <= length; ++i)
        if (places >> i & 1) {
            made.mask[i / 8] |= std::uint64_t{0xFF} << (8 * (i % 8));
            made.value[i / 8] |= static_cast<std::uint64_t>(static_cast<unsigned char>(line[i]))
                                 << (8 * (i % 8));
        }
    shape = made;
    return true;
}

} // namespace amentum
