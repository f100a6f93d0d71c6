// The files a facility's records are kept in outside the program, and the order in which they can be taken in.
//
// Each kind is one table, each file one kind: "athletes.csv". A file may name only what is held when it is taken
// (an athlete's kit, a test's athlete), so kinds are taken in import_order().
#pragma once

#include "values/enum_words.h"

#include <vector>

namespace amentum {

enum class RecordKind {
    facility,
    kit,
    athletes,
    test_results,
    throws,
    calendar,
    blocks,
    block_lines,
    sets,
    overrides,
    prior_edits,
    pitch_rules,
    teams,
    pains,
    clearances,
    throw_steps,
    stops_answered,
};
template <>
inline constexpr std::array<std::pair<RecordKind, std::string_view>, 17> words_of<RecordKind>{
    {{RecordKind::facility, "facility"},
     {RecordKind::kit, "kit"},
     {RecordKind::athletes, "athletes"},
     {RecordKind::test_results, "test_results"},
     {RecordKind::throws, "throws"},
     {RecordKind::calendar, "calendar"},
     {RecordKind::blocks, "blocks"},
     {RecordKind::block_lines, "block_lines"},
     {RecordKind::sets, "sets"},
     {RecordKind::overrides, "overrides"},
     {RecordKind::prior_edits, "prior_edits"},
     {RecordKind::pitch_rules, "pitch_rules"},
     {RecordKind::teams, "teams"},
     {RecordKind::pains, "pains"},
     {RecordKind::clearances, "clearances"},
     {RecordKind::throw_steps, "throw_steps"},
     {RecordKind::stops_answered, "stops_answered"}}};

std::vector<RecordKind> import_order();

} // namespace amentum
