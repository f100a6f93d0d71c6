#include "recordings/inside/text_columns.h"

#include "recordings/inside/text_units.h"
#include "values/nearest_name.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace amentum {
namespace {

using Columns = std::vector<std::size_t>;

std::string called(const TextLayout& layout, std::size_t column) {
    const TextColumn& which = layout.columns[column];
    return "column " + std::to_string(column + 1) + (which.named ? " '" + shown(which.name) + "'" : "");
}

// A name as the file has it, or a number from 1.
Result<std::size_t> column_called(const TextLayout& layout, const std::string& field,
                                  const std::string& wanted) {
    Columns same;
    for (std::size_t c = 0; c < layout.columns.size(); ++c)
        if (layout.columns[c].named &&
            in_lower_case(trimmed(layout.columns[c].name)) == in_lower_case(trimmed(wanted)))
            same.push_back(c);
    if (same.size() == 1)
        return same[0];
    if (same.size() > 1)
        return Refusal{RefusalCode::unknown_name,
                       "There are " + std::to_string(same.size()) + " columns called '" + shown(wanted) +
                           "'; please give its number. The file has: " + layout.column_list() + ".",
                       field, wanted, layout.column_list()};
    std::size_t number = 0;
    const std::string_view digits = trimmed(wanted);
    const auto [stop, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    if (error == std::errc{} && stop == digits.data() + digits.size() && number >= 1 &&
        number <= layout.columns.size())
        return number - 1;
    std::vector<std::string> names;
    for (const auto& column : layout.columns)
        if (column.named)
            names.push_back(column.name);
    const auto near = nearest_name(wanted, names);
    return Refusal{RefusalCode::unknown_name,
                   "There is no column '" + shown(wanted) + "'. The file has: " + layout.column_list() + "." +
                       (near ? " Did you mean '" + *near + "'?" : ""),
                   field, wanted, layout.column_list()};
}

Result<Columns> columns_called(const TextLayout& layout, const std::string& field,
                               const std::vector<std::string>& wanted) {
    Columns found;
    for (const auto& name : wanted) {
        const auto column = column_called(layout, field, name);
        if (!column)
            return column.refusal();
        if (std::find(found.begin(), found.end(), *column) != found.end())
            return Refusal{RefusalCode::unknown_name,
                           "The same column is named twice: " + called(layout, *column) + ".", field, name,
                           layout.column_list()};
        found.push_back(*column);
    }
    return found;
}

Refusal refuse_choice_of_columns(const TextLayout& layout, const std::string& why) {
    return {RefusalCode::missing_field,
            why + " Please name one column of vertical force, or two, the left foot's first. The file has: " +
                layout.column_list() + ".",
            "vertical", "", layout.column_list()};
}

// Drops the sum where both of its parts are there.
void drop_total(const TextLayout& layout, Columns& columns, std::vector<std::string>& notes) {
    const auto has = [&](Side side) {
        return std::any_of(columns.begin(), columns.end(),
                           [&](std::size_t c) { return side_word(layout.columns[c].name) == side; });
    };
    if (!has(Side::left) || !has(Side::right))
        return;
    std::erase_if(columns, [&](std::size_t c) {
        const bool total =
            is_total(layout.columns[c].name) && side_word(layout.columns[c].name) == Side::none;
        if (total)
            notes.push_back("C" + called(layout, c).substr(1) + " is left out: the sum of left and right.");
        return total;
    });
}

// By their names, the strongest words first; else by elimination.
Result<Columns> guess_vertical(const TextLayout& layout, const std::optional<TimeColumn>& time,
                               std::vector<std::string>& notes) {
    Columns left_over, weak, strong;
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        const TextColumn& column = layout.columns[c];
        const ForceWord word = column.named ? force_word(column.name) : ForceWord::none;
        if ((time && time->column == c) || counts_samples(layout, c) || word == ForceWord::elsewhere)
            continue;
        if (word == ForceWord::strong)
            strong.push_back(c);
        if (word == ForceWord::weak)
            weak.push_back(c);
        if (column.numeric && !seconds_in(column.unit))
            left_over.push_back(c);
    }
    Columns& found = !strong.empty() ? strong : !weak.empty() ? weak : left_over;
    drop_total(layout, found, notes);
    if (found.empty())
        return refuse_choice_of_columns(layout, "No column looks like a vertical force.");
    if (found.size() > 2)
        return refuse_choice_of_columns(layout,
                                        std::to_string(found.size()) + " columns may be the vertical force.");
    if (found.size() == 2 &&
        (is_total(layout.columns[found[0]].name) || is_total(layout.columns[found[1]].name)))
        return refuse_choice_of_columns(layout,
                                        "One column may be the sum of two plates, the other one of them.");
    if (strong.empty() && weak.empty())
        notes.push_back("No name says which column is the vertical force; what is left over was taken.");
    return found;
}

// Newtons for one unit written in the column.
Result<double> newtons_of(const TextLayout& layout, const RecordingGiven& given, std::size_t c,
                          std::vector<std::string>& notes) {
    const std::string& written = layout.columns[c].unit;
    const auto unit = given.unit ? given.unit : force_unit(written);
    if (given.unit && !written.empty() && force_unit(written) != given.unit)
        notes.push_back("The header says " + shown(written) + " for " + called(layout, c) + ", but " +
                        word(*given.unit) + " was given and is used.");
    if (unit == ForceUnit::volt) {
        if (!given.newtons_per_volt)
            return Refusal{RefusalCode::missing_field,
                           "The force in " + called(layout, c) +
                               " is in volts; please give the plate's newtons per volt.",
                           "newtons_per_volt", "", "the plate's factor, in N/V"};
        const double factor = *given.newtons_per_volt;
        if (!std::isfinite(factor) || factor == 0 || std::abs(factor) > 1e6)
            return Refusal{
                RefusalCode::out_of_range, "The newtons per volt must be a number up to 1,000,000, not zero.",
                "newtons_per_volt", std::isfinite(factor) ? format_shortest(factor) : "not a number",
                "-1,000,000 to 1,000,000, not 0"};
        return factor;
    }
    if (unit)
        return unit == ForceUnit::newton ? 1.0 : 9.80665;
    if (const auto newtons = newtons_in(written))
        return *newtons;
    return Refusal{RefusalCode::missing_field,
                   "The file does not say the unit of " + called(layout, c) + "; please give it: N, kg or V.",
                   "unit", shown(written), "one of N, kg, V"};
}

// The person's word first, then the file's, then the order found.
void set_sides(const TextLayout& layout, const RecordingGiven& given, ChosenColumns& chosen) {
    if (chosen.vertical.size() != 2)
        return;
    ChosenColumn& first = chosen.vertical[0];
    ChosenColumn& second = chosen.vertical[1];
    const Side a = side_word(layout.columns[first.column].name),
               b = side_word(layout.columns[second.column].name);
    const bool told = a != b && a != Side::none && b != Side::none;
    const bool first_is_right = given.left_foot_on_second || (told && a == Side::right);
    first.side = first_is_right ? Side::right : Side::left;
    second.side = first_is_right ? Side::left : Side::right;
    if (given.left_foot_on_second && told && a == Side::left)
        chosen.notes.push_back(
            "The left foot was said to stand on the second plate, against the columns' names.");
    if (!given.left_foot_on_second && !told && given.vertical.empty())
        chosen.notes.push_back(
            "No name tells left from right; the first column was taken as the left foot's.");
}

Result<std::vector<ChosenColumn>> with_units(const TextLayout& layout, const RecordingGiven& given,
                                             const Columns& columns, std::vector<std::string>& notes) {
    std::vector<ChosenColumn> chosen;
    for (const std::size_t c : columns) {
        const auto newtons = newtons_of(layout, given, c, notes);
        if (!newtons)
            return newtons.refusal();
        chosen.push_back({c, *newtons});
    }
    return chosen;
}

std::optional<Refusal> check_given(const TextLayout& layout, const RecordingGiven& given) {
    if (given.vertical.size() > 2)
        return Refusal{RefusalCode::out_of_range,
                       "Please name at most two columns of vertical force, one a foot.", "vertical",
                       std::to_string(given.vertical.size()) + " columns", "1 or 2 columns"};
    if (!given.lateral.empty() && given.vertical.empty() && given.lateral.size() > 2)
        return Refusal{RefusalCode::out_of_range,
                       "Please name at most two columns of lateral force, one a foot.", "lateral",
                       std::to_string(given.lateral.size()) + " columns", layout.column_list()};
    return std::nullopt;
}

} // namespace

