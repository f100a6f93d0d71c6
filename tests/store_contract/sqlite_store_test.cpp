// The store of this program keeps the contract (contract.h), and refuses files it cannot read.
#include "change_contract.h"
#include "contract.h"
#include "folder.h"
#include "trace_contract.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <fstream>
#include <memory>

using namespace amentum;

namespace {

std::unique_ptr<Store> open(const std::string& file) {
    return std::make_unique<Store>(file);
}

std::string failure_of(const std::string& file) {
    try {
        Store store(file);
    } catch (const StoreFailure& failure) {
        return failure.what();
    }
    return "";
}

} // namespace

TEST_CASE("what is saved is held, bit for bit, also by the next process") {
    check_what_is_kept(open, Folder("kept").file("a.db"));
}

TEST_CASE("one row that cannot be saved, and nothing of the save is kept") {
    const Folder folder("nothing");
    check_all_or_nothing(open, folder.file("a.db"));
}

TEST_CASE("sets are known by their key, a block is replaced, items come last") {
    const Folder folder("sets");
    check_sets_blocks_and_restrictions(open, folder.file("a.db"));
}

TEST_CASE("a force trace is kept bit for bit with its readings, and its moves are only added") {
    const Folder folder("traces");
    check_traces(open, folder.file("a.db"));
}

TEST_CASE("changes of a block are only added to, each with the block before it, bit for bit") {
    const Folder folder("changes");
    check_block_changes(open, folder.file("a.db"));
}

TEST_CASE("a place in a team ends once, and is nothing else than it was") {
    const Folder folder("places");
    check_places_end_once(open, folder.file("a.db"));
}

TEST_CASE("throws that were corrected stay readable as they stood") {
    const Folder folder("corrections");
    check_throw_corrections(open, folder.file("a.db"));
}

// A store reads again what changed, and nothing else: after each write it holds what a store just opened reads.
TEST_CASE("after every kind of write the records are those a fresh store reads, whoever wrote") {
    const Folder folder("fresh");
    const auto file = folder.file("a.db");
    const auto store = open(file), other = open(file);
    const RecordSet all = one_of_everything();
    const auto same = [&](const char* after) {
        CHECK_MESSAGE(store->load_all() == open(file)->load_all(), after);
    };
    same("nothing");
    store->save_records(all);
    same("everything");
    store->save_set(set_of(41));
    same("a set");
    Block block = all.blocks[0];
    block.minutes += 5;
    block.lines.pop_back();
    store->save_block(block);
    same("a block");
    Block longer = block;
    longer.minutes += 5;
    store->save_block_change({block.id, 1, OwnStep::planned, "", "", {}, {}, {}, contract_day(), {}}, block,
                             longer);
    same("a change of the block");
    store->undo_block_change(block.id, 1, contract_day(), block);
    same("the change taken back");
    ThrowEntry sore = all.throws[0];
    sore.soreness_next_day = 4;
    store->save_throw_entry(sore);
    same("soreness");
    store->save_throw_correction(sore, std::nullopt, "Kim Osei", "it was another thrower", contract_day());
    same("a correction");
    store->save_time_zone("America/Halifax");
    store->save_restrictions(all.athletes[0].id, {"sore_shoulder"});
    store->save_item_mass(all.kits[0].id, all.kits[0].items[0].label, Mass::kilograms(19.5));
    same("zone, restrictions and a weighed item");
    CHECK_THROWS_AS(store->save_records(contradictions(all)[0]), StoreFailure);
    same("a save that failed");
    other->save_set(set_of(42));
    same("another's set");
    CHECK(store->load_all() == other->load_all());
}

TEST_CASE("no program can delete or change a pain entry, or what else is only added to") {
    const Folder folder("added");
    const auto store = open(folder.file("a.db"));
    store->save_records(one_of_everything());
    const auto throws = store->load_all().throws;
    store->save_throw_correction(throws[0], {}, "Kim Osei", "it was never thrown", contract_day());
    const RecordSet held = store->load_all();
    SQLite::Database raw(folder.file("a.db"), SQLite::OPEN_READWRITE);
    for (const std::string table :
         {"pain_entry", "pain_clearance", "throw_steps", "throw_step", "pitch_table", "pitch_table_rule",
          "stop_answered", "throw_correction", "throw_entry_corrected", "team_place"}) {
        CAPTURE(table);
        CHECK(raw.execAndGet("SELECT count(*) FROM " + table).getInt() > 0);
        CHECK_THROWS_AS(raw.exec("DELETE FROM " + table), SQLite::Exception);
        CHECK_THROWS_AS(raw.exec("UPDATE " + table + " SET facility_id = 'x'"), SQLite::Exception);
        CHECK_THROWS_AS(raw.exec("UPDATE OR REPLACE " + table + " SET facility_id = 'main'"),
                        SQLite::Exception);
        raw.exec("INSERT OR REPLACE INTO " + table + " SELECT * FROM " + table); // passed over
    }
    raw.exec("INSERT OR REPLACE INTO pain_entry VALUES ('main', 'ona-reyes', 1, '2024-10-04', 'knee', '', "
             "'', '')");
    CHECK_THROWS_AS(raw.exec("UPDATE team_place SET team = 'other' WHERE last_date IS NULL"),
                    SQLite::Exception);
    raw.exec("PRAGMA foreign_keys = ON");
    CHECK_THROWS_AS(raw.exec("DELETE FROM athlete"), SQLite::Exception);
    CHECK(store->load_all() == held);
    CHECK(store->list_throw_corrections().size() == 1);
}

