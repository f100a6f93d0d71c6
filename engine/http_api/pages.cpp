#include "http_api/pages.h"

#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

namespace amentum {
namespace {

namespace fs = std::filesystem;

std::string content_type_of(const fs::path& file) {
    static const std::map<std::string, std::string> types{{".html", "text/html; charset=utf-8"},
                                                          {".js", "text/javascript; charset=utf-8"},
                                                          {".css", "text/css; charset=utf-8"},
                                                          {".svg", "image/svg+xml"},
                                                          {".png", "image/png"},
                                                          {".json", "application/json; charset=utf-8"},
                                                          {".webmanifest", "application/manifest+json"},
                                                          {".woff2", "font/woff2"}};
    const auto found = types.find(file.extension().string());
    return found == types.end() ? "application/octet-stream" : found->second;
}

bool inside(const fs::path& folder, const fs::path& file) {
    const auto relative = file.lexically_relative(folder);
    return !relative.empty() && *relative.begin() != "..";
}

} // namespace

HttpAnswer page_answer(const std::string& folder, const std::string& path) {
    const HttpAnswer missing{404, "text/plain; charset=utf-8", "There is no such page.\n"};
    std::error_code error;
    const fs::path root = fs::canonical(folder, error);
    if (folder.empty() || error)
        return missing;
    const fs::path file = fs::canonical(root / (path == "/" ? "index.html" : path.substr(1)), error);
    if (error || !inside(root, file) || !fs::is_regular_file(file))
        return missing;
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    return {200, content_type_of(file), text.str(), path.starts_with("/assets/")};
}

} // namespace amentum
