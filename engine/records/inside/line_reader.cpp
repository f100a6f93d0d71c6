#include "records/inside/line_reader.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

Refusal refuse_number(const FileColumn& column, const std::string& given, const FileLayout& layout) {
    const std::string start = column.name + " is \"" + given + "\", ";
    const std::string allowed =
        layout.mark == DecimalMark::comma ? "a number such as 97,5" : "a number such as 97.5";
    if (given.find(',') != std::string::npos && layout.commas_are_unclear)
        return {RefusalCode::wrong_type,
                start + "which may be read in two ways. Please write numbers with a decimal point and "
                        "without thousands "
                        "marks, or begin the file with the line \"# decimal comma\".",
                column.name, given, allowed};
    if (given.find('.') != std::string::npos && layout.mark == DecimalMark::comma)
        return {RefusalCode::wrong_type, start + "but the numbers of this file have a decimal comma.",
                column.name, given, allowed};
    return {RefusalCode::wrong_type,
            start + "but must be a number alone; its unit stands in the column's name.", column.name, given,
            allowed};
}

Refusal refuse_limits(const FileColumn& column, const std::string& given, Limits limits) {
    const double low = column.unit ? column.unit->from_si(limits.low) : limits.low;
    const double high = column.unit ? column.unit->from_si(limits.high) : limits.high;
    const std::string unit = column.unit && *column.unit->shown ? std::string(" ") + column.unit->shown : "";
    const std::string allowed = four_digits(low) + " to " + four_digits(high) + unit;
    return {RefusalCode::out_of_range, column.name + " is " + given + unit + ", but must be " + allowed + ".",
            column.name, given, allowed};
}

std::vector<std::string> divided(const std::string& text, const char* between) {
    std::vector<std::string> parts;
    for (std::size_t from = 0; (from = text.find_first_not_of(between, from)) != std::string::npos;) {
        const std::size_t to = std::min(text.find_first_of(between, from), text.size());
        parts.push_back(text.substr(from, to - from));
        from = to;
    }
    return parts;
}

template <class Q>
std::optional<Q> made(std::optional<double> si, Q (*make)(double)) {
    return si ? std::optional<Q>(make(*si)) : std::nullopt;
}

} // namespace

void LineReader::refuse(Refusal refusal) {
    const std::string where = "line " + std::to_string(line());
    refusal.field = refusal.field.empty() ? where : where + ", " + file_name_of(refusal.field);
    refusal.sentence = "Line " + std::to_string(line()) + ": " + refusal.sentence;
    const auto same_field = [&](const Refusal& held) { return held.field == refusal.field; };
    if (std::none_of(refusals_.begin(), refusals_.end(), same_field))
        refusals_.push_back(std::move(refusal));
}

void LineReader::refuse_empty(const char* column) {
    const RecordColumn* known = find_column(*layout_->known, column);
    assert(known);
    refuse(refuse_missing(file_name_of(column), known->meaning));
}

std::optional<std::size_t> LineReader::filled_place(const std::string& column) const {
    for (std::size_t i = 0; i < layout_->columns.size(); ++i)
        if (layout_->columns[i].column->name == column && !trimmed(row_->fields[i]).empty())
            return i;
    return std::nullopt;
}

const std::string* LineReader::filled(const std::string& column) const {
    assert(find_column(*layout_->known, column));
    const auto place = filled_place(column);
    return place ? &row_->fields[*place] : nullptr;
}

std::string LineReader::text(const char* column) const {
    for (std::size_t i = 0; i < layout_->columns.size(); ++i)
        if (layout_->columns[i].column->name == column)
            return row_->fields[i];
    return "";
}

std::string LineReader::tidy(const char* column) const {
    const std::string* cell = filled(column);
    return cell ? trimmed(*cell) : "";
}

std::string LineReader::needed(const char* column) {
    std::string cell = tidy(column);
    if (cell.empty())
        refuse_empty(column);
    return cell;
}

std::string LineReader::one_line(const char* column) {
    std::string cell = tidy(column);
    if (cell.find_first_of("\r\n") != std::string::npos)
        refuse({RefusalCode::wrong_type,
                std::string(column) + " has a line break in it; a name stands on one line.", column, cell,
                "one line"});
    return cell;
}

std::vector<std::string> LineReader::keys(const char* column) const {
    return divided(text(column), ";, \t\r\n");
}
std::vector<std::string> LineReader::sentences(const char* column) const {
    return divided(text(column), "\r\n");
}

