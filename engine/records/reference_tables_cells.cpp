#include "records/reference_tables_cells.h"

#include "values/calendar_date.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {

namespace {

std::vector<std::string> split(const std::string& text, char separator) {
    std::vector<std::string> parts;
    std::size_t from = 0;
    while (from < text.size()) {
        std::size_t to = std::min(text.find(separator, from), text.size());
        if (to > from)
            parts.push_back(text.substr(from, to - from));
        from = to + 1;
    }
    return parts;
}

} // namespace

std::string ReferenceCells::where(const std::string& column) const {
    return file_ + ", line " + std::to_string(row_.line) + ", " + column;
}

void ReferenceCells::keep(Refusal refusal) {
    if (!fault_)
        fault_ = std::move(refusal);
}

std::string ReferenceCells::text(const std::string& column) {
    auto at = table_.column(column);
    assert(at); // parse_rows has compared the columns
    return row_.fields[*at];
}

std::string ReferenceCells::needed(const std::string& column) {
    std::string given = text(column);
    if (given.empty())
        keep(refuse_missing(where(column), "this column may not be empty"));
    return given;
}

std::string ReferenceCells::key(const std::string& column) {
    std::string given = needed(column);
    if (given.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") != std::string::npos)
        keep({RefusalCode::wrong_type, where(column) + " is \"" + given + "\", but a key is a plain word.",
              where(column), given, "lower case letters, digits and '_'"});
    return given;
}

std::vector<std::string> ReferenceCells::list(const std::string& column) {
    return split(text(column), ';');
}

std::vector<std::string> ReferenceCells::needed_list(const std::string& column) {
    return split(needed(column), ';');
}

std::optional<double> ReferenceCells::optional_number(const std::string& column, double low, double high) {
    std::string given = text(column);
    if (given.empty())
        return std::nullopt;
    auto value = parse_number(given);
    if (!value) {
        keep({RefusalCode::wrong_type, where(column) + " is \"" + given + "\", which is not a number.",
              where(column), given, "a number"});
        return low;
    }
    if (*value < low || *value > high)
        keep(refuse_range(where(column), *value, low, high, ""));
    return value;
}

double ReferenceCells::number(const std::string& column, double low, double high) {
    needed(column);
    return optional_number(column, low, high).value_or(low);
}

std::optional<int> ReferenceCells::optional_whole(const std::string& column, int low, int high) {
    auto value = optional_number(column, low, high);
    if (!value)
        return std::nullopt;
    if (*value != std::floor(*value))
        keep({RefusalCode::wrong_type, where(column) + " must be a whole number.", where(column),
              text(column), "a whole number"});
    return static_cast<int>(std::clamp<double>(*value, low, high));
}

int ReferenceCells::whole(const std::string& column, int low, int high) {
    needed(column);
    return optional_whole(column, low, high).value_or(low);
}

std::optional<std::pair<int, int>> ReferenceCells::optional_day_of_year(const std::string& column) {
    const std::string given = text(column);
    if (given.empty())
        return std::nullopt;
    const auto day = parse_date("2001-" + given, where(column)); // a common year
    if (!day) {
        keep({RefusalCode::impossible_date,
              where(column) + " is \"" + given + "\", but a day of the year is written MM-DD, such as 05-01.",
              where(column), given, "MM-DD, a day every year has"});
        return std::nullopt;
    }
    const auto calendar = day->calendar();
    return std::pair(static_cast<int>(static_cast<unsigned>(calendar.month())),
                     static_cast<int>(static_cast<unsigned>(calendar.day())));
}

bool ReferenceCells::yes(const std::string& column) {
    std::string given = needed(column);
    const std::vector<std::string> words{"yes", "no"};
    if (given != "yes" && given != "no")
        keep(refuse_choice(where(column), given, words));
    return given == "yes";
}

std::map<std::string, double> ReferenceCells::shares(const std::string& column) {
    std::map<std::string, double> shares;
    for (const std::string& part : needed_list(column)) {
        std::size_t colon = part.find(':');
        auto share = colon == std::string::npos ? std::nullopt : parse_number(part.substr(colon + 1));
        if (!share || *share <= 0 || *share > 1) {
            keep({RefusalCode::out_of_range,
                  where(column) + " holds \"" + part + "\", which is no key with its share.", where(column),
                  part, "key:share, the share above 0 and at most 1"});
            continue;
        }
        if (!shares.emplace(part.substr(0, colon), *share).second)
            keep({RefusalCode::already_held,
                  where(column) + " names \"" + part.substr(0, colon) + "\" twice.", where(column), part,
                  "each key once"});
    }
    return shares;
}

} // namespace amentum
