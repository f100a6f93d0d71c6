// The kinds of file that go in and out, each with its columns.
//
// A quantity's column ends in its unit; one of several may be used: load_lb or load_kg. Files written by this program
// use SI (kg, m, m/s, s, N; angles in degrees) so that what is read back is the same, bit for bit.
// The columns and an example of each kind: docs/guide/import_records.md.
#pragma once

#include "values/enum_words.h"

#include <string>
#include <vector>

namespace amentum {

enum class RecordKind { facility, kit, athletes, test_results, throws, calendar, blocks, block_lines, sets, overrides };
template <>
inline constexpr std::array<std::pair<RecordKind, std::string_view>, 10> words_of<RecordKind>{
    {{RecordKind::facility, "facility"},
     {RecordKind::kit, "kit"},
     {RecordKind::athletes, "athletes"},
     {RecordKind::test_results, "test_results"},
     {RecordKind::throws, "throws"},
     {RecordKind::calendar, "calendar"},
     {RecordKind::blocks, "blocks"},
     {RecordKind::block_lines, "block_lines"},
     {RecordKind::sets, "sets"},
     {RecordKind::overrides, "overrides"}}};

// The order in which files can be taken into an empty store: what is named must be there first.
std::vector<RecordKind> import_order();

}  // namespace amentum
