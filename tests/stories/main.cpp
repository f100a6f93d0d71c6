// stories FOLDER|FILE...: plays every story and says which expectation did not hold.
#include "story.h"

#include <algorithm>
#include <filesystem>
#include <iostream>

int main(int count, char** words) {
    std::vector<std::string> files;
    for (int i = 1; i < count; ++i) {
        if (!std::filesystem::is_directory(words[i]))
            files.emplace_back(words[i]);
        else
            for (const auto& entry : std::filesystem::directory_iterator(words[i]))
                if (entry.path().extension() == ".story")
                    files.push_back(entry.path().string());
    }
    std::sort(files.begin(), files.end());
    int failed = 0;
    for (const auto& file : files) {
        std::vector<std::string> faults;
        stories::Story story{file, file, {}};
        try {
            story = stories::read_story(file);
            faults = stories::play_story(story);
        } catch (const std::exception& broken) {
            faults.push_back(broken.what());
        }
        std::cout << (faults.empty() ? "ok      " : "FAILED  ") << story.title << "\n";
        for (const auto& fault : faults)
            std::cout << "        " << file << ", " << fault << "\n";
        failed += !faults.empty();
    }
    std::cout << files.size() - static_cast<std::size_t>(failed) << " passed, " << failed << " failed\n";
    return failed > 0 || files.empty();
}
