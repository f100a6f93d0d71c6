// How are the numbers of a C3D file written down by the three processors it may come from?
//
//   Intel (mark 84)    whole numbers least byte first; reals IEEE 754, least byte first
//   DEC (mark 85)      whole numbers least byte first; reals in the F format: the two 16-bit words change places,
//                      then the value is a quarter of what IEEE 754 would read, because the exponent is counted
//                      from 128 and the leading bit stands behind the point; an exponent of 0 is the number 0
//   SGI/MIPS (mark 86) whole numbers most byte first; reals IEEE 754, most byte first
// The mark holds for every number of the file [GuideC3D, "Parameter section header", "Number formats"].
// Units: none; these are bytes. Refusals: none; an unknown mark gives nothing.
// What it cannot tell: whether the mark is true. A wrong mark gives wild numbers, which the parts above refuse.
// Example: DEC bytes 80 40 00 00 are 1.0.
#pragma once

#include "values/enum_words.h"

#include <bit>
#include <cstddef>
#include <cstdint>

namespace amentum {

enum class C3dProcessor { intel = 84, dec = 85, mips = 86 };
template <>
inline constexpr std::array<std::pair<C3dProcessor, std::string_view>, 3> words_of<C3dProcessor>{
    {{C3dProcessor::intel, "Intel"}, {C3dProcessor::dec, "DEC"}, {C3dProcessor::mips, "SGI/MIPS"}}};

enum class C3dStorage { integer, real };
template <>
inline constexpr std::array<std::pair<C3dStorage, std::string_view>, 2> words_of<C3dStorage>{
    {{C3dStorage::integer, "whole numbers of 16 bits"}, {C3dStorage::real, "reals of 32 bits"}}};

inline constexpr std::size_t c3d_block_bytes = 512; // blocks are numbered from 1

std::optional<C3dProcessor> c3d_processor_of_mark(unsigned char mark);

// The caller has made sure that 2 (whole numbers) or 4 (reals) bytes stand at `at`.
std::uint16_t c3d_unsigned(const char* at, C3dProcessor processor);
std::int16_t c3d_signed(const char* at, C3dProcessor processor);
float c3d_real(const char* at, C3dProcessor processor);

// The same, one processor each, for loops over many samples.
inline std::uint32_t c3d_byte(const char* at) {
    return static_cast<unsigned char>(*at);
}
inline std::uint16_t c3d_unsigned_least_first(const char* at) {
    return static_cast<std::uint16_t>(c3d_byte(at) | c3d_byte(at + 1) << 8);
}
inline std::uint16_t c3d_unsigned_most_first(const char* at) {
    return static_cast<std::uint16_t>(c3d_byte(at + 1) | c3d_byte(at) << 8);
}
inline float c3d_real_intel(const char* at) {
    return std::bit_cast<float>(c3d_byte(at) | c3d_byte(at + 1) << 8 | c3d_byte(at + 2) << 16 |
                                c3d_byte(at + 3) << 24);
}
inline float c3d_real_mips(const char* at) {
    return std::bit_cast<float>(c3d_byte(at + 3) | c3d_byte(at + 2) << 8 | c3d_byte(at + 1) << 16 |
                                c3d_byte(at) << 24);
}
inline float c3d_real_dec(const char* at) {
    const std::uint32_t bits =
        c3d_byte(at + 2) | c3d_byte(at + 3) << 8 | c3d_byte(at) << 16 | c3d_byte(at + 1) << 24;
    const std::uint32_t exponent = bits >> 23 & 0xFFU;
    if (exponent > 2)
        return std::bit_cast<float>(bits - (2U << 23));
    return exponent == 0 ? 0.0F
                         : std::bit_cast<float>(bits) * 0.25F; // down to 2^-128, which IEEE 754 still holds
}

} // namespace amentum
