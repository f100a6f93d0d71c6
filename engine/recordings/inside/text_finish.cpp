#include "recordings/inside/text_table.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace amentum {
namespace {

constexpr double highest_newtons = 100000; // ten tonnes: beyond any plate that people stand on

// Sums and maxima in sixteen lanes, so that one need not wait for the other; the order is fixed.
constexpr std::size_t lanes = 16;

double mean_of(const std::vector<float>& samples) {
    double sums[lanes] = {};
    const std::size_t whole = samples.size() - samples.size() % lanes;
    for (std::size_t i = 0; i < whole; i += lanes)
        for (std::size_t lane = 0; lane < lanes; ++lane)
            sums[lane] += static_cast<double>(samples[i + lane]);
    double sum = 0;
    for (const double each : sums)
        sum += each;
    for (std::size_t i = whole; i < samples.size(); ++i)
        sum += static_cast<double>(samples[i]);
    return sum / static_cast<double>(samples.size());
}

float highest_of(const std::vector<float>& samples) {
    float highest[lanes] = {};
    const std::size_t whole = samples.size() - samples.size() % lanes;
    for (std::size_t i = 0; i < whole; i += lanes)
        for (std::size_t lane = 0; lane < lanes; ++lane)
            highest[lane] = std::max(highest[lane], std::abs(samples[i + lane]));
    float most = *std::max_element(highest, highest + lanes);
    for (std::size_t i = whole; i < samples.size(); ++i)
        most = std::max(most, std::abs(samples[i]));
    return most;
}

std::string separator_words(char separator) {
    switch (separator) {
    case '\t':
        return "Tab-separated";
    case ';':
        return "Separated by semicolons";
    case ',':
        return "Separated by commas";
    case '|':
        return "Separated by vertical bars";
    case ' ':
        return "Separated by blanks";
    default:
        return "One column";
    }
}

bool agree(double a, double b, double share) {
    return std::abs(a - b) <= share * b;
}

} // namespace

// From the times, when there are any: the mean rate, and the person's, the header's or the whole number next to it
// when the times, as finely as they are written, cannot tell the two apart.
Result<double> TextTable::rate(const RecordingGiven& given) {
    if (!chosen_.time) {
        rate_source_ = given.rate_hz ? "as given" : "from the header, " + layout_.header_rate_line;
        if (given.rate_hz && layout_.header_rate && !agree(*given.rate_hz, *layout_.header_rate, 0.01))
            chosen_.notes.push_back("The header says " + with_thousands(*layout_.header_rate) + " Hz in " +
                                    layout_.header_rate_line + ", but the rate given is used.");
        return given.rate_hz ? *given.rate_hz : layout_.header_rate.value_or(0);
    }
    const TimeColumn& time = *chosen_.time;
    const std::string column = "column " + std::to_string(time.column + 1);
    const double span = last_time_ - first_time_;
    const double step = span / static_cast<double>(samples_ - 1);
    const double measured = 1 / (step * time.seconds);
    const double doubt = std::max(time.quantum / span, 1e-6);
    const std::size_t first = std::min(samples_, layout_.first_rows.size());
    if (!agree(step, time.step,
               0.001 + 0.2 / static_cast<double>(first) +
                   2 * time.quantum / (time.step * static_cast<double>(first))))
        return Refusal{RefusalCode::wrong_rate,
                       "The times are not even: their steps change on the way, from " +
                           format_shortest(time.step) + " to a mean of " + format_shortest(step) + ".",
                       column, format_shortest(step), "equal steps"};
    if (given.rate_hz && !agree(measured, *given.rate_hz, std::max(0.01, doubt)))
        return Refusal{RefusalCode::wrong_rate,
                       "The times in " + column + " tell " + format_fixed(measured, 1) + " Hz, but " +
                           with_thousands(*given.rate_hz) + " Hz was given.",
                       "rate_hz", format_shortest(*given.rate_hz),
                       format_fixed(measured, 1) + " Hz, or none given"};
    if (layout_.header_rate && !agree(measured, *layout_.header_rate, std::max(0.01, doubt)))
        chosen_.notes.push_back("The header says " + with_thousands(*layout_.header_rate) + " Hz in " +
                                layout_.header_rate_line +
                                ", but the times tell another rate, which is used.");
    rate_source_ = "from the time column";
    for (const double round :
         {given.rate_hz.value_or(0), layout_.header_rate.value_or(0), std::round(measured)})
        if (round > 0 && agree(measured, round, doubt))
            return round;
    return measured;
}

