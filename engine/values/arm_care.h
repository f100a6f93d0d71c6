// What was said of pain, who cleared it, which steps back to throwing were written, and which stops a coach answered for.
//
// All of these are only ever added to: nothing here can be deleted or changed, a mistake is answered by another entry.
// The tool never clears anybody: a clearance is a named person's, entered by a named adult.
#pragma once

#include "values/calendar_date.h"
#include "values/enum_words.h"
#include "values/identifier.h"
#include "values/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

enum class PainRegion {
    shoulder,
    elbow,
    forearm_and_hand,
    neck_and_upper_back,
    low_back,
    hip_and_groin,
    knee,
    ankle_and_foot
};
template <>
inline constexpr std::array<std::pair<PainRegion, std::string_view>, 8> words_of<PainRegion>{
    {{PainRegion::shoulder, "shoulder"},
     {PainRegion::elbow, "elbow"},
     {PainRegion::forearm_and_hand, "forearm_and_hand"},
     {PainRegion::neck_and_upper_back, "neck_and_upper_back"},
     {PainRegion::low_back, "low_back"},
     {PainRegion::hip_and_groin, "hip_and_groin"},
     {PainRegion::knee, "knee"},
     {PainRegion::ankle_and_foot, "ankle_and_foot"}}};

// Identified by athlete and number: 1, 2, 3 ... Open until a clearance names it.
struct PainEntry {
    AthleteId athlete;
    int number;
    Date date; // when it was felt
    PainRegion region;
    std::string sign;     // key of data/stop_and_refer.csv; empty: none of them
    std::string words;    // as the thrower said it
    std::string noted_by; // who wrote it down

    friend bool operator==(const PainEntry&, const PainEntry&) = default;
};

// Identified by athlete and the number of the pain entry: one is enough, and holds from `date`.
struct PainClearance {
    AthleteId athlete;
    int number;
    Date date;               // on which it was cleared
    std::string cleared_by;  // the clinician, by name: "Dr. Ada Fenwick, sports physician"
    std::string recorded_by; // the adult who enters it, by name
    Date recorded;
    std::string words; // what was said: limits, conditions

    friend bool operator==(const PainClearance&, const PainClearance&) = default;
};

enum class StepsOrigin { ramp, clinician };
template <>
inline constexpr std::array<std::pair<StepsOrigin, std::string_view>, 2> words_of<StepsOrigin>{
    {{StepsOrigin::ramp, "ramp"}, // planned here after time off, editable by the coach
     {StepsOrigin::clinician,
      "clinician"}}}; // written by a clinician; the tool records it and changes nothing in it

struct ThrowStep {
    int throws;                     // 1 to 400
    std::optional<Length> distance; // of each throw
    std::optional<double> effort;   // intended, a fraction of full effort, 0.1 to 1
    std::string words;              // "on a line"; may be empty

    friend bool operator==(const ThrowStep&, const ThrowStep&) = default;
};

// Steps back to throwing. Identified by athlete and number: 1, 2, 3 ...; the last one of each origin is in force, and one
// without steps ends it.
struct ThrowSteps {
    AthleteId athlete;
    int number;
    StepsOrigin origin;
    std::string author; // who wrote them: the clinician, or the coach
    Date start;
    int days_between; // days without throwing between two steps, 0 to 6
    std::vector<ThrowStep> steps;
    std::string note;
    std::string recorded_by;
    Date recorded;

    friend bool operator==(const ThrowSteps&, const ThrowSteps&) = default;
};

// A stop of the guard rails that a coach answered for, with the reason. Identified by athlete, code and day; holds for that day.
struct StopAnswered {
    AthleteId athlete;
    std::string code;   // of the finding
    Date date;          // the day it holds for
    std::string reason; // at least 10 letters
    std::string coach;
    Date recorded;

    friend bool operator==(const StopAnswered&, const StopAnswered&) = default;
};

} // namespace amentum
