// The reference tables of data/ as they stand, and what is refused when one of them is broken.
#include "records/reference_tables.h"

#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <fstream>
#include <set>
#include <sstream>

using namespace amentum;

namespace {

std::map<std::string, std::string> texts_on_disk() {
    std::map<std::string, std::string> texts;
    for (const std::string& name : reference_file_names()) {
        std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/data/" + name);
        REQUIRE_MESSAGE(file, name);
        std::stringstream text;
        text << file.rdbuf();
        texts[name] = text.str();
    }
    return texts;
}

ReferenceTables tables_on_disk() {
    auto tables = parse_reference_tables(texts_on_disk());
    REQUIRE_MESSAGE(tables, (tables ? "" : tables.refusal().sentence));
    return *tables;
}

// The refusal after the first `from` in a file is replaced by `to`.
Refusal broken(const std::string& file, const std::string& from, const std::string& to) {
    auto texts = texts_on_disk();
    std::size_t at = texts[file].find(from);
    REQUIRE_MESSAGE(at != std::string::npos, from);
    texts[file].replace(at, from.size(), to);
    auto tables = parse_reference_tables(texts);
    REQUIRE_FALSE(tables);
    CHECK(tables.refusal().field.starts_with(file));
    return tables.refusal();
}

bool holds(const std::vector<std::string>& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

} // namespace

TEST_CASE("the tables on disk parse whole and are as large as promised") {
    auto t = tables_on_disk();
    CHECK(t.qualities.size() == 14);
    CHECK(t.test_kinds.size() >= 25);
    CHECK(t.exercises.size() >= 75);
    CHECK(t.cautions.size() >= 10);
    CHECK(t.stop_signs.size() == 11);
    CHECK(t.stop_closing.find("does not diagnose") != std::string::npos);
    REQUIRE(t.quality("throwing_velocity"));
    CHECK_FALSE(t.quality("throwing_velocity")->trainable);
    CHECK(t.exercise("no such key") == nullptr);
    REQUIRE(t.test_kind("kneeling_overhead_throw_6lb"));
    CHECK(t.test_kind("kneeling_overhead_throw_6lb")->ball_mass->pounds() == doctest::Approx(6));
}

TEST_CASE("impossible values lie outside the plausible ranges, a child's inside") {
    auto t = tables_on_disk();
    auto inside = [&](const char* key, double value) {
        const TestKind* kind = t.test_kind(key);
        REQUIRE_MESSAGE(kind, key);
        return value >= kind->plausible_low && value <= kind->plausible_high;
    };
    CHECK_FALSE(inside("split_squat_max", Mass::pounds(900).kilograms()));
    CHECK_FALSE(inside("hex_bar_high_max", Mass::pounds(900).kilograms()));
    CHECK_FALSE(inside("throwing_velocity", Speed::miles_per_hour(140).metres_per_second()));
    CHECK(inside("throwing_velocity", Speed::miles_per_hour(105.8).metres_per_second()));
    // An 8-year-old: about 25 kg, 1.28 m, throws 35 mph, jumps 0.18 m, squeezes 110 N (round figures, from
    // memory).
    CHECK(inside("body_mass", 25));
    CHECK(inside("stature", 1.28));
    CHECK(inside("throwing_velocity", Speed::miles_per_hour(35).metres_per_second()));
    CHECK(inside("jump_height_flight", 0.18));
    CHECK(inside("grip_force", 110));
    CHECK(inside("split_squat_max", 4));
    CHECK(inside("kneeling_overhead_throw_4lb", 3));
}

TEST_CASE("errors are those of the publications named in the rows") {
    auto t = tables_on_disk();
    auto total = [&](const char* key) {
        const TestKind* kind = t.test_kind(key);
        REQUIRE_MESSAGE(kind, key);
        return std::hypot(kind->trial_error, kind->day_error);
    };
    CHECK(total("back_squat_max") == doctest::Approx(0.042).epsilon(0.01));    // Grgic 2020: median CV 4.2 %
    CHECK(total("jump_height_plate") == doctest::Approx(0.058).epsilon(0.01)); // PMC7039490: CV 5.8 %
    CHECK(total("hip_internal_rotation") == doctest::Approx(2.2).epsilon(0.02)); // Bullock 2020: SEM 2.2 deg
    CHECK(total("hip_external_rotation") == doctest::Approx(3.2).epsilon(0.02)); // Bullock 2020: SEM 3.2 deg
}

TEST_CASE("low and high handles of the hex bar are never one lift") {
    auto t = tables_on_disk();
    const Exercise* low = t.exercise("hex_bar_deadlift_low");
    const Exercise* high = t.exercise("hex_bar_deadlift_high");
    REQUIRE((low && high));
    CHECK(*low->load_test != *high->load_test);
    CHECK(*low->item == "low handles");
    CHECK(*high->item == "high handles");
    for (const Exercise& e : t.exercises)
        if (e.means == LoadMeans::hex_bar)
            CHECK_MESSAGE(e.item.has_value(), e.key);
}

TEST_CASE("a thrower at home with dumbbells, a bench and bands finds every part of a session") {
    const std::set<LoadMeans> means{LoadMeans::dumbbell_pair, LoadMeans::dumbbell_single, LoadMeans::band,
                                    LoadMeans::body};
    const std::set<ItemKind> items{ItemKind::dumbbell, ItemKind::bench, ItemKind::band};
    std::map<Part, int> found;
    std::set<std::string> qualities;
    auto t = tables_on_disk();
    for (const Exercise& e : t.exercises) {
        bool here = means.contains(e.means) && std::all_of(e.needs.begin(), e.needs.end(),
                                                           [&](ItemKind k) { return items.contains(k); });
        if (!here)
            continue;
        ++found[e.part];
        for (const auto& [quality, share] : e.qualities)
            if (share >= 0.3)
                qualities.insert(quality);
    }
    for (const auto& [part, word] : words_of<Part>)
        CHECK_MESSAGE(found[part] >= 3, word);
    for (const Quality& q : t.qualities)
        if (q.trainable)
            CHECK_MESSAGE(qualities.contains(q.key), q.key);
}

TEST_CASE(
    "laws: throws stay light, a column lift for the arm has a band version, operated arms get no arm work") {
    auto t = tables_on_disk();
    for (const Exercise& e : t.exercises) {
        if (e.means == LoadMeans::ball) {
            CHECK_MESSAGE((e.lightest && e.heaviest), e.key);
            if (e.pattern == "overhead_throw")
                CHECK_MESSAGE(e.heaviest->pounds() <= 8.001, e.key);
            CHECK_MESSAGE(holds(e.cautions, "operated_arm"), e.key);
        }
        if (e.means == LoadMeans::column) {
            bool with_band = std::any_of(t.exercises.begin(), t.exercises.end(), [&](const Exercise& other) {
                return other.means == LoadMeans::band && other.pattern == e.pattern &&
                       other.region == e.region;
            });
            CHECK_MESSAGE(with_band, e.key);
        }
        if (e.region == Region::upper_pull || e.region == Region::upper_push || e.region == Region::shoulder)
            CHECK_MESSAGE(holds(e.cautions, "operated_arm"), e.key);
    }
    for (const Caution& c : t.cautions)
        CHECK_MESSAGE(c.sentence.find("licensed practice and local rules come first") != std::string::npos,
                      c.key);
}

TEST_CASE("a broken table is refused with file, line and column") {
    CHECK(broken("exercises.csv", "goblet_squat,\"Goblet squat", "Goblet Squat,\"Goblet squat").code ==
          RefusalCode::wrong_type);
    auto unknown = broken("exercises.csv", "jump_power:0.75", "jump_powr:0.75");
    CHECK(unknown.code == RefusalCode::unknown_name);
    CHECK(unknown.field.find("qualities") != std::string::npos);
    CHECK(unknown.sentence.find("jump_power") != std::string::npos);
    CHECK(broken("exercises.csv", "jump_power:0.75", "jump_power:1.75").code == RefusalCode::out_of_range);
    CHECK(broken("exercises.csv", ",safety_bar,rack", ",saftey_bar,rack").code ==
          RefusalCode::unknown_choice);
    CHECK(broken("exercises.csv", "sore_shoulder", "sore_sholder").field.find("cautions") !=
          std::string::npos);
    CHECK(broken("exercises.csv", "split_squat_max,0.95", "split_squat_mx,0.95").field.find("load_test") !=
          std::string::npos);
    CHECK(broken("test_kinds.csv", "0.025,0.034", "0.025,").code == RefusalCode::missing_field);
    CHECK(broken("test_kinds.csv", "0.025,0.034,1,300", "0.025,0.034,1,much").code ==
          RefusalCode::wrong_type);
    CHECK(broken("test_kinds.csv", "0.025,0.034,1,300", "0.025,0.034,310,300").field.find("plausible_high") !=
          std::string::npos);
    CHECK(broken("qualities.csv", "two_leg_strength,", "single_leg_strength,").code ==
          RefusalCode::already_held);
    CHECK(broken("qualities.csv", "key,name,meaning", "key,name,sense").code == RefusalCode::missing_field);
    CHECK(broken("cautions.csv", "push_up;press_dumbbell_neutral", "push_upp;press_dumbbell_neutral").code ==
          RefusalCode::unknown_name);
    // a dip is what the caution is about: it cannot be its own alternative
    CHECK(broken("cautions.csv", "push_up;press_dumbbell_neutral", "dip_parallel_bars")
              .field.find("alternatives") != std::string::npos);
    CHECK(broken("velocity_priors.csv", "single_leg_strength,", "one_leg_strength,").code ==
          RefusalCode::unknown_name);
    CHECK(broken("pitch_rules.csv", "baseball,9,10,", "baseball,8,10,").field.find("age_low") !=
          std::string::npos);
    CHECK(broken("pitch_rules.csv", "50,20,35,50", "50,20,15,50").field.find("rest_0_to") !=
          std::string::npos);
    CHECK(broken("pitch_rules.csv", "2,60,,never", "2,60,02-29,never").allowed ==
          "MM-DD, a day every year has");
    CHECK(
        broken("pitch_rules.csv", "2,60,,never", "2,60,05-01,never").field ==
        "pitch_rules.csv, United States baseball guideline, 9 to 10 years, age_day"); // one day for the table
    CHECK(broken("pitch_rules.csv", "85,30,45,60,75,85", "85,30,45,60,75,80").field ==
          "pitch_rules.csv, Canada baseball rule, 12 to 13 years, rest_4_to");
    CHECK(broken("stop_and_refer.csv", "closing,", "ending,").code == RefusalCode::missing_field);
    CHECK(broken("cautions.csv", "every_thrower,", "\"every_thrower,").code == RefusalCode::unreadable_file);
}

TEST_CASE("a missing file is named") {
    auto texts = texts_on_disk();
    texts.erase("cautions.csv");
    auto tables = parse_reference_tables(texts);
    REQUIRE_FALSE(tables);
    CHECK(tables.refusal().field == "cautions.csv");
}

TEST_CASE("every region of pain has its row, and blocks what a coach would expect, and no more") {
    const auto t = tables_on_disk();
    REQUIRE(t.pain_blocks.size() == words_of<PainRegion>.size());
    const auto blocked = [&](PainRegion region, const char* exercise) {
        const auto& row = t.pain_blocks.at(static_cast<std::size_t>(region));
        REQUIRE(row.region == region);
        REQUIRE_MESSAGE(t.exercise(exercise), exercise);
        return blocks(row, *t.exercise(exercise));
    };
    // The arm: everything it holds, pulls, presses or throws; not the legs alone, nor the back on the floor.
    for (const auto region : {PainRegion::shoulder, PainRegion::elbow, PainRegion::forearm_and_hand}) {
        for (const auto* each :
             {"pull_up_neutral", "row_band_split_stance", "push_up", "kneeling_overhead_throw",
              "rotational_scoop_throw", "overhead_slam", "external_rotation_side_band",
              "farmer_carry_hex_bar", "hex_bar_deadlift_high", "goblet_squat", "bird_dog", "cross_body_reach",
              "chop_half_kneeling_band"})
            CHECK_MESSAGE(blocked(region, each), each);
        for (const auto* each : {"box_jump", "rfe_split_squat_body", "rfe_split_squat_safety_bar", "dead_bug",
                                 "glute_bridge_single_leg", "hip_switch_sitting"})
            CHECK_MESSAGE(!blocked(region, each), each);
    }
    CHECK(blocked(PainRegion::neck_and_upper_back, "back_squat_safety_bar"));
    CHECK(blocked(PainRegion::neck_and_upper_back, "row_column_split_stance"));
    for (const auto* each : {"hex_bar_deadlift_low", "back_squat_safety_bar", "rotational_scoop_throw",
                             "countermovement_jump", "back_extension_hold_bench", "suitcase_carry_dumbbell"})
        CHECK_MESSAGE(blocked(PainRegion::low_back, each), each);
    CHECK_FALSE(blocked(PainRegion::low_back, "row_chest_supported_dumbbells"));
    for (const auto region : {PainRegion::hip_and_groin, PainRegion::knee, PainRegion::ankle_and_foot}) {
        CHECK(blocked(region, "rfe_split_squat_body"));
        CHECK(blocked(region, "broad_jump"));
        CHECK_FALSE(blocked(region, "row_chest_supported_dumbbells"));
        CHECK_FALSE(blocked(region, "press_dumbbell_neutral"));
    }
    // Throwing goes on with sore legs, and with nothing else.
    for (const auto& row : t.pain_blocks)
        CHECK(row.throwing == (row.region < PainRegion::hip_and_groin));
}

TEST_CASE("a region of pain without its row, or with an unknown pattern or caution, is refused") {
    CHECK(broken("pain_regions.csv", "elbow,elbow,yes", "knee,elbow,yes").field ==
          "pain_regions.csv, line 6, region");
    CHECK(broken("pain_regions.csv", "ankle_and_foot,ankle or foot", "knee,ankle or foot").field ==
          "pain_regions.csv, line 12, region");
    CHECK(broken("pain_regions.csv", "carry,,,", "carryings,,,").field ==
          "pain_regions.csv, line 12, patterns");
    CHECK(broken("pain_regions.csv", "operated_arm;wrist_pain", "sore_wrist").field ==
          "pain_regions.csv, line 7, cautions");
    auto texts = texts_on_disk();
    auto& text = texts["pain_regions.csv"];
    text.erase(text.find("ankle_and_foot,ankle"));
    const auto tables = parse_reference_tables(texts);
    REQUIRE_FALSE(tables);
    CHECK(tables.refusal().field == "pain_regions.csv, ankle_and_foot");
}
