// Laws of a coach's own words on a block, over throwers of the demo facility, through the operations a page calls:
// the same word twice changes nothing more; taking back gives the block as it was, bit for bit; a word holds in every week of
// every meso; a change moves fewer lines of the block it starts from than planning anew around the same word does; weeks
// with a logged set stay as they are. What a block should be is read off its lines here, not asked of the code that made it.
#include "operations/adjust_block.h"
#include "operations/demo.h"
#include "operations/inside/block_request.h"
#include "operations/inside/own_words.h"
#include "operations/log_set.h"

#include <doctest/doctest.h>

#include <map>
#include <set>
#include <tuple>

using namespace amentum;

namespace {

const Date today = Date::from(std::chrono::year(2026) / 6 / 1);
constexpr const char* start = "2026-06-08"; // the hall logs sets without a block up to today

// One hall for all tests; each takes throwers of its own or its own first day.
Workplace& hall() {
    static Workplace workplace({":memory:", today});
    static const bool made = static_cast<bool>(demo(workplace, {}));
    REQUIRE(made);
    return workplace;
}

std::vector<std::string> throwers(std::size_t from, std::size_t count) {
    std::vector<std::string> ids;
    const auto view = hall().inside().view();
    for (std::size_t i = from; i < from + count; ++i)
        ids.push_back(view->records.athletes.at(i).id.text);
    return ids;
}

// Its id; empty: this thrower cannot be planned for.
std::string planned(const std::string& athlete, int weeks, const std::string& day = start) {
    const auto answer = plan_block(hall(), PlanBlockRequest{athlete, day, weeks, {}, {}, {}, {}, {}});
    return answer ? answer->block : "";
}

Block kept(const std::string& id) {
    return hall().inside().store.load_block({id}).value();
}

AdjustBlockRequest word_on(const std::string& id, const std::string& step, const std::string& exercise,
                           std::optional<int> session = {}) {
    return {id, step, exercise, {}, session, {}};
}

// The longest line of the first session that is no main lift: often worth its place, never the only one of its kind.
std::string some_line(const Block& block) {
    for (const auto part : {Part::assistance, Part::speed, Part::trunk, Part::main_lift})
        for (const auto& line : block.lines)
            if (line.week == 1 && line.session == 1 && line.part == part)
                return line.exercise;
    return block.lines.front().exercise;
}

// Sets by session and exercise, of every week.
std::map<std::tuple<int, int, std::string>, int> contents(const Block& block) {
    std::map<std::tuple<int, int, std::string>, int> all;
    for (const auto& line : block.lines)
        all[{line.week, line.session, line.exercise}] += line.sets;
    return all;
}

// Lines of either block that the other does not have so, those of `exercise` left aside: they had to move.
int moved(const Block& a, const Block& b, const std::string& exercise) {
    const auto first = contents(a), second = contents(b);
    std::set<std::tuple<int, int, std::string>> keys;
    for (const auto* all : {&first, &second})
        for (const auto& [key, sets] : *all)
            if (std::get<2>(key) != exercise)
                keys.insert(key);
    int count = 0;
    for (const auto& key : keys) {
        const auto one = first.find(key), other = second.find(key);
        count += (one == first.end() ? 0 : one->second) != (other == second.end() ? 0 : other->second);
    }
    return count;
}

Block planned_anew_around(const Block& before, const OwnLine& word) {
    auto& inside = hall().inside();
    const auto view = inside.view();
    const Athlete& athlete = *view->athlete(before.athlete.text);
    const auto kit = kit_named(*view, before.kit.text);
    const auto work = limiter_work(*view, inside.tables, *inside.roster_model(), athlete, today);
    auto request = block_request(inside, *view, athlete, **kit, asked_of(before), work);
    request.own_lines = {word};
    const auto block = plan_block(request);
    REQUIRE(block);
    return *block;
}

bool stands(const Block& block, int week, const std::string& exercise, std::optional<int> session = {}) {
    for (const auto& line : block.lines)
        if (line.week == week && line.exercise == exercise && (!session || line.session == *session))
            return true;
    return false;
}

} // namespace

TEST_CASE("the same word twice changes nothing more, and taking back gives the block bit for bit") {
    int done = 0;
    for (const auto& athlete : throwers(0, 6)) {
        const auto id = planned(athlete, 4);
        if (id.empty())
            continue;
        const Block first = kept(id);
        const auto word = word_on(id, "leave_out", some_line(first));
        REQUIRE(adjust_block(hall(), word));
        const Block second = kept(id);
        CHECK(moved(first, second, "") > 0);
        const auto again = adjust_block(hall(), word);
        REQUIRE(again);
        CHECK(again->moved.empty());
        CHECK(kept(id) == second);
        CHECK(again->block.own_words.size() == 1);

        REQUIRE(adjust_block(hall(), word_on(id, "hold", some_line(second), 1)));
        CHECK(kept(id) == second); // it stands there: a word, and nothing moves
        REQUIRE(adjust_block(hall(), {id, "undo", {}, {}, {}, {}}));
        CHECK(kept(id) == second);
        REQUIRE(adjust_block(hall(), {id, "undo", {}, {}, {}, {}}));
        CHECK(kept(id) == first);
        CHECK(!adjust_block(hall(), {id, "undo", {}, {}, {}, {}}));
        ++done;
    }
    CHECK(done >= 4);
}

