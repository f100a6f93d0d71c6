// Lines of one shape: the same characters that are no digits at the same places. A force trace has a handful of shapes
// and millions of lines, so what a shape means (where the wanted cells lie, how many decimals, which sign) is worked out
// once and kept under the bit mask of its places; a line of a known shape is then proved to be one by comparing those
// characters, and its digits need no check of their own, because everything else in the line is a digit.
#pragma once

#include "recordings/inside/text_cells.h"
#include "recordings/inside/text_number.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace amentum {

inline constexpr std::size_t longest_shape = 56; // bytes of a line without its end
inline constexpr std::size_t most_wanted = 5;    // the time, two vertical forces, two lateral ones

// short: up to eight characters; wide: up to 16; cut: longer, its first 16 hold the mark; any: read with care.
enum class CellKind : std::uint8_t { short_cell, wide_cell, cut_cell, any_cell };

struct WantedCell {
    double divisor; // ten to the decimals, with the cell's sign
    TwoWords above; // the digits behind the mark, in the word that ends with the cell
    TwoWords below; // those before it, which move up by one byte
    CellKind kind;
    std::uint8_t begin, end; // of the cell
    std::uint8_t read_end;   // of the word
};

struct LineShape {
    std::uint64_t places =
        0; // of the characters that are no digits, the line end the highest; 0: no shape yet
    std::uint64_t words = 0; // of eight bytes, that hold the line
    std::array<std::uint64_t, 8> mask{}, value{};
    std::array<WantedCell, most_wanted> wanted{};

    // The places are known to agree: are the characters there the same?
    bool has(const char* line) const {
        std::uint64_t differ = 0;
        for (std::size_t i = 0; i < words; ++i) {
            std::uint64_t word;
            std::memcpy(&word, line + 8 * i, 8);
            differ |= (word & mask[i]) ^ value[i];
        }
        return differ == 0;
    }
};

class LineShapes {
public:
    LineShapes(CellRule rule, char line_end, std::size_t columns, std::vector<std::size_t> wanted)
        : rule_(rule), line_end_(line_end), columns_(columns), wanted_(std::move(wanted)), shapes_(64) {}

    // Where the shape of a line with such places is kept, if any is.
    LineShape& kept_for(std::uint64_t places) { return shapes_[(places * 0x9E3779B97F4A7C15) >> 58]; }

    // Learns the line's shape; false when it has none and must be read with care. 64 bytes from its beginning on must be
    // readable.
    bool learn(const char* line, std::uint64_t places, LineShape& shape) const;

private:
    bool find_cells(std::string_view line, std::vector<std::string_view>& cells) const;

    CellRule rule_;
    char line_end_;
    std::size_t columns_;
    std::vector<std::size_t> wanted_; // the time first
    std::vector<LineShape> shapes_;
};

// Digits picked out of the word that ends with the cell; the masks keep the low four bits of a digit, its value.
template <class Word>
inline std::uint64_t digits_of(const char* line, const WantedCell& cell) {
    Word word;
    std::memcpy(&word, line + cell.read_end - sizeof(Word), sizeof(Word));
    constexpr unsigned unused =
        8 * (sizeof(TwoWords) - sizeof(Word)); // the masks belong to the word's upper end
    return digits_in(static_cast<Word>((word & static_cast<Word>(cell.above >> unused)) |
                                       (word & static_cast<Word>(cell.below >> unused)) << 8));
}

inline double over(std::uint64_t digits, const WantedCell& cell) {
    return static_cast<double>(static_cast<std::int64_t>(digits)) / cell.divisor;
}

// As read_sample and read_time, and with the same answers to the last bit.
bool read_longer(const char* line, const WantedCell& cell, char mark, float& sample);
bool read_longer(const char* line, const WantedCell& cell, char mark, double& time);

template <class Float>
[[gnu::always_inline]] inline bool read_wanted(const char* line, const WantedCell& cell, char mark,
                                               Float& value) {
    if (cell.kind != CellKind::short_cell) [[unlikely]]
        return read_longer(line, cell, mark, value);
    value = static_cast<Float>(over(digits_of<std::uint64_t>(line, cell), cell));
    return true;
}

} // namespace amentum
