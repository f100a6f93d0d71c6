// A session is one kind of session all through the block: its number says which, whatever day a week gives it.
#include "planning/plan_block.h"
#include "planning/tests/invented_gym.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

using namespace amentum;
using namespace amentum::invented;

namespace {

Block planned(const BlockRequest& request) {
    auto block = plan_block(request);
    REQUIRE(block);
    return *std::move(block);
}

// Three sessions a week, a start on Wednesday of the second: that week is turned round.
BlockRequest with_start_on_wednesday(const World& world) {
    auto request = world.request(4, 3);
    request.calendar = {world.entry(9, DayKind::start)};
    return request;
}

std::map<Date, int> numbers_by_day(const Block& block, int week) {
    std::map<Date, int> numbers;
    for (const auto& line : block.lines)
        if (line.week == week)
            numbers[line.date] = line.session;
    return numbers;
}

bool turned_round(const Block& block, int week) {
    int before = 0;
    for (const auto& [date, number] : numbers_by_day(block, week)) {
        if (number < before)
            return true;
        before = number;
    }
    return false;
}

std::set<std::string> exercises_of(const Block& block, int week, int session) {
    std::set<std::string> keys;
    for (const auto& line : block.lines)
        if (line.week == week && line.session == session)
            keys.insert(line.exercise);
    return keys;
}

} // namespace

TEST_CASE("in a week turned round by a start a session keeps its number and its exercises") {
    const World world;
    const Block block = planned(with_start_on_wednesday(world));
    REQUIRE(turned_round(block, 2));
    for (int session = 1; session <= 3; ++session) {
        std::set<std::string> in_both;
        const auto first = exercises_of(block, 1, session), second = exercises_of(block, 2, session);
        std::set_intersection(first.begin(), first.end(), second.begin(), second.end(),
                              std::inserter(in_both, in_both.begin()));
        CHECK(in_both.size() >= first.size() - 1); // one may give way to the start
    }
}

TEST_CASE("a line left out of a session of the week turned round leaves that very session") {
    const World world;
    auto request = with_start_on_wednesday(world);
    const Block before = planned(request);
    for (const auto& line : before.lines) {
        if (line.week != 2 || line.part != Part::main_lift)
            continue;
        request.own_lines = {{OwnLine::Word::leave_out, line.exercise, line.session, {}}};
        const Block after = planned(request);
        CHECK(exercises_of(after, 1, line.session).count(line.exercise) == 0);
        CHECK(exercises_of(after, 2, line.session).count(line.exercise) == 0);
    }
}

TEST_CASE("no heavy main lifts for the legs on Sunday and the Monday after") {
    const World world;
    auto request = world.request(4, 2);
    request.weekdays = {1, 7};
    const Block block = planned(request);
    std::set<Date> heavy;
    for (const auto& line : block.lines)
        if (line.part == Part::main_lift && world.exercise_called(line.exercise).region == Region::legs)
            heavy.insert(line.date);
    CHECK_FALSE(heavy.empty());
    for (const Date day : heavy)
        CHECK(heavy.count(day + 1) == 0);
}
