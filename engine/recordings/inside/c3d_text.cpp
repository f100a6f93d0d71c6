#include "recordings/inside/c3d_text.h"

namespace amentum {
namespace {

// Bytes of the UTF-8 character at the front; 0 when there is none.
std::size_t utf8_character(std::string_view bytes) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(bytes[i]); };
    const unsigned first = byte(0);
    const std::size_t length = first >= 0xC2 && first <= 0xDF   ? 2
                               : first >= 0xE0 && first <= 0xEF ? 3
                               : first >= 0xF0 && first <= 0xF4 ? 4
                                                                : 0;
    if (length == 0 || length > bytes.size())
        return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((byte(i) & 0xC0U) != 0x80U)
            return 0;
    const unsigned second = byte(1);
    if ((first == 0xE0 && second < 0xA0) || (first == 0xED && second > 0x9F) ||
        (first == 0xF0 && second < 0x90) || (first == 0xF4 && second > 0x8F))
        return 0;
    return length;
}

template <class Change>
std::string changed(std::string_view text, Change change) {
    std::string result(text);
    for (char& c : result)
        c = change(c);
    return result;
}

} // namespace

std::string readable_text(std::string_view bytes) {
    std::string text;
    for (std::size_t i = 0; i < bytes.size();) {
        const auto byte = static_cast<unsigned char>(bytes[i]);
        if (byte < 0x80) {
            text += byte < 0x20 || byte == 0x7F ? ' ' : bytes[i];
            ++i;
        } else if (const std::size_t length = utf8_character(bytes.substr(i)); length > 0) {
            text += bytes.substr(i, length);
            i += length;
        } else {
            text += static_cast<char>(0xC0U | byte >> 6);
            text += static_cast<char>(0x80U | (byte & 0x3FU));
            ++i;
        }
    }
    const auto first = text.find_first_not_of(' ');
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::string in_capitals(std::string_view text) {
    return changed(text, [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
}

std::string in_small_letters(std::string_view text) {
    return changed(text, [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
}

std::string listed(const std::vector<std::string>& words, std::size_t most) {
    std::string text;
    for (std::size_t i = 0; i < words.size() && i < most; ++i)
        text += (i == 0 ? "" : ", ") + words[i];
    if (words.size() > most)
        text += " and " + std::to_string(words.size() - most) + " more";
    return text;
}

} // namespace amentum
