// The built pages, from one folder and nowhere else: a path with ".." or a link out of the folder is not found.
#pragma once

#include "http_api/router.h"

#include <string>

namespace amentum {

HttpAnswer page_answer(const std::string& folder, const std::string& path);

} // namespace amentum
