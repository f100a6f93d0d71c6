#include "recordings/inside/c3d_stream.h"

#include "recordings/inside/c3d_refusal.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr std::size_t block_rows = 256;      // fixed, so that the scaling is done several at a time
constexpr std::size_t first_reserve = 65536; // samples, before the file has shown that it holds more

struct SignedLeastFirst {
    using Raw = std::int32_t;
    static constexpr std::size_t bytes = 2;
    static Raw load(const char* at) { return static_cast<std::int16_t>(c3d_unsigned_least_first(at)); }
};
struct SignedMostFirst {
    using Raw = std::int32_t;
    static constexpr std::size_t bytes = 2;
    static Raw load(const char* at) { return static_cast<std::int16_t>(c3d_unsigned_most_first(at)); }
};
struct UnsignedLeastFirst {
    using Raw = std::int32_t;
    static constexpr std::size_t bytes = 2;
    static Raw load(const char* at) { return c3d_unsigned_least_first(at); }
};
struct UnsignedMostFirst {
    using Raw = std::int32_t;
    static constexpr std::size_t bytes = 2;
    static Raw load(const char* at) { return c3d_unsigned_most_first(at); }
};
struct RealIntel {
    using Raw = float;
    static constexpr std::size_t bytes = 4;
    static Raw load(const char* at) { return c3d_real_intel(at); }
};
struct RealDec {
    using Raw = float;
    static constexpr std::size_t bytes = 4;
    static Raw load(const char* at) { return c3d_real_dec(at); }
};
struct RealMips {
    using Raw = float;
    static constexpr std::size_t bytes = 4;
    static Raw load(const char* at) { return c3d_real_mips(at); }
};

// How rows follow each other: `row` bytes on, and `gap` bytes more behind each `a_frame` of them, of which
// `left_in_frame` are still to come before the first gap.
struct Steps {
    std::size_t row;
    std::size_t gap;
    std::uint64_t a_frame;
    std::uint64_t left_in_frame;
};

Steps steps_of(const C3dDataLayout& layout, std::uint64_t left_in_frame) {
    constexpr std::uint64_t never = std::uint64_t{1} << 62;
    const auto row = static_cast<std::size_t>(layout.row_bytes());
    const auto gap = static_cast<std::size_t>(layout.point_bytes());
    if (gap == 0 || layout.samples_a_frame == 1)
        return {row + gap, 0, never, never};
    return {row, gap, layout.samples_a_frame, left_in_frame};
}

// Moves on by `count` rows; returns how many bytes that is.
std::size_t step_on(Steps& steps, std::size_t count) {
    if (count < steps.left_in_frame) {
        steps.left_in_frame -= count;
        return count * steps.row;
    }
    const std::uint64_t beyond = count - steps.left_in_frame;
    steps.left_in_frame = steps.a_frame - beyond % steps.a_frame;
    return count * steps.row + static_cast<std::size_t>(1 + beyond / steps.a_frame) * steps.gap;
}

// One channel of `count` rows, which stands at `from` in the first of them.
template <class Load>
void gather(const char* from, std::size_t count, Steps steps, typename Load::Raw* into) {
    const std::size_t row = steps.row;
    std::size_t offset = 0;
    for (std::size_t done = 0; done < count;) {
        const auto run = static_cast<std::size_t>(std::min<std::uint64_t>(count - done, steps.left_in_frame));
        std::size_t i = 0;
        for (; i + 4 <= run; i += 4, offset += 4 * row) {
            into[done + i] = Load::load(from + offset);
            into[done + i + 1] = Load::load(from + offset + row);
            into[done + i + 2] = Load::load(from + offset + 2 * row);
            into[done + i + 3] = Load::load(from + offset + 3 * row);
        }
        for (; i < run; ++i, offset += row)
            into[done + i] = Load::load(from + offset);
        done += run;
        offset += steps.gap;
        steps.left_in_frame = steps.a_frame;
    }
}

// The sum of a series' terms over a block. One term, the usual case, needs no sums kept.
template <class Raw>
void scale_one(const Raw* __restrict raw, const C3dTerm& term, float* __restrict values) {
    const double offset = term.offset, weight = term.weight;
    for (std::size_t i = 0; i < block_rows; ++i)
        values[i] = static_cast<float>((static_cast<double>(raw[i]) - offset) * weight);
}

template <class Raw>
void scale_and_add(const Raw* __restrict raw, const C3dTerm& term, double* __restrict sums) {
    const double offset = term.offset, weight = term.weight;
    for (std::size_t i = 0; i < block_rows; ++i)
        sums[i] += (static_cast<double>(raw[i]) - offset) * weight;
}

void narrow(const double* __restrict sums, float* __restrict values) {
    for (std::size_t i = 0; i < block_rows; ++i)
        values[i] = static_cast<float>(sums[i]);
}

template <class Load>
void sum_terms(const C3dSeries& series, const char* from, std::size_t count, const Steps& steps,
               typename Load::Raw* raw, float* values) {
    if (series.size() == 1) {
        gather<Load>(from + series[0].channel * Load::bytes, count, steps, raw);
        return scale_one(raw, series[0], values);
    }
    double sums[block_rows] = {};
    for (const C3dTerm& term : series) {
        gather<Load>(from + term.channel * Load::bytes, count, steps, raw);
        scale_and_add(raw, term, sums);
    }
    narrow(sums, values);
}

