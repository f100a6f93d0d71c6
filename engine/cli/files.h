// The files a command reads and writes: a coach's table in, exported tables out.
#pragma once

#include "values/refusal.h"

#include <boost/json/value.hpp>

#include <string>

namespace amentum {

Result<std::string> read_text_file(const std::string& name); // "-" reads standard input

// Writes answer.files ({name, text}) into the folder, which is made when absent. Refuses a folder that cannot be made.
Result<Done> write_exported_files(const std::string& folder, const boost::json::value& answer);

} // namespace amentum
