#include "records/row_reader.h"

#include <cassert>

namespace amentum {
namespace {

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" \t");
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

const std::map<std::string, std::vector<std::string>> suffixes{
    {"mass", {"_kg", "_lb", "_oz", "_g"}},  {"length", {"_m", "_cm", "_in", "_ft"}}, {"speed", {"_ms", "_mph", "_kmh"}},
    {"angle", {"_deg"}},                    {"duration", {"_s", "_ms"}},             {"force", {"_n"}}};

}  // namespace

std::vector<std::string> columns_of_quantity(const std::string& base, const std::string& dimension) {
    std::vector<std::string> columns;
    for (const auto& suffix : suffixes.at(dimension)) columns.push_back(base + suffix);
    return columns;
}

void RowReader::refuse(Refusal refusal) {
    if (refusal_) return;
    refusal.field = "line " + std::to_string(row_.line) + ", " + refusal.field;
    refusal.sentence = "Line " + std::to_string(row_.line) + ": " + refusal.sentence;
    refusal_ = std::move(refusal);
}

std::string RowReader::text(const std::string& column) {
    const auto place = table_.column(column);
    return place ? row_.fields.at(*place) : "";
}

std::string RowReader::needed_text(const std::string& column, const std::string& what) {
    const std::string given = trimmed(text(column));
    if (given.empty()) refuse(refuse_missing(column, what));
    return given;
}

std::optional<double> RowReader::number(const std::string& column, double low, double high, const std::string& unit) {
    const std::string given = trimmed(text(column));
    if (given.empty()) return std::nullopt;
    const auto x = parse_number(given, mark_);
    if (!x) {
        const bool comma = mark_ == DecimalMark::point && given.find(',') != std::string::npos;
        refuse({RefusalCode::wrong_type, column + " is \"" + given + "\", but must be a number." +
                (comma ? " If the file writes decimals with a comma, put the line \"# decimal comma\" at its top." : ""),
                column, given, "a number"});
        return std::nullopt;
    }
    if (*x < low || *x > high) {
        refuse(refuse_range(column, *x, low, high, unit));
        return std::nullopt;
    }
    return x;
}

double RowReader::needed_number(const std::string& column, double low, double high, const std::string& unit) {
    const auto x = number(column, low, high, unit);
    if (!x) refuse(refuse_missing(column, "a number from " + format_shortest(low) + " to " + format_shortest(high)));
    return x.value_or(low);
}

std::optional<int> RowReader::whole(const std::string& column, int low, int high) {
    const auto x = number(column, low, high);
    if (!x) return std::nullopt;
    if (*x != static_cast<int>(*x)) {
        refuse({RefusalCode::wrong_type, column + " is " + format_shortest(*x) + ", but must be a whole number.", column,
                format_shortest(*x), "a whole number"});
        return std::nullopt;
    }
    return static_cast<int>(*x);
}

int RowReader::needed_whole(const std::string& column, int low, int high) {
    const auto x = whole(column, low, high);
    if (!x) refuse(refuse_missing(column, "a whole number from " + std::to_string(low) + " to " + std::to_string(high)));
    return x.value_or(low);
}

Date RowReader::date(const std::string& column, std::optional<Date> otherwise) {
    const std::string given = trimmed(text(column));
    if (given.empty() && otherwise) return *otherwise;
    if (given.empty()) {
        refuse(refuse_missing(column, "a day written YYYY-MM-DD"));
        return Date::from_days(0);
    }
    const auto parsed = parse_date(given, column);
    if (!parsed) refuse(parsed.refusal());
    return parsed ? *parsed : Date::from_days(0);
}

std::vector<std::string> RowReader::words(const std::string& column, char separator) {
    const std::string given = text(column);
    std::vector<std::string> all;
    for (std::size_t from = 0; from < given.size();) {
        const auto to = std::min(given.find(separator, from), given.size());
        const std::string word = separator == '\n' ? given.substr(from, to - from) : trimmed(given.substr(from, to - from));
        if (!word.empty()) all.push_back(word);
        from = to + 1;
    }
    return all;
}

std::optional<double> RowReader::quantity(const std::string& base, std::initializer_list<UnitOf> units, double low, double high) {
    std::optional<double> found;
    for (const auto& unit : units) {
        const std::string column = base + unit.suffix;
        const auto x = number(column, low / unit.to_si, high / unit.to_si, unit.suffix + 1);
        if (!x) continue;
        if (found) {
            refuse({RefusalCode::two_units, base + " is given in two units; one will do.", column, text(column), "one unit"});
            return std::nullopt;
        }
        found = *x * unit.to_si;
    }
    return found;
}

std::optional<Mass> RowReader::mass(const std::string& base, double low, double high) {
    const double pound = Mass::kilograms_per_pound;
    const auto kg = quantity(base, {{"_kg", 1}, {"_lb", pound}, {"_oz", pound / 16}, {"_g", 0.001}}, low, high);
    return kg ? std::optional(Mass::kilograms(*kg)) : std::nullopt;
}

std::optional<Length> RowReader::length(const std::string& base, double low, double high) {
    const auto m = quantity(base, {{"_m", 1}, {"_cm", 0.01}, {"_in", Length::metres_per_inch}, {"_ft", Length::metres_per_foot}}, low, high);
    return m ? std::optional(Length::metres(*m)) : std::nullopt;
}

std::optional<Speed> RowReader::speed(const std::string& base, double low, double high) {
    const auto ms = quantity(base, {{"_ms", 1}, {"_mph", Speed::metres_per_second_per_mph}, {"_kmh", 1 / 3.6}}, low, high);
    return ms ? std::optional(Speed::metres_per_second(*ms)) : std::nullopt;
}

std::optional<Angle> RowReader::angle(const std::string& base, double low, double high) {
    const auto degrees = quantity(base, {{"_deg", 1}}, low, high);
    return degrees ? std::optional(Angle::degrees(*degrees)) : std::nullopt;
}

std::optional<Duration> RowReader::duration(const std::string& base, double low, double high) {
    const auto s = quantity(base, {{"_s", 1}, {"_ms", 0.001}}, low, high);
    return s ? std::optional(Duration::seconds(*s)) : std::nullopt;
}

std::optional<Force> RowReader::force(const std::string& base, double low, double high) {
    const auto n = quantity(base, {{"_n", 1}}, low, high);
    return n ? std::optional(Force::newtons(*n)) : std::nullopt;
}

}  // namespace amentum
