// The store of this program keeps the contract (contract.h), and refuses files it cannot read.
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
