// Answers as a terminal prints them: short tables and paragraphs of at most 100 columns.
#pragma once

#include <boost/json/value.hpp>

#include <string>
#include <vector>

namespace amentum {

std::string said(const boost::json::value& text); // a string, or nothing
std::string number_said(const boost::json::value& number, int decimals);
std::string
estimate_said(const boost::json::value& shown_estimate); // "81.9 mph (80.7 to 83.1)"; "-" for null
std::string paragraph(const std::string& text, std::size_t indent = 0);
std::string list_said(const boost::json::value& lines, const std::string& mark); // one paragraph a line
std::string padded(std::string text, std::size_t width); // cut or filled, counted in characters

} // namespace amentum