std::optional<Date> LineReader::date(const char* column) {
    const std::string cell = tidy(column);
    if (cell.empty())
        return std::nullopt;
    const auto day = parse_date(cell, column);
    if (!day) {
        refuse(day.refusal());
        return std::nullopt;
    }
    return *day;
}

Date LineReader::needed_date(const char* column) {
    const auto day = date(column);
    if (!day)
        refuse_empty(column);
    return day.value_or(Date::from_days(0));
}

std::optional<double> LineReader::parsed(const FileColumn& column, const std::string& cell) {
    const auto value = cell.starts_with("+-") ? std::nullopt : parse_number(cell, layout_->mark);
    if (!value)
        refuse(refuse_number(column, cell, *layout_));
    return value;
}

std::optional<double> LineReader::number(const char* column, Limits limits) {
    const auto place = filled_place(column);
    if (!place)
        return std::nullopt;
    const FileColumn& here = layout_->columns[*place];
    for (std::size_t i = *place + 1; i < layout_->columns.size(); ++i)
        if (layout_->columns[i].column == here.column && !trimmed(row_->fields[i]).empty()) {
            refuse({RefusalCode::two_units,
                    "Give " + std::string(column) + " once: " + here.name + " and " +
                        layout_->columns[i].name + " both have a number.",
                    column, trimmed(row_->fields[*place]) + " and " + trimmed(row_->fields[i]),
                    "one of them"});
            return std::nullopt;
        }
    const std::string cell = trimmed(row_->fields[*place]);
    const auto given = parsed(here, cell);
    if (!given)
        return std::nullopt;
    const double si = here.unit ? here.unit->to_si(*given) : *given;
    if (si < limits.low || si > limits.high) {
        refuse(refuse_limits(here, cell, limits));
        return std::nullopt;
    }
    return si;
}

double LineReader::needed_number(const char* column, Limits limits) {
    const auto value = number(column, limits);
    if (!value)
        refuse_empty(column);
    return value.value_or(limits.low);
}

std::optional<int> LineReader::whole(const char* column, Limits limits) {
    const auto value = number(column, limits);
    if (value && *value != std::round(*value)) {
        refuse({RefusalCode::wrong_type,
                file_name_of(column) + " is " + tidy(column) + ", but must be a whole number.", column,
                tidy(column), "a whole number"});
        return std::nullopt;
    }
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

int LineReader::needed_whole(const char* column, Limits limits) {
    const auto value = whole(column, limits);
    if (!value)
        refuse_empty(column);
    return value.value_or(static_cast<int>(limits.low));
}

std::optional<Mass> LineReader::mass(const char* column, Limits kg) {
    return made(number(column, kg), Mass::kilograms);
}
std::optional<Length> LineReader::length(const char* column, Limits m) {
    return made(number(column, m), Length::metres);
}
std::optional<Speed> LineReader::speed(const char* column, Limits ms) {
    return made(number(column, ms), Speed::metres_per_second);
}
std::optional<Duration> LineReader::time(const char* column, Limits s) {
    return made(number(column, s), Duration::seconds);
}
std::optional<Angle> LineReader::angle(const char* column, Limits deg) {
    return made(number(column, deg), Angle::degrees);
}
std::optional<Force> LineReader::force(const char* column, Limits n) {
    return made(number(column, n), Force::newtons);
}
std::optional<Power> LineReader::power(const char* column, Limits w) {
    return made(number(column, w), Power::watts);
}

std::string LineReader::file_name_of(const std::string& column) const {
    if (const auto place = filled_place(column))
        return layout_->columns[*place].name;
    for (const auto& each : layout_->columns)
        if (each.column->name == column)
            return each.name;
    const RecordColumn* known = find_column(*layout_->known, column);
    return known ? header_names(*known).front() : column;
}

std::string LineReader::said(const char* column) const {
    const auto place = filled_place(column);
    if (!place)
        return "";
    const FileUnit* unit = layout_->columns[*place].unit;
    return trimmed(row_->fields[*place]) + (unit && *unit->shown ? std::string(" ") + unit->shown : "");
}

const FileUnit* LineReader::unit_used(const std::string& column) const {
    const auto place = filled_place(column);
    return place ? layout_->columns[*place].unit : nullptr;
}

} // namespace amentum
