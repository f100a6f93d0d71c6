// A recipe in R asked anew: what it prints, a name and a number a line. Empty without Rscript.
#pragma once

#include <cstdio>
#include <map>
#include <sstream>
#include <string>

inline std::map<std::string, double> answers_of_r(const std::string& recipe) { // "lines.R", beside this file
    std::map<std::string, double> out;
    const std::string command = std::string("Rscript --vanilla '") + AMENTUM_SOURCE_DIR +
                                "/tests/independent_program/" + recipe + "' 2>/dev/null";
    FILE* pipe = popen(command.c_str(), "r");
    std::string text;
    char room[256];
    while (pipe && std::fgets(room, sizeof room, pipe))
        text += room;
    if (pipe)
        pclose(pipe);
    std::istringstream lines(text);
    std::string name;
    for (double value; lines >> name >> value;)
        out[name] = value;
    return out;
}