TEST_CASE(
    "a store of before the arm's account keeps all of its throws, each the first of its day and setting") {
    const Folder folder("before");
    {
        SQLite::Database raw(folder.file("a.db"), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        raw.exec("CREATE TABLE migration (name TEXT NOT NULL PRIMARY KEY) STRICT");
        for (const char* name : {"0001_first_records.sql", "0002_force_traces.sql", "0003_prior_edits.sql",
                                 "0004_roster_fit.sql", "0005_block_changes.sql"}) {
            std::ifstream file(std::string(AMENTUM_SOURCE_DIR "/engine/store/schema/") + name);
            raw.exec(std::string(std::istreambuf_iterator<char>(file), {}));
            raw.exec(std::string("INSERT INTO migration VALUES ('") + name + "')");
        }
        raw.exec("INSERT INTO facility VALUES ('main', 'Gym', 'lb', 'mph', 'in')");
        raw.exec("INSERT INTO kit VALUES ('main', 'hall', 'Hall', 'lb')");
        raw.exec(
            "INSERT INTO athlete VALUES ('main', 'ona', 'Ona', '2008-05-11', 'female', 'left', 'softball', "
            "'pitcher', 'school', NULL, NULL, NULL, '', 'hall', '')");
        raw.exec(
            "INSERT INTO throw_entry VALUES ('main', 'ona', '2024-10-04', 'game', 41, 0.9, 30.5, NULL, NULL, "
            "0, "
            "2, NULL, 'a note'), ('main', 'ona', '2024-10-04', 'bullpen', 20, NULL, NULL, NULL, NULL, NULL, "
            "NULL, NULL, '')");
    }
    const auto held = open(folder.file("a.db"))->load_all();
    const ThrowEntry bullpen{{"ona"}, contract_day(), ThrowSetting::bullpen, 20, {}, {}, {}, {}, {}, {}, {},
                             ""};
    ThrowEntry game{{"ona"}, contract_day(), ThrowSetting::game, 41, 0.9, {}, {}, {}, 0, 2, {}, "a note"};
    game.speed = Speed::metres_per_second(30.5);
    CHECK(held.throws == std::vector<ThrowEntry>{bullpen, game});
    CHECK(held.throws[0].occasion == 1);
    CHECK(held.facility == Facility{"Gym"});
}

TEST_CASE("the version moves with every write of anybody, and with nothing else") {
    const Folder folder("version");
    check_version(open, folder.file("a.db"));
}

TEST_CASE("many writers at once lose nothing") {
    const Folder folder("writers");
    check_many_writers(open, folder.file("a.db"));
}

TEST_CASE("a file that cannot be a store is a failure that names it") {
    const Folder folder("failures");
    CHECK(failure_of(folder.file("no/such/folder/a.db")).find("a.db cannot be opened") != std::string::npos);
    std::ofstream(folder.file("text.db")) << std::string(5000, 'x');
    CHECK(failure_of(folder.file("text.db")).find("not a database") != std::string::npos);
}

TEST_CASE("a store that a newer program wrote is left alone") {
    const Folder folder("newer");
    CHECK(failure_of(folder.file("a.db")).empty());
    SQLite::Database(folder.file("a.db"), SQLite::OPEN_READWRITE)
        .exec("INSERT INTO migration VALUES ('9999_of_the_future.sql')");
    CHECK(failure_of(folder.file("a.db")).find("newer version of this program (9999_of_the_future.sql)") !=
          std::string::npos);
}

TEST_CASE("words and days that no program of ours writes are a broken store, not a guess") {
    const Folder folder("broken");
    open(folder.file("a.db"))->save_records(one_of_everything());
    SQLite::Database raw(folder.file("a.db"), SQLite::OPEN_READWRITE);
    raw.exec("UPDATE athlete SET sport = 'chess'");
    CHECK_THROWS_WITH_AS(open(folder.file("a.db"))->load_all(), "the store holds the unknown word \"chess\"",
                         StoreFailure);
    raw.exec("UPDATE athlete SET sport = 'softball', birth_date = '2008-02-31'");
    CHECK_THROWS_AS(open(folder.file("a.db"))->load_all(), StoreFailure);
}

TEST_CASE("writes are on the disk before they answer: journal and synchronous mode") {
    const Folder folder("durable");
    open(folder.file("a.db"));
    SQLite::Database raw(folder.file("a.db"), SQLite::OPEN_READWRITE);
    CHECK(raw.execAndGet("PRAGMA journal_mode").getString() == "wal"); // kept in the file
    // every table is STRICT: a word in a number's column cannot be written by anybody
    CHECK_THROWS_AS(
        raw.exec("INSERT INTO kit_item VALUES ('main', 'k', 'l', 'first', 'plate', 1, 1, 1, 1, 1, 1)"),
        SQLite::Exception);
}
