// One word for each value of an enumeration: what files, requests and screens say, in one place beside the enum.
//
// An enumeration E becomes sayable by specialising words_of<E> (see athlete.h). word(Hand::left) == "left".
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace amentum {

template <class E>
inline constexpr std::array<std::pair<E, std::string_view>, 0> words_of{};

template <class E>
std::string word(E value) {
    for (const auto& [each, text] : words_of<E>)
        if (each == value)
            return std::string(text);
    return "?"; // a value outside the enumeration: a broken contract, visible on any screen
}

template <class E>
std::optional<E> from_word(std::string_view text) {
    for (const auto& [each, word] : words_of<E>)
        if (word == text)
            return each;
    return std::nullopt;
}

template <class E>
std::vector<std::string> all_words() {
    std::vector<std::string> all;
    for (const auto& [each, word] : words_of<E>)
        all.emplace_back(word);
    return all;
}

} // namespace amentum
