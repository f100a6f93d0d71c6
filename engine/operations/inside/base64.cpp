#include "operations/inside/base64.h"

#include <array>
#include <cstdint>

namespace amentum {
namespace {

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
constexpr std::uint8_t no_digit = 255;

constexpr std::array<std::uint8_t, 256> digits() {
    std::array<std::uint8_t, 256> values{};
    values.fill(no_digit);
    for (std::size_t i = 0; i < alphabet.size(); ++i)
        values[static_cast<unsigned char>(alphabet[i])] = static_cast<std::uint8_t>(i);
    return values;
}
constexpr auto digit_of = digits();

} // namespace

std::string to_base64(std::string_view bytes) {
    std::string text;
    text.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t here = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 3; ++k)
            group = group << 8 | (k < here ? static_cast<unsigned char>(bytes[i + k]) : 0u);
        for (std::size_t k = 0; k < 4; ++k)
            text += k <= here ? alphabet[group >> (18 - 6 * k) & 63] : '=';
    }
    return text;
}

std::optional<std::string> from_base64(std::string_view text) {
    if (text.size() % 4 != 0)
        return std::nullopt;
    std::size_t padding = 0;
    while (padding < 2 && padding < text.size() && text[text.size() - 1 - padding] == '=')
        ++padding;
    std::string bytes;
    bytes.reserve(text.size() / 4 * 3);
    std::uint32_t group = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool padded = i >= text.size() - padding;
        const std::uint8_t digit = padded ? std::uint8_t{0} : digit_of[static_cast<unsigned char>(text[i])];
        if (digit == no_digit)
            return std::nullopt;
        group = group << 6 | digit;
        if (i % 4 == 3) {
            bytes += static_cast<char>(group >> 16 & 255);
            bytes += static_cast<char>(group >> 8 & 255);
            bytes += static_cast<char>(group & 255);
            group = 0;
        }
    }
    for (std::size_t i = 0; i < padding; ++i) {
        if (bytes.back() != 0)
            return std::nullopt; // bits left over: two texts would mean the same bytes
        bytes.pop_back();
    }
    return bytes;
}

} // namespace amentum
