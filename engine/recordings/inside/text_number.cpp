#include "recordings/inside/text_number.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string>

namespace amentum {
namespace {

constexpr std::size_t reach = 16;         // bytes before a cell's end that the quick way looks at
constexpr std::size_t longest_quick = 64; // characters of a cell

bool all_digits(const char* begin, const char* end) {
    return std::all_of(begin, end, [](char c) { return c >= '0' && c <= '9'; });
}

// Everything unusual. '+' is allowed in front; "nan", "inf" and hexadecimal are no numbers here.
template <class Float>
bool read_unusual(const char* begin, const char* end, char mark, Float& value) {
    std::string plain(begin, end);
    if (mark == ',') {
        if (plain.find('.') != std::string::npos)
            return false;
        std::replace(plain.begin(), plain.end(), ',', '.');
    }
    const bool plus = plain.starts_with('+');
    const char* first = plain.data() + plus;
    const char* last = plain.data() + plain.size();
    const char* unsigned_first = first + (!plus && first != last && *first == '-');
    if (unsigned_first == last || !(*unsigned_first == '.' || all_digits(unsigned_first, unsigned_first + 1)))
        return false;
    const auto [stop, error] = std::from_chars(first, last, value);
    if (error == std::errc::result_out_of_range && stop == last) {
        double wide = 0; // too small for Float is zero; too large is no number
        const auto again = std::from_chars(first, last, wide);
        value = static_cast<Float>(wide);
        return again.ec == std::errc{} && std::isfinite(value);
    }
    return error == std::errc{} && stop == last && std::isfinite(value);
}

// The first 16 characters of a longer plain cell; false when they lack the mark or any other character is no digit.
bool read_beginning(const char* begin, const char* end, char mark, WrittenDecimal& read) {
    const auto length = static_cast<std::size_t>(end - begin);
    return length > reach && length <= longest_quick && read_decimal(begin, begin + reach, mark, read) &&
           std::memchr(begin, mark, reach) != nullptr && all_digits(begin + reach, end);
}

} // namespace

bool read_long_sample(const char* begin, const char* end, char mark, float& sample) {
    const bool negative = begin != end && *begin == '-';
    WrittenDecimal read;
    if (read_beginning(begin + negative, end, mark, read)) {
        const double low = quotient_of(read, negative);
        const double high = quotient_of({read.digits + 1, read.decimals}, negative);
        sample = static_cast<float>(low);
        if (static_cast<float>(low) == static_cast<float>(high) && !halfway_between_floats(low) &&
            !halfway_between_floats(high))
            return true;
    }
    return read_unusual(begin, end, mark, sample);
}

bool read_long_time(const char* begin, const char* end, char mark, double& time) {
    const bool negative = begin != end && *begin == '-';
    WrittenDecimal read;
    if (!read_beginning(begin + negative, end, mark, read))
        return read_unusual(begin, end, mark, time);
    time = quotient_of(read, negative);
    return true;
}

namespace {

template <class Float, class Read>
std::optional<Float> parse_cell(std::string_view cell, char mark, Read read) {
    std::array<char, reach + longest_quick + 1> room{};
    Float value = 0;
    if (cell.empty())
        return std::nullopt;
    if (cell.size() > longest_quick + 1)
        return read_unusual(cell.data(), cell.data() + cell.size(), mark, value) ? std::optional(value)
                                                                                 : std::nullopt;
    std::copy(cell.begin(), cell.end(), room.begin() + reach);
    const char* begin = room.data() + reach;
    return read(begin, begin + cell.size(), mark, value) ? std::optional(value) : std::nullopt;
}

} // namespace

std::optional<float> parse_sample(std::string_view cell, char mark) {
    return parse_cell<float>(cell, mark, read_sample);
}

std::optional<double> parse_time(std::string_view cell, char mark) {
    return parse_cell<double>(cell, mark, read_time);
}

} // namespace amentum
