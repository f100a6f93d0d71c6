// What should the next training block be, in loads this gym can make?
//
// A block of 4 to 16 weeks is built from what limits the athlete's velocity, what stands in the gym, what the
// calendar leaves free, what the athlete may not do and how many minutes there are: the one of most points
// (block_problem.h) that a bounded search finds within those limits, and the coach's own word on its lines.
//
// The steps, one file each:
//   allowed_exercises  what remains after equipment, open pain, cautions, age and ball mass
//   place_sessions     which day each session falls on; which sessions must spare the legs or the arm
//   wave               intensity and share of sets of every week; every fourth week has about half the sets
//   state_problem      all that as numbers; search_plan finds the template of the week, exact_plan polishes it
//   write_lines        the lines of every day: makeable loads (plan_sets), repetitions, reserve, reasons
//   block_notes        what could not be met; refuse_plan: why there is no block
//
// Rules and where they come from:
//   loads >= 60 % of the maximum for strength, rising by waves [Schoenfeld2017] [Williams2017b];
//   repetitions in a set: effective repetitions = repetitions + reserve, %1RM by Epley's line [Epley1985];
//   start from mean - 1 standard error, steps of 2 to 10 %, repetitions before a larger step [ACSM2009];
//   the fourth week halves the sets at the same intensity; a full stop costs strength [Coleman2024];
//   rest above two minutes for main lifts [Grgic2018]; youth 2 to 3 days not next to each other, 1 to 3 sets
//   of 6 to 15, no maximal attempts [Faigenbaum2009] [Stricker2020];
//   nothing heavy for the legs in the 48 h before a start, nothing hard on the arm on the day of pitching and
//   the day after, linear ball throws at most 8 lb, high-to-low column pulls: common practice, no source.
// Units: minutes of a session, kg, years. Range: weeks 4 to 16, sessions 1 to 5 a week, 20 to 120 minutes.
// Refuses: out_of_range for those numbers, weights below 0; no_block_fits when weekdays are fewer than
// sessions, no day is free, no exercise is left, a held line may not be done here, or the limits cannot hold
// together, naming those that conflict.
// What it cannot tell: whether velocity will rise; whether the athlete is fit to train. It never clears anybody: restrictions come from people who may.
//
// Example: a request of 4 weeks, 3 sessions, 60 minutes -> a block whose week 4 has about half the sets of
// week 3.
#pragma once

#include "values/athlete.h"
#include "values/block.h"
#include "values/exercise.h"
#include "values/interval.h"
#include "values/kit.h"
#include "values/pain_block.h"
#include "values/refusal.h"
#include "values/season.h"
#include "values/test_kind.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

// How much a quality is worth working on. Weights are shares of each other; they need not add to 1.
struct Priority {
    std::string quality; // key of data/qualities.csv
    double weight;       // 0 or more: share of the expected velocity gain; 0 is kept ready, never led
    std::string words;   // "goes with +0.8 mph (80 %: 0.1 to 1.6)"; empty when nothing is known
};

// The coach's own word on a line: it holds in every meso.
struct OwnLine {
    enum class Word { hold, leave_out };
    Word word;
    std::string exercise;
    std::optional<int> session =
        {}; // of the week, 1 ...; none: leave_out everywhere, hold wherever it fits best
    std::optional<int> sets = {}; // of a held line; none: as many as fit
};

// At least so many weekly hard sets that serve a quality.
struct LeastSets {
    std::string quality;
    double weekly_sets;
};

// How long to look: `brief` in a second or so; `thorough` polishes what was found by branch and bound.
enum class Effort { brief, thorough };
template <>
inline constexpr std::array<std::pair<Effort, std::string_view>, 2> words_of<Effort>{
    {{Effort::brief, "brief"}, {Effort::thorough, "thorough"}}};

struct BlockRequest {
    Athlete athlete;
    Kit kit; // the gym of this block; it may differ from the athlete's own
    Date start;
    int weeks;                      // 4 to 16
    int sessions_per_week;          // 1 to 5
    double minutes;                 // a session, 20 to 120
    std::vector<int> weekdays = {}; // 1 Monday ... 7 Sunday; empty: any day

    std::span<const Quality> qualities;  // for their names in reasons
    std::span<const Exercise> catalogue; // spans are only read during the call
    std::span<const Caution> cautions;
    std::vector<Override> overrides = {};     // of this athlete
    std::vector<CalendarEntry> calendar = {}; // of this athlete
    std::vector<PainBlock> painful = {};      // rows of regions with an open pain entry of this athlete

    std::vector<Priority> priorities = {}; // empty, or all weights 0: spread evenly
    bool limiters_known = true; // false: the limiters say "cannot tell"; then spread evenly and say so
    std::map<std::string, Estimate> maxima = {}; // test kind key -> today's level of a strength test, kg
    std::optional<Estimate> body_mass = {};      // kg
    std::string model = {};                      // versions and hash, kept with the block as they are given

    std::vector<OwnLine> own_lines = {};
    std::vector<LeastSets> least_sets = {};
    std::optional<Block> previous = {}; // kept as it is where it can be
    Effort effort = Effort::brief;
    std::int64_t moves =
        60'000; // of a start of the search, for each meso; `thorough` takes two and a half times as many
    std::uint64_t seed = 1;
    std::function<bool(double share)> going = {}; // asked now and then; false: stop with the best so far
};

// By years of supervised strength training: below 1 novice, below 4 intermediate, from 4 advanced
// [proposal of this project, no source]. Unknown counts as novice.
enum class TrainingStatus { novice, intermediate, advanced };
template <>
inline constexpr std::array<std::pair<TrainingStatus, std::string_view>, 3> words_of<TrainingStatus>{
    {{TrainingStatus::novice, "novice"},
     {TrainingStatus::intermediate, "intermediate"},
     {TrainingStatus::advanced, "advanced"}}};

TrainingStatus training_status(const Athlete& athlete);

// Youth rules hold below this age, in whole years [proposal of this project, no source: the positions say
// "youth"].
inline constexpr int youth_rules_below_age = 14;

inline constexpr double shortest_session_minutes = 20, longest_session_minutes = 120;

Result<Block> plan_block(const BlockRequest& request);

} // namespace amentum
