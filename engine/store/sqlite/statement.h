// One prepared statement, with what a record needs: typed binding in order, optional values, typed columns in order.
//
// The SQL text uses $1 ... so that the same text serves another database; this is the SQLite side. To SQLite $1 is a name,
// numbered by first appearance in the text and not by its number: values are therefore bound by name.
// A word or a day that no program of ours writes is a broken store: StoreFailure.
#pragma once

#include "store/store.h"
#include "values/calendar_date.h"
#include "values/enum_words.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <bit>
#include <cstdint>
#include <cstring>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

namespace amentum {

class Statement {
public:
    Statement(SQLite::Database& database, const std::string& sql) : query_(database, sql) {}

    template <class... Values>
    Statement& bind(const Values&... values) {
        query_.reset();
        std::size_t number = 0;
        (bind_one(place_of(number++), values), ...);
        return *this;
    }
    bool step() { return query_.executeStep(); }
    int run() { return query_.exec(); }

    // Columns are taken from left to right, one row at a time.
    void begin_row() { column_ = 0; }
    std::string text() { return query_.getColumn(column_++).getString(); }
    int whole() { return query_.getColumn(column_++).getInt(); }
    std::vector<float> floats() { // a BLOB of 32-bit floats, little-endian as this machine's
        static_assert(std::endian::native == std::endian::little && sizeof(float) == 4);
        const auto column = query_.getColumn(column_++);
        if (column.getBytes() % 4 != 0)
            throw StoreFailure("the store holds samples that are not whole 32-bit floats");
        std::vector<float> samples(static_cast<std::size_t>(column.getBytes()) / 4);
        if (!samples.empty())
            std::memcpy(samples.data(), column.getBlob(), samples.size() * 4);
        return samples;
    }
    std::int64_t big_whole() { return query_.getColumn(column_++).getInt64(); }
    double number() { return query_.getColumn(column_++).getDouble(); }
    std::optional<double> maybe_number() {
        const auto column = query_.getColumn(column_++);
        return column.isNull() ? std::nullopt : std::optional(column.getDouble());
    }
    std::optional<int> maybe_whole() {
        const auto column = query_.getColumn(column_++);
        return column.isNull() ? std::nullopt : std::optional(column.getInt());
    }
    std::optional<std::string> maybe_text() {
        const auto column = query_.getColumn(column_++);
        return column.isNull() ? std::nullopt : std::optional(column.getString());
    }
    Date date() {
        const std::string held = text();
        const auto day = parse_date(held, "date");
        if (!day)
            throw StoreFailure("the store holds \"" + held + "\" where a day should stand");
        return *day;
    }
    std::optional<Date> maybe_date() {
        if (!query_.getColumn(column_).isNull())
            return date();
        ++column_;
        return std::nullopt;
    }
    template <class E>
    E choice() {
        const std::string held = text();
        const auto value = from_word<E>(held);
        if (!value)
            throw StoreFailure("the store holds the unknown word \"" + held + "\"");
        return *value;
    }

private:
    int place_of(std::size_t number) {
        if (number == places_.size())
            places_.push_back(query_.getIndex(("$" + std::to_string(number + 1)).c_str()));
        return places_[number];
    }
    void bind_one(int place, const std::string& value) { query_.bind(place, value); }
    void bind_one(int place, const char* value) { query_.bind(place, value); }
    void bind_one(int place, int value) { query_.bind(place, value); }
    void bind_one(int place, std::int64_t value) { query_.bind(place, value); }
    void bind_one(int place, const std::vector<float>& value) {
        static const char none = 0; // a NULL pointer would bind NULL
        query_.bind(place, value.empty() ? static_cast<const void*>(&none) : value.data(),
                    static_cast<int>(value.size() * sizeof(float)));
    }
    void bind_one(int place, double value) { query_.bind(place, value); }
    void bind_one(int place, const Date& value) { query_.bind(place, value.text()); }
    template <class T>
    void bind_one(int place, const std::optional<T>& value) {
        if (value)
            bind_one(place, *value);
        else
            query_.bind(place);
    }

    SQLite::Statement query_;
    std::vector<int> places_; // of $1, $2 ...
    int column_ = 0;
};

} // namespace amentum
