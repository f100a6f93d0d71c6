#include "records/inside/file_layout.h"

#include "values/nearest_name.h"

#include <algorithm>
#include <cctype>

namespace amentum {
namespace {

std::string line_of(const CsvTable& table) {
    return "line " + std::to_string(table.header_line);
}

std::optional<FileColumn> column_named(const KnownColumns& known, const std::string& name) {
    for (const auto& column : *known.columns) {
        const auto units = units_of(column.holds);
        const auto names = header_names(column);
        const auto found = std::find(names.begin(), names.end(), lower_case(name));
        if (found == names.end())
            continue;
        const auto place = static_cast<std::size_t>(found - names.begin());
        return FileColumn{&column, units.empty() ? nullptr : &units[place % units.size()], name};
    }
    return std::nullopt;
}

Refusal refuse_column(const KnownColumns& known, const CsvTable& table, const std::string& given) {
    std::vector<std::string> names;
    for (const auto& column : *known.columns)
        for (auto& name : header_names(column))
            names.push_back(std::move(name));
    std::string sentence = "A file of " + known.file_of + " has no column \"" + given + "\".";
    if (const RecordColumn* bare = find_column(*known.columns, lower_case(given));
        bare && !units_of(bare->holds).empty())
        sentence += " Its unit belongs into its name: \"" + header_names(*bare).front() + "\".";
    else if (const auto near = nearest_name(given, names))
        sentence += " Did you mean \"" + *near + "\"?";
    std::string allowed;
    for (const auto& column : *known.columns)
        allowed += (allowed.empty() ? "" : ", ") + header_names(column).front();
    return {RefusalCode::unknown_field, sentence, line_of(table), given, allowed};
}

std::vector<Refusal> check_columns(const KnownColumns& known, const CsvTable& table,
                                   const FileLayout& layout) {
    std::vector<Refusal> refusals;
    for (const auto& column : *known.columns) {
        const bool there = std::any_of(layout.columns.begin(), layout.columns.end(),
                                       [&](const FileColumn& each) { return each.column == &column; });
        if (there || column.need == Need::optional)
            continue;
        refusals.push_back({RefusalCode::missing_field,
                            "The column \"" + column.name + "\" is missing: " + column.meaning + ".",
                            line_of(table), "", column.meaning});
    }
    return refusals;
}

// Only quantities may have several columns, one for each unit.
std::vector<Refusal> check_doubles(const CsvTable& table, const FileLayout& layout) {
    std::vector<Refusal> refusals;
    for (std::size_t i = 0; i < layout.columns.size(); ++i)
        for (std::size_t j = i + 1; j < layout.columns.size(); ++j) {
            const auto &one = layout.columns[i], &two = layout.columns[j];
            if (!one.column || one.column != two.column || one.unit)
                continue;
            refusals.push_back(
                {RefusalCode::unreadable_file,
                 "The columns \"" + one.name + "\" and \"" + two.name + "\" are the same one; keep one.",
                 line_of(table), one.name + ", " + two.name, "one of them"});
        }
    return refusals;
}

std::optional<DecimalMark> stated_mark(const CsvTable& table) {
    for (const auto& comment : table.comments) {
        if (lower_case(comment) == "decimal comma")
            return DecimalMark::comma;
        if (lower_case(comment) == "decimal point")
            return DecimalMark::point;
    }
    return std::nullopt;
}

// 1,234 or 12,345,678: the comma may divide thousands. 0,125 is not written so, nor 97,5.
bool may_be_thousands(const std::string& number) {
    const std::size_t sign = number.starts_with('-') || number.starts_with('+') ? 1 : 0;
    const std::size_t first = number.find(',');
    if (first == std::string::npos || first - sign > 3 || first == sign || number[sign] == '0')
        return false;
    for (std::size_t comma = first; comma != std::string::npos;) {
        const std::size_t next = number.find(',', comma + 1);
        if (std::min(next, number.size()) - comma != 4)
            return false;
        comma = next;
    }
    return true;
}

// The rule of parse_records.h, for files that do not state their mark.
void infer_mark(const CsvTable& table, FileLayout& layout) {
    bool commas = false, points = false, certain = false;
    for (const auto& row : table.rows)
        for (std::size_t i = 0; i < layout.columns.size(); ++i) {
            if (!layout.columns[i].column || !holds_number(layout.columns[i].column->holds))
                continue;
            const std::string number = trimmed(row.fields[i]);
            points |= number.find('.') != std::string::npos;
            if (number.find(',') == std::string::npos)
                continue;
            commas = true;
            certain |= !may_be_thousands(number);
        }
    const bool comma_marks = table.separator == ';' && commas && !points && certain;
    layout.mark = comma_marks ? DecimalMark::comma : DecimalMark::point;
    layout.commas_are_unclear = commas && !comma_marks;
}

} // namespace

std::string trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos)
        return "";
    return std::string(text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1));
}

std::string lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower)
        if (static_cast<unsigned char>(c) < 128)
            c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return lower;
}

LayoutOrRefusals parse_layout(const KnownColumns& known, const CsvTable& table) {
    LayoutOrRefusals parsed{{known.columns, {}}, {}};
    for (const auto& name : table.header) {
        const auto column = column_named(known, name);
        if (!column)
            parsed.refusals.push_back(refuse_column(known, table, name));
        parsed.layout.columns.push_back(column.value_or(FileColumn{nullptr, nullptr, name}));
    }
    for (auto& refusal : check_columns(known, table, parsed.layout))
        parsed.refusals.push_back(std::move(refusal));
    for (auto& refusal : check_doubles(table, parsed.layout))
        parsed.refusals.push_back(std::move(refusal));
    if (const auto mark = stated_mark(table))
        parsed.layout.mark = *mark;
    else
        infer_mark(table, parsed.layout);
    return parsed;
}

} // namespace amentum
