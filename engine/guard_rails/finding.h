// What a guard rail found: how serious, in a sentence, by which rule, from where, and what to do about it.
//
//   stops   must not go to the floor as it is (or: stop and refer)
//   warns   a coach should look before it does
//   notes   worth knowing; nothing needs to change
// Nothing is waved through by a click. A stop that a coach may answer for needs a reason of at least ten letters, kept with name and
// day (answered_stops.h); it stays in the list, as a warning that says who answered and why. Nobody answers for the rest of the
// young, an open pain entry, a sign to stop and refer, or a load that cannot be made: such a plan is changed instead.
// Findings change nothing by themselves, and none of them says that anybody is fit or safe.
#pragma once

#include "values/calendar_date.h"
#include "values/enum_words.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

enum class Severity { stops, warns, notes };
template <>
inline constexpr std::array<std::pair<Severity, std::string_view>, 3> words_of<Severity>{
    {{Severity::stops, "stops"}, {Severity::warns, "warns"}, {Severity::notes, "notes"}}};

// Who may answer for a stop, so that it goes on. Of a warning or a note it says nothing.
enum class MayAnswer { nobody, coach };
template <>
inline constexpr std::array<std::pair<MayAnswer, std::string_view>, 2> words_of<MayAnswer>{
    {{MayAnswer::nobody, "nobody"}, {MayAnswer::coach, "coach"}}};

// Where in a block; all absent for a finding about the whole, or about a throw log.
struct PlaceInBlock {
    std::optional<int> week = {};
    std::optional<int> session = {};
    std::optional<int> order = {};
};

// What was answered for a stop: it warns since.
struct AnswerKept {
    std::string coach;
    std::string reason;
    Date recorded;
};

struct Finding {
    Severity severity;
    std::string code;     // "load_not_makeable": the same fault always has the same code
    std::string sentence; // what was found
    std::string rule;     // the rule, in a sentence
    std::string source;   // keys of docs/sources.md, or where it comes from in words
    std::string what_to_do;
    PlaceInBlock place = {};
    std::optional<Date> day = {}; // the day it is about; an answer holds for one day
    MayAnswer may_answer = MayAnswer::nobody;
    std::optional<AnswerKept> answer = {};
};

} // namespace amentum
