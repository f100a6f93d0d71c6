// Each kind of record to its row and back. save_: new rows are added, equal ones left, others of the same key refused.
#pragma once

#include "recordings/kept_trace.h"
#include "values/record_set.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace amentum {

inline constexpr const char* this_facility = "main";

void save_facility(SQLite::Database&, const Facility&);
void save_kits(SQLite::Database&, const std::vector<Kit>&);
void save_athletes(SQLite::Database&, const std::vector<Athlete>&);
void save_readings(SQLite::Database&, const std::vector<Reading>&);
void save_throws(SQLite::Database&, const std::vector<ThrowEntry>&);
void save_calendar(SQLite::Database&, const std::vector<CalendarEntry>&);
void save_blocks(SQLite::Database&, const std::vector<Block>&);
int save_sets(SQLite::Database&, const std::vector<SetDone>&); // how many were new
void save_overrides(SQLite::Database&, const std::vector<Override>&);

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

// Lists of words and sentences in one column, one a line; line breaks inside an item become spaces, empty items go.
std::string joined_lines(const std::vector<std::string>&);
std::vector<std::string> split_lines(const std::string&);

} // namespace amentum
