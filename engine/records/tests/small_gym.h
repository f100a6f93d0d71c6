// A small invented gym, known to its tests: two throwers, one kit, five tests, three exercises.
#pragma once

#include "records/parse_records.h"

#include <doctest/doctest.h>

namespace amentum {

inline Date day(const char* text) {
    return *parse_date(text, "day");
}

inline TestKind test_of(std::string key, std::string name, Measure measure, TestUnit unit, double low,
                        double high, SideRule side = SideRule::none) {
    return {std::move(key),
            std::move(name),
            "quality",
            measure,
            unit,
            Scale::linear,
            side,
            1,
            1,
            low,
            high,
            {},
            "",
            {"Key2000"}};
}

inline Exercise exercise_of(std::string key, std::string name) {
    Exercise exercise{};
    exercise.key = std::move(key);
    exercise.name = std::move(name);
    return exercise;
}

inline ReferenceTables small_tables() {
    ReferenceTables tables;
    tables.test_kinds = {
        test_of("split_squat_max", "Split squat", Measure::split_squat_max, TestUnit::kilogram, 1, 300,
                SideRule::lead_leg),
        test_of("pull_up_max", "Pull-up", Measure::system_mass_max, TestUnit::kilogram, 15, 300),
        test_of("throwing_velocity", "Throwing velocity", Measure::session_velocity,
                TestUnit::metre_per_second, 5, 50),
        test_of("jump_height_flight", "Jump height", Measure::jump_height, TestUnit::metre, 0.03, 1.1),
        test_of("grip_force", "Grip force", Measure::isometric_force, TestUnit::newton, 15, 1000)};
    tables.exercises = {exercise_of("split_squat_bar", "Split squat, bar"), exercise_of("pull_up", "Pull-up"),
                        exercise_of("overhead_throw", "Overhead throw")};
    tables.velocity_priors = {{"jump_power", 0.4, 0.2, "Goes with it.", {"Key2000"}}};
    tables.cautions = {{"sore_shoulder", "sore shoulder", "Usually avoided.", {}, true, {"Key2000"}},
                       {"wrist_pain", "sore wrist", "Usually avoided.", {}, true, {"Key2000"}}};
    PitchRule rule{};
    rule.organisation = "Quarry league rule";
    tables.pitch_rules = {rule};
    tables.stop_signs = {{"sharp_arm_pain", "Sharp or sudden pain in the arm, or a pop.", true, {"Key2000"}}};
    return tables;
}

inline Athlete thrower(const char* name, const char* born) {
    return {{slug(name)},  name, day(born), Sex::female, Hand::right, Sport::softball, Role::pitcher,
            Level::school, {},   {},        {},          {},          {"main-hall"},   ""};
}

inline RecordSet small_gym() {
    RecordSet gym;
    gym.facility = Facility{"Quarry Street Gym"};
    gym.kits = {{{"main-hall"},
                 "Main hall",
                 MassUnit::lb,
                 {{ItemKind::plate, "45 lb plate", 8, Mass::pounds(45), {}, {}, {}, {}}}}};
    gym.athletes = {thrower("Imre Vale", "2009-09-30"), thrower("Ona Reyes", "2008-05-11")};
    return gym;
}

inline const char* const small_today = "2026-03-14";

struct Gym {
    ReferenceTables tables = small_tables();
    RecordSet held = small_gym();

    ImportPreview read(RecordKind kind, std::string_view text) const {
        return parse_records(kind, text, {tables, held, day(small_today)});
    }
    // The refusal of the file's only refused line.
    Refusal refusal(RecordKind kind, std::string_view text) const {
        const auto preview = read(kind, text);
        REQUIRE_MESSAGE(preview.file_refusals.empty(), preview.file_refusals.front().sentence);
        REQUIRE(preview.count(Verdict::refused) == 1);
        CHECK_FALSE(preview.can_be_taken());
        CHECK(preview.new_records == RecordSet{});
        for (const auto& line : preview.lines)
            if (line.refusal)
                return *line.refusal;
        return {};
    }
    // The file's records, all of them new.
    RecordSet added(RecordKind kind, std::string_view text) const {
        auto preview = read(kind, text);
        for (const auto& refusal : preview.file_refusals)
            FAIL_CHECK(refusal.sentence);
        for (const auto& line : preview.lines)
            CHECK_MESSAGE(line.verdict == Verdict::added, line.words);
        return std::move(preview.new_records);
    }
};

} // namespace amentum
