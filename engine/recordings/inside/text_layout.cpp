#include "recordings/inside/text_layout.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::size_t rows_kept = 250;
constexpr std::size_t lines_judged =
    400; // enough for the names above and the numbers below; else all are looked at

bool is_utf16(std::string_view text) {
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF"))
        return true;
    std::size_t even = 0, odd = 0; // zero bytes of plain letters written in two bytes each
    const std::string_view start = text.substr(0, 512);
    for (std::size_t i = 0; i < start.size(); ++i)
        (i % 2 == 0 ? even : odd) += start[i] == '\0';
    return start.size() >= 4 && std::max(even, odd) * 3 > start.size() && std::min(even, odd) == 0;
}

bool strange_in_text(char c) {
    return static_cast<unsigned char>(c) < ' ' && (c < '\t' || c > '\r'); // tab, line ends, form feed
}

// CRLF counts as LF with a CR before it, which trimming takes off.
char line_end_of(std::string_view text) {
    return text.find('\n') == text.npos && text.find('\r') != text.npos ? '\r' : '\n';
}

std::vector<std::string_view> first_lines(const std::vector<std::string_view>& lines) {
    return {lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(std::min(lines.size(), lines_judged))};
}

// The last whole line has as many cells as the first ones led to: what they are is not a long preamble.
bool ends_alike(const std::vector<std::string_view>& lines, const TextLayout& layout) {
    const auto cells =
        split_cells(lines[lines.size() - std::min<std::size_t>(lines.size(), 2)], layout.rule.separator);
    return cells && cells->size() == layout.columns.size() + layout.trailing_separator;
}

} // namespace

std::string TextLayout::column_list() const {
    std::string list;
    for (std::size_t c = 0; c < columns.size() && c < 24; ++c)
        list += (c ? ", " : "") + std::to_string(c + 1) +
                (columns[c].named ? " '" + shown(columns[c].name) + "'" : " (no name)");
    return columns.size() > 24 ? list + " and " + std::to_string(columns.size() - 24) + " more" : list;
}

Refusal refuse_line(std::size_t line, std::string sentence, std::string given, std::string allowed) {
    return {RefusalCode::unreadable_file, std::move(sentence), "line " + std::to_string(line),
            std::move(given), std::move(allowed)};
}

std::optional<Refusal> check_is_text(std::string_view beginning) {
    const auto refuse = [](std::string sentence, std::string given) {
        return Refusal{RefusalCode::unreadable_file, std::move(sentence), "file", std::move(given),
                       "UTF-8 text with one line a sample, or a C3D file"};
    };
    if (is_utf16(beginning))
        return refuse("The file is written in UTF-16; save it again as UTF-8 text.", "UTF-16");
    const auto strange = std::find_if(beginning.begin(), beginning.end(), strange_in_text);
    if (strange != beginning.end())
        return refuse("The file is not text: it holds bytes that no text has.",
                      "byte " + std::to_string(static_cast<int>(*strange)) + " at position " +
                          std::to_string(strange - beginning.begin() + 1));
    if (trimmed(beginning).empty())
        return refuse("The file is empty.", std::to_string(beginning.size()) + " bytes");
    return std::nullopt;
}

std::vector<std::string_view> lines_of(std::string_view text, char line_end, bool whole) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = text.find(line_end);
        if (end == text.npos) {
            if (whole)
                lines.push_back(text);
            break;
        }
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end + 1);
    }
    while (!lines.empty() && trimmed(lines.back()).empty())
        lines.pop_back();
    return lines;
}

Result<TextLayout> find_layout(std::string_view beginning, bool whole) {
    if (auto refusal = check_is_text(beginning))
        return *refusal;
    const std::size_t mark = beginning.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
    TextLayout layout;
    layout.line_end = line_end_of(beginning);
    const auto lines = lines_of(beginning.substr(mark), layout.line_end, whole);
    if (lines.empty())
        return refuse_line(1, "The file has no line end in its first 65,536 bytes; it is no table.", "",
                           "one line a sample");
    const auto rule = find_cell_rule(lines);
    if (!rule)
        return rule.refusal();
    layout.rule = *rule;
    TextLayout by_few = layout;
    if (const auto few = first_lines(lines); !read_header(few, by_few) && ends_alike(lines, by_few))
        layout = std::move(by_few);
    else if (auto refusal = read_header(lines, layout))
        return *refusal;
    const std::string_view first = lines[layout.header_lines];
    layout.first_data_byte = static_cast<std::size_t>(first.data() - beginning.data());
    const bool cut_off =
        whole && beginning.back() != layout.line_end && lines.size() > layout.header_lines + 2;
    const std::size_t kept = std::min(lines.size() - cut_off, layout.header_lines + rows_kept);
    layout.first_rows.assign(lines.begin() + static_cast<std::ptrdiff_t>(layout.header_lines),
                             lines.begin() + static_cast<std::ptrdiff_t>(kept));
    return layout;
}

} // namespace amentum
