// What any store must do with force traces, over a way to open one.
#pragma once

#include "contract.h"

#include <cmath>

inline amentum::KeptTrace contract_trace(const std::string& id, int trial) {
    using namespace amentum;
    KeptTrace trace{id,
                    {"ona-reyes"},
                    contract_day(),
                    "countermovement_jump",
                    "both",
                    trial,
                    "Ona's \"first\" jump, r\xc3\xa9p\xc3\xa9tition.txt",
                    3'000'000'000,
                    "0123456789abcdef",
                    Mass::kilograms(68.04),
                    Length::metres(0.3),
                    "plate 1",
                    "a note",
                    {}};
    trace.recording.rate_hz = 999.5;
    trace.recording.notes = {"One sentence.", "Another."};
    trace.recording.plates = {
        {"Fz left", Side::left, {0.0f, -0.0f, 1e-38f, 3.4e38f, 700.123f}, {1, 2, 3, 4, 5}},
        {"Fz right", Side::right, {1, 2, 3, 4, 5}, {}}};
    return trace;
}

inline void check_same_trace(const amentum::KeptTrace& a, const amentum::KeptTrace& b) {
    CHECK(a.id == b.id);
    CHECK(a.athlete == b.athlete);
    CHECK(a.date == b.date);
    CHECK(a.effort == b.effort);
    CHECK(a.legs == b.legs);
    CHECK(a.trial == b.trial);
    CHECK(a.file_name == b.file_name);
    CHECK(a.file_bytes == b.file_bytes);
    CHECK(a.file_digest == b.file_digest);
    CHECK(a.body_mass == b.body_mass);
    CHECK(a.box_height == b.box_height);
    CHECK(a.device == b.device);
    CHECK(a.note == b.note);
    CHECK(a.moves == b.moves);
    CHECK(a.recording.rate_hz == b.recording.rate_hz);
    CHECK(a.recording.notes == b.recording.notes);
    REQUIRE(a.recording.plates.size() == b.recording.plates.size());
    for (std::size_t i = 0; i < a.recording.plates.size(); ++i) {
        const auto &one = a.recording.plates[i], &two = b.recording.plates[i];
        CHECK(one.name == two.name);
        CHECK(one.side == two.side);
        CHECK(one.vertical == two.vertical);
        CHECK(one.lateral == two.lateral);
        for (std::size_t k = 0; k < one.vertical.size(); ++k)
            CHECK(std::signbit(one.vertical[k]) == std::signbit(two.vertical[k]));
    }
}

template <class OpenStore>
void check_traces(OpenStore open, const std::string& file) {
    using namespace amentum;
    const RecordSet all = one_of_everything();
    KeptTrace trace = contract_trace("trace-0001", 1);
    Reading jump{{"ona-reyes"}, contract_day(), "jump_height_plate"};
    jump.height = Length::metres(0.31);
    {
        auto store = open(file);
        store->save_records(all);
        CHECK(store->save_trace(trace, {jump}) == TraceSaved::added);
        CHECK(store->save_trace(trace, {jump}) == TraceSaved::held_before);
        KeptTrace other = trace;
        other.file_digest = "fedcba9876543210";
        CHECK(store->save_trace(other, {}) == TraceSaved::other_content);
        other.id = "trace-0002";
        CHECK(store->save_trace(other, {}) == TraceSaved::trial_taken);
        other.trial = 2;
        Reading typed = jump;
        typed.height = Length::metres(0.33);
        CHECK(store->save_trace(other, {typed}) == TraceSaved::reading_taken); // another stands there
        CHECK(store->list_traces({}).size() == 1);
        KeptTrace orphan = contract_trace("trace-0003", 3);
        orphan.athlete = {"nobody"};
        CHECK_THROWS_AS(store->save_trace(orphan, {}), StoreFailure);
        CHECK(store->load_all().readings.size() == all.readings.size() + 1);
        Reading brought = jump; // by import_records, before its trace
        brought.trial = 4;
        RecordSet records;
        records.readings = {brought};
        store->save_records(records);
        CHECK(store->save_trace(contract_trace("trace-0004", 4), {brought}) == TraceSaved::added);
        CHECK(store->load_all().readings.size() == all.readings.size() + 2);
    }
    auto store = open(file);
    const auto held = store->load_trace("trace-0001");
    REQUIRE(held);
    check_same_trace(*held, trace);
    CHECK_FALSE(store->load_trace("trace-0003"));

    trace.moves.push_back({"take_off", 0.004, "the plate shook", contract_day()});
    jump.height = Length::metres(0.30);
    store->save_event_move(trace, {jump});
    trace.moves.push_back({"take_off", std::nullopt, "it did not", contract_day(1)});
    store->save_event_move(trace, {jump});
    check_same_trace(*store->load_trace("trace-0001"), trace);
    const auto readings = store->load_all().readings;
    CHECK(readings.size() == all.readings.size() + 2);
    CHECK(std::count(readings.begin(), readings.end(), jump) == 1); // replaced, not doubled

    const auto listed = store->list_traces(AthleteId{"ona-reyes"});
    REQUIRE(listed.size() == 2);
    CHECK(listed.front().recording.plates.at(1).vertical.empty()); // a list is without samples
    CHECK(listed.front().recording.plates.at(1).name == "Fz right");
    CHECK(listed.front().moves.size() == 2);
    CHECK(store->list_traces(AthleteId{"bo-tarn"}).empty());
}
