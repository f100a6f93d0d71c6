// How is it kept? One facility's records in one SQLite file, durable before a write answers.
//
// WAL journal, synchronous = FULL, foreign keys, STRICT tables [SqliteWal]; every operation is one
// transaction. Quantities are stored in SI as REAL, the unit in the column's name, bit for bit. facility_id leads every
// key, so that a database shared by an organisation can be split by it. Migrations only add.
// Several threads may use one Store: reading and writing are serialised by one lock, which at one facility's size costs
// less than a second connection would. Another process may have the file open too: version() sees its writes.
// Failures of disk or database are StoreFailure, an exception caught once in the operations' callers.
// Contract: what is saved was checked before; saving a row whose key is held with other values is a StoreFailure, and
// then nothing of that save is kept.
#pragma once

#include "recordings/kept_trace.h"
#include "values/block_change.h"
#include "values/record_set.h"

#include <cstdint>
#include <memory>
#include <stdexcept>
#include <string>

namespace amentum {

struct StoreFailure : std::runtime_error {
    using std::runtime_error::runtime_error;
};

enum class Saved { added, held_before };

// Why a trace was not kept: its id is held with other content, its trial is another trace's, or a reading typed by
// hand stands where one of its readings would.
enum class TraceSaved { added, held_before, other_content, trial_taken, reading_taken };

class Store {
public:
    explicit Store(
        const std::string& file); // made and migrated when needed; ":memory:" is forgotten at the end
    ~Store();
    Store(Store&&) noexcept;

    RecordSet load_all();
    std::int64_t version(); // changes with every committed write, of this process or another

    // All of it or nothing, in one transaction. Rows already held with the same values are left as they are; a place in a
    // team that goes on takes the last day it is given.
    void save_records(const RecordSet&);

    // A set is known by its key: the same set again changes nothing and says so.
    Saved save_set(const SetDone&);

    void save_block(const Block&); // replaces a block of the same id
    std::optional<Block> load_block(const BlockId&);
    bool any_set_of(const BlockId&); // is a set logged against it?
    // The block after a change in the place of the block before it, which is kept with the change.
    void save_block_change(const BlockChange&, const Block& before, const Block& after);
    std::optional<Block> load_block_before(const BlockId&, int number);
    // Takes a change back: marks it with the day, and puts `restored` in the place of the block.
    void undo_block_change(const BlockId&, int number, const Date& day, const Block& restored);
    std::vector<BlockChange> list_block_changes(); // of all blocks, in order

    // Replaces an entry of the same athlete, day, setting and occasion: the next day's soreness comes a day later.
    void save_throw_entry(const ThrowEntry&);
    // Puts `after` in the place of `before`, or takes `before` away, and keeps both with who said so and why. StoreFailure:
    // `before` is not held as given, or `after` would stand where another entry does. Gives back what is kept.
    ThrowCorrection save_throw_correction(const ThrowEntry& before, const std::optional<ThrowEntry>& after,
                                          const std::string& by, const std::string& reason,
                                          const Date& recorded);
    std::vector<ThrowCorrection> list_throw_corrections(); // in order
    void save_time_zone(const std::string&);               // of the facility
    void save_restrictions(const AthleteId&, const std::vector<std::string>&);
    void save_item_mass(const KitId&, const std::string& label, Mass); // of an item the kit holds

    std::optional<Facility> facility();
    std::vector<Athlete> list_athletes();

    // A trace with the readings it gives, both or neither. The same trace again changes nothing and says so.
    TraceSaved save_trace(const KeptTrace&, const std::vector<Reading>&);
    std::optional<KeptTrace> load_trace(const std::string& id);
    // Without samples, by day: all, or one athlete's.
    std::vector<KeptTrace> list_traces(const std::optional<AthleteId>& athlete);
    // Adds the last move of `trace` and puts the readings in the place of those of the same identity.
    void save_event_move(const KeptTrace& trace, const std::vector<Reading>&);

    // The last fit of the roster, as text of its own: replaced by the next. Not part of the records.
    void save_roster_fit(const std::string& version, const std::string& content);
    std::optional<std::string> load_roster_fit();

    // For tests and repair: "ok", or what SQLite found wrong.
    std::string check_integrity();
    std::string schema(); // all tables and indexes as text, for the snapshot

private:
    struct Database;
    std::unique_ptr<Database> database_;
};

} // namespace amentum
