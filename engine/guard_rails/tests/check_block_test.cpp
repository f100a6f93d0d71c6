// Every rule is seen to fire on a block broken on purpose, and to keep silent on the block before.
#include "clean_block.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::guard_rail_tests;

TEST_CASE("a clean block gives no finding") {
    CHECK(Scene().codes() == Codes{});
}

TEST_CASE("loads: makeable to the gram, and the sentence names the nearest") {
    Scene scene;
    scene.line(1, 1, 2).load = Mass::pounds(155);
    const auto findings = scene.check();
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].code == "load_not_makeable");
    CHECK(findings[0].severity == Severity::stops);
    CHECK(findings[0].sentence.find("150 lb (hex bar, high handles + 45 a side)") != std::string::npos);
    CHECK(findings[0].place.week == 1);
    CHECK(findings[0].place.order == 2);
    scene.line(1, 1, 2).load = Mass::pounds(150) + Mass::grams(0.9);
    CHECK(scene.codes() == Codes{});
    scene.line(1, 1, 2).load = Mass::pounds(150) + Mass::grams(1.1);
    CHECK(scene.codes() == Codes{"load_not_makeable"});
}

TEST_CASE("equipment: what an exercise needs, and the bar it names") {
    Scene no_bench;
    no_bench.kit.items.pop_back();
    CHECK(no_bench.codes() == Codes(4, "equipment_missing")); // the row of each week
    Scene low_handles;
    low_handles.catalogue[0].item = "low handles";
    CHECK(low_handles.codes() == Codes(4, "equipment_missing"));
    Scene unknown;
    unknown.line(2, 1, 1).exercise = "invented_here";
    CHECK(unknown.codes() == Codes{"unknown_exercise"});
    Scene no_band;
    no_band.catalogue.push_back(
        exercise("band_walk", "hip_accessory", Part::assistance, Region::legs, LoadMeans::band));
    no_band.add(1, 1, 3, "band_walk", Part::assistance, 2, 10, {});
    CHECK(no_band.codes() == Codes{"equipment_missing"});
}

TEST_CASE("balls: named, and at most 8 lb on a straight line") {
    Scene heavy;
    heavy.line(1, 1, 1).load = Mass::pounds(10);
    CHECK(heavy.codes() == Codes{"linear_throw_too_heavy"});
    Scene unnamed;
    unnamed.line(1, 1, 1).load.reset();
    CHECK(unnamed.codes() == Codes{"ball_missing"});
    Scene eight;
    eight.kit.items.push_back(item(ItemKind::ball, "8 lb ball", 1, Mass::pounds(8)));
    eight.line(1, 1, 1).load = Mass::kilograms(3.62873896);
    CHECK(eight.codes() == Codes{});
}

TEST_CASE("loads stay inside what the exercise is for") {
    Scene scene;
    scene.catalogue[0].heaviest = Mass::pounds(140);
    CHECK(scene.codes() == Codes(4, "load_above_exercise"));
    scene.catalogue[0].heaviest.reset();
    scene.catalogue[0].lightest = Mass::pounds(160);
    CHECK(scene.codes() == Codes(4, "load_below_exercise"));
    Scene body;
    body.catalogue.push_back(
        exercise("push_up", "horizontal_press", Part::assistance, Region::upper_push, LoadMeans::body));
    body.add(1, 1, 3, "push_up", Part::assistance, 2, 10, Mass::pounds(10));
    CHECK(body.codes() == Codes{"load_without_means"});
}

TEST_CASE("cautions: respected, or overridden with a kept reason") {
    Scene scene;
    scene.athlete.restrictions = {"medial_elbow_symptoms"};
    CHECK(scene.codes() == Codes(4, "caution_stands"));
    scene.overrides = {{scene.athlete.id, "row", "medial_elbow_symptoms", "too short", "Rui", scene.today}};
    CHECK(scene.codes() == Codes(4, "caution_stands"));
    scene.overrides[0].reason = "pain-free for six weeks, palms facing";
    const auto findings = scene.check();
    REQUIRE(findings.size() == 4);
    CHECK(findings[0].code == "caution_overridden");
    CHECK(findings[0].severity == Severity::notes);
    scene.overrides[0].date = scene.today + 1; // not yet
    CHECK(scene.codes() == Codes(4, "caution_stands"));
}