// Factors, sign and the limit; the numbers were kept as written until now.
std::optional<Refusal> TextTable::turn_to_newtons(ForceRecording& recording) {
    std::vector<double> means;
    const std::size_t plates = chosen_.vertical.size();
    for (std::size_t p = 0; p < plates; ++p)
        means.push_back(mean_of(series_[p]) * chosen_.vertical[p].newtons);
    double largest = 0;
    for (const double mean : means)
        largest = std::max(largest, std::abs(mean));
    for (std::size_t s = 0; s < series_.size(); ++s) {
        const bool vertical = s < plates;
        double newtons = vertical ? chosen_.vertical[s].newtons : chosen_.lateral[s - plates].newtons;
        if (vertical && means[s] < 0 && -means[s] >= 0.1 * largest) {
            newtons = -newtons;
            chosen_.notes.push_back("The force in column " + std::to_string(columns_[s] + 1) +
                                    " points down in the file; its sign was turned.");
        }
        if (newtons != 1)
            for (float& sample : series_[s])
                sample = static_cast<float>(static_cast<double>(sample) * newtons);
        const float highest = highest_of(series_[s]);
        if (!(static_cast<double>(highest) <= highest_newtons))
            return refuse_range("column " + std::to_string(columns_[s] + 1), static_cast<double>(highest),
                                -highest_newtons, highest_newtons, "N", "Is the unit the right one?");
        auto& plate = recording.plates[s % plates];
        (vertical ? plate.vertical : plate.lateral) = std::move(series_[s]);
    }
    return std::nullopt;
}

void TextTable::describe(ForceRecording& recording, const std::string& rate_from) {
    const auto called = [&](std::size_t c) {
        return std::to_string(c + 1) +
               (layout_.columns[c].named ? " '" + shown(layout_.columns[c].name) + "'" : "");
    };
    const std::size_t lines = layout_.header_lines;
    recording.notes.push_back(
        separator_words(layout_.rule.separator) + ", decimal " +
        (layout_.rule.mark == ',' ? "comma, " : "point, ") +
        (lines == 0 ? "no header line"
                    : std::to_string(lines) + (lines == 1 ? " header line" : " header lines")) +
        ", " + with_thousands(std::round(recording.rate_hz * 1000) / 1000) + " Hz " + rate_from + ".");
    if (chosen_.time && chosen_.time->unit_guessed)
        recording.notes.push_back("The times in column " + called(chosen_.time->column) +
                                  " have no unit; they were taken as " +
                                  (chosen_.time->seconds == 1 ? "seconds." : "milliseconds."));
    for (const auto& column : chosen_.vertical)
        recording.notes.push_back(
            "Column " + called(column.column) + " is the vertical force" +
            (column.side == Side::none ? "." : " of the " + word(column.side) + " foot."));
    for (const auto& column : chosen_.lateral)
        recording.notes.push_back("Column " + called(column.column) + " is a lateral force.");
    recording.notes.insert(recording.notes.end(), chosen_.notes.begin(), chosen_.notes.end());
}

Result<ForceRecording> TextTable::finish(const RecordingGiven& given) {
    if (samples_ < 2)
        return Refusal{RefusalCode::out_of_range, "The file holds fewer than 2 samples.", "file",
                       std::to_string(samples_) + (samples_ == 1 ? " sample" : " samples"),
                       "2 to " + with_thousands(static_cast<double>(most_samples)) + " samples"};
    const auto found = rate(given);
    if (!found)
        return found.refusal();
    if (!(*found >= lowest_rate_hz && *found <= highest_rate_hz))
        return Refusal{RefusalCode::wrong_rate,
                       "The file has " + format_shortest(*found) +
                           " samples a second; a force trace has 50 to 20,000.",
                       "rate_hz", format_shortest(*found) + " Hz", "50 to 20,000 Hz"};
    ForceRecording recording{*found, {}, {}};
    for (const auto& column : chosen_.vertical)
        recording.plates.push_back({layout_.columns[column.column].name, column.side, {}, {}});
    if (auto refusal = turn_to_newtons(recording))
        return *refusal;
    describe(recording, rate_source_);
    return recording;
}

} // namespace amentum
