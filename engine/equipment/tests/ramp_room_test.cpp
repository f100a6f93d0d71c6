// What is open in a state of the ramp, counted by hand.
#include "equipment/ramp_room.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

enum Kind : std::size_t { twenty_five, twenty, fifteen, ten, five };

RampChoice of(std::initializer_list<Kind> kinds) {
    RampChoice choice{{}, 0, 0, static_cast<int>(kinds.size())};
    for (const Kind kind : kinds)
        ++choice.plates.of[kind];
    return choice;
}

RampRoom look(RampRooms& rooms, const ChoicesOfSets& choices, std::initializer_list<Kind> on, int limit) {
    OpenSets open;
    return rooms.look(0, choices.size() - 1, of(on).plates, limit, nullptr, open);
}

} // namespace

TEST_CASE("the header's example: with a 20 on, a set of one 25 has no open choice") {
    const ChoicesOfSets choices{{of({twenty, five}), of({fifteen, ten})}, {of({twenty_five})}};
    RampRooms rooms(choices);
    const RampRoom all = look(rooms, choices, {}, 3);
    CHECK(all.fewest == 3);
    CHECK(all.up_to[0] == 2);
    CHECK(all.starting[1] == 1);
    CHECK(all.most.plates() == 0); // no plate that some choice of both sets has
    CHECK(look(rooms, choices, {}, 2).fewest == no_limit);
    CHECK(look(rooms, choices, {twenty}, 3).fewest == no_limit);
}

TEST_CASE("two of a kind on leave only choices with two; what all of them have is sure") {
    const ChoicesOfSets choices{{of({ten, ten}), of({ten, five, five}), of({twenty})},
                                {of({ten, ten, five}), of({twenty, five})}};
    RampRooms rooms(choices);
    const RampRoom two = look(rooms, choices, {ten, ten}, 4); // {10, 10} | {10, 10, 5}
    CHECK(two.fewest == 3);
    CHECK(two.most == of({ten, ten}).plates);
    CHECK(two.sure == of({ten, ten}).plates);
    const RampRoom none = look(rooms, choices, {}, 3);
    CHECK(none.fewest == 2); // {20} | {20, 5}
    CHECK(none.sure.plates() == 0);
    CHECK(none.most.of[ten] == 2);
    CHECK(look(rooms, choices, {ten, five}, 4).fewest == 4); // {10, 5, 5} | {10, 10, 5}: 3 and 1 more
}

TEST_CASE("a state with one plate more looks only at what was open before") {
    const ChoicesOfSets choices{{of({twenty}), of({ten, ten})}, {of({twenty, five}), of({ten, ten, five})}};
    RampRooms rooms(choices);
    OpenSets first, then;
    const auto mark = rooms.mark();
    CHECK(rooms.look(0, 1, {}, 2, nullptr, first).fewest == 2); // only {20} | {20, 5} does with two
    CHECK(rooms.look(0, 1, of({ten}).plates, 3, &first, then).fewest == no_limit);
    CHECK(rooms.look(0, 1, of({ten}).plates, 3, nullptr, then).fewest == 3);
    rooms.forget_after(mark);
    CHECK(rooms.mark() == mark);
}
