// A story: a small gym as tables, what the coach asks, and what the answer must say. Readable without code.
//
//   Story: title                          one a file
//   Given today is 2026-06-01
//   Given the demo facility
//   Given the records athletes            then a table: header line, lines; taken through import_records
//   Given the file docs/guide/files/a.txt    may be read by its path in the repository, as file_name
//   When the coach asks find_limiters     then a table of field | value (a value of [...] or {...} is JSON)
//   When the coach brings the records throws     a table again, taken; what import_records says is the answer
//   When the coach looks at the records throws   the same, but only shown
//   Then the answer                       then lines: path | is / contains / lacks / between / has | value
//   Then it is refused                    the same, on the refusal
// Paths go through objects and lists: limiters.0.gain.value
#pragma once

#include <string>
#include <vector>

namespace stories {

struct Step {
    int line;
    std::string words;                           // "When the coach asks find_limiters"
    std::vector<std::vector<std::string>> table; // cells, trimmed
};

struct Story {
    std::string file;
    std::string title;
    std::vector<Step> steps;
};

Story read_story(const std::string& file);

// One sentence for each expectation that does not hold, with the story's line; empty when all hold.
std::vector<std::string> play_story(const Story& story);

} // namespace stories
