#include "recordings/inside/text_table.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

constexpr std::size_t reach = 16; // bytes before the end of a cell that the quick ways look at
constexpr std::size_t ends_of_text =
    192; // near either end of the text its bytes are copied to have room around them

} // namespace

std::size_t TextTable::room_for(std::size_t lines) {
    const std::size_t room = std::min(lines, most_samples - samples_);
    for (auto& each : series_)
        each.resize(samples_ + room);
    return room;
}

void TextTable::keep(std::size_t lines) {
    samples_ += lines;
    line_ += lines;
    for (auto& each : series_)
        each.resize(samples_);
}

std::size_t TextTable::take_narrow_lines(std::string_view text, std::size_t from) {
    const std::size_t left = text.size() - from;
    if (samples_ == 0 || blank_line_)
        return 0;
    if (from >= reach && left >= ends_of_text)
        return take_shaped_lines(text.data() + from, std::min(scan_block, left / 64 * 64));
    std::array<char, reach + ends_of_text + 64> around;
    around.fill('0');
    const std::size_t copied = std::min(left, ends_of_text);
    std::copy_n(text.data() + from, copied, around.data() + reach);
    return take_shaped_lines(around.data() + reach, ends_of_text + 64);
}

// Needs 16 readable bytes before; whole chunks of 64 bytes. Only lines that begin 64 bytes before the end are looked at.
std::size_t TextTable::take_shaped_lines(const char* lines, std::size_t bytes) {
    masks_.scan(lines, bytes, layout_.line_end);
    if (columns_.size() == 1)
        return chosen_.time ? take_shapes<true, 1>(lines, bytes) : take_shapes<false, 1>(lines, bytes);
    if (columns_.size() == 2)
        return chosen_.time ? take_shapes<true, 2>(lines, bytes) : take_shapes<false, 2>(lines, bytes);
    return chosen_.time ? take_shapes<true, 4>(lines, bytes) : take_shapes<false, 4>(lines, bytes);
}

template <bool timed, std::size_t most_series>
std::size_t TextTable::take_shapes(const char* lines, std::size_t bytes) {
    const TimeColumn time = chosen_.time.value_or(TimeColumn{});
    const double allowed = allowed_off(time.step, time.quantum);
    const std::size_t series = most_series <= 2 ? most_series : columns_.size();
    const std::size_t most = room_for(bytes / usual_bytes_ + 8);
    const char mark = layout_.rule.mark;
    std::array<float*, most_series> out{};
    for (std::size_t s = 0; s < series; ++s)
        out[s] = series_[s].data() + samples_;
    double last_time = last_time_;
    std::size_t at = 0, count = 0;
    for (; at + 64 <= bytes && count < most; ++count) {
        const std::uint64_t ends = masks_.line_ends_from(at);
        const std::uint64_t places = masks_.others_from(at) & (ends ^ (ends - 1));
        const char* line = lines + at;
        LineShape& shape = shapes_.kept_for(places);
        if (shape.places != places || ends == 0 || !shape.has(line)) [[unlikely]]
            if (ends == 0 || !shapes_.learn(line, places, shape))
                break;
        double now = 0;
        bool plain = !timed || read_wanted(line, shape.wanted[0], mark, now);
        plain &= !timed || is_even_step(now - last_time, time.step, allowed);
        for (std::size_t s = 0; s < series; ++s) {
            float sample = 0;
            plain &= read_wanted(line, shape.wanted[timed + s], mark, sample);
            out[s][count] = sample;
        }
        if (!plain) [[unlikely]]
            break;
        last_time = now;
        at += static_cast<std::size_t>(std::countr_zero(ends)) + 1;
    }
    keep(count);
    last_time_ = timed ? last_time : last_time_;
    return at;
}

std::size_t TextTable::take_wide_lines(std::string_view text, std::size_t from) {
    const std::size_t stride = layout_.columns.size() + layout_.trailing_separator;
    const char separator = layout_.rule.separator == '\0' ? layout_.line_end : layout_.rule.separator;
    const char line_end = layout_.line_end, mark = layout_.rule.mark;
    if (from < reach || samples_ == 0 || blank_line_)
        return 0;
    ends_.scan(text.substr(from), {separator, line_end, separator == ' '});
    const char* base = text.data() + from;
    const bool trailing = layout_.trailing_separator, timed = chosen_.time.has_value();
    const TimeColumn time = chosen_.time.value_or(TimeColumn{});
    const double allowed = allowed_off(time.step, time.quantum);
    const std::size_t most = room_for(ends_.count() / stride);
    double last_time = last_time_;
    std::size_t count = 0;
    const std::uint32_t* ends = ends_.positions();
    for (; count < most; ++count, ends += stride) {
        const std::uint32_t stop = ends[stride - 1];
        const std::uint32_t carriage = base[static_cast<std::ptrdiff_t>(stop) - 1] == '\r';
        bool plain = base[stop] == line_end;
        for (std::size_t c = 0; c + 1 < stride; ++c)
            plain &= base[ends[c]] == separator;
        if (!plain || (trailing && ends[stride - 2] + 1 + carriage != stop))
            break;
        const auto cell = [&](std::size_t c, auto read, auto& value) {
            const char* begin = base + ((ends - 1)[c] + 1); // wraps to 0 at the start
            const char* end = base + (ends[c] - (c + 1 == stride ? carriage : 0));
            while (begin < end && *begin == ' ')
                ++begin;
            return read(begin, end, mark, value);
        };
        double now = 0;
        if (timed &&
            !(cell(time.column, read_time, now) && is_even_step(now - last_time, time.step, allowed)))
            break;
        for (std::size_t s = 0; s < columns_.size(); ++s)
            plain &= cell(columns_[s], read_sample, series_[s][samples_ + count]);
        if (!plain)
            break;
        last_time = now;
    }
    const std::size_t bytes = count == 0 ? 0 : (ends - 1)[0] + std::size_t{1};
    keep(count);
    last_time_ = timed ? last_time : last_time_;
    return bytes;
}

} // namespace amentum
