// JSON as text that people also read: shortest decimals without exponents (97.5, not 9.75E1), fields in given order.
#pragma once

#include <boost/json/value.hpp>

#include <string>

namespace amentum {

enum class Layout { compact, indented };
std::string json_text(const boost::json::value& value, Layout layout = Layout::compact);

} // namespace amentum