TEST_CASE("cautions: some are never overridden, and a claim without a kept reason stops") {
    Scene never;
    never.athlete.restrictions = {"operated_arm"};
    never.overrides = {
        {never.athlete.id, "row", "operated_arm", "the coach is very sure", "Rui", never.today}};
    CHECK(never.codes() == Codes(4, "caution_stands"));
    CHECK(never.check()[0].sentence.ends_with("This caution cannot be overridden here."));
    Scene claimed;
    claimed.line(1, 2, 2).overridden = {"medial_elbow_symptoms"};
    CHECK(claimed.codes() == Codes{"override_not_kept"});
    Scene usual;
    usual.catalogue[0].cautions = {"every_thrower"};
    CHECK(usual.codes() == Codes(4, "usual_caution"));
    CHECK(usual.check()[0].severity == Severity::warns);
}

TEST_CASE(
    "calendar: no session on starts and days off, a look at games and travel; practice is no hindrance") {
    Scene scene;
    scene.mark("2026-03-05", DayKind::practice);
    CHECK(scene.codes() == Codes{});
    for (const auto kind : {DayKind::start, DayKind::off}) {
        Scene taken;
        taken.line(1, 1, 2).exercise = "row"; // nothing heavy for the legs near that day
        taken.line(1, 1, 2).load = Mass::pounds(40);
        taken.mark("2026-03-05", kind);
        CHECK(taken.codes() == Codes{"session_on_taken_day"});
    }
    Scene playing;
    playing.mark("2026-03-05", DayKind::game);
    CHECK(playing.codes() == Codes{"session_on_busy_day"});
    Scene travelling;
    travelling.calendar.push_back(
        {travelling.athlete.id, day("2026-03-04"), day("2026-03-06"), DayKind::travel, ""});
    CHECK(travelling.codes() == Codes{"session_on_busy_day"});
    Scene somebody_else;
    somebody_else.calendar.push_back(
        {AthleteId{"ben"}, day("2026-03-05"), day("2026-03-05"), DayKind::off, ""});
    CHECK(somebody_else.codes() == Codes{});
}

TEST_CASE(
    "calendar: nothing heavy for the legs on the two days before a start, no overhead on the day after") {
    Scene two_days_before;
    two_days_before.mark("2026-03-11", DayKind::start); // Monday the 9th has the deadlift
    CHECK(two_days_before.codes() == Codes{"heavy_legs_before_start"});
    Scene three_days_before;
    three_days_before.mark("2026-03-14", DayKind::start); // Thursday the 12th: upper body only
    CHECK(three_days_before.codes() == Codes{});
    Scene day_after;
    day_after.mark("2026-03-08", DayKind::start); // Monday the 9th has the overhead throw
    CHECK(day_after.codes() == Codes{"overhead_after_start"});
    Scene slam; // no overhead pattern, but the catalogue cautions against it on that day
    slam.mark("2026-03-08", DayKind::start);
    for (auto& exercise : slam.catalogue)
        if (exercise.pattern.starts_with("overhead")) {
            exercise.pattern = "slam";
            exercise.cautions.push_back("day_after_pitching");
        }
    CHECK(slam.codes() == Codes{"overhead_after_start"});
    Scene day_itself;
    day_itself.mark("2026-03-09", DayKind::start);
    const Codes on_the_day = day_itself.codes();
    for (const auto* code : {"session_on_taken_day", "heavy_legs_before_start", "overhead_after_start"})
        CHECK(std::find(on_the_day.begin(), on_the_day.end(), code) != on_the_day.end());
    day_after.today = day("2026-03-10"); // the past is only read
    CHECK(day_after.codes() == Codes{});
}

TEST_CASE("youth: days, sets, repetitions, maximal attempts and the exercise's own age") {
    Scene scene;
    scene.athlete.birth_date = day("2013-06-01"); // 12
    CHECK(scene.codes() == Codes{"youth_sets", "youth_sets", "youth_sets", "youth_sets", "youth_sets",
                                 "youth_sets", "youth_sets", "youth_sets", "youth_sets", "youth_sets",
                                 "youth_sets", "youth_sets"});
    for (auto& line : scene.block.lines)
        line.sets = line.week == 4 ? 1 : 3;
    CHECK(scene.codes() == Codes{});
    scene.line(1, 1, 2).reps = 5;
    CHECK(scene.codes() == Codes{"youth_repetitions"});
    scene.line(1, 1, 2).reps = 1;
    CHECK(scene.codes() == Codes{"youth_maximal"});
    scene.line(1, 1, 2).reps = 6;
    scene.line(1, 1, 2).intensity = 0.95;
    CHECK(scene.codes() == Codes{"youth_maximal"});
    scene.line(1, 1, 2).intensity = 0.6;
    scene.catalogue[0].youngest = 13;
    CHECK(scene.codes() == Codes(4, "too_young"));
}

