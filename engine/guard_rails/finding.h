// What a guard rail found: how serious, in a sentence, by which rule, from where, and what to do about it.
//
//   stops   must not go to the floor as it is (or: stop and refer)
//   warns   a coach should look before it does
//   notes   worth knowing; nothing needs to change
// Findings change nothing by themselves, and none of them says that anybody is fit or safe.
#pragma once

#include "values/enum_words.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

enum class Severity { stops, warns, notes };
template <>
inline constexpr std::array<std::pair<Severity, std::string_view>, 3> words_of<Severity>{
    {{Severity::stops, "stops"}, {Severity::warns, "warns"}, {Severity::notes, "notes"}}};

// Where in a block; all absent for a finding about the whole, or about a throw log.
struct PlaceInBlock {
    std::optional<int> week = {};
    std::optional<int> session = {};
    std::optional<int> order = {};
};

struct Finding {
    Severity severity;
    std::string code;     // "load_not_makeable": the same fault always has the same code
    std::string sentence; // what was found
    std::string rule;     // the rule, in a sentence
    std::string source;   // keys of docs/sources.md, or where it comes from in words
    std::string what_to_do;
    PlaceInBlock place = {};
};

} // namespace amentum
