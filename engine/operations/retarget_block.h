// retarget_block: what another gym makes of a kept block: the same intent, line by line, and what is lost of it.
//
// Each line of the block beside what stands in for it: exercise, set-up, load with plates, the load that would ask the same
// with its interval, what limits it, intent kept in per cent and words, what makes up for some of it. Set-ups and the lead
// leg's demand come from body_mechanics for this body; where stature or body mass is not held, loads are compared by usual
// maxima. Methods, bounds and what they cannot tell: planning/retarget_block.h. The guard rails check what comes out.
// Only shown; with keep it is stored as a block of its own, <athlete>-<first day>-<kit>, and the first stays as it is.
// Refuses: an unknown block or kit; keeping a block for the gym it was written for, or over one with logged sets
// (already_held).
#pragma once

#include "operations/athlete_record.h"
#include "operations/shown.h"

namespace amentum {

struct RetargetBlockRequest {
    std::string block;        // its id, or an athlete's name for that athlete's newest block
    std::string kit;          // the other gym
    std::optional<bool> keep; // left out: only show
};
BOOST_DESCRIBE_STRUCT(RetargetBlockRequest, (), (block, kit, keep))

struct SideOfLine { // as written, or as the other gym makes it
    std::string exercise;
    std::string name;
    std::string part;
    int sets;
    int reps;
    std::string dose;           // "4 x 5 a side"
    std::optional<double> load; // in the gym's unit
    std::string load_unit;
    std::string load_words;
    std::string intensity_words;
    double rest_minutes;
    std::string setup; // how it is set up, for the sheet
};
BOOST_DESCRIBE_STRUCT(SideOfLine, (),
                      (exercise, name, part, sets, reps, dose, load, load_unit, load_words, intensity_words,
                       rest_minutes, setup))

struct LineInOtherGym {
    int order; // as written
    SideOfLine from;
    std::optional<SideOfLine> to; // none: lost
    std::string change;           // kept, other_load, held_otherwise, other_exercise, lost
    std::string change_words;
    std::string purpose;                // the quality it serves, in words
    std::optional<ShownEstimate> equal; // the load that would ask the same, in the other gym's unit
    std::string equal_words;            // by what it was found
    std::string limit;                  // grip, upper back, the heaviest here ...; empty when nothing bound
    ShownEstimate kept;                 // per cent
    bool compared;                      // the loads; false: kept is at most what is said
    std::string basis;                  // lead_leg, load, served
    std::string basis_words;
    std::string loss;
    std::string to_do;
    std::string set_up; // the lean that keeps the hip's share; empty where nothing is known
    std::string reason;
};
BOOST_DESCRIBE_STRUCT(LineInOtherGym, (),
                      (order, from, to, change, change_words, purpose, equal, equal_words, limit, kept,
                       compared, basis, basis_words, loss, to_do, set_up, reason))

struct SessionInOtherGym {
    int week;
    int session;
    std::string date;
    std::string weekday;
    double minutes; // there
    std::vector<LineInOtherGym> lines;
};
BOOST_DESCRIBE_STRUCT(SessionInOtherGym, (), (week, session, date, weekday, minutes, lines))

struct LinesOfChange {
    std::string change;
    std::string words;
    int lines;
};
BOOST_DESCRIBE_STRUCT(LinesOfChange, (), (change, words, lines))

struct ShownQualityKept {
    std::string quality;
    std::string name;
    double sets; // written, times the share of the work that serves it
    double kept; // per cent
};
BOOST_DESCRIBE_STRUCT(ShownQualityKept, (), (quality, name, sets, kept))

struct ShownPurchase {
    std::string what;
    double kept; // per cent of the block, with it
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ShownPurchase, (), (what, kept, words))

struct RetargetBlockAnswer {
    std::string block; // as written
    std::string athlete;
    std::string name;
    std::string from_kit;
    std::string kit;      // its id
    std::string kit_name; // of the other gym
    std::string start;
    int weeks;
    double kept; // per cent of the block
    std::string kept_words;
    std::vector<LinesOfChange> changes; // those there are
    std::vector<ShownQualityKept> qualities;
    std::vector<SessionInOtherGym> sessions;
    std::vector<ShownPurchase> purchases;
    std::vector<std::string> notes;
    std::vector<ShownFinding> findings; // of the guard rails, on what the other gym makes
    std::vector<std::string> cautions;  // of the body the set-ups rest on
    std::vector<std::string> stop_and_refer;
    std::vector<std::string> cannot_tell;
    std::string kept_block; // id it is stored under; empty when only shown
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(RetargetBlockAnswer, (),
                      (block, athlete, name, from_kit, kit, kit_name, start, weeks, kept, kept_words, changes,
                       qualities, sessions, purchases, notes, findings, cautions, stop_and_refer, cannot_tell,
                       kept_block, sources))

Result<RetargetBlockAnswer> retarget_block(Workplace&, const RetargetBlockRequest&);

} // namespace amentum
