#include "recordings/inside/c3d_data_layout.h"

#include "recordings/inside/c3d_refusal.h"
#include "recordings/inside/c3d_text.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double most_frames = 1e9; // 11 days at 1,000 Hz; keeps every count of bytes within 64 bits

struct Told {
    std::string by;
    double frames;
    bool full; // 65,535 is the most 16 bits hold: the true count may be higher
};

// Two 16-bit words, the low one first; or one real.
std::optional<double> long_number(const C3dHead& head, std::string_view group, std::string_view name) {
    const auto words = head.numbers(group, name);
    if (words.empty())
        return std::nullopt;
    return words.size() == 1 ? words[0] : words[0] + 65536 * words[1];
}

std::vector<Told> counts_of_frames(const C3dHead& head) {
    std::vector<Told> all;
    const auto tell = [&](std::string by, double frames, bool full) {
        if (frames >= 1 && frames <= most_frames && frames == std::floor(frames))
            all.push_back({std::move(by), frames, full});
    };
    const auto first = long_number(head, "TRIAL", "ACTUAL_START_FIELD");
    const auto last = long_number(head, "TRIAL", "ACTUAL_END_FIELD");
    if (first && last)
        tell("TRIAL:ACTUAL_START_FIELD and ACTUAL_END_FIELD", *last - *first + 1, false);
    if (const auto frames = head.number("POINT", "LONG_FRAMES"))
        tell("POINT:LONG_FRAMES", *frames, false);
    if (const auto frames = head.number("POINT", "FRAMES"))
        tell("POINT:FRAMES", *frames, *frames == 65535);
    if (head.header.last_frame > 0)
        tell("the header", head.header.last_frame - head.header.first_frame + 1,
             head.header.last_frame == 65535);
    std::stable_sort(all.begin(), all.end(), [](const Told& a, const Told& b) { return a.full < b.full; });
    return all;
}

std::optional<Refusal> find_frames(const C3dHead& head, C3dDataLayout& layout) {
    const auto told = counts_of_frames(head);
    if (told.empty())
        return refuse_c3d(
            "POINT:FRAMES",
            "The C3D file does not say how many frames it holds: neither its header nor POINT:FRAMES, "
            "POINT:LONG_FRAMES or TRIAL:ACTUAL_END_FIELD has a count of at least 1.",
            "", "1 or more frames");
    layout.frames = static_cast<std::uint64_t>(told.front().frames);
    layout.frames_told_by = told.front().by;
    for (const auto& other : told)
        if (!other.full && other.frames != told.front().frames)
            layout.notes.push_back("The number of frames is " + format_shortest(told.front().frames) +
                                   " by " + told.front().by + ", but " + format_shortest(other.frames) +
                                   " by " + other.by + "; the first is used.");
    return std::nullopt;
}

// A count of 16 bits out of a parameter, else out of the header.
Result<std::uint64_t> count_of(const C3dHead& head, std::string_view group, std::string_view name,
                               int in_header) {
    const auto number = head.number(group, name);
    if (!number)
        return static_cast<std::uint64_t>(in_header);
    const std::string field = std::string(group) + ":" + std::string(name);
    if (!(*number >= 0 && *number <= 65535 && *number == std::floor(*number)))
        return refuse_c3d(field, field + " is " + format_shortest(*number) + ", but must be a count.",
                          format_shortest(*number), "0 to 65535");
    return static_cast<std::uint64_t>(*number);
}

void note_difference(C3dDataLayout& layout, const std::string& what, std::uint64_t used, int in_header) {
    if (used != static_cast<std::uint64_t>(in_header))
        layout.notes.push_back("The parameters give " + std::to_string(used) + " " + what + ", the header " +
                               std::to_string(in_header) + "; the parameters are used.");
}

Refusal refuse_rates(double frames_a_second, double rate_hz) {
    return refuse_c3d("ANALOG:RATE",
                      "ANALOG:RATE is " + format_shortest(rate_hz) + " and POINT:RATE " +
                          format_shortest(frames_a_second) +
                          ", but a frame must hold a whole number of analog samples, from 1 to 65535.",
                      format_shortest(rate_hz), "a whole multiple of POINT:RATE", RefusalCode::wrong_rate);
}

bool is_rate(std::optional<double> hz) {
    return hz && std::isfinite(*hz) && *hz > 0;
}

