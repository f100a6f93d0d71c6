// A process that logs 200 sets is killed (SIGKILL) on the way: every set it acknowledged is held, and the file is sound.
//
// The child is this program forked; it says each set's number on a pipe after save_set has answered. What this cannot
// show is a loss of power: that is synchronous = FULL in WAL mode, the database's own promise [SqliteWal].
#include "contract.h"
#include "folder.h"

#include <doctest/doctest.h>

#include <csignal>
#include <random>
#include <set>
#include <sys/wait.h>

using namespace amentum;

namespace {

constexpr int sets_in_all = 200, rounds = 15;

[[noreturn]] void log_sets(const std::string& file, int acknowledged) {
    Store store(file);
    for (int number = 0; number < sets_in_all; ++number) {
        if (store.save_set(set_of(number)) != Saved::added)
            ::_exit(2);
        if (::write(acknowledged, &number, sizeof number) != sizeof number)
            ::_exit(3);
    }
    ::_exit(0);
}

// Reads acknowledgements; kills the child after `spare` of them and a little; returns all that were given.
std::set<int> acknowledged_before_kill(int pipe, pid_t child, int spare, unsigned microseconds) {
    std::set<int> all;
    for (int number; ::read(pipe, &number, sizeof number) == sizeof number;) {
        all.insert(number);
        if (static_cast<int>(all.size()) != spare)
            continue;
        ::usleep(microseconds); // so that the kill may fall into the middle of a write
        ::kill(child, SIGKILL);
    }
    return all;
}

} // namespace

TEST_CASE("kill -9 while sets are logged loses none that was acknowledged") {
    std::mt19937_64 random(20260314);
    const Folder folder("killed");
    for (int round = 0; round < rounds; ++round) {
        CAPTURE(round);
        const std::string file = folder.file(std::to_string(round) + ".db");
        RecordSet before = one_of_everything();
        before.sets.clear();
        Store(file).save_records(before);
        int pipe[2];
        REQUIRE(::pipe(pipe) == 0);
        const pid_t child = ::fork();
        REQUIRE(child >= 0);
        if (child == 0) {
            ::close(pipe[0]);
            log_sets(file, pipe[1]);
        }
        ::close(pipe[1]);
        const int spare = std::uniform_int_distribution<int>(1, sets_in_all - 20)(random);
        const auto acknowledged = acknowledged_before_kill(
            pipe[0], child, spare, std::uniform_int_distribution<unsigned>(0, 3000)(random));
        ::close(pipe[0]);
        int status = 0;
        REQUIRE(::waitpid(child, &status, 0) == child);
        REQUIRE(WIFSIGNALED(status));
        CHECK(WTERMSIG(status) == SIGKILL);
        CHECK(static_cast<int>(acknowledged.size()) >= spare);

        Store after(file);
        CHECK(after.check_integrity() == "ok");
        std::set<std::string> held;
        for (const auto& set : after.load_all().sets)
            held.insert(set.key);
        for (const int number : acknowledged)
            CHECK(held.contains(set_of(number).key));
        CHECK(held.size() <= acknowledged.size() + 1); // at most the one that was not yet acknowledged
        CHECK(after.save_set(set_of(sets_in_all)) == Saved::added);
    }
}
