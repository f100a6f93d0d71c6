#include "operations/inside/trace_name.h"

#include "values/nearest_name.h"

#include <algorithm>
#include <cctype>

namespace amentum {
namespace {

using Words = std::vector<std::string>;

bool is(char c, int (*kind)(int)) {
    return kind(static_cast<unsigned char>(c)) != 0;
}
bool belongs_to_word(char c) { // bytes above 127 are parts of letters
    return is(c, std::isalnum) || static_cast<unsigned char>(c) > 127;
}
std::string in_small_letters(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return static_cast<char>(std::tolower(static_cast<unsigned char>(c))); });
    return text;
}

std::string without_ending(const std::string& name) {
    const auto dot = name.find_last_of('.');
    const auto folder = name.find_last_of("/\\");
    const bool is_ending =
        dot != std::string::npos && (folder == std::string::npos || dot > folder) && dot > 0;
    return is_ending ? name.substr(0, dot) : name;
}

bool has(const Words& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}
bool has_beside(const Words& words, const std::string& first, const std::string& second) {
    for (std::size_t i = 0; i + 1 < words.size(); ++i)
        if (words[i] == first && words[i + 1] == second)
            return true;
    return has(words, first + second);
}

std::optional<TraceTest> effort_in(const Words& words) {
    std::vector<TraceTest> found;
    const auto add = [&](bool there, TraceTest effort) {
        if (there)
            found.push_back(effort);
    };
    add(has(words, "cmj") || has(words, "countermovement") || has_beside(words, "counter", "movement"),
        TraceTest::countermovement_jump);
    add(has(words, "sj") || has_beside(words, "squat", "jump"), TraceTest::squat_jump);
    add(has(words, "dj") || has_beside(words, "drop", "jump"), TraceTest::drop_jump);
    add(has(words, "hop") || has(words, "hops") || has(words, "hopping"), TraceTest::repeated_hops);
    add(has(words, "imtp") || has_beside(words, "thigh", "pull") || has(words, "isometric") ||
            has(words, "pull"),
        TraceTest::isometric_pull);
    add(has(words, "bound") || has(words, "sidebound"), TraceTest::lateral_bound);
    return found.size() == 1 ? std::optional(found.front()) : std::nullopt;
}

std::optional<Legs> legs_in(const Words& words) {
    const bool left = has(words, "left") || has(words, "l"), right = has(words, "right") || has(words, "r");
    if (left == right)
        return std::nullopt;
    return left ? Legs::left : Legs::right;
}

bool all_digits(const std::string& word, std::size_t count) {
    return word.size() == count &&
           std::all_of(word.begin(), word.end(), [](char c) { return is(c, std::isdigit); });
}

// Takes the words of the day out of `words`, so that they are not read as a trial.
std::optional<Date> take_date(Words& words) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        std::string text;
        std::size_t used = 0;
        if (all_digits(words[i], 8)) {
            text = words[i].substr(0, 4) + "-" + words[i].substr(4, 2) + "-" + words[i].substr(6);
            used = 1;
        } else if (i + 2 < words.size() && all_digits(words[i], 4) && all_digits(words[i + 1], 2) &&
                   all_digits(words[i + 2], 2)) {
            text = words[i] + "-" + words[i + 1] + "-" + words[i + 2];
            used = 3;
        }
        if (used == 0)
            continue;
        const auto date = parse_date(text, "date");
        if (!date)
            continue;
        words.erase(words.begin() + static_cast<std::ptrdiff_t>(i),
                    words.begin() + static_cast<std::ptrdiff_t>(i + used));
        return *date;
    }
    return std::nullopt;
}

std::optional<int> number_after(const std::string& word, const std::string& start) {
    if (!word.starts_with(start))
        return std::nullopt;
    const std::string digits = word.substr(start.size());
    if (!all_digits(digits, 1) && !all_digits(digits, 2))
        return std::nullopt;
    const int number = std::stoi(digits);
    return number >= 1 && number <= 60 ? std::optional(number) : std::nullopt;
}

std::optional<int> trial_in(const Words& words) {
    for (auto word = words.rbegin(); word != words.rend(); ++word)
        for (const char* start : {"", "t", "trial", "rep", "try", "cmj", "sj", "dj", "imtp", "jump"})
            if (const auto number = number_after(*word, start))
                return number;
    return std::nullopt;
}

void find_athlete(const Words& words, std::span<const Athlete> athletes, TraceName& read) {
    std::size_t most = 0;
    int as_good = 0;
    for (const auto& athlete : athletes) {
        const auto names = words_of_name(athlete.name + ".x");
        const auto there = std::count_if(names.begin(), names.end(), [&](const auto& each) {
            return each.size() > 1 && has(words, each);
        });
        const bool whole = there > 0 && static_cast<std::size_t>(there) == names.size();
        const std::size_t score = static_cast<std::size_t>(there) * 2 + (whole ? 1 : 0);
        if (score > most) {
            most = score;
            as_good = 1;
            read.athlete = &athlete;
            read.athlete_sure = whole;
        } else if (score == most && score > 0)
            ++as_good;
    }
    if (as_good > 1) {
        read.athlete = nullptr; // two athletes of one name: a person must say
        read.athlete_sure = false;
    }
    if (most > 0)
        return;
    for (const auto& athlete : athletes)
        for (const auto& name : words_of_name(athlete.name + ".x"))
            if (name.size() > 4 && nearest_name(name, words)) {
                read.athlete = read.athlete && read.athlete != &athlete ? nullptr : &athlete;
                if (!read.athlete)
                    return;
            }
}

} // namespace

std::vector<std::string> words_of_name(const std::string& file_name) {
    Words words;
    std::string word;
    const auto finish = [&] {
        if (!word.empty())
            words.push_back(in_small_letters(word));
        word.clear();
    };
    for (const char c : without_ending(file_name)) {
        if (!belongs_to_word(c) || (!word.empty() && is(word.back(), std::islower) && is(c, std::isupper)))
            finish();
        if (belongs_to_word(c))
            word += c;
    }
    finish();
    return words;
}

TraceName read_trace_name(const std::string& file_name, std::span<const Athlete> athletes) {
    Words words = words_of_name(file_name);
    TraceName read;
    read.date = take_date(words);
    read.trial = trial_in(words);
    for (auto& word : words) // cmj2 says cmj
        while (word.size() > 1 && is(word.back(), std::isdigit) && is(word.front(), std::isalpha))
            word.pop_back();
    read.effort = effort_in(words);
    read.legs = legs_in(words);
    find_athlete(words, athletes, read);
    return read;
}

} // namespace amentum
