// compare_blocks: two kept blocks of one thrower, side by side: what each gives every quality, and where the sheets differ.
//
// Points and shares are by today's records for both (planning/price_block.h). Refuses blocks of two throwers.
#pragma once

#include "operations/plan_block.h"

namespace amentum {

struct CompareBlocksRequest {
    std::string block; // ids, or an athlete's name for that athlete's newest block
    std::string with;
};
BOOST_DESCRIBE_STRUCT(CompareBlocksRequest, (), (block, with))

struct ComparedLine {
    std::string exercise;
    std::string name;
    std::string part;
    double sets_a_week; // of the first block, over its full weeks; 0: not in it
    double sets_a_week_with;
    std::string load_words; // of its last full week
    std::string load_words_with;
};
BOOST_DESCRIBE_STRUCT(ComparedLine, (),
                      (exercise, name, part, sets_a_week, sets_a_week_with, load_words, load_words_with))

struct ComparedBlock {
    std::string block;
    std::string kit;
    std::string start;
    int weeks;
    int sessions_per_week;
    double minutes;
    std::optional<ShownReach> reach;
    int findings; // of the guard rails that stop or warn
};
BOOST_DESCRIBE_STRUCT(ComparedBlock, (),
                      (block, kit, start, weeks, sessions_per_week, minutes, reach, findings))

struct CompareBlocksAnswer {
    std::string athlete;
    std::string name;
    ComparedBlock first;
    ComparedBlock second;
    std::vector<ComparedLine> lines; // where they differ most first
    std::string words;
    std::vector<std::string> blocks; // all kept blocks of this thrower, newest first
};
BOOST_DESCRIBE_STRUCT(CompareBlocksAnswer, (), (athlete, name, first, second, lines, words, blocks))

Result<CompareBlocksAnswer> compare_blocks(Workplace&, const CompareBlocksRequest&);

} // namespace amentum
