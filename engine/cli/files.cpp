#include "cli/files.h"

#include <boost/json.hpp>

#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

namespace amentum {
namespace {

Refusal unreadable(const std::string& name) {
    return {RefusalCode::unreadable_file, "The file " + name + " cannot be read.", "file", name,
            "a readable file"};
}

} // namespace

Result<std::string> read_text_file(const std::string& name) {
    std::ostringstream text;
    if (name == "-") {
        text << std::cin.rdbuf();
        return text.str();
    }
    std::ifstream stream(name, std::ios::binary);
    if (!stream || std::filesystem::is_directory(name))
        return unreadable(name);
    text << stream.rdbuf();
    return text.str();
}

Result<Done> write_exported_files(const std::string& folder, const boost::json::value& answer) {
    const auto files = answer.as_object().if_contains("files");
    if (!files)
        return Done{};
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    for (const auto& file : files->as_array()) {
        const auto path = std::filesystem::path(folder) / std::string(file.at("name").as_string());
        std::ofstream stream(path, std::ios::binary);
        stream << std::string_view(file.at("text").as_string());
        if (!stream.flush())
            return Refusal{RefusalCode::unreadable_file, "The file " + path.string() + " cannot be written.",
                           "folder", folder, "a folder that can be written"};
    }
    return Done{};
}

} // namespace amentum
