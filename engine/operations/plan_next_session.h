// plan_next_session: what to lift next, after what was logged: the next session of a kept block, each line as it was written, as
// it is now, and why. For the gym floor.
//
// The rules are planning/next_session.h: missed sessions, a session cut short, repetitions in reserve, failed sets, ball
// speed, today's estimate. Nothing is kept: the block stays as it was written, and asking again after another set may answer
// otherwise. The guard rails look at the changed session anew.
// Of a thrower: the newest block that has begun and has sessions left, else the first that is to begin.
// A note that speaks of pain changes no number; it is shown with the signs to stop and refer.
// Refuses: neither thrower nor block, or both; unknown names; (too_few_data) no block, or none with a session left.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct PlanNextSessionRequest {
    std::optional<std::string> athlete;
    std::optional<std::string> block;
};
BOOST_DESCRIBE_STRUCT(PlanNextSessionRequest, (), (athlete, block))

struct ShownWhy {
    std::string sentence;
    std::string
        source; // keys of docs/sources.md, or that there is none; may be empty where nothing was changed
};
BOOST_DESCRIBE_STRUCT(ShownWhy, (), (sentence, source))

struct ShownNextLine {
    int order;
    std::string exercise;
    std::string name;
    std::string part;
    std::string means;   // ball, body, band, hex_bar ...
    std::string written; // "3 x 5, hex bar + 45, 25 a side (195 lb), leaving 2"
    std::string now;
    bool changed;
    std::vector<ShownWhy> why;
    int sets;
    int reps;
    std::string dose; // "3 x 5 a side"
    std::optional<double> reps_in_reserve;
    std::optional<double> load; // in the kit's unit
    std::string load_unit;
    std::string load_words;
    double rest_minutes;
    std::string setup;
    std::string last_time; // "2026-06-01: 195 lb x 5, 5, 4, leaving 2, 2, 0"; empty when never done
    int sets_done;         // of this session
    int sets_left;
};
BOOST_DESCRIBE_STRUCT(ShownNextLine, (),
                      (order, exercise, name, part, means, written, now, changed, why, sets, reps, dose,
                       reps_in_reserve, load, load_unit, load_words, rest_minutes, setup, last_time,
                       sets_done, sets_left))

struct ShownPainNote {
    std::string date;
    std::string name; // of the exercise
    std::string note;
};
BOOST_DESCRIBE_STRUCT(ShownPainNote, (), (date, name, note))

struct PlanNextSessionAnswer {
    std::string block;
    std::string athlete;
    std::string name;
    std::string kit;
    std::string today;
    std::string speed_unit; // of the facility
    int week;
    int session;
    std::string date;
    std::string weekday;
    int in_days;      // 0: today
    std::string rule; // as_written, one_missed, week_again, first_week_again
    ShownWhy rule_words;
    int missed;
    std::optional<int> days_off; // null: nothing is logged
    std::vector<ShownWhy> ordered;
    std::vector<ShownNextLine> lines;
    std::vector<ShownPainNote> pain_notes;
    std::vector<ShownFinding> findings; // of the guard rails, about this session as it is now
    std::vector<std::string> stop_and_refer;
    std::string words;
};
BOOST_DESCRIBE_STRUCT(PlanNextSessionAnswer, (),
                      (block, athlete, name, kit, today, speed_unit, week, session, date, weekday, in_days,
                       rule, rule_words, missed, days_off, ordered, lines, pain_notes, findings,
                       stop_and_refer, words))

Result<PlanNextSessionAnswer> plan_next_session(Workplace&, const PlanNextSessionRequest&);

} // namespace amentum
