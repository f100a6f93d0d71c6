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

inline void add_arm_care(RecordSet& all, const std::string& awkward) {
    const AthleteId ona{"ona-reyes"};
    all.teams = {{ona, "Harbour \"Gulls\"", "", contract_day(-9), {}},
                 {ona, "Saltgrass Terns", "Softball clinical guidance", contract_day(), contract_day(90)}};
    PitchRule full{"Our league",
                   2026,
                   Sport::softball,
                   13,
                   14,
                   95,
                   {20, 35, 50, 65, 95, {}},
                   80,
                   0,
                   2,
                   100,
                   awkward,
                   {"OurHandbook", "a second source"},
                   4,
                   30,
                   SecondGame::never,
                   LastBatter::counts_as_reached,
                   41,
                   4,
                   4,
                   3};
    PitchRule bare{"Our league", 2026, Sport::softball, 15, 99, 1, {}, {}, {}, {}, {}, "", {}};
    all.pitch_tables = {{1, {full, bare}, "Our league", Sport::softball, "Kim Osei", contract_day(), awkward},
                        {2, {}, "Our league", Sport::softball, awkward, contract_day(1), "back to theirs"}};
    all.pains = {{ona, 1, contract_day(), PainRegion::elbow, "sharp_arm_pain", awkward, "Kim Osei"},
                 {ona, 2, contract_day(), PainRegion::knee, "", "", awkward}};
    all.clearances = {{ona, 1, contract_day(9), awkward, "Kim Osei", contract_day(10), awkward}};
    all.throw_steps = {
        {ona,
         1,
         StepsOrigin::clinician,
         awkward,
         contract_day(10),
         1,
         {{25, Length::feet(45), 0.1 + 0.2, awkward}, {50, {}, {}, ""}},
         awkward,
         "Kim Osei",
         contract_day(10)},
        {ona, 2, StepsOrigin::ramp, "Kim Osei", contract_day(11), 0, {}, "", "", contract_day(11)}};
    all.stops_answered = {{ona, "no_rest_day", contract_day(), awkward, "Kim Osei", contract_day()}};
}

// One record of every kind; numbers with all of their bits in use, texts that break naive quoting.
inline RecordSet one_of_everything() {
    const std::string awkward = "  'single' \"double\"; line\r\nbreak, \xE6\x97\xA5\xE6\x9C\xAC %s \\ -- ";
    RecordSet all;
    all.facility = Facility{"Quarry \"Street\" Gym", MassUnit::kg, SpeedUnit::kilometres_per_hour,
                            LengthUnit::centimetres, "America/Halifax"};
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
                   awkward},
                  {{"ona-reyes"},
                   contract_day(),
                   ThrowSetting::game,
                   41,
                   {},
                   {},
                   {},
                   {},
                   {},
                   {},
                   {},
                   "",
                   2, // of a double-header
                   awkward,
                   "\"Saturday\"",
                   14,
                   37,
                   6,
                   awkward,
                   "radar 1"}};
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
    all.prior_edits = {
        {1, PriorKind::slope, "jump_power", PriorBelief{-1.0 / 3, std::numeric_limits<double>::denorm_min()},
         awkward, contract_day(), awkward},
        {2, PriorKind::attainable_change, "jump_power", {}, "Kim Osei", contract_day(1), "back"},
        {3, PriorKind::slope, "jump_power", PriorBelief{0.1 + 0.2, 0.2}, "Kim Osei", contract_day(1),
         "the next reason"}};
    add_arm_care(all, awkward);
    return all;
}