TEST_CASE("planned anew the words end; taking that back brings block and words back") {
    const auto athlete = throwers(6, 1).front();
    const auto id = planned(athlete, 4);
    REQUIRE(!id.empty());
    const auto exercise = some_line(kept(id));
    REQUIRE(adjust_block(hall(), word_on(id, "leave_out", exercise)));
    const Block changed = kept(id);
    const auto anew = plan_block(hall(), PlanBlockRequest{athlete, start, 4, {}, {}, {}, {}, {}});
    REQUIRE(anew);
    CHECK(anew->own_words.empty());
    const auto back = adjust_block(hall(), {id, "undo", {}, {}, {}, {}});
    REQUIRE(back);
    CHECK(back->block.own_words.size() == 1);
    CHECK(kept(id) == changed);
}

TEST_CASE("a word holds in every week of every meso") {
    int done = 0;
    for (const auto& athlete : throwers(8, 4)) {
        const auto id = planned(athlete, 8);
        if (id.empty())
            continue;
        const Block first = kept(id);
        const auto out = some_line(first);
        REQUIRE(adjust_block(hall(), word_on(id, "leave_out", out)));
        for (int week = 1; week <= 8; ++week)
            CHECK(!stands(kept(id), week, out));
        // Trunk work that loads neither the legs nor the arm can stand on any day.
        const auto held = adjust_block(hall(), word_on(id, "hold", "side_plank", 1));
        if (!held) {
            CHECK(held.refusal().code == RefusalCode::no_block_fits);
            continue;
        }
        for (int week = 1; week <= 8; ++week)
            CHECK(stands(kept(id), week, "side_plank", 1));
        const auto swapped = adjust_block(hall(), {id, "swap", "side_plank", "dead_bug", 1, {}});
        if (!swapped) {
            MESSAGE(swapped.refusal().sentence);
            continue;
        }
        for (int week = 1; week <= 8; ++week) {
            CHECK(!stands(kept(id), week, "side_plank", 1));
            CHECK(stands(kept(id), week, "dead_bug", 1));
            CHECK(!stands(kept(id), week, out)); // the first word holds on
        }
        ++done;
    }
    CHECK(done >= 2);
}

TEST_CASE("around a word, fewer lines of the block move than when it is planned anew around the same word") {
    int changed = 0, anew = 0, worse = 0, done = 0;
    for (const auto& athlete : throwers(0, 30)) {
        const auto id = planned(athlete, 4, "2026-06-15");
        if (id.empty())
            continue;
        const Block before = kept(id);
        const auto exercise = some_line(before);
        const auto answer = adjust_block(hall(), word_on(id, "leave_out", exercise));
        if (!answer)
            continue;
        const int with = moved(before, kept(id), exercise);
        const int without =
            moved(before, planned_anew_around(before, {OwnLine::Word::leave_out, exercise}), exercise);
        changed += with;
        anew += without;
        worse += with > without;
        ++done;
    }
    MESSAGE(done << " throwers: " << changed << " lines moved around the word, " << anew << " planned anew, "
                 << worse << " throwers worse");
    CHECK(done >= 25);
    CHECK(changed * 2 < anew);
    CHECK(worse * 10 <= done);
}

TEST_CASE("weeks with a logged set stay as they are, also when a change is taken back") {
    const auto athlete = throwers(7, 1).front();
    const auto id = planned(athlete, 4);
    REQUIRE(!id.empty());
    const Block before = kept(id);
    REQUIRE(log_set(hall(), {"hand-edit-set-1",
                             athlete,
                             today.text(),
                             before.lines.front().exercise,
                             1,
                             {},
                             {},
                             5,
                             {},
                             {},
                             {},
                             id,
                             {}}));
    const auto exercise = some_line(before);
    const auto answer = adjust_block(hall(), word_on(id, "leave_out", exercise));
    REQUIRE(answer);
    CHECK(answer->words.find("Week 1 stays as it is") != std::string::npos);
    const Block after = kept(id);
    const auto first_week = [](const Block& block) {
        std::vector<BlockLine> lines;
        for (const auto& line : block.lines)
            if (line.week == 1)
                lines.push_back(line);
        return lines;
    };
    CHECK(first_week(after) == first_week(before));
    for (int week = 2; week <= 4; ++week)
        CHECK(!stands(after, week, exercise));
    REQUIRE(adjust_block(hall(), {id, "undo", {}, {}, {}, {}}));
    CHECK(kept(id).lines == before.lines);
}
