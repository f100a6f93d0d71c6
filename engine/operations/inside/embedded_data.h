// The files of data/ as they were when the program was built, by name.
#pragma once

#include <map>
#include <string>

namespace amentum {

std::map<std::string, std::string> embedded_data();

} // namespace amentum