// A float's magnitude is ordered as its bits are, and what is no number lies above all numbers.
bool all_are_forces(const float* values) {
    constexpr auto limit = std::bit_cast<std::int32_t>(static_cast<float>(greatest_force));
    std::int32_t beyond = 0;
    for (std::size_t i = 0; i < block_rows; ++i)
        beyond |= (std::bit_cast<std::int32_t>(values[i]) & 0x7FFFFFFF) > limit ? 1 : 0;
    return beyond == 0;
}

bool is_force(float value) {
    return std::abs(value) <= static_cast<float>(greatest_force);
}

Refusal refuse_sample(std::uint64_t sample, std::size_t series, double value) {
    return refuse_c3d(
        "sample " + std::to_string(sample + 1),
        "Sample " + std::to_string(sample + 1) + " of series " + std::to_string(series + 1) +
            " read from the C3D file is " + (std::isfinite(value) ? format_shortest(value) : "no number") +
            ", but a force lies within 1,000,000 N: its scaling or the file is wrong.",
        std::isfinite(value) ? format_shortest(value) : "not a number", "-1000000 to 1000000 N");
}

} // namespace

C3dStream::C3dStream(const C3dDataLayout& layout, std::vector<C3dSeries> series)
    : layout_(layout), series_(std::move(series)), kept_(series_.size()) {
    const std::uint64_t samples = layout.frames * layout.samples_a_frame;
    for (auto& each : kept_)
        each.reserve(static_cast<std::size_t>(std::min<std::uint64_t>(samples, first_reserve)));
}

void C3dStream::move_on(std::uint64_t bytes) {
    in_frame_ += bytes;
    frame_ += in_frame_ / layout_.frame_bytes();
    in_frame_ %= layout_.frame_bytes();
}

template <class Load>
void C3dStream::decode_rows(Rows rows) {
    typename Load::Raw raw[block_rows] = {};
    float values[block_rows];
    Steps steps = steps_of(layout_, rows.left_in_frame);
    for (std::size_t offset = 0; rows.count > 0;) {
        const auto count = static_cast<std::size_t>(std::min<std::uint64_t>(rows.count, block_rows));
        for (std::size_t s = 0; s < series_.size(); ++s) {
            sum_terms<Load>(series_[s], rows.from + offset, count, steps, raw, values);
            std::fill(values + count, values + block_rows, 0.0F);
            if (!all_are_forces(values)) {
                const float* bad = std::find_if_not(values, values + count, is_force);
                refused_ = refuse_sample(kept_[s].size() + static_cast<std::size_t>(bad - values), s,
                                         static_cast<double>(*bad));
                return;
            }
            kept_[s].insert(kept_[s].end(), values, values + count);
        }
        rows.count -= count;
        offset += rows.count > 0 ? step_on(steps, count) : 0;
    }
}

void C3dStream::decode(Rows rows) {
    const std::uint64_t samples = layout_.frames * layout_.samples_a_frame;
    for (auto& each : kept_)
        if (each.size() + rows.count > each.capacity())
            each.reserve(static_cast<std::size_t>(samples));
    const bool most_first = layout_.processor == C3dProcessor::mips;
    if (layout_.storage == C3dStorage::integer) {
        if (layout_.unsigned_analog)
            return most_first ? decode_rows<UnsignedMostFirst>(rows) : decode_rows<UnsignedLeastFirst>(rows);
        return most_first ? decode_rows<SignedMostFirst>(rows) : decode_rows<SignedLeastFirst>(rows);
    }
    if (layout_.processor == C3dProcessor::dec)
        return decode_rows<RealDec>(rows);
    return most_first ? decode_rows<RealMips>(rows) : decode_rows<RealIntel>(rows);
}

// A row that no piece holds whole; returns how many bytes of it were taken.
std::size_t C3dStream::take_row_part(std::string_view bytes) {
    const auto row_bytes = static_cast<std::size_t>(layout_.row_bytes());
    const std::size_t part = std::min(bytes.size(), row_bytes - row_.size());
    row_.append(bytes.substr(0, part));
    if (row_.size() == row_bytes) {
        decode({row_.data(), 1, 1});
        row_.clear();
    }
    return part;
}

// As many whole rows as the piece holds, over the points of the frames between them.
std::size_t C3dStream::take_rows(std::string_view bytes) {
    const std::uint64_t row = layout_.row_bytes(), frame = layout_.frame_bytes();
    const std::uint64_t left = (frame - in_frame_) / row; // rows left in this frame
    std::uint64_t rows = std::min<std::uint64_t>(bytes.size() / row, left), taken = rows * row;
    if (rows == left) {
        const std::uint64_t frames =
            std::min((bytes.size() - taken) / frame, layout_.frames - frame_ - 1); // whole ones behind it
        rows += frames * layout_.samples_a_frame;
        taken += frames * frame;
    }
    decode({bytes.data(), rows, left});
    return static_cast<std::size_t>(taken);
}

std::optional<Refusal> C3dStream::take(std::string_view bytes) {
    while (!bytes.empty() && !complete() && !refused_) {
        std::size_t taken;
        if (in_frame_ < layout_.point_bytes())
            taken = static_cast<std::size_t>(
                std::min<std::uint64_t>(bytes.size(), layout_.point_bytes() - in_frame_));
        else if (!row_.empty() || bytes.size() < layout_.row_bytes())
            taken = take_row_part(bytes);
        else
            taken = take_rows(bytes);
        move_on(taken);
        bytes.remove_prefix(taken);
    }
    return refused_;
}

} // namespace amentum
