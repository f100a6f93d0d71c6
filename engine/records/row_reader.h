// One line of a table, read field by field into values; the first thing wrong with it is kept as its refusal.
//
// A refused field names the line, the column, what stands there and what is allowed. After a refusal the other
// readers still answer (with nothing, or a stand-in), so that a form can be read straight through and asked at the end.
// The decimal mark is the file's own: a point, or a comma when its first lines say "# decimal comma".
#pragma once

#include "records/csv.h"
#include "values/calendar_date.h"
#include "values/enum_words.h"
#include "values/quantity.h"
#include "values/shortest_decimal.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace amentum {

class RowReader {
public:
    RowReader(const CsvTable& table, const CsvRow& row, DecimalMark mark) : table_(table), row_(row), mark_(mark) {}

    std::string text(const std::string& column);         // "" when empty or absent
    std::string needed_text(const std::string& column, const std::string& what);
    std::optional<double> number(const std::string& column, double low, double high, const std::string& unit = "");
    std::optional<int> whole(const std::string& column, int low, int high);
    int needed_whole(const std::string& column, int low, int high);
    double needed_number(const std::string& column, double low, double high, const std::string& unit = "");
    Date date(const std::string& column, std::optional<Date> otherwise = std::nullopt);
    std::vector<std::string> words(const std::string& column, char separator);

    template <class E>
    E choice(const std::string& column, std::optional<E> otherwise = std::nullopt) {
        const std::string given = text(column);
        if (given.empty() && otherwise) return *otherwise;
        if (const auto found = from_word<E>(given)) return *found;
        refuse(given.empty() ? refuse_missing(column, "one of the words of that column") : refuse_choice(column, given, all_words<E>()));
        return words_of<E>.front().first;
    }

    // Limits are in SI; a value outside is refused in the unit it was given in.
    std::optional<Mass> mass(const std::string& base, double low_kg, double high_kg);
    std::optional<Length> length(const std::string& base, double low_m, double high_m);
    std::optional<Speed> speed(const std::string& base, double low_ms, double high_ms);
    std::optional<Angle> angle(const std::string& base, double low_deg, double high_deg);
    std::optional<Duration> duration(const std::string& base, double low_s, double high_s);
    std::optional<Force> force(const std::string& base, double low_n, double high_n);

    void refuse(Refusal refusal);  // keeps the first; completes its field with the line
    const std::optional<Refusal>& refusal() const { return refusal_; }
    int line() const { return row_.line; }

private:
    struct UnitOf {
        const char* suffix;
        double to_si;
    };
    // The one of base + suffix that is given, with its factor. Refuses two of them.
    std::optional<double> quantity(const std::string& base, std::initializer_list<UnitOf> units, double low, double high);

    const CsvTable& table_;
    const CsvRow& row_;
    DecimalMark mark_;
    std::optional<Refusal> refusal_;
};

// The suffixes a quantity's column may end in: "_kg", "_lb" ... by the dimension's first letter(s).
std::vector<std::string> columns_of_quantity(const std::string& base, const std::string& dimension);

}  // namespace amentum
