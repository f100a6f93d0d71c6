// Text out of a C3D file, fit to be shown: UTF-8 stays, any other byte above 127 is read as Latin-1, control characters
// become blanks, blanks at both ends go.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace amentum {

std::string readable_text(std::string_view bytes);
std::string in_capitals(std::string_view text);
std::string in_small_letters(std::string_view text);
std::string listed(const std::vector<std::string>& words, std::size_t most = 12); // "a, b, c and 4 more"

} // namespace amentum
