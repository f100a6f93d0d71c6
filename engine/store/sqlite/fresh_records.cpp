#include "store/sqlite/fresh_records.h"

#include "store/sqlite/rows.h"

#include <sqlite3.h>

#include <algorithm>

namespace amentum {
namespace {

void note_change(void* changed, int, const char*, const char* table, sqlite3_int64) {
    static_cast<std::set<std::string>*>(changed)->insert(table);
}

} // namespace

FreshRecords::FreshRecords(SQLite::Database& database) {
    sqlite3_update_hook(database.getHandle(), note_change, &changed_);
}

template <class List>
void FreshRecords::read_again(SQLite::Database& database, List& list, List (*load)(SQLite::Database&),
                              std::initializer_list<const char*> tables) {
    const bool moved = others_ < 0 || std::any_of(tables.begin(), tables.end(), [&](const char* table) {
                           return changed_.contains(table);
                       });
    if (moved)
        list = load(database);
}

const RecordSet& FreshRecords::as_of_now(SQLite::Database& database) {
    const std::int64_t others = database.execAndGet("PRAGMA data_version").getInt64();
    if (others != others_)
        others_ = -1;
    auto& r = records_;
    read_again(database, r.facility, load_facility, {"facility"});
    read_again(database, r.kits, load_kits, {"kit", "kit_item"});
    read_again(database, r.athletes, load_athletes, {"athlete"});
    read_again(database, r.readings, load_readings, {"reading"});
    read_again(database, r.throws, load_throws, {"throw_entry"});
    read_again(database, r.calendar, load_calendar, {"calendar_entry"});
    read_again(database, r.blocks, load_blocks, {"block", "block_line"});
    read_again(database, r.sets, load_sets, {"set_done"});
    read_again(database, r.overrides, load_overrides, {"caution_override"});
    read_again(database, r.prior_edits, load_prior_edits, {"prior_edit"});
    read_again(database, r.teams, load_teams, {"team_place"});
    read_again(database, r.pitch_tables, load_pitch_tables, {"pitch_table", "pitch_table_rule"});
    read_again(database, r.pains, load_pains, {"pain_entry"});
    read_again(database, r.clearances, load_clearances, {"pain_clearance"});
    read_again(database, r.throw_steps, load_throw_steps, {"throw_steps", "throw_step"});
    read_again(database, r.stops_answered, load_stops_answered, {"stop_answered"});
    others_ = others; // last: a list that cannot be read leaves all to be read again
    changed_.clear();
    return records_;
}

} // namespace amentum
