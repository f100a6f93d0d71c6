#include "recordings/inside/text_columns.h"
#include "recordings/inside/text_number.h"
#include "recordings/inside/text_units.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

bool any_of_words(std::string_view name, std::initializer_list<std::string_view> wanted) {
    const auto words = words_in(name);
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(wanted.begin(), wanted.end(), word) != wanted.end();
    });
}

bool is_called_time(const TextColumn& column) {
    return column.named && (any_of_words(column.name, {"time", "t", "times", "seconds", "sec", "s", "ms"}) ||
                            (seconds_in(column.unit) && force_word(column.name) == ForceWord::none));
}

// The first lines of one column, and the finest digit they write.
struct FirstNumbers {
    std::vector<double> values;
    double quantum = 0;
};

FirstNumbers first_numbers(const TextLayout& layout, std::size_t column) {
    FirstNumbers found;
    std::size_t decimals = 0;
    for (const auto& line : layout.first_rows) {
        const auto cells = split_cells(line, layout.rule.separator);
        if (!cells || cells->size() <= column)
            break;
        const std::string& cell = (*cells)[column];
        const auto value = parse_time(cell, layout.rule.mark);
        if (!value)
            break;
        const std::size_t mark = cell.find(layout.rule.mark);
        const bool scientific = cell.find_first_of("eE") != cell.npos;
        decimals = std::max(decimals, scientific ? 15 : mark == cell.npos ? 0 : cell.size() - mark - 1);
        found.values.push_back(*value);
    }
    found.quantum = decimals >= 15 ? 0 : 1 / ten_to_the[decimals];
    return found;
}

double mean_step(const std::vector<double>& values) {
    return (values.back() - values.front()) / static_cast<double>(values.size() - 1);
}

bool rises_evenly(const FirstNumbers& first) {
    if (first.values.size() < 3)
        return false;
    const double step = mean_step(first.values);
    for (std::size_t i = 1; i < first.values.size(); ++i)
        if (!is_even_step(first.values[i] - first.values[i - 1], step, allowed_off(step, first.quantum)))
            return false;
    return step > 0;
}

// The mean when all steps are like it (they may be 0.001 and 0.002 by rounding); else the middle one, so that a gap in
// the first lines is found where it is.
double usual_step(const FirstNumbers& first) {
    if (first.values.size() < 3 || rises_evenly(first))
        return mean_step(first.values);
    std::vector<double> steps;
    for (std::size_t i = 1; i < first.values.size(); ++i)
        steps.push_back(first.values[i] - first.values[i - 1]);
    std::nth_element(steps.begin(), steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2),
                     steps.end());
    return steps[steps.size() / 2];
}

// An unnamed column of equal steps is the time, unless it may as well count samples.
std::optional<std::size_t> time_column(const TextLayout& layout) {
    for (std::size_t c = 0; c < layout.columns.size(); ++c)
        if (layout.columns[c].numeric && is_called_time(layout.columns[c]) && !counts_samples(layout, c))
            return c;
    for (std::size_t c = 0; c < layout.columns.size(); ++c)
        if (layout.columns[c].numeric && !layout.columns[c].named && !counts_samples(layout, c) &&
            rises_evenly(first_numbers(layout, c)))
            return c;
    return std::nullopt;
}

Refusal refuse_time(const TextLayout& layout, std::size_t column, std::string sentence, std::string given,
                    std::string allowed) {
    return {RefusalCode::wrong_rate, std::move(sentence),
            "line " + std::to_string(layout.header_lines + 2) + ", column " + std::to_string(column + 1),
            std::move(given), std::move(allowed)};
}

// Seconds when the file says so; else whichever of s and ms gives a rate within the limits: they do not overlap.
Result<double> unit_of_time(const TextLayout& layout, TimeColumn& time) {
    if (const auto said = seconds_in(layout.columns[time.column].unit))
        return *said;
    time.unit_guessed = true;
    for (const double seconds : {1.0, 0.001}) {
        const double rate = 1 / (time.step * seconds);
        if (rate >= 0.999 * lowest_rate_hz && rate <= 1.001 * highest_rate_hz)
            return seconds;
    }
    return refuse_time(layout, time.column,
                       "The times rise by " + std::to_string(time.step) +
                           " from line to line, which is a rate of 50 to 20,000 Hz neither in s nor in ms.",
                       std::to_string(time.step), "steps of 0.00005 to 0.02 s, or 0.05 to 20 ms");
}

} // namespace

bool counts_samples(const TextLayout& layout, std::size_t column) {
    const TextColumn& which = layout.columns[column];
    if (which.named)
        return !seconds_in(which.unit) &&
               any_of_words(which.name, {"frame", "frames", "sample", "samples", "index", "no", "nr",
                                         "number", "row", "item", "count"});
    const auto first = first_numbers(layout, column);
    return first.quantum == 1 && first.values.size() >= 3 && rises_evenly(first) &&
           mean_step(first.values) == 1;
}

Result<std::optional<TimeColumn>> find_time(const TextLayout& layout, const RecordingGiven& given,
                                            std::vector<std::string>& notes) {
    const auto column = time_column(layout);
    if (!column)
        return std::optional<TimeColumn>();
    const auto first = first_numbers(layout, *column);
    if (first.values.size() < 2)
        return std::optional<TimeColumn>(TimeColumn{*column, 0, 0, 1, false}); // the lines say what is wrong
    TimeColumn time{*column, usual_step(first), first.quantum, 1, false};
    bool stands_still = false;
    for (std::size_t i = 1; i < first.values.size(); ++i)
        stands_still = stands_still || first.values[i] == first.values[i - 1];
    if (stands_still && given.rate_hz && time.step >= 0) {
        notes.push_back("The times in column " + std::to_string(*column + 1) +
                        " are written too coarsely to be checked; the rate given is used.");
        return std::optional<TimeColumn>();
    }
    if (!(time.step > 0))
        return refuse_time(layout, *column, "The times do not rise from line to line.",
                           shown(layout.first_rows[1]),
                           "times that rise by equal steps, written finely enough; or the rate");
    const auto seconds = unit_of_time(layout, time);
    if (!seconds)
        return seconds.refusal();
    time.seconds = *seconds;
    return std::optional<TimeColumn>(time);
}

} // namespace amentum
