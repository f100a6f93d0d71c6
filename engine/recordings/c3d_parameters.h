// What do the header and the parameter section of a C3D file say?
//
// Header, block 1: byte 1 the parameter section's first block, byte 2 the mark 80; then 16-bit words, counted from 1:
//   2 points, 3 analog values a frame, 4 first and 5 last frame, 7-8 scale, 9 first block of data, 10 analog samples
//   a frame and channel, 11-12 frames a second [GuideC3D, "The header section"].
// Parameter section: two bytes without meaning, number of blocks, processor mark (c3d_layout.h); then records:
//   length of the name (below 0: locked), group number (below 0: a group; above: a parameter of that group), name,
//   distance to the next record (0: the last), then a group's description or a parameter's type, dimensions, values
//   and description. A parameter may come before its group [GuideC3D, "The parameter section"].
// LABELS goes on in LABELS2, LABELS3, ... beyond 255 values, and so do others; `joined` ones are read as one.
// Names are looked up in capitals. Texts come without blanks at the end, always as UTF-8.
// Units: none; bytes and blocks are counted from 1 in every sentence. Valid: at most 509 blocks.
// Refusals: unreadable_file, naming the byte, block or GROUP:PARAMETER that does not fit.
// `problems` are whole sentences about what was read in spite of a fault.
// What it cannot tell: whether a value is true. Counts are checked where they are used.
// Example: parse_c3d_head(bytes)->number("POINT", "RATE") == 100
#pragma once

#include "recordings/c3d_layout.h"
#include "values/refusal.h"

#include <map>
#include <vector>

namespace amentum {

enum class C3dType { text = -1, byte = 1, integer = 2, real = 4 };
template <>
inline constexpr std::array<std::pair<C3dType, std::string_view>, 4> words_of<C3dType>{
    {{C3dType::text, "text"},
     {C3dType::byte, "bytes"},
     {C3dType::integer, "whole numbers"},
     {C3dType::real, "reals"}}};

// Whole numbers of 16 bits: counts, frames and blocks go to 65,535; offsets are signed unless the file says otherwise.
enum class C3dWhole { counted, with_sign };

struct C3dHeader {
    int points;
    int analog_values_a_frame;
    int first_frame;
    int last_frame;
    float scale; // below 0: the data are reals
    int data_block;
    int analog_samples_a_frame;
    float frames_a_second;
};

struct C3dGroup {
    int number; // 1 to 128
    std::string name;
    std::string description;
    bool locked;
};

struct C3dParameter {
    int group; // its number
    std::string name;
    std::string description;
    bool locked;
    C3dType type;
    std::vector<int> dimensions; // the first index runs fastest; none: one value
    std::string bytes;           // the values as stored
    std::size_t first_byte;      // of the values, in the file, from 1
};

struct C3dHead {
    C3dProcessor processor;
    C3dHeader header;
    int parameter_block; // first block of the parameter section
    int parameter_blocks;
    std::size_t records_end; // bytes of the file up to the end of the last record
    std::vector<C3dGroup> groups;
    std::vector<C3dParameter> parameters;
    std::vector<std::string> problems;
    std::map<std::string, std::size_t, std::less<>> places; // "POINT:RATE" to its place in `parameters`

    const C3dParameter* find(std::string_view group, std::string_view name) const;
    // Empty when the parameter is missing or of the other type.
    std::vector<double> numbers(std::string_view group, std::string_view name,
                                C3dWhole whole = C3dWhole::counted) const;
    std::vector<std::string> texts(std::string_view group, std::string_view name) const;
    // The same with NAME2, NAME3, ... behind it.
    std::vector<double> joined_numbers(std::string_view group, std::string_view name,
                                       C3dWhole whole = C3dWhole::counted) const;
    std::vector<std::string> joined_texts(std::string_view group, std::string_view name) const;
    // The first of the numbers.
    std::optional<double> number(std::string_view group, std::string_view name) const;
};

// All values of one parameter; empty when they are of the other type.
std::vector<double> numbers_of(const C3dParameter& parameter, C3dProcessor processor, C3dWhole whole);
std::vector<std::string> texts_of(const C3dParameter& parameter);

// How many bytes of the file's beginning are needed: 512, then up to the mark of the processor, then the whole head.
// Asked again each time that many are there, until the answer no longer grows.
Result<std::size_t> c3d_head_bytes(std::string_view beginning);

// `beginning` holds at least c3d_head_bytes of it.
Result<C3dHead> parse_c3d_head(std::string_view beginning);

} // namespace amentum