Result<ChosenColumns> choose_columns(const TextLayout& layout, const RecordingGiven& given) {
    ChosenColumns chosen;
    if (auto refusal = check_given(layout, given))
        return *refusal;
    const auto time = find_time(layout, given, chosen.notes);
    if (!time)
        return time.refusal();
    chosen.time = *time;
    const auto vertical = given.vertical.empty() ? guess_vertical(layout, chosen.time, chosen.notes)
                                                 : columns_called(layout, "vertical", given.vertical);
    if (!vertical)
        return vertical.refusal();
    const auto lateral = columns_called(layout, "lateral", given.lateral);
    if (!lateral)
        return lateral.refusal();
    if (!lateral->empty() && lateral->size() != vertical->size())
        return Refusal{RefusalCode::out_of_range,
                       "There must be one column of lateral force for each of vertical force.", "lateral",
                       std::to_string(lateral->size()) + " columns",
                       std::to_string(vertical->size()) + " columns"};
    for (const auto* columns : {&*vertical, &*lateral})
        for (const std::size_t c : *columns)
            if (chosen.time && chosen.time->column == c)
                return refuse_choice_of_columns(layout, "C" + called(layout, c).substr(1) + " is the time.");
    auto vertical_units = with_units(layout, given, *vertical, chosen.notes);
    if (!vertical_units)
        return vertical_units.refusal();
    auto lateral_units = with_units(layout, given, *lateral, chosen.notes);
    if (!lateral_units)
        return lateral_units.refusal();
    chosen.vertical = *std::move(vertical_units);
    chosen.lateral = *std::move(lateral_units);
    set_sides(layout, given, chosen);
    return chosen;
}

} // namespace amentum
