#include "records/record_columns.h"

#include "records/inside/units.h"

#include <algorithm>

namespace amentum {
namespace {

using enum Holds;
using enum Identity;
using enum Need;
using Columns = std::vector<RecordColumn>;

constexpr const char* athlete_meaning = "the athlete's name, as in athletes.csv";
constexpr const char* date_meaning = "the day, as 2026-03-14";
constexpr const char* note_meaning = "anything worth keeping";

RecordColumn athlete() {
    return {"athlete", text, needed, by_slug, athlete_meaning, ""};
}
RecordColumn date_of(const char* meaning) {
    return {"date", date, needed, exact, meaning, ""};
}
RecordColumn day(const char* meaning) { // that does not tell one record from another
    return {"date", date, needed, none, meaning, ""};
}
RecordColumn note() {
    return {"note", text, optional, none, note_meaning, ""};
}
RecordColumn load(const char* meaning) {
    return {"load", mass, optional, none, meaning, "added_load"};
}

Columns facility_columns() {
    return {{"name", text, needed, none, "what the facility is called", ""},
            {"mass_unit", text, optional, none, "lb or kg; lb when empty", ""},
            {"speed_unit", text, optional, none, "mph, m/s or km/h; mph when empty", ""},
            {"length_unit", text, optional, none, "in or cm; in when empty", ""},
            {"time_zone", text, optional, none,
             "of its calendar days, \"America/Halifax\"; the computer's own when empty", ""}};
}

Columns kit_columns() {
    return {{"kit", text, needed, by_slug, "the kit's name, \"Main hall\"; one line for each item", ""},
            {"unit", text, optional, none,
             "lb or kg, the unit its loads are spoken in; the unit of the masses when empty", ""},
            {"item", text, optional, none,
             "straight_bar, hex_bar, plate, dumbbell ...; empty names a kit without items", ""},
            {"label", text, optional, exact,
             "what the coach calls it, unique in the kit; made from mass and item when empty", ""},
            {"count", whole, optional, none, "how many, 1 to 500, counted singly; 1 when empty", ""},
            {"mass", mass, optional, none,
             "of one, as weighed: bars, plates, dumbbells, kettlebells, balls need it", ""},
            {"height", length, optional, none, "of a hex bar's handles, of a box's or pad's top", ""},
            {"ratio", number, optional, none,
             "of a column: force at the handle over stack mass (0.5 for 2:1)", ""},
            {"step", mass, optional, none, "of a column's stack", ""},
            {"most", mass, optional, none, "of a column's stack", ""}};
}

Columns athlete_columns() {
    return {
        {"name", text, needed, by_slug, "the athlete's name, unique in the facility", "athlete"},
        {"birth_date", date, needed, none, "as 2008-05-11; ages 6 to 80", ""},
        {"sex", text, needed, none, "female or male, as published reference tables are divided", ""},
        {"throwing_hand", text, needed, none, "left or right", ""},
        {"sport", text, needed, none, "baseball, softball or javelin", ""},
        {"role", text, needed, none, "pitcher, catcher, fielder or thrower", ""},
        {"level", text, needed, none, "youth, school, college, amateur or professional", ""},
        {"stature", length, optional, none, "standing height, 1.0 to 2.4 m", ""},
        {"sitting_height", length, optional, none, "crown to seat, 0.5 to 1.3 m", ""},
        {"training_years", number, optional, none, "of supervised strength training, 0 to 40", ""},
        {"restrictions", text, optional, none, "keys of the cautions, several divided by ';'", ""},
        {"kit", text, optional, none, "where the athlete trains; needed when there is more than one kit", ""},
        {"guardian", text, optional, none, "whom to tell, for a minor", ""}};
}

Columns test_columns() {
    return {
        athlete(),
        date_of(date_meaning),
        {"test", text, needed, exact, "key or name of the test", ""},
        {"side", text, optional, exact, "left, right or none; none when empty", ""},
        {"trial", whole, optional, exact, "1 to 60; lines are numbered in their order when empty", ""},
        load("on the bar; for pull-ups added to the body, below 0 when helped"),
        {"reps", whole, optional, none, "clean repetitions", ""},
        {"reps_in_reserve", number, optional, none, "that were left; 0 when the set ended at failure", ""},
        {"body_mass", mass, optional, none, "of the athlete", ""},
        {"speed", speed, optional, none, "of the ball; of take-off, for a jump", ""},
        {"radar_angle", angle, optional, none, "between the radar's line and the ball's path", ""},
        {"distance", length, optional, none, "of a throw from the point of release; of a bound", ""},
        {"release_height", length, optional, none, "above the landing place", ""},
        {"release_angle", angle, optional, none, "above level", ""},
        {"flight_time", Holds::time, optional, none, "of a jump", ""},
        {"contact_time", Holds::time, optional, none, "of a rebound: from touch-down to take-off", ""},
        {"height", length, optional, none, "of a jump read directly; of the athlete", ""},
        {"angle", angle, optional, none, "of a joint", ""},
        {"force", force, optional, none, "of a push or pull held still", ""},
        {"power", Holds::power, optional, none, "highest of a jump, from a force plate", ""},
        {"device", text, optional, none, "what it was read with: \"radar 1\"", ""},
        {"rater", text, optional, none, "who read it", ""},
        {"place_measured", text, optional, none, "of a ball's speed: out_of_hand, at_plate or unknown", ""},
        note()};
}

Columns throw_columns() {
    return {
        athlete(),
        date_of(date_meaning),
        {"setting", text, needed, exact,
         "catch_play, flat_ground, mound, bullpen, game, long_toss, ball_drill, javelin, fielding or none",
         ""},
        {"count", whole, needed, none, "of throws, 1 to 400; 0 or empty for none, and 0 for innings caught",
         ""},
        {"effort", fraction, optional, none, "intended, of full effort: 0.1 to 1, or 10 to 100 percent", ""},
        {"speed", speed, optional, none, "mean of those measured", ""},
        {"distance", length, optional, none, "thrown", ""},
        {"ball_mass", mass, optional, none, "of the ball", ""},
        {"soreness_before", number, optional, none, "of the arm, 0 none to 10 worst imaginable", ""},
        {"soreness_after", number, optional, none, "0 to 10", ""},
        {"soreness_next_day", number, optional, none, "0 to 10", ""},
        note(),
        {"occasion", whole, optional, exact,
         "the first, second ... of that setting on that day, 1 to 9; 1 when empty", ""},
        {"team", text, optional, none, "for whom", ""},
        {"game", text, optional, none, "its name; the same name on a later day: the suspended game goes on",
         ""},
        {"outs", whole, optional, none, "of a game, recorded while pitching: innings x 3, 0 to 60", ""},
        {"before_last_batter", whole, optional, none, "of a game: pitches before the last batter's first",
         ""},
        {"outs_caught", whole, optional, none, "of fielding, behind the plate: innings x 3, 0 to 60", ""},
        {"accuracy", text, optional, none, "how well they went where they should, in words", ""},
        {"device", text, optional, none, "that measured the speed", ""}};
}

Columns calendar_columns() {
    return {athlete(),
            date_of("the day, or the first of several, as 2026-04-04"),
            {"kind", text, needed, exact, "game, start, practice, travel or off", ""},
            {"last_date", date, optional, none, "the last of several days; the same day when empty", ""},
            note()};
}

Columns block_columns() {
    return {{"block", text, needed, exact, "the block's key, as exports write it", ""},
            {"athlete", text, needed, none, athlete_meaning, ""},
            {"kit", text, needed, none, "the kit its loads can be made with", ""},
            {"start", date, needed, none, "first day of week 1", ""},
            {"weeks", whole, needed, none, "4 to 16", ""},
            {"sessions_per_week", whole, needed, none, "1 to 5", ""},
            {"minutes", number, needed, none, "of a session, 20 to 120", ""},
            {"notes", text, optional, none, "what could not be met; one sentence a line of the field", ""},
            {"model", text, optional, none, "what made it", ""}};
}

Columns block_line_columns() {
    return {{"block", text, needed, exact, "the block's key, as in blocks.csv", ""},
            {"week", whole, needed, exact, "1 to the block's weeks", ""},
            {"session", whole, needed, exact, "within the week", ""},
            {"order", whole, needed, exact, "within the session", ""},
            {"date", date, needed, none, date_meaning, ""},
            {"exercise", text, needed, none, "key or name of the exercise", ""},
            {"part", text, needed, none, "speed, main_lift, assistance, shoulder, trunk or mobility", ""},
            {"sets", whole, needed, none, "1 to 40", ""},
            {"reps", whole, needed, none, "in each set, 1 to 100", ""},
            {"intensity", fraction, optional, none, "of the lift's estimated maximum", ""},
            {"reps_in_reserve", number, optional, none, "at the end of each set", ""},
            {"load", mass, optional, none, "total, as the lift counts it", ""},
            {"load_words", text, optional, none, "how it is made", ""},
            {"rest_minutes", number, needed, none, "0 to 60", ""},
            {"purpose", text, optional, none, "key of the quality it serves", ""},
            {"reason", text, optional, none, "why this, why here", ""},
            {"overridden", text, optional, none,
             "cautions overridden with a kept reason, several divided by ';'", ""}};
}

Columns set_columns() {
    return {
        {"key", text, optional, exact, "8 to 64 letters, digits or '-'; made from the line when empty", ""},
        {"athlete", text, needed, none, athlete_meaning, ""},
        {"date", date, needed, none, date_meaning, ""},
        {"exercise", text, needed, none, "key or name of the exercise", ""},
        {"set_number", whole, needed, none, "1 to 40", ""},
        load("total, as the lift counts it; for pull-ups added"),
        {"reps", whole, optional, none, "1 to 100", ""},
        {"reps_in_reserve", number, optional, none, "0 to 20", ""},
        {"speed", speed, optional, none, "of the ball", ""},
        {"block", text, optional, none, "the block it belongs to", ""},
        note()};
}

Columns override_columns() {
    return {athlete(),
            {"exercise", text, needed, exact, "key or name of the exercise", ""},
            {"caution", text, needed, exact, "key of the caution", ""},
            date_of(date_meaning),
            {"coach", text, needed, exact, "who decided", ""},
            {"reason", text, needed, exact, "why, in at least 10 letters", ""}};
}

Columns prior_edit_columns() {
    return {{"number", whole, needed, exact, "1, 2, 3 ... through the whole facility, none left out", ""},
            {"kind", text, needed, none, "slope or attainable_change", ""},
            {"quality", text, needed, none, "key of the quality", ""},
            {"published", text, optional, none,
             "yes goes back to the published value, and mean and sd stay empty; no when empty", ""},
            {"mean", number, optional, none, "slope: -1 to 1; attainable_change: 0 to 2, in SDs", ""},
            {"sd", number, optional, none, "how sure: 0.01 to 1", ""},
            {"author", text, needed, none, "who changed it", ""},
            day(date_meaning),
            {"reason", text, needed, none, "why, in at least 10 letters", ""}};
}

RecordColumn running(const char* meaning) {
    return {"number", whole, needed, exact, meaning, ""};
}

Columns pitch_rule_columns() {
    Columns all{
        running("of the table: 1, 2, 3 ... through the whole facility; one line for each band of ages"),
        {"organisation", text, needed, none, "whose table it takes the place of, or a league of your own",
         ""},
        {"sport", text, needed, none, "baseball, softball or javelin", ""},
        {"author", text, needed, none, "who changed it", ""},
        day(date_meaning),
        {"reason", text, needed, none, "why, in at least 10 letters", ""},
        {"year", whole, optional, none, "of the table as it was read", ""},
        {"age_low", whole, optional, exact,
         "whole years, included; empty: back to the table that came with the program", ""},
        {"age_high", whole, optional, none, "whole years, included", ""},
        {"daily_max", whole, optional, none, "pitches in one day, 1 to 400", ""}};
    for (const char* days : {"0", "1", "2", "3", "4", "5"})
        all.push_back({"rest_" + std::string(days) + "_to", whole, optional, none,
                       "pitches up to which " + std::string(days) + " days of rest are enough", ""});
    for (RecordColumn column : Columns{
             {"game_max", whole, optional, none, "pitches in one game", ""},
             {"third_day_max", whole, optional, none, "pitches on the third day running; 0: none", ""},
             {"most_days_running", whole, optional, none, "days in a row with pitches, 1 to 7", ""},
             {"yearly_innings", whole, optional, none, "in 12 months, all teams together", ""},
             {"note", text, optional, none, "what the table says beside its numbers", ""},
             {"source", text, optional, none, "where it can be read; one a line of the field", ""},
             {"age_month", whole, optional, none, "age counts as of this day of the year, 1 to 12 ...", ""},
             {"age_day", whole, optional, none, "... and its day; both empty: the birthday itself", ""},
             {"second_game", text, optional, none, "unsaid, never or after_no_rest_count; unsaid when empty",
              ""},
             {"last_batter", text, optional, none,
              "unsaid, past_daily_maximum or counts_as_reached; unsaid when empty", ""},
             {"no_catching_from", whole, optional, none, "so many pitches: no catching that day", ""},
             {"no_pitching_caught", whole, optional, none, "so many innings caught: no pitching that day",
              ""},
             {"months_off", whole, optional, none, "without pitching or throwing, in 12 months", ""},
             {"months_off_running", whole, optional, none, "of these, in one piece", ""},
             {"months_off_from", text, optional, none, "pitching (in games) or throwing; pitching when empty",
              ""}})
        all.push_back(std::move(column));
    return all;
}

Columns team_columns() {
    return {athlete(),
            {"team", text, needed, exact, "the team's name", ""},
            {"organisation", text, optional, none,
             "of the pitch table it plays by; empty: none that the program knows", ""},
            date_of("the first day, as 2026-03-14"),
            {"last_date", date, optional, none, "the last day; empty while it goes on", ""}};
}

Columns pain_columns() {
    return {athlete(),
            running("1, 2, 3 ... of the athlete, none left out"),
            day("when it was felt, as 2026-03-14"),
            {"region", text, needed, none,
             "shoulder, elbow, forearm_and_hand, neck_and_upper_back, low_back, hip_and_groin, knee or "
             "ankle_and_foot",
             ""},
            {"sign", text, optional, none, "key of the sign to stop and refer; empty: none of them", ""},
            {"words", text, optional, none, "as the thrower said it", ""},
            {"noted_by", text, needed, none, "who wrote it down", ""}};
}

Columns clearance_columns() {
    return {athlete(),
            running("of the pain entry that is cleared"),
            day("on which it was cleared, as 2026-03-14"),
            {"cleared_by", text, needed, none, "the clinician, by name", ""},
            {"recorded_by", text, needed, none, "the adult who enters it, by name", ""},
            {"recorded", date, needed, none, "when it was entered", ""},
            {"words", text, optional, none, "what was said: limits, conditions", ""}};
}

Columns throw_step_columns() {
    return {
        athlete(),
        running("of the steps: 1, 2, 3 ... of the athlete, none left out; one line for each step"),
        {"step", whole, optional, exact, "1, 2, 3 ...; empty: no steps any more, the last ones end", ""},
        {"origin", text, needed, none, "ramp or clinician", ""},
        {"author", text, needed, none, "who wrote them: the clinician, or the coach", ""},
        {"start", date, needed, none, "of the first step", ""},
        {"days_between", whole, needed, none, "without throwing between two steps, 0 to 6", ""},
        {"throws", whole, optional, none, "of the step, 1 to 400", ""},
        {"distance", length, optional, none, "of each throw", ""},
        {"effort", fraction, optional, none, "intended, of full effort: 0.1 to 1, or 10 to 100 percent", ""},
        {"words", text, optional, none, "of the step", ""},
        note(),
        {"recorded_by", text, needed, none, "who entered them", ""},
        {"recorded", date, needed, none, "when", ""}};
}

Columns stop_columns() {
    return {athlete(),
            {"code", text, needed, exact, "of the finding that stops", ""},
            date_of("the day the answer holds for"),
            {"reason", text, needed, none, "why, in at least 10 letters", ""},
            {"coach", text, needed, none, "who answers for it", ""},
            {"recorded", date, needed, none, "when it was entered", ""}};
}

} // namespace

const std::vector<RecordColumn>& record_columns(RecordKind kind) {
    static const std::array<Columns, words_of<RecordKind>.size()> all{
        facility_columns(),   kit_columns(),        athlete_columns(),    test_columns(), throw_columns(),
        calendar_columns(),   block_columns(),      block_line_columns(), set_columns(),  override_columns(),
        prior_edit_columns(), pitch_rule_columns(), team_columns(),       pain_columns(), clearance_columns(),
        throw_step_columns(), stop_columns()};
    return all[static_cast<std::size_t>(kind)];
}

const RecordColumn* find_column(const std::vector<RecordColumn>& columns, std::string_view name) {
    const auto found =
        std::find_if(columns.begin(), columns.end(), [&](const auto& each) { return each.name == name; });
    return found == columns.end() ? nullptr : &*found;
}

const RecordColumn* find_column(RecordKind kind, std::string_view name) {
    return find_column(record_columns(kind), name);
}

std::vector<std::string> header_names(const RecordColumn& column) {
    const auto units = units_of(column.holds);
    std::vector<std::string> names;
    for (const auto& base : {column.name, column.also}) {
        if (base.empty())
            continue;
        if (units.empty())
            names.push_back(base);
        for (const auto& unit : units)
            names.push_back(base + (*unit.suffix ? "_" : "") + unit.suffix);
    }
    return names;
}

} // namespace amentum