std::optional<Refusal> find_rates(const C3dHead& head, C3dDataLayout& layout) {
    const auto point_rate = head.number("POINT", "RATE");
    const auto analog_rate = head.number("ANALOG", "RATE");
    const double header_rate = static_cast<double>(head.header.frames_a_second);
    layout.frames_a_second = is_rate(point_rate) ? *point_rate : is_rate(header_rate) ? header_rate : 0;
    layout.samples_a_frame = static_cast<std::uint64_t>(head.header.analog_samples_a_frame);
    layout.rate_hz = is_rate(analog_rate)
                         ? *analog_rate
                         : layout.frames_a_second * static_cast<double>(layout.samples_a_frame);
    if (!is_rate(analog_rate) || layout.frames_a_second == 0)
        return std::nullopt;
    const double ratio = *analog_rate / layout.frames_a_second;
    const double whole = std::round(ratio);
    if (!(whole >= 1 && whole <= 65535) || std::abs(ratio - whole) > 1e-3)
        return refuse_rates(layout.frames_a_second, *analog_rate);
    layout.samples_a_frame = static_cast<std::uint64_t>(whole);
    return std::nullopt;
}

std::optional<Refusal> find_storage(const C3dHead& head, C3dDataLayout& layout) {
    const double scale = head.number("POINT", "SCALE").value_or(static_cast<double>(head.header.scale));
    if (!std::isfinite(scale) || scale == 0)
        return refuse_c3d("POINT:SCALE",
                          "POINT:SCALE is " + format_shortest(scale) +
                              ", so nothing tells whether the data are whole numbers or reals.",
                          format_shortest(scale), "above 0 for whole numbers, below 0 for reals");
    layout.storage = scale < 0 ? C3dStorage::real : C3dStorage::integer;
    const auto format = head.texts("ANALOG", "FORMAT");
    const std::string word = format.empty() ? "" : in_capitals(format.front());
    if (!word.empty() && word != "SIGNED" && word != "UNSIGNED")
        return refuse_c3d("ANALOG:FORMAT",
                          "ANALOG:FORMAT is \"" + word + "\", but must be SIGNED or UNSIGNED.", word,
                          "SIGNED, UNSIGNED, or nothing, which means SIGNED");
    layout.unsigned_analog = word == "UNSIGNED";
    return std::nullopt;
}

std::optional<Refusal> find_counts(const C3dHead& head, C3dDataLayout& layout) {
    const auto points = count_of(head, "POINT", "USED", head.header.points);
    if (!points)
        return points.refusal();
    const int rows = std::max(1, head.header.analog_samples_a_frame);
    const auto channels = count_of(head, "ANALOG", "USED", head.header.analog_values_a_frame / rows);
    if (!channels)
        return channels.refusal();
    layout.points = *points;
    layout.channels = *channels;
    note_difference(layout, "points", layout.points, head.header.points);
    if (layout.channels > 0) {
        note_difference(layout, "analog samples a frame", layout.samples_a_frame,
                        head.header.analog_samples_a_frame);
        note_difference(layout, "analog values a frame", layout.samples_a_frame * layout.channels,
                        head.header.analog_values_a_frame);
    }
    return std::nullopt;
}

std::optional<Refusal> find_start(const C3dHead& head, C3dDataLayout& layout) {
    const auto block = count_of(head, "POINT", "DATA_START", head.header.data_block);
    if (!block)
        return block.refusal();
    if (*block < 2)
        return refuse_c3d("POINT:DATA_START",
                          "The data begin at block " + std::to_string(*block) +
                              ", but block 1 is the header.",
                          std::to_string(*block), "block 2 to 65535");
    note_difference(layout, "as the first block of the data", *block, head.header.data_block);
    layout.data_at = (*block - 1) * c3d_block_bytes;
    const std::uint64_t parameters_at =
        static_cast<std::uint64_t>(head.parameter_block - 1) * c3d_block_bytes;
    if (layout.data_at < head.records_end && layout.data_end() > parameters_at)
        return refuse_c3d("POINT:DATA_START",
                          "The data begin at block " + std::to_string(*block) +
                              " and lie over the parameter section, which begins at block " +
                              std::to_string(head.parameter_block) + ".",
                          std::to_string(*block), "data and parameters that do not overlap");
    return std::nullopt;
}

} // namespace

Result<C3dDataLayout> c3d_data_layout(const C3dHead& head) {
    C3dDataLayout layout{head.processor, C3dStorage::integer, false, 0, 0, 0, 0, "", 0, 0, 0, {}};
    for (const auto find : {find_storage, find_rates, find_counts, find_frames, find_start})
        if (auto refusal = find(head, layout))
            return *refusal;
    return layout;
}

} // namespace amentum
