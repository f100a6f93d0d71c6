// A training block as written down, and the sets that were really done.
#pragma once

#include "values/calendar_date.h"
#include "values/exercise.h"
#include "values/identifier.h"
#include "values/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

// One line of a session sheet. Identified by block, week, session and order.
struct BlockLine {
    int week;    // 1 ...
    int session; // 1 ... within the week; the same kind of session in all weeks, whatever order their days have
    Date date;
    int order; // 1 ... within the session
    std::string exercise;
    Part part;
    int sets;
    int reps;
    std::optional<double> intensity;       // fraction of the lift's estimated maximum
    std::optional<double> reps_in_reserve; // at the end of each set
    std::optional<Mass> load; // makeable, total as the lift counts it; none for body and band work
    std::string load_words;   // "hex bar + 45, 25 a side"; "4 lb ball"; "red band"
    double rest_minutes;
    std::string purpose;                 // quality key it serves
    std::string reason;                  // one sentence: why this, why here, which limit shaped it
    std::vector<std::string> overridden; // caution keys overridden with a kept reason

    friend bool operator==(const BlockLine&, const BlockLine&) = default;
};

struct Block {
    BlockId id;
    AthleteId athlete;
    KitId kit;
    Date start;            // the first day of week 1
    int weeks;             // 4 to 16
    int sessions_per_week; // 1 to 5
    double minutes;        // a session, 20 to 120
    std::vector<BlockLine> lines;
    std::vector<std::string> notes; // what could not be met, and why
    std::string model;              // versions of planner and priors, and the hash of the data they saw

    friend bool operator==(const Block&, const Block&) = default;
};

// One set, as it was done. `key` is made on the device; the same key twice is the same set.
struct SetDone {
    std::string key; // 8 to 64 letters, digits, '-'
    AthleteId athlete;
    Date date;
    std::string exercise;
    int set_number;           // 1 to 40
    std::optional<Mass> load; // total, as the lift counts it; pull-ups: added
    std::optional<int> reps;
    std::optional<double> reps_in_reserve;
    std::optional<Speed> speed; // of the ball
    std::optional<BlockId> block;
    std::string note;

    friend bool operator==(const SetDone&, const SetDone&) = default;
};

// A caution overridden by a coach, with the reason that was given. Only ever added to.
struct Override {
    AthleteId athlete;
    std::string exercise;
    std::string caution;
    std::string reason; // at least 10 letters
    std::string coach;
    Date date;

    friend bool operator==(const Override&, const Override&) = default;
};

} // namespace amentum