// Each of these is held already, with other values.
inline std::vector<RecordSet> contradictions(const RecordSet& held) {
    std::vector<RecordSet> all(19);
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
    all[9].prior_edits = {held.prior_edits[0]}; // an edit never overwrites one that was made
    all[9].prior_edits[0].belief->mean = 0.3;
    all[10].prior_edits = {held.prior_edits[2]};
    all[10].prior_edits[0].belief = std::nullopt;
    all[11].pains = {held.pains[0]};
    all[11].pains[0].region = PainRegion::shoulder;
    all[12].clearances = held.clearances;
    all[12].clearances[0].cleared_by = "somebody else";
    all[13].throw_steps = {held.throw_steps[0]};
    all[13].throw_steps[0].steps.push_back({60, {}, {}, ""}); // one more
    all[14].throw_steps = {held.throw_steps[0]};
    all[14].throw_steps[0].steps.pop_back(); // one less
    all[15].pitch_tables = {held.pitch_tables[0]};
    all[15].pitch_tables[0].rules[1].daily_max = 2;
    all[16].pitch_tables = {held.pitch_tables[0]};
    all[16].pitch_tables[0].rules.pop_back();
    all[17].teams = {held.teams[1]}; // it ended, and ends once
    all[17].teams[0].last_date = contract_day(91);
    all[18].stops_answered = held.stops_answered;
    all[18].stops_answered[0].coach = "";
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
    orphan.pains = {{{"nobody"}, 1, contract_day(), PainRegion::elbow, "", "", ""}};
    CHECK_THROWS_AS(store->save_records(orphan), StoreFailure);
    orphan = {};
    orphan.clearances = {{{"ona-reyes"}, 3, contract_day(), "", "", contract_day(), ""}}; // of no pain entry
    CHECK_THROWS_AS(store->save_records(orphan), StoreFailure);
    orphan = {};
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
void check_places_end_once(OpenStore open, const std::string& file) {
    auto store = open(file);
    RecordSet all = one_of_everything();
    store->save_records(all);
    TeamPlace& place = all.teams[0];
    REQUIRE(!place.last_date);
    RecordSet ended;
    ended.teams = {place};
    ended.teams[0].organisation = "another organisation";
    ended.teams[0].last_date = contract_day(30);
    CHECK_THROWS_AS(store->save_records(ended), StoreFailure);
    CHECK(store->load_all() == all);
    ended.teams[0].organisation = place.organisation;
    store->save_records(ended);
    place.last_date = contract_day(30);
    CHECK(store->load_all() == all);
    ended.teams[0].last_date = std::nullopt; // it does not go on again
    CHECK_THROWS_AS(store->save_records(ended), StoreFailure);
    CHECK(store->load_all() == all);

    store->save_time_zone("America/Moncton");
    all.facility->time_zone = "America/Moncton";
    CHECK(store->load_all() == all);
}

template <class OpenStore>
void check_throw_corrections(OpenStore open, const std::string& file) {
    auto store = open(file);
    RecordSet all = one_of_everything();
    store->save_records(all);
    const ThrowEntry bullpen = all.throws[0], game = all.throws[1];
    ThrowEntry fewer = bullpen, moved = game;
    fewer.count = 34;
    moved.date = contract_day(-1);
    moved.setting = ThrowSetting::long_toss;
    moved.occasion = 1;
    const auto first =
        store->save_throw_correction(bullpen, fewer, "Kim Osei", "one was a pick-off", contract_day(2));
    CHECK(first == ThrowCorrection{1, bullpen, fewer, contract_day(2), "Kim Osei", "one was a pick-off"});
    const auto second = store->save_throw_correction(game, moved, "", all.throws[0].note, contract_day(3));
    CHECK(second.number == 2);
    all.throws = {moved, fewer}; // in the order of their days
    CHECK(store->load_all() == all);

    // Not held as given; and where another stands: nothing of it is kept.
    CHECK_THROWS_AS(store->save_throw_correction(bullpen, fewer, "", "", contract_day(4)), StoreFailure);
    ThrowEntry onto = moved;
    onto.date = fewer.date;
    onto.setting = fewer.setting;
    CHECK_THROWS_AS(store->save_throw_correction(moved, onto, "", "", contract_day(4)), StoreFailure);
    CHECK_THROWS_AS(store->save_throw_correction(moved, fewer, "", "", contract_day(4)), StoreFailure);
    CHECK(store->load_all() == all);

    const auto third =
        store->save_throw_correction(moved, {}, "Kim Osei", "it was never thrown", contract_day(5));
    CHECK(!third.after);
    all.throws = {fewer};
    CHECK(store->load_all() == all);
    CHECK(store->list_throw_corrections() == std::vector<ThrowCorrection>{first, second, third});
    CHECK(open(file)->list_throw_corrections() == store->list_throw_corrections());
    CHECK(store->check_integrity() == "ok");
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
