// Each kind of record to its row and back. save_: new rows are added, equal ones left, others of the same key refused.
#pragma once

#include "recordings/kept_trace.h"
#include "values/block_change.h"
#include "values/record_set.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace amentum {

inline constexpr const char* this_facility = "main";

void save_facility(SQLite::Database&, const Facility&);
void save_kits(SQLite::Database&, const std::vector<Kit>&);
void save_athletes(SQLite::Database&, const std::vector<Athlete>&);
void save_readings(SQLite::Database&, const std::vector<Reading>&);
int save_throws(SQLite::Database&, const std::vector<ThrowEntry>&); // how many were new
void save_calendar(SQLite::Database&, const std::vector<CalendarEntry>&);
void save_blocks(SQLite::Database&, const std::vector<Block>&);
int save_sets(SQLite::Database&, const std::vector<SetDone>&); // how many were new
void save_overrides(SQLite::Database&, const std::vector<Override>&);
void save_prior_edits(SQLite::Database&, const std::vector<PriorEdit>&);
void save_teams(SQLite::Database&, const std::vector<TeamPlace>&); // a place that goes on may end
void save_pitch_tables(SQLite::Database&, const std::vector<PitchTable>&);
void save_pains(SQLite::Database&, const std::vector<PainEntry>&);
void save_clearances(SQLite::Database&, const std::vector<PainClearance>&);
void save_throw_steps(SQLite::Database&, const std::vector<ThrowSteps>&);
void save_stops_answered(SQLite::Database&, const std::vector<StopAnswered>&);

std::optional<ThrowEntry> load_throw(SQLite::Database&, const ThrowEntry& of_this_identity);
void remove_throw(SQLite::Database&, const ThrowEntry& of_this_identity);
ThrowCorrection save_throw_correction(SQLite::Database&, ThrowCorrection); // gives it its number
std::vector<ThrowCorrection> load_throw_corrections(SQLite::Database&);

void replace_block(SQLite::Database&, const Block&);
std::optional<Block> load_block(SQLite::Database&, const BlockId&);
void save_block_change(SQLite::Database&, const BlockChange&, const Block& before);
std::vector<BlockChange> load_block_changes(SQLite::Database&);
std::optional<Block> load_block_before(SQLite::Database&, const BlockId&, int number);
// False: there is no such change, or it is taken back already.
bool undo_block_change(SQLite::Database&, const BlockId&, int number, const Date& day);

// A reading of this identity with other values.
bool held_otherwise(SQLite::Database&, const Reading&);
void remove_reading(SQLite::Database&, const Reading& of_this_identity);
void save_trace_rows(SQLite::Database&, const KeptTrace&);
void save_move_row(SQLite::Database&, const std::string& trace, std::size_t place, const EventMove&);

std::vector<KeptTrace> load_traces(SQLite::Database&, const std::optional<AthleteId>& athlete);
// With its samples.
std::optional<KeptTrace> load_trace(SQLite::Database&, const std::string& id);
// The id of the trace that has this athlete, day, effort, legs and trial.
std::optional<std::string> trace_of_trial(SQLite::Database&, const KeptTrace&);
std::optional<Facility> load_facility(SQLite::Database&);
std::vector<Kit> load_kits(SQLite::Database&);
std::vector<Athlete> load_athletes(SQLite::Database&);
std::vector<Reading> load_readings(SQLite::Database&);
std::vector<ThrowEntry> load_throws(SQLite::Database&);
std::vector<CalendarEntry> load_calendar(SQLite::Database&);
std::vector<Block> load_blocks(SQLite::Database&);
std::vector<SetDone> load_sets(SQLite::Database&);
std::vector<Override> load_overrides(SQLite::Database&);
std::vector<PriorEdit> load_prior_edits(SQLite::Database&);
std::vector<TeamPlace> load_teams(SQLite::Database&);
std::vector<PitchTable> load_pitch_tables(SQLite::Database&);
std::vector<PainEntry> load_pains(SQLite::Database&);
std::vector<PainClearance> load_clearances(SQLite::Database&);
std::vector<ThrowSteps> load_throw_steps(SQLite::Database&);
std::vector<StopAnswered> load_stops_answered(SQLite::Database&);

// Lists of words and sentences in one column, one a line; line breaks inside an item become spaces, empty items go.
std::string joined_lines(const std::vector<std::string>&);
std::vector<std::string> split_lines(const std::string&);

} // namespace amentum
