// One row of a reference table, read cell by cell: the first fault is kept, with file, line and column.
//
// A reader function asks for every cell it needs and looks at the fault once at the end of the row; after a
// fault each cell reads as an empty or lowest value, which nobody sees. Lists are separated by ';', shares
// written "key:share". Refuses: a needed cell left empty, a text that is no number, a number out of range, a
// word that is none of the words. What it cannot tell: whether a key exists in another table
// (reference_tables_links.h).
#pragma once

#include "records/csv.h"
#include "values/enum_words.h"
#include "values/refusal.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace amentum {

class ReferenceCells {
public:
    ReferenceCells(const std::string& file, const CsvTable& table, const CsvRow& row)
        : file_(file), table_(table), row_(row) {}

    std::string text(const std::string& column);   // may be empty
    std::string needed(const std::string& column); // may not
    std::string key(const std::string& column);    // lower case letters, digits and '_'
    std::vector<std::string> list(const std::string& column);
    std::vector<std::string> needed_list(const std::string& column);
    double number(const std::string& column, double low, double high);
    std::optional<double> optional_number(const std::string& column, double low, double high);
    int whole(const std::string& column, int low, int high);
    std::optional<int> optional_whole(const std::string& column, int low, int high);
    std::optional<std::pair<int, int>> optional_day_of_year(const std::string& column); // "MM-DD"
    bool yes(const std::string& column);                                                // "yes" or "no"
    std::map<std::string, double> shares(const std::string& column);                    // above 0 to 1

    template <class E>
    E one_of(const std::string& column) {
        return chosen<E>(column, needed(column));
    }
    template <class E>
    std::vector<E> some_of(const std::string& column) {
        std::vector<E> all;
        for (const std::string& word : list(column))
            all.push_back(chosen<E>(column, word));
        return all;
    }

    const std::optional<Refusal>& fault() const { return fault_; }

private:
    template <class E>
    E chosen(const std::string& column, const std::string& given) {
        if (auto value = from_word<E>(given))
            return *value;
        const auto words = all_words<E>();
        keep(refuse_choice(where(column), given, words));
        return words_of<E>.front().first;
    }
    std::string where(const std::string& column) const;
    void keep(Refusal refusal);

    const std::string& file_;
    const CsvTable& table_;
    const CsvRow& row_;
    std::optional<Refusal> fault_;
};

} // namespace amentum
