#include "store/store.h"

#include "store/sqlite/fresh_records.h"
#include "store/sqlite/migrations.h"
#include "store/sqlite/rows.h"
#include "store/sqlite/statement.h"

#include <algorithm>
#include <cassert>
#include <mutex>

namespace amentum {
namespace {

constexpr int patience_ms = 5000; // while another process writes

// A newer program may have written what this one cannot read.
void refuse_newer(SQLite::Database& database) {
    Statement query(database, "SELECT name FROM migration ORDER BY name");
    while (query.step()) {
        query.begin_row();
        const std::string name = query.text();
        const auto& known = migrations();
        if (std::none_of(known.begin(), known.end(), [&](const auto& each) { return each.name == name; }))
            throw StoreFailure("it was written by a newer version of this program (" + name + ")");
    }
}

void migrate(SQLite::Database& database) {
    database.exec("CREATE TABLE IF NOT EXISTS migration (name TEXT NOT NULL PRIMARY KEY) STRICT");
    refuse_newer(database);
    for (const auto& migration : migrations()) {
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        Statement held(database, "SELECT 1 FROM migration WHERE name = $1");
        if (held.bind(migration.name).step())
            continue;
        database.exec(migration.sql);
        Statement(database, "INSERT INTO migration VALUES ($1)").bind(migration.name).run();
        transaction.commit();
    }
}

} // namespace

struct Store::Database {
    // The lock below stands before every use of the connection, so SQLite needs none of its own for each column.
    explicit Database(const std::string& file)
        : connection(file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLite::OPEN_NOMUTEX, patience_ms),
          records(connection) {
        for (const char* pragma :
             {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON"})
            connection.exec(pragma);
        migrate(connection);
    }

    template <class Work>
    auto locked(Work work) {
        const std::lock_guard lock(mutex);
        try {
            return work(connection);
        } catch (const SQLite::Exception& failure) {
            throw StoreFailure(failure.what());
        }
    }

    template <class Work>
    void committed(Work work) {
        locked([&](SQLite::Database& database) {
            SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
            work(database);
            transaction.commit();
            ++writes;
        });
    }

    std::mutex mutex;
    SQLite::Database connection;
    FreshRecords records;
    std::int64_t writes = 0;
};

Store::Store(const std::string& file) {
    try {
        database_ = std::make_unique<Database>(file);
    } catch (const std::runtime_error& failure) { // SQLite::Exception, StoreFailure
        throw StoreFailure("the store " + file + " cannot be opened: " + failure.what());
    }
}
Store::~Store() = default;
Store::Store(Store&&) noexcept = default;

RecordSet Store::load_all() {
    return database_->locked([this](SQLite::Database& database) -> RecordSet {
        SQLite::Transaction one_moment(database);
        return database_->records.as_of_now(database);
    });
}

std::int64_t Store::version() {
    return database_->locked([this](SQLite::Database& database) {
        // data_version moves when another connection commits, `writes` when this one does.
        return database.execAndGet("PRAGMA data_version").getInt64() * 1'000'000'000 + database_->writes;
    });
}

void Store::save_records(const RecordSet& records) {
    database_->committed([&](SQLite::Database& database) {
        if (records.facility)
            save_facility(database, *records.facility);
        save_kits(database, records.kits);
        save_athletes(database, records.athletes);
        save_readings(database, records.readings);
        save_throws(database, records.throws);
        save_calendar(database, records.calendar);
        save_blocks(database, records.blocks);
        save_sets(database, records.sets);
        save_overrides(database, records.overrides);
        save_prior_edits(database, records.prior_edits);
        save_teams(database, records.teams);
        save_pitch_tables(database, records.pitch_tables);
        save_pains(database, records.pains);
        save_clearances(database, records.clearances);
        save_throw_steps(database, records.throw_steps);
        save_stops_answered(database, records.stops_answered);
    });
}

void Store::save_roster_fit(const std::string& version, const std::string& content) {
    database_->committed([&](SQLite::Database& database) {
        Statement(database, "INSERT OR REPLACE INTO roster_fit VALUES ($1, $2, $3)")
            .bind(this_facility, version, content)
            .run();
    });
}

std::optional<std::string> Store::load_roster_fit() {
    return database_->locked([](SQLite::Database& database) {
        Statement query(database, "SELECT content FROM roster_fit WHERE facility_id = $1");
        query.bind(this_facility);
        if (!query.step())
            return std::optional<std::string>();
        query.begin_row();
        return std::optional(query.text());
    });
}

Saved Store::save_set(const SetDone& set) {
    int added = 0;
    database_->committed([&](SQLite::Database& database) { added = save_sets(database, {set}); });
    return added == 1 ? Saved::added : Saved::held_before;
}

void Store::save_block(const Block& block) {
    database_->committed([&](SQLite::Database& database) { replace_block(database, block); });
}

std::optional<Block> Store::load_block(const BlockId& block) {
    return database_->locked([&](SQLite::Database& database) {
        SQLite::Transaction one_moment(database);
        return amentum::load_block(database, block);
    });
}

bool Store::any_set_of(const BlockId& block) {
    return database_->locked([&](SQLite::Database& database) {
        return Statement(database, "SELECT 1 FROM set_done WHERE facility_id = $1 AND block_id = $2 LIMIT 1")
            .bind(this_facility, block.text)
            .step();
    });
}

void Store::save_block_change(const BlockChange& change, const Block& before, const Block& after) {
    assert(change.block == before.id && before.id == after.id);
    database_->committed([&](SQLite::Database& database) {
        amentum::save_block_change(database, change, before);
        replace_block(database, after);
    });
}

std::optional<Block> Store::load_block_before(const BlockId& block, int number) {
    return database_->locked([&](SQLite::Database& database) {
        SQLite::Transaction one_moment(database);
        return amentum::load_block_before(database, block, number);
    });
}

void Store::undo_block_change(const BlockId& block, int number, const Date& day, const Block& restored) {
    assert(restored.id == block);
    database_->committed([&](SQLite::Database& database) {
        if (!amentum::undo_block_change(database, block, number, day))
            throw StoreFailure("the block " + block.text + " has no change " + std::to_string(number) +
                               " to take back");
        replace_block(database, restored);
    });
}

std::vector<BlockChange> Store::list_block_changes() {
    return database_->locked([](SQLite::Database& database) { return load_block_changes(database); });
}

void Store::save_throw_entry(const ThrowEntry& entry) {
    database_->committed([&](SQLite::Database& database) {
        remove_throw(database, entry);
        save_throws(database, {entry});
    });
}

ThrowCorrection Store::save_throw_correction(const ThrowEntry& before, const std::optional<ThrowEntry>& after,
                                             const std::string& by, const std::string& reason,
                                             const Date& recorded) {
    ThrowCorrection correction{0, before, after, recorded, by, reason};
    database_->committed([&](SQLite::Database& database) {
        if (load_throw(database, before) != before)
            throw StoreFailure("the throws to be corrected are not held as given");
        remove_throw(database, before);
        if (after && save_throws(database, {*after}) != 1)
            throw StoreFailure("throws of that day, setting and occasion are held already");
        correction = amentum::save_throw_correction(database, correction);
    });
    return correction;
}

std::vector<ThrowCorrection> Store::list_throw_corrections() {
    return database_->locked([](SQLite::Database& database) { return load_throw_corrections(database); });
}

void Store::save_time_zone(const std::string& time_zone) {
    database_->committed([&](SQLite::Database& database) {
        Statement(database, "UPDATE facility SET time_zone = $2 WHERE facility_id = $1")
            .bind(this_facility, time_zone)
            .run();
    });
}

void Store::save_restrictions(const AthleteId& athlete, const std::vector<std::string>& restrictions) {
    database_->committed([&](SQLite::Database& database) {
        Statement(database, "UPDATE athlete SET restrictions = $3 WHERE facility_id = $1 AND athlete_id = $2")
            .bind(this_facility, athlete.text, joined_lines(restrictions))
            .run();
    });
}

void Store::save_item_mass(const KitId& kit, const std::string& label, Mass mass) {
    database_->committed([&](SQLite::Database& database) {
        Statement(database,
                  "UPDATE kit_item SET mass_kg = $4 WHERE facility_id = $1 AND kit_id = $2 AND label = $3")
            .bind(this_facility, kit.text, label, mass.kilograms())
            .run();
    });
}

std::optional<Facility> Store::facility() {
    return database_->locked([](SQLite::Database& database) { return load_facility(database); });
}

std::vector<Athlete> Store::list_athletes() {
    return database_->locked([](SQLite::Database& database) { return load_athletes(database); });
}

TraceSaved Store::save_trace(const KeptTrace& trace, const std::vector<Reading>& readings) {
    auto saved = TraceSaved::added;
    database_->committed([&](SQLite::Database& database) {
        if (const auto held = amentum::load_trace(database, trace.id)) {
            const bool same = held->file_digest == trace.file_digest && held->athlete == trace.athlete &&
                              held->date == trace.date && held->effort == trace.effort &&
                              held->legs == trace.legs;
            saved = same ? TraceSaved::held_before : TraceSaved::other_content;
        } else if (trace_of_trial(database, trace)) {
            saved = TraceSaved::trial_taken;
        } else if (std::any_of(readings.begin(), readings.end(),
                               [&](const Reading& each) { return held_otherwise(database, each); })) {
            saved = TraceSaved::reading_taken;
        } else {
            save_trace_rows(database, trace);
            save_readings(database, readings);
        }
    });
    return saved;
}

std::optional<KeptTrace> Store::load_trace(const std::string& id) {
    return database_->locked([&](SQLite::Database& database) {
        SQLite::Transaction one_moment(database);
        return amentum::load_trace(database, id);
    });
}

std::vector<KeptTrace> Store::list_traces(const std::optional<AthleteId>& athlete) {
    return database_->locked([&](SQLite::Database& database) {
        SQLite::Transaction one_moment(database);
        return load_traces(database, athlete);
    });
}

void Store::save_event_move(const KeptTrace& trace, const std::vector<Reading>& readings) {
    assert(!trace.moves.empty());
    database_->committed([&](SQLite::Database& database) {
        save_move_row(database, trace.id, trace.moves.size(), trace.moves.back());
        for (const auto& each : readings)
            remove_reading(database, each);
        save_readings(database, readings);
    });
}

std::string Store::check_integrity() {
    return database_->locked(
        [](SQLite::Database& database) { return database.execAndGet("PRAGMA integrity_check").getString(); });
}

std::string Store::schema() {
    return database_->locked([](SQLite::Database& database) {
        Statement query(database, "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name");
        std::string text;
        while (query.step()) {
            query.begin_row();
            text += query.text() + ";\n";
        }
        return text;
    });
}

} // namespace amentum