TEST_CASE("youth: at most three days a week, none next to each other") {
    Scene scene;
    scene.athlete.birth_date = day("2013-06-01");
    scene.block.sessions_per_week = 4;
    for (auto& line : scene.block.lines)
        line.sets = line.week == 4 ? 1 : 3;
    scene.add(1, 3, 1, "row", Part::main_lift, 1, 8, Mass::pounds(40));
    scene.block.lines.back().date = day("2026-03-06"); // the day after Thursday the 5th
    CHECK(scene.codes() == Codes{"youth_days_running"});
    scene.block.lines.back().date = day("2026-03-07");
    CHECK(scene.codes() == Codes{});
    scene.add(1, 4, 1, "row", Part::main_lift, 1, 8, Mass::pounds(40));
    scene.block.lines.back().date = day("2026-03-03");
    CHECK(scene.codes() == Codes{"youth_days_a_week", "youth_days_running"});
}

TEST_CASE("structure: sets, dates, minutes, sessions") {
    Scene nothing;
    nothing.line(1, 1, 1).sets = 0;
    CHECK(nothing.codes() == Codes{"nothing_to_do"});
    Scene moved;
    moved.line(1, 1, 1).date = day("2026-03-09");
    moved.line(1, 1, 2).date = day("2026-03-09");
    CHECK(moved.codes() == Codes{"date_outside_week", "date_outside_week", "two_sessions_one_day"});
    Scene split;
    split.line(1, 1, 1).date = day("2026-03-03");
    CHECK(split.codes() == Codes{"session_on_two_days"});
    Scene long_session; // 2 lines of 4 sets of 2 minutes and 1 minute of set-up: 18 minutes
    long_session.block.minutes = 18;
    CHECK(long_session.codes() == Codes{});
    long_session.block.minutes = 17;
    CHECK(long_session.codes() == Codes(6, "too_long"));
    Scene many;
    many.block.sessions_per_week = 1;
    CHECK(many.codes() == Codes(4, "too_many_sessions"));
}

TEST_CASE("structure: a main lift is kept for three weeks, and giving way near a start is not a change") {
    Scene scene;
    scene.catalogue.push_back(
        exercise("other_pull", "hinge", Part::main_lift, Region::legs, LoadMeans::hex_bar));
    scene.line(2, 1, 2).exercise = "other_pull";
    CHECK(scene.codes() == Codes{"main_lift_not_kept"});
    scene.catalogue.back().region = Region::upper_pull;
    scene.mark("2026-03-11", DayKind::start); // Monday the 9th is spared
    CHECK(scene.codes() == Codes{});
}

TEST_CASE("structure: one week in six has clearly fewer sets") {
    Scene scene;
    scene.block.weeks = 6;
    for (auto& line : scene.block.lines)
        line.sets = 4;
    for (const int week : {5, 6}) {
        scene.add(week, 1, 1, "overhead_ball", Part::speed, 4, 4, Mass::pounds(4));
        scene.add(week, 1, 2, "hex_deadlift", Part::main_lift, 4, 6, Mass::pounds(150));
        scene.add(week, 2, 1, "scoop_ball", Part::speed, 4, 4, Mass::pounds(10));
        scene.add(week, 2, 2, "row", Part::main_lift, 4, 8, Mass::pounds(40));
    }
    CHECK(scene.codes() == Codes{"no_reduced_week"});
    for (auto& line : scene.block.lines)
        if (line.week == 4)
            line.sets = 2;
    CHECK(scene.codes() == Codes{});
}

TEST_CASE("findings come in the order of the block, each with rule, source and what to do") {
    Scene scene;
    scene.line(3, 2, 2).load = Mass::pounds(41);
    scene.line(1, 1, 1).sets = 0;
    scene.line(2, 1, 1).load = Mass::pounds(10);
    const auto findings = scene.check();
    REQUIRE(findings.size() == 3);
    CHECK(findings[0].place.week == 1);
    CHECK(findings[1].place.week == 2);
    CHECK(findings[2].place.week == 3);
    for (const auto& finding : findings) {
        CHECK_FALSE(finding.rule.empty());
        CHECK_FALSE(finding.source.empty());
        CHECK_FALSE(finding.what_to_do.empty());
        CHECK(finding.sentence.ends_with('.'));
    }
}
