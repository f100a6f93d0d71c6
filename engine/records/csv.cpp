#include "records/csv.h"

#include <algorithm>
#include <csv.h>
#include <memory>
#include <set>

namespace amentum {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

Refusal refuse_text(int line, std::string sentence, std::string given = "", std::string allowed = "") {
    return {RefusalCode::unreadable_file, std::move(sentence), "line " + std::to_string(line),
            std::move(given), std::move(allowed)};
}

// Bytes of the UTF-8 sequence that begins the text, by the well-formed ranges of [Unicode15, table 3-7]; 0
// when ill formed.
std::size_t sequence_length(std::string_view text) {
    auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u; };
    auto between = [&](std::size_t i, unsigned low, unsigned high) {
        return byte(i) >= low && byte(i) <= high;
    };
    auto tail = [&](std::size_t i) { return between(i, 0x80, 0xBF); };
    unsigned lead = byte(0);
    if (lead < 0x80)
        return 1;
    if (lead >= 0xC2 && lead <= 0xDF)
        return tail(1) ? 2 : 0;
    if (lead >= 0xE0 && lead <= 0xEF) {
        unsigned low = lead == 0xE0 ? 0xA0 : 0x80;
        unsigned high = lead == 0xED ? 0x9F : 0xBF;
        return between(1, low, high) && tail(2) ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        unsigned low = lead == 0xF0 ? 0x90 : 0x80;
        unsigned high = lead == 0xF4 ? 0x8F : 0xBF;
        return between(1, low, high) && tail(2) && tail(3) ? 4 : 0;
    }
    return 0;
}

std::optional<Refusal> check_bytes(std::string_view text) {
    int line = 1;
    for (std::size_t at = 0; at < text.size();) {
        if (text[at] == '\0')
            return refuse_text(line, "The file holds a zero byte; it is not a text file.");
        std::size_t length = sequence_length(text.substr(at));
        if (length == 0)
            return refuse_text(line, "The file is not in UTF-8; save it again as \"CSV UTF-8\".", "",
                               "UTF-8 text");
        if (text[at] == '\n')
            ++line;
        at += length;
    }
    return std::nullopt;
}

// The next line of the file with its ending, or all that is left.
std::string_view physical_line(std::string_view text) {
    std::size_t end = text.find_first_of("\r\n");
    if (end == std::string_view::npos)
        return text;
    if (text[end] == '\r' && end + 1 < text.size() && text[end + 1] == '\n')
        ++end;
    return text.substr(0, end + 1);
}

std::string_view trimmed(std::string_view text) {
    std::size_t first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

char sniff_separator(std::string_view header_line) {
    int commas = 0, semicolons = 0;
    bool quoted = false;
    for (char c : header_line) {
        if (c == '"')
            quoted = !quoted;
        if (!quoted && c == ',')
            ++commas;
        if (!quoted && c == ';')
            ++semicolons;
    }
    return semicolons > commas ? ';' : ',';
}

// What libcsv calls back into.
struct RowsInTheMaking {
    std::vector<CsvRow> rows;
    std::vector<std::string> fields;
    int first_line = 0;
    bool open = false; // a record has begun and not ended
};

void take_field(void* text, std::size_t length, void* making) {
    static_cast<RowsInTheMaking*>(making)->fields.emplace_back(static_cast<const char*>(text), length);
}

void take_row(int, void* making) {
    auto* m = static_cast<RowsInTheMaking*>(making);
    m->rows.push_back({m->first_line, std::move(m->fields)});
    m->fields.clear();
    m->open = false;
}

// All records of the text, the first of which is the header. Line by line, so that each row knows its line.
Result<std::vector<CsvRow>> records_of(std::string_view text, int line, char separator) {
    csv_parser parser;
    csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI);
    std::unique_ptr<csv_parser, decltype(&csv_free)> freed_at_the_end(&parser, &csv_free);
    csv_set_delim(&parser, static_cast<unsigned char>(separator));
    csv_set_space_func(&parser, [](unsigned char) { return 0; }); // spaces belong to the field [Rfc4180, 2.4]
    RowsInTheMaking making;
    auto refuse_quotes = [&] {
        return refuse_text(
            making.first_line,
            "The quotes do not match: a field with a quote in it is quoted whole, and the quote doubled.", "",
            "\"6 \"\"lb\"\" ball\" for 6 \"lb\" ball");
    };
    for (; !text.empty(); ++line) {
        std::string_view physical = physical_line(text);
        if (!making.open)
            making.first_line = line;
        making.open = true;
        if (csv_parse(&parser, physical.data(), physical.size(), take_field, take_row, &making) !=
            physical.size())
            return refuse_quotes();
        if (making.fields.empty() && trimmed(physical).empty())
            making.open = false; // a blank line
        text.remove_prefix(physical.size());
    }
    if (csv_fini(&parser, take_field, take_row, &making) != 0)
        return refuse_quotes();
    return std::move(making.rows);
}

