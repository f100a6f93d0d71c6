// What any store must do with the changes of a block, over a way to open one: in order, each with the block before it.
#pragma once

#include "contract.h"

inline amentum::BlockChange contract_change(int number, amentum::OwnStep step) {
    using namespace amentum;
    BlockChange change{{"ona-1"}, number, step, "pull_up", "", {}, {}, {}, contract_day(number), {}};
    if (step == OwnStep::swap)
        change.with = "side_plank", change.stood = {1, 3};
    if (step == OwnStep::hold) {
        change.session = 1;
        change.sets = 3;
    }
    return change;
}

template <class OpenStore>
void check_block_changes(OpenStore open, const std::string& file) {
    using namespace amentum;
    const Block first = one_of_everything().blocks[0]; // awkward words, optional numbers, both kinds of lines
    Block second = first, third = first;
    second.lines.pop_back();
    second.notes.clear();
    third.lines[0].load = Mass::kilograms(std::nextafter(20.0, 21));
    third.minutes = 45.1;
    std::vector<BlockChange> changes{contract_change(1, OwnStep::hold), contract_change(2, OwnStep::swap)};
    {
        auto store = open(file);
        store->save_records(one_of_everything());
        CHECK(store->list_block_changes().empty());
        store->save_block_change(changes[0], first, second);
        store->save_block_change(changes[1], second, third);
    }
    auto store = open(file);
    CHECK(store->list_block_changes() == changes);
    CHECK(store->load_all().blocks[0] == third);
    CHECK(store->load_block({"ona-1"}) == third);
    CHECK(!store->load_block({"ona-2"}));
    CHECK(store->any_set_of({"ona-1"}));
    CHECK(!store->any_set_of({"ona-2"}));

    // A number that is taken keeps its change, and nothing of the save is kept.
    CHECK_THROWS_AS(store->save_block_change(contract_change(2, OwnStep::leave_out), third, first),
                    StoreFailure);
    CHECK(store->load_all().blocks[0] == third);

    // Planned again, the block is another; its changes stay, and can be taken back.
    store->save_block(first);
    CHECK(store->list_block_changes() == changes);
    CHECK(store->load_block_before({"ona-1"}, 1) == first);
    CHECK(store->load_block_before({"ona-1"}, 2) == second);
    CHECK(!store->load_block_before({"ona-1"}, 3));
    store->undo_block_change({"ona-1"}, 2, contract_day(9), second);
    CHECK(store->load_all().blocks[0] == second);
    changes[1].undone = contract_day(9);
    CHECK(store->list_block_changes() == changes);
    CHECK_THROWS_AS(store->undo_block_change({"ona-1"}, 2, contract_day(9), third), StoreFailure);
    CHECK_THROWS_AS(store->undo_block_change({"ona-1"}, 7, contract_day(9), third), StoreFailure);
    CHECK(store->load_all().blocks[0] == second);

    changes.push_back(contract_change(3, OwnStep::planned));
    changes.back().exercise = "";
    store->save_block_change(changes.back(), second, third);
    store->undo_block_change({"ona-1"}, 3, contract_day(9), second);
    store->undo_block_change({"ona-1"}, 1, contract_day(10), first);
    CHECK(store->load_all() == one_of_everything());
    CHECK(store->check_integrity() == "ok");
}
