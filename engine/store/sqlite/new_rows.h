// Rows of one table on their way in: a new key is added, the same row again is left, the same key otherwise is a fault.
//
// IS NOT DISTINCT FROM is the standard's equality that also holds between two absent values (ISO 9075, T151).
#pragma once

#include "store/sqlite/statement.h"

#include <algorithm>

namespace amentum {

class NewRows {
public:
    // `columns` as SQL lists them: "facility_id, kit_id, name, unit".
    NewRows(SQLite::Database& database, const std::string& table, const std::string& columns)
        : table_(table), insert_(database, insert_text(table, columns)),
          same_(database, same_text(table, columns)) {}

    // True when the row is new.
    template <class... Values>
    bool save(const Values&... values) {
        if (insert_.bind(values...).run() == 1)
            return true;
        if (!same_.bind(values...).step())
            throw StoreFailure("a row of " + table_ + " is held with other values");
        return false;
    }

private:
    static std::vector<std::string> names_in(const std::string& columns) {
        std::vector<std::string> names;
        for (std::size_t from = 0; from < columns.size();) {
            const std::size_t to = std::min(columns.find(", ", from), columns.size());
            names.push_back(columns.substr(from, to - from));
            from = to + 2;
        }
        return names;
    }
    static std::string insert_text(const std::string& table, const std::string& columns) {
        std::string places;
        for (std::size_t i = 1; i <= names_in(columns).size(); ++i)
            places += (i > 1 ? ", $" : "$") + std::to_string(i);
        return "INSERT INTO " + table + " (" + columns + ") VALUES (" + places + ") ON CONFLICT DO NOTHING";
    }
    static std::string same_text(const std::string& table, const std::string& columns) {
        std::string text = "SELECT 1 FROM " + table + " WHERE ";
        const auto names = names_in(columns);
        for (std::size_t i = 0; i < names.size(); ++i)
            text += (i == 0 ? "" : " AND ") + names[i] + " IS NOT DISTINCT FROM $" + std::to_string(i + 1);
        return text;
    }

    std::string table_;
    Statement insert_, same_;
};

} // namespace amentum
