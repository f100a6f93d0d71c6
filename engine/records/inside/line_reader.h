// One line of a file, read cell by cell; the first fault found is the line's refusal and the rest is read on as absent;
// who wants every fault of a line reads on and asks for all.
//
// Columns are asked for by their bare name ("load"); which unit the file has is the layout's business. Ranges are in SI
// and are said in the file's unit. A caller reads all it needs and then looks at `refusal` once.
#pragma once

#include "records/inside/file_layout.h"
#include "records/limits.h"
#include "values/calendar_date.h"
#include "values/enum_words.h"
#include "values/quantity.h"

#include <optional>
#include <string>

namespace amentum {

class LineReader {
public:
    LineReader(const FileLayout& layout, const CsvRow& row) : layout_(&layout), row_(&row) {}

    int line() const { return row_->line; }
    // The first fault; nullopt when there is none.
    std::optional<Refusal> refusal() const {
        return refusals_.empty() ? std::nullopt : std::optional(refusals_.front());
    }
    const std::vector<Refusal>& refusals() const {
        return refusals_;
    } // one a field, in the order they were found
    // Field and sentence are completed with the line.
    void refuse(Refusal refusal);

    std::string text(const char* column) const;                   // every character of it
    std::string tidy(const char* column) const;                   // trimmed
    std::string needed(const char* column);                       // trimmed; refused when empty
    std::string one_line(const char* column);                     // trimmed; refused when it has a line break
    std::vector<std::string> keys(const char* column) const;      // divided by ';', ',' or spaces
    std::vector<std::string> sentences(const char* column) const; // one a line

    Date needed_date(const char* column);
    std::optional<Date> date(const char* column);
    template <class E>
    E needed_choice(const char* column) {
        const auto value = choice<E>(column);
        if (!value)
            refuse_empty(column);
        return value.value_or(words_of<E>.front().first);
    }
    template <class E>
    std::optional<E> choice(const char* column);

    int needed_whole(const char* column, Limits limits);
    std::optional<int> whole(const char* column, Limits limits);
    double needed_number(const char* column, Limits limits);
    std::optional<double> number(const char* column, Limits limits); // a plain number, or any quantity in SI
    std::optional<Mass> mass(const char* column, Limits kg);
    std::optional<Length> length(const char* column, Limits m);
    std::optional<Speed> speed(const char* column, Limits ms);
    std::optional<Duration> time(const char* column, Limits s);
    std::optional<Angle> angle(const char* column, Limits deg);
    std::optional<Force> force(const char* column, Limits n);
    std::optional<Power> power(const char* column, Limits w);

    std::string
    file_name_of(const std::string& column) const; // "load_lb", or all its names when the file has none
    std::string said(const char* column) const;    // "185 lb", as the file has it; empty when absent
    const FileUnit* unit_used(const std::string& column) const; // null when the cell is empty or no quantity

private:
    const std::string* filled(const std::string& column) const; // the cell that is not empty
    std::optional<std::size_t> filled_place(const std::string& column) const;
    void refuse_empty(const char* column);
    std::optional<double> parsed(const FileColumn& column, const std::string& cell);

    const FileLayout* layout_;
    const CsvRow* row_;
    std::vector<Refusal> refusals_;
};

template <class E>
std::optional<E> LineReader::choice(const char* column) {
    std::string given = tidy(column);
    if (given.empty())
        return std::nullopt;
    std::string word = lower_case(given);
    for (char& c : word)
        if (c == ' ' || c == '-')
            c = '_';
    const auto value = from_word<E>(word);
    if (!value)
        refuse(refuse_choice(column, given, all_words<E>()));
    return value;
}

} // namespace amentum
