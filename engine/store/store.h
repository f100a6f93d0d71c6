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

    // All of it or nothing, in one transaction. Rows already held with the same values are left as they are.
    void save_records(const RecordSet&);

    // A set is known by its key: the same set again changes nothing and says so.
    Saved save_set(const SetDone&);

    void save_block(const Block&); // replaces a block of the same id
    // Replaces an entry of the same athlete, day and setting: the next day's soreness comes a day later.
    void save_throw_entry(const ThrowEntry&);
    void save_restrictions(const AthleteId&, const std::vector<std::string>&);

    std::optional<Facility> facility();
    std::vector<Athlete> list_athletes();

    // A trace with the readings it gives, both or neither. The same trace again changes nothing and says so.
    TraceSaved save_trace(const KeptTrace&, const std::vector<Reading>&);
    std::optional<KeptTrace> load_trace(const std::string& id);
    // Without samples, by day: all, or one athlete's.
    std::vector<KeptTrace> list_traces(const std::optional<AthleteId>& athlete);
    // Adds the last move of `trace` and puts the readings in the place of those of the same identity.
    void save_event_move(const KeptTrace& trace, const std::vector<Reading>&);

    // For tests and repair: "ok", or what SQLite found wrong.
    std::string check_integrity();
    std::string schema(); // all tables and indexes as text, for the snapshot

private:
    struct Database;
    std::unique_ptr<Database> database_;
};

} // namespace amentum
