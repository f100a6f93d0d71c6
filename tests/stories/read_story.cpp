#include "story.h"

#include <fstream>
#include <stdexcept>

namespace stories {
namespace {

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" \t\r");
    if (first == std::string::npos)
        return "";
    return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    for (std::size_t from = 1; from < line.size();) {
        const auto to = line.find('|', from);
        if (to == std::string::npos)
            break;
        cells.push_back(trimmed(line.substr(from, to - from)));
        from = to + 1;
    }
    return cells;
}

} // namespace

Story read_story(const std::string& file) {
    std::ifstream stream(file);
    if (!stream)
        throw std::runtime_error("there is no story " + file);
    Story story{file, "", {}};
    int number = 0;
    for (std::string raw; std::getline(stream, raw);) {
        ++number;
        const std::string line = trimmed(raw);
        if (line.empty() || line.front() == '#')
            continue;
        if (line.starts_with("Story:"))
            story.title = trimmed(line.substr(6));
        else if (line.front() == '|')
            story.steps.at(story.steps.size() - 1).table.push_back(cells_of(line));
        else
            story.steps.push_back({number, line, {}});
    }
    return story;
}

} // namespace stories