std::optional<Refusal> check_header(const CsvTable& table) {
    std::set<std::string> seen;
    for (const std::string& name : table.header) {
        if (name.empty())
            return refuse_text(table.header_line,
                               "A column has no name; every column needs one in the header line.");
        if (!seen.insert(name).second)
            return refuse_text(table.header_line,
                               "The column \"" + name + "\" stands twice in the header line.", name);
    }
    return std::nullopt;
}

bool is_empty(const CsvRow& row) {
    return std::all_of(row.fields.begin(), row.fields.end(),
                       [](const auto& f) { return trimmed(f).empty(); });
}

} // namespace

std::optional<std::size_t> CsvTable::column(std::string_view name) const {
    auto found = std::find(header.begin(), header.end(), name);
    if (found == header.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - header.begin());
}

Result<CsvTable> parse_csv(std::string_view text) {
    if (text.starts_with(byte_order_mark))
        text.remove_prefix(byte_order_mark.size());
    if (auto refusal = check_bytes(text))
        return *refusal;

    CsvTable table;
    int line = 1;
    for (; !text.empty(); ++line) {
        std::string_view physical = physical_line(text);
        std::string_view content = trimmed(physical);
        if (!content.empty() && content.front() != '#')
            break;
        if (!content.empty())
            table.comments.emplace_back(trimmed(content.substr(1)));
        text.remove_prefix(physical.size());
    }
    if (text.empty())
        return refuse_text(line, "The file has no header line.", "", "a line of column names first");

    table.separator = sniff_separator(physical_line(text));
    auto records = records_of(text, line, table.separator);
    if (!records)
        return records.refusal();
    table.header_line = records->front().line;
    for (const std::string& name : records->front().fields)
        table.header.emplace_back(trimmed(name));
    if (auto refusal = check_header(table))
        return *refusal;

    for (auto row = records->begin() + 1; row != records->end(); ++row) {
        if (is_empty(*row))
            continue;
        if (row->fields.size() != table.header.size())
            return refuse_text(row->line, "The line has more or fewer fields than the header line.",
                               std::to_string(row->fields.size()) + " fields",
                               std::to_string(table.header.size()) + " fields");
        table.rows.push_back(*row);
    }
    return table;
}

std::string write_csv_line(std::span<const std::string> fields, char separator) {
    std::string out;
    bool only_one = fields.size() == 1;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const std::string& field = fields[i];
        bool quoted = field.find_first_of("\"\r\n,;") != std::string::npos ||
                      (only_one && trimmed(field).empty()) ||
                      (!field.empty() && (field.front() == ' ' || field.back() == ' ')) ||
                      (i == 0 && field.starts_with('#'));
        if (i > 0)
            out += separator;
        if (quoted)
            out += '"';
        for (char c : field)
            out += c == '"' ? std::string("\"\"") : std::string(1, c);
        if (quoted)
            out += '"';
    }
    return out + "\r\n";
}

} // namespace amentum
