#include "recordings/inside/text_cells.h"

#include "recordings/inside/text_number.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr std::string_view blanks = " \t\r\f\v";

// Bytes of the UTF-8 sequence that begins the text; 0 when ill formed [Unicode15, table 3-7].
std::size_t sequence_length(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
    };
    const auto tail = [&](std::size_t i) { return byte(i) >= 0x80 && byte(i) <= 0xBF; };
    const unsigned lead = byte(0);
    if (lead < 0x80)
        return 1;
    if (lead >= 0xC2 && lead <= 0xDF)
        return tail(1) ? 2 : 0;
    if (lead >= 0xE0 && lead <= 0xEF) {
        const bool first =
            byte(1) >= (lead == 0xE0 ? 0xA0u : 0x80u) && byte(1) <= (lead == 0xED ? 0x9Fu : 0xBFu);
        return first && tail(2) ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        const bool first =
            byte(1) >= (lead == 0xF0 ? 0x90u : 0x80u) && byte(1) <= (lead == 0xF4 ? 0x8Fu : 0xBFu);
        return first && tail(2) && tail(3) ? 4 : 0;
    }
    return 0;
}

// Takes one cell off the front of the line; false when its quote is never closed.
bool take_cell(std::string_view& line, char separator, std::string& cell) {
    cell.clear();
    line.remove_prefix(std::min(line.find_first_not_of(separator == '\t' ? " " : " \t"), line.size()));
    if (line.starts_with('"')) {
        for (std::size_t at = 1; at < line.size(); ++at) {
            if (line[at] != '"')
                cell += line[at];
            else if (at + 1 < line.size() && line[at + 1] == '"')
                cell += line[at++];
            else {
                line.remove_prefix(at + 1);
                cell = trimmed(cell);
                const std::string_view rest = trimmed(line.substr(0, line.find(separator)));
                return rest.empty() ||
                       separator == ' '; // nothing may stand between the quote and the next cell
            }
        }
        return false;
    }
    const std::size_t end =
        std::min(separator == ' ' ? line.find_first_of(" \t") : line.find(separator), line.size());
    cell = trimmed(line.substr(0, end));
    line.remove_prefix(end);
    return true;
}

} // namespace

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::string in_lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

bool is_number(std::string_view cell, char mark) {
    return parse_sample(cell, mark).has_value();
}

bool is_utf8(std::string_view text) {
    while (!text.empty()) {
        const std::size_t length = sequence_length(text);
        if (length == 0)
            return false;
        text.remove_prefix(length);
    }
    return true;
}

std::optional<std::vector<std::string>> split_cells(std::string_view line, char separator) {
    std::vector<std::string> cells;
    if (trimmed(line).empty() && (separator == ' ' || separator == '\0' || line.find(separator) == line.npos))
        return cells;
    if (separator == '\0') {
        const std::string_view whole = trimmed(line);
        const bool quoted = whole.size() > 1 && whole.front() == '"' && whole.back() == '"';
        cells.emplace_back(quoted ? trimmed(whole.substr(1, whole.size() - 2)) : whole);
        return cells;
    }
    if (separator == ' ')
        line = trimmed(line);
    for (bool more = true; more;) {
        std::string cell;
        if (!take_cell(line, separator, cell))
            return std::nullopt;
        cells.push_back(std::move(cell));
        const std::size_t next = separator == ' ' ? line.find_first_not_of(" \t") : line.find(separator);
        more = next != line.npos;
        if (more)
            line.remove_prefix(next + (separator != ' '));
    }
    return cells;
}

std::vector<std::string> words_in(std::string_view name) {
    std::vector<std::string> words(1);
    bool after_small = false;
    for (const char c : name) {
        const bool small = c >= 'a' && c <= 'z', capital = c >= 'A' && c <= 'Z';
        const bool letter =
            small || capital || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
        if ((!letter || (capital && after_small)) && !words.back().empty())
            words.emplace_back();
        if (letter)
            words.back() += in_lower_case({&c, 1});
        after_small = small;
    }
    if (words.back().empty())
        words.pop_back();
    return words;
}

std::string shown(std::string_view cell) {
    constexpr std::size_t most = 40;
    std::string text;
    while (!cell.empty() && text.size() < most) {
        const std::size_t length = sequence_length(cell);
        const bool printable = length > 1 || (length == 1 && cell[0] >= ' ' && cell[0] != '\x7F');
        text += printable ? std::string(cell.substr(0, length)) : "?";
        cell.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return cell.empty() ? text : text + "...";
}

std::string with_thousands(double x) {
    std::string text = format_shortest(x);
    const std::size_t whole = std::min(text.find('.'), text.size());
    for (std::size_t at = whole; at > 3 + (text[0] == '-'); at -= 3)
        text.insert(at - 3, ",");
    return text;
}

} // namespace amentum
