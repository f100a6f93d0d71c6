#include "operations/inside/terminal_text.h"

#include "values/shortest_decimal.h"

#include <boost/json.hpp>

#include <sstream>

namespace amentum {
namespace {

constexpr std::size_t columns = 100;

std::size_t characters(const std::string& text) { // UTF-8: all bytes but continuation bytes
    std::size_t count = 0;
    for (const char c : text)
        count += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    return count;
}

} // namespace

std::string said(const boost::json::value& text) {
    return text.is_string() ? std::string(text.as_string()) : "";
}

std::string number_said(const boost::json::value& number, int decimals) {
    return number.is_number() ? format_fixed(number.to_number<double>(), decimals) : "-";
}

std::string estimate_said(const boost::json::value& shown) {
    if (!shown.is_object())
        return "-";
    const int decimals = static_cast<int>(shown.at("decimals").to_number<double>());
    return number_said(shown.at("value"), decimals) + " " + said(shown.at("unit")) + " (" +
           number_said(shown.at("low"), decimals) + " to " + number_said(shown.at("high"), decimals) + ")";
}

std::string paragraph(const std::string& text, std::size_t indent) {
    std::istringstream words(text);
    std::string line(indent, ' '), all;
    for (std::string next; words >> next;) {
        if (characters(line) + 1 + characters(next) > columns && line.size() > indent) {
            all += line + "\n";
            line.assign(indent, ' ');
        }
        if (line.size() > indent)
            line += ' ';
        line += next;
    }
    return all + line + "\n";
}

std::string list_said(const boost::json::value& lines, const std::string& mark) {
    std::string all;
    for (const auto& line : lines.as_array())
        all += paragraph(mark + said(line));
    return all;
}

std::string padded(std::string text, std::size_t width) {
    while (characters(text) > width) {
        text.pop_back();
        while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0) == 0x80)
            text.pop_back();
        if (!text.empty() && static_cast<unsigned char>(text.back()) >= 0xC0)
            text.pop_back();
    }
    return text + std::string(width - characters(text), ' ');
}

} // namespace amentum
