// Where things stand in a block of text, found 64 bytes at a time as bit masks.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string_view>
#if defined(__SSE2__)
#include <emmintrin.h>
#endif

namespace amentum {

inline constexpr std::size_t scan_block = 4096;

inline std::uint64_t places_of(const char* chunk, char wanted) {
    std::uint64_t places = 0;
#if defined(__SSE2__)
    const __m128i pattern = _mm_set1_epi8(wanted);
    for (int quarter = 0; quarter < 4; ++quarter) {
        const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(chunk) + quarter);
        const auto found = static_cast<std::uint32_t>(_mm_movemask_epi8(_mm_cmpeq_epi8(bytes, pattern)));
        places |= static_cast<std::uint64_t>(found) << (16 * quarter);
    }
#else
    for (int i = 0; i < 64; ++i)
        places |= static_cast<std::uint64_t>(chunk[i] == wanted) << i;
#endif
    return places;
}

inline std::uint64_t places_of_no_digit(const char* chunk) {
    std::uint64_t places = 0;
#if defined(__SSE2__)
    const __m128i shift =
        _mm_set1_epi8(static_cast<char>(127 - '9')); // '9' becomes 127, '0' 118, all else is lower
    const __m128i below = _mm_set1_epi8(127 - 9);
    for (int quarter = 0; quarter < 4; ++quarter) {
        const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(chunk) + quarter);
        const __m128i other = _mm_cmplt_epi8(_mm_add_epi8(bytes, shift), below);
        places |= static_cast<std::uint64_t>(static_cast<std::uint32_t>(_mm_movemask_epi8(other)))
                  << (16 * quarter);
    }
#else
    for (int i = 0; i < 64; ++i)
        places |= static_cast<std::uint64_t>(chunk[i] < '0' || chunk[i] > '9') << i;
#endif
    return places;
}

// Line ends and characters that are no digits, of up to scan_block bytes in whole chunks of 64.
class LineMasks {
public:
    void scan(const char* text, std::size_t bytes, char line_end) {
        for (std::size_t i = 0; i < bytes / 64; ++i) {
            others_[i] = places_of_no_digit(text + 64 * i);
            ends_[i] = places_of(text + 64 * i, line_end);
        }
        others_[bytes / 64] = ends_[bytes / 64] = 0;
    }

    // Of the 57 bytes from `from` on; the bits above belong to bytes behind them, though not to all.
    std::uint64_t line_ends_from(std::size_t from) const { return window(ends_, from); }
    std::uint64_t others_from(std::size_t from) const { return window(others_, from); }

private:
    static std::uint64_t window(const std::uint64_t* words, std::size_t from) {
        std::uint64_t window;
        std::memcpy(&window, reinterpret_cast<const char*>(words) + from / 8, 8);
        return window >> (from % 8);
    }

    std::uint64_t others_[scan_block / 64 + 1];
    std::uint64_t ends_[scan_block / 64 + 1];
};

struct CellMarks {
    char separator; // the line end again when there is one column
    char line_end;
    bool runs; // several separators in a row count as one (blanks)
};

// The positions of every separator, line end and quote, written out without a branch for each cell: the first of the two
// stages of [Langdale2019].
class CellEnds {
public:
    // Of the first scan_block bytes of the text, or of all of it when shorter.
    void scan(std::string_view text, CellMarks marks) {
        count_ = 0;
        text = text.substr(0, scan_block);
        std::uint64_t separator_before = 1; // the byte before was a separator or a line end
        for (std::size_t at = 0; at < text.size(); at += 64) {
            char padded[64];
            const char* chunk = text.data() + at;
            if (text.size() - at < 64) {
                std::memset(padded, 'x', sizeof padded);
                std::memcpy(padded, chunk, text.size() - at);
                chunk = padded;
            }
            std::uint64_t separators = places_of(chunk, marks.separator);
            const std::uint64_t line_ends = places_of(chunk, marks.line_end);
            if (marks.runs) {
                const std::uint64_t either = separators | line_ends;
                separators &= ~(either << 1 | separator_before);
                separator_before = either >> 63;
            }
            write_out(separators | line_ends | places_of(chunk, '"'), static_cast<std::uint32_t>(at));
        }
    }

    std::size_t count() const { return count_; }
    const std::uint32_t* positions() const { return positions_ + 1; } // [-1] is one before the text

private:
    // std::popcount calls a function where the processor is not known to count bits.
    static std::size_t bits_in(std::uint64_t word) {
        word -= (word >> 1) & 0x5555555555555555;
        word = (word & 0x3333333333333333) + ((word >> 2) & 0x3333333333333333);
        word = (word + (word >> 4)) & 0x0F0F0F0F0F0F0F0F;
        return static_cast<std::size_t>((word * 0x0101010101010101) >> 56);
    }

    // Eight at a time, though fewer may be left: what is written too much is overwritten by the next.
    void write_out(std::uint64_t places, std::uint32_t first) {
        const auto found = bits_in(places);
        std::uint32_t* out = positions_ + 1 + count_;
        for (std::size_t written = 0; written < found; written += 8)
            for (int i = 0; i < 8; ++i) {
                *out++ = first + static_cast<std::uint32_t>(std::countr_zero(places));
                places &= places - 1;
            }
        count_ += found;
    }

    std::uint32_t positions_[scan_block + 72] = {0xFFFFFFFF};
    std::size_t count_ = 0;
};

} // namespace amentum
