// Where the cells of a block of text end: the positions of every separator, line end and quote, found 64 bytes at a
// time as a bit mask and written out without a branch for each cell (the two-stage way of [Langdale2019]).
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

struct CellMarks {
    char separator; // the line end again when there is one column
    char line_end;
    bool runs; // several separators in a row count as one (blanks)
};

inline constexpr std::size_t scan_block = 4096;

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
    static std::uint64_t places_of(const char* chunk, char wanted) {
#if defined(__SSE2__)
        const __m128i pattern = _mm_set1_epi8(wanted);
        std::uint64_t places = 0;
        for (int quarter = 0; quarter < 4; ++quarter) {
            const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(chunk) + quarter);
            const auto found = static_cast<std::uint32_t>(_mm_movemask_epi8(_mm_cmpeq_epi8(bytes, pattern)));
            places |= static_cast<std::uint64_t>(found) << (16 * quarter);
        }
        return places;
#else
        std::uint64_t places = 0;
        for (int i = 0; i < 64; ++i)
            places |= static_cast<std::uint64_t>(chunk[i] == wanted) << i;
        return places;
#endif
    }

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
