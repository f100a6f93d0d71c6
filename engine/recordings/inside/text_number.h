// One cell of text as a number, fast and exactly right.
//
// A cell of at most 16 characters (digits, one decimal mark, a leading '-') is turned eight digits at a time inside a
// 64-bit word [Lemire2021]; the digits as a whole number m with d decimals give m / 10^d in one division of two exact
// doubles, which is the correctly rounded double [Clinger1990]. Rounding that to float once more is right unless it
// fell exactly half way between two floats; only then, and for everything unusual ('+', exponents, very long cells),
// std::from_chars decides. So every sample is the float nearest to the decimal written.
// A cell of 17 to 64 characters: its first 16 give a lower bound, the next number up an upper one; when both round to
// the same float, that is it.
// Reach: the 16 bytes before `end` must be readable. Little-endian machines only (asserted while compiling).
#pragma once

#include <bit>
#include <cstdint>
#include <cstring>
#include <optional>
#include <string_view>

namespace amentum {

static_assert(std::endian::native == std::endian::little);

// The digits of a cell as a whole number, and how many of them stand after the mark.
struct WrittenDecimal {
    std::uint64_t digits;
    unsigned decimals;
};

__extension__ using TwoWords = unsigned __int128;

// Powers of ten, and below them the same with a minus: dividing by one sets the sign, that of zero too.
inline constexpr double ten_to_the[32] = {
    1,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10,  1e11,  1e12,  1e13,  1e14,  1e15,
    -1, -1e1, -1e2, -1e3, -1e4, -1e5, -1e6, -1e7, -1e8, -1e9, -1e10, -1e11, -1e12, -1e13, -1e14, -1e15};

template <class Word>
constexpr Word in_every_byte(unsigned char byte) {
    return ~Word{0} / 255 * byte;
}

// Eight digit values, the first in the lowest byte, as one number: pairs, then fours, then all eight [Lemire2021].
inline std::uint64_t eight_digits(std::uint64_t word) {
    word = word * 10 + (word >> 8);
    return (((word & 0x000000FF000000FF) * 0x000F424000000064) +
            (((word >> 16) & 0x000000FF000000FF) * 0x0000271000000001)) >>
           32;
}

inline std::uint64_t digits_in(std::uint64_t word) {
    return eight_digits(word);
}
inline std::uint64_t digits_in(TwoWords word) {
    return eight_digits(static_cast<std::uint64_t>(word)) * 100000000 +
           eight_digits(static_cast<std::uint64_t>(word >> 64));
}
inline unsigned zeros_above(std::uint64_t word) {
    return static_cast<unsigned>(std::countl_zero(word));
}
inline unsigned zeros_above(TwoWords word) {
    const auto high = static_cast<std::uint64_t>(word >> 64);
    return high != 0 ? zeros_above(high) : 64 + zeros_above(static_cast<std::uint64_t>(word));
}

// A cell that fits in one word (8 or 16 characters), its last character in the highest byte; false when it is anything
// but digits with at most one mark.
template <class Word>
inline bool read_word(const char* begin, const char* end, char mark, WrittenDecimal& read) {
    constexpr unsigned bits = 8 * sizeof(Word);
    const auto length = static_cast<unsigned>(end - begin);
    Word word;
    std::memcpy(&word, end - sizeof(Word), sizeof(Word));
    word ^= in_every_byte<Word>('0');
    word &= ~Word{0} << (bits - 8 * length); // what stands before the cell becomes zeros
    const Word apart = word ^ in_every_byte<Word>(static_cast<unsigned char>(mark ^ '0'));
    constexpr Word low_bits = in_every_byte<Word>(0x7F);
    const Word marks = ~(((apart & low_bits) + low_bits) | apart | low_bits); // 0x80 where the mark stands
    unsigned digits = length;
    read.decimals = 0;
    if (marks != 0) {
        const unsigned above = zeros_above(marks);
        const unsigned at = bits - 8 - above;
        const Word below = word & ((Word{1} << at) - 1);
        word = (word & ~((Word{0x100} << at) - 1)) | below << 8;
        read.decimals = above / 8;
        --digits;
    }
    read.digits = digits_in(word);
    return (digits != 0) & ((((word + in_every_byte<Word>(0x76)) | word) & in_every_byte<Word>(0x80)) == 0);
}

inline bool read_decimal(const char* begin, const char* end, char mark, WrittenDecimal& read) {
    const auto length = static_cast<std::size_t>(end - begin);
    if (length - 1 < 8)
        return read_word<std::uint64_t>(begin, end, mark, read);
    return length - 1 < 16 && read_word<TwoWords>(begin, end, mark, read);
}

// m < 10^16 fits a signed word, which converts faster.
inline double quotient_of(WrittenDecimal read, bool negative) {
    return static_cast<double>(static_cast<std::int64_t>(read.digits)) /
           ten_to_the[read.decimals + 16 * static_cast<unsigned>(negative)];
}

// Half way between two floats, or so near that rounding twice could differ from rounding once.
inline bool halfway_between_floats(double x) {
    return (std::bit_cast<std::uint64_t>(x) & 0x1FFFFFFF) == 0x10000000;
}

bool read_long_sample(const char* begin, const char* end, char mark, float& sample);
bool read_long_time(const char* begin, const char* end, char mark, double& time);

// The nearest float to the cell; false when the cell is no finite number. 16 bytes before end must be readable.
// Eight characters never come half way between two floats unless exactly: m / 10^d with d < 8 lies further from every
// other such point than a double's rounding.
inline bool read_sample(const char* begin, const char* end, char mark, float& sample) {
    const bool negative = *begin == '-';
    const auto length = static_cast<std::size_t>(end - begin) - negative;
    WrittenDecimal read;
    if (length - 1 < 8 && read_word<std::uint64_t>(begin + negative, end, mark, read)) [[likely]] {
        sample = static_cast<float>(quotient_of(read, negative));
        return true;
    }
    if (length - 1 >= 16 || !read_word<TwoWords>(begin + negative, end, mark, read))
        return read_long_sample(begin, end, mark, sample);
    const double near = quotient_of(read, negative);
    if (halfway_between_floats(near)) [[unlikely]]
        return read_long_sample(begin, end, mark, sample);
    sample = static_cast<float>(near);
    return true;
}

// The same as a double; digits beyond the 16th character are checked, but cut off.
inline bool read_time(const char* begin, const char* end, char mark, double& time) {
    const bool negative = *begin == '-';
    WrittenDecimal read;
    if (!read_decimal(begin + negative, end, mark, read))
        return read_long_time(begin, end, mark, time);
    time = quotient_of(read, negative);
    return true;
}

// For single cells: no bytes before or after the cell are needed.
std::optional<float> parse_sample(std::string_view cell, char mark);
std::optional<double> parse_time(std::string_view cell, char mark);

} // namespace amentum
