// What any store must do, whatever keeps the records: checked through a way to open one on a file.
//
// `open(file)` gives a store by value or pointer-like; opening a file twice gives two stores on the same records.
#pragma once

#include "store/store.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <thread>

namespace amentum {

inline Date contract_day(int offset = 0) {
    return Date::from_days(20000 + offset);
} // 2024-10-04

inline SetDone set_of(int number) {
    return {"set-key-" + std::to_string(1000 + number),
            {"ona-reyes"},
            contract_day(),
            "pull_up",
            1 + number % 40,
            Mass::kilograms(number / 3.0),
            5,
            1.5,
            {},
            {},
            ""};
}

// One record of every kind; numbers with all of their bits in use, texts that break naive quoting.
inline RecordSet one_of_everything() {
    const std::string awkward = "  'single' \"double\"; line\r\nbreak, \xE6\x97\xA5\xE6\x9C\xAC %s \\ -- ";
    RecordSet all;
    all.facility = Facility{"Quarry \"Street\" Gym", MassUnit::kg, SpeedUnit::kilometres_per_hour,
                            LengthUnit::centimetres};
    all.kits = {{{"main-hall"},
                 "Main hall",
                 MassUnit::lb,
                 {{ItemKind::plate, "45 lb plate", 8, Mass::pounds(45), {}, {}, {}, {}},
                  {ItemKind::column,
                   "a pulley",
                   1,
                   {},
                   Length::inches(3),
                   1 / 3.0,
                   Mass::pounds(10),
                   Mass::pounds(200)}}}};
    all.athletes = {{{"ona-reyes"},
                     "Ona Reyes",
                     contract_day(-6000),
                     Sex::female,
                     Hand::left,
                     Sport::softball,
                     Role::pitcher,
                     Level::school,
                     Length::inches(66.5),
                     Length::metres(0.1 + 0.2),
                     2.5,
                     {"sore_shoulder", "wrist_pain"},
                     {"main-hall"},
                     awkward}};
    Reading full{{"ona-reyes"}, contract_day(), "split_squat_max", Side::left, 2};
    full.load = Mass::pounds(185);
    full.reps = 5;
    full.reps_in_reserve = 0;
    full.body_mass = Mass::kilograms(std::nextafter(61.3, 62));
    full.speed = Speed::miles_per_hour(61.7);
    full.radar_angle = Angle::degrees(1e-300);
    full.distance = Length::feet(33);
    full.release_height = Length::metres(std::numeric_limits<double>::denorm_min());
    full.release_angle = Angle::degrees(-12.25);
    full.flight_time = Duration::seconds(0.1);
    full.contact_time = Duration::seconds(0.2);
    full.power = Power::watts(4500.25);
    full.height = Length::metres(1.0 / 3);
    full.angle = Angle::degrees(std::nextafter(90, 91));
    full.force = Force::newtons(1e300);
    full.device = "radar 1";
    full.rater = awkward;
    full.place = PlaceMeasured::at_plate;
    full.note = awkward;
    Reading bare{{"ona-reyes"}, contract_day(), "split_squat_max", Side::left, 1};
    all.readings = {bare, full};
    all.throws = {{{"ona-reyes"},
                   contract_day(),
                   ThrowSetting::bullpen,
                   35,
                   0.9,
                   Speed::miles_per_hour(58.5),
                   Length::feet(60.5),
                   Mass::ounces(6.25),
                   0,
                   2.5,
                   10,
                   awkward}};
    all.calendar = {{{"ona-reyes"}, contract_day(), contract_day(3), DayKind::travel, awkward}};
    Block block{{"ona-1"},
                {"ona-reyes"},
                {"main-hall"},
                contract_day(),
                4,
                3,
                59.9,
                {},
                {"No landmine here.", "Short of time."},
                "planner 1"};
    block.lines = {
        {1,
         1,
         contract_day(),
         1,
         "pull_up",
         Part::main_lift,
         4,
         5,
         0.8,
         2,
         Mass::pounds(10),
         "belt + 10",
         3,
         "pulling_strength",
         awkward,
         {"sore_shoulder"}},
        {1, 1, contract_day(), 2, "side_plank", Part::trunk, 2, 30, {}, {}, {}, "", 1, "", "", {}}};
    all.blocks = {block};
    all.sets = {set_of(1), set_of(2)};
    all.sets[0].block = BlockId{"ona-1"};
    all.sets[0].speed = Speed::metres_per_second(0.1);
    all.sets[0].note = awkward;
    all.overrides = {
        {{"ona-reyes"}, "pull_up", "sore_shoulder", awkward, "Kim Osei", contract_day()},
        {{"ona-reyes"}, "pull_up", "sore_shoulder", "the next reason", "Kim Osei", contract_day()}};
    return all;
}

// Each of these is held already, with other values.
inline std::vector<RecordSet> contradictions(const RecordSet& held) {
    std::vector<RecordSet> all(9);
    all[0].facility = held.facility;
    all[0].facility->name = "Other";
    all[1].kits = held.kits;
    all[1].kits[0].items[0].count = 6;
    all[2].athletes = held.athletes;
    all[2].athletes[0].guardian = "";
    all[3].readings = {held.readings[1]};
    all[3].readings[0].load = Mass::pounds(186);
    all[4].throws = held.throws;
    all[4].throws[0].soreness_after = std::nullopt;
    all[5].calendar = held.calendar;
    all[5].calendar[0].note = "";
    all[6].blocks = held.blocks;
    all[6].blocks[0].weeks = 5;
    all[7].blocks = held.blocks;
    all[7].blocks[0].lines[0].sets = 5;
    all[8].sets = {held.sets[1]};
    all[8].sets[0].reps = std::nullopt;
    return all;
}

template <class OpenStore>
void check_what_is_kept(OpenStore open, const std::string& file) {
    const RecordSet all = one_of_everything();
    {
        auto store = open(file);
        CHECK(store->load_all() == RecordSet{});
        store->save_records(all);
        CHECK(store->load_all() == all);
    }
    auto store = open(file);
    CHECK(store->load_all() == all);
    CHECK(store->check_integrity() == "ok");
    store->save_records(all); // the same again
    CHECK(store->load_all() == all);
}

template <class OpenStore>
void check_all_or_nothing(OpenStore open, const std::string& file) {
    auto store = open(file);
    const RecordSet all = one_of_everything();
    store->save_records(all);
    for (auto& wrong : contradictions(all)) {
        wrong.overrides = {
            {{"ona-reyes"}, "pull_up", "wrist_pain", "a new reason", "Kim Osei", contract_day()}};
        CHECK_THROWS_AS(store->save_records(wrong), StoreFailure);
        CHECK(store->load_all() == all);
    }
    RecordSet orphan;
    orphan.throws = {{{"ona-reyes"}, contract_day(1), ThrowSetting::game, 30, {}, {}, {}, {}, {}, {}, {}, ""},
                     {{"nobody"}, contract_day(1), ThrowSetting::game, 30, {}, {}, {}, {}, {}, {}, {}, ""}};
    CHECK_THROWS_AS(store->save_records(orphan), StoreFailure);
    CHECK(store->load_all() == all);
}

template <class OpenStore>
void check_sets_blocks_and_restrictions(OpenStore open, const std::string& file) {
    auto store = open(file);
    RecordSet all = one_of_everything();
    store->save_records(all);
    CHECK(store->save_set(set_of(3)) == Saved::added);
    CHECK(store->save_set(set_of(3)) == Saved::held_before);
    SetDone other = set_of(3);
    other.reps = 4;
    CHECK_THROWS_AS(store->save_set(other), StoreFailure);
    all.sets.push_back(set_of(3));
    CHECK(store->load_all() == all);

    all.blocks[0].lines.pop_back();
    all.blocks[0].minutes = 45;
    store->save_block(all.blocks[0]);
    CHECK(store->load_all() == all);

    all.throws[0].soreness_next_day = 3;
    store->save_throw_entry(all.throws[0]);
    CHECK(store->load_all() == all);

    all.athletes[0].restrictions = {"wrist_pain"};
    store->save_restrictions({"ona-reyes"}, {"wrist_pain"});
    CHECK(store->load_all() == all);

    RecordSet more_items;
    more_items.kits = all.kits;
    more_items.kits[0].items = {all.kits[0].items[1], {ItemKind::rack, "a rack", 1, {}, {}, {}, {}, {}}};
    store->save_records(more_items); // an item held, and one that comes after all others
    all.kits[0].items.push_back(more_items.kits[0].items[1]);
    CHECK(store->load_all() == all);
}

template <class OpenStore>
void check_version(OpenStore open, const std::string& file) {
    auto one = open(file), two = open(file);
    one->save_records(one_of_everything());
    const auto first_one = one->version(), first_two = two->version();
    CHECK(one->load_all() == two->load_all());
    CHECK(one->version() == first_one);
    one->save_set(set_of(7));
    CHECK(one->version() != first_one);
    CHECK(two->version() != first_two);
    const auto second_one = one->version();
    two->save_set(set_of(8));
    CHECK(one->version() != second_one);
    CHECK(one->load_all() == two->load_all());
}

// Two stores on one file stand for two processes, each of them used by several threads.
template <class OpenStore>
void check_many_writers(OpenStore open, const std::string& file) {
    constexpr int writers = 4, sets_each = 25;
    auto one = open(file), two = open(file);
    one->save_records(one_of_everything());
    std::vector<std::thread> threads;
    for (int writer = 0; writer < writers; ++writer)
        threads.emplace_back([&, writer] {
            auto& store = writer % 2 == 0 ? one : two;
            for (int i = 0; i < sets_each; ++i) {
                store->save_set(set_of(100 + writer * sets_each + i));
                if (i % 10 == 0)
                    store->load_all();
            }
        });
    for (auto& thread : threads)
        thread.join();
    const auto held = one->load_all().sets;
    for (int i = 100; i < 100 + writers * sets_each; ++i)
        CHECK(std::count(held.begin(), held.end(), set_of(i)) == 1);
    CHECK(two->check_integrity() == "ok");
}

} // namespace amentum
