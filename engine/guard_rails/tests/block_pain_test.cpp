// Open pain in a block and among logged sets, and stops that a coach answered for: seen to fire, and to keep silent.
#include "clean_block.h"

#include "guard_rails/check_logged_sets.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::guard_rail_tests;

namespace {

const std::vector<PainBlock> rows{
    {PainRegion::elbow, "elbow", true, {"overhead_throw"}, {Region::upper_pull}, {}, "No pulling.", {"x"}},
    {PainRegion::knee, "knee", false, {"hinge"}, {}, {}, "No legs.", {"x"}}};

PainEntry pain(PainRegion region, const char* date, const char* athlete = "ona") {
    return {AthleteId{athlete}, 1, day(date), region, "", "it hurts", "Kim Osei"};
}

struct PainScene : Scene {
    std::vector<PainEntry> pains;
    std::vector<PainClearance> clearances;
    std::vector<StopAnswered> answers;

    std::vector<Finding> found() const {
        return check_block(block, athlete, kit, catalogue, cautions, calendar, overrides, today,
                           {rows, pains, clearances, answers});
    }
    Codes stops() const {
        Codes all;
        for (const auto& finding : found())
            if (finding.severity == Severity::stops)
                all.push_back(finding.code);
        return all;
    }
    void clear(const char* date) {
        clearances.push_back({athlete.id, 1, day(date), "Dr. Ada Fenwick", "Kim Osei", day(date), ""});
    }
    void answer(const char* code, const char* date, std::string reason = "national final, all agreed") {
        answers.push_back({athlete.id, code, day(date), std::move(reason), "Rui", today});
    }
};

} // namespace

TEST_CASE("an open elbow stops every pull and overhead throw of the block, and nothing else") {
    PainScene scene;
    scene.pains = {pain(PainRegion::elbow, "2026-03-01")};
    CHECK(scene.stops() == Codes(8, "open_pain")); // overhead_ball and row of four weeks
    const auto findings = scene.found();
    CHECK(findings[0].sentence == "overhead_ball on 2026-03-02 is not given: pain of the elbow, noted on "
                                  "2026-03-01 (entry 1), is open.");
    CHECK(findings[0].may_answer == MayAnswer::nobody);
    CHECK(findings[0].what_to_do.find("Stop and refer") != std::string::npos);
    scene.pains = {pain(PainRegion::knee, "2026-03-01")};
    CHECK(scene.stops() == Codes(4, "open_pain")); // hex_deadlift
    scene.pains = {pain(PainRegion::elbow, "2026-03-01", "ben")};
    CHECK(scene.stops() == Codes{});
}

TEST_CASE("pain blocks from the day it was felt to the day its clearance holds, and the past is only read") {
    PainScene scene;
    scene.pains = {pain(PainRegion::elbow, "2026-03-09")};
    CHECK(scene.stops() == Codes(6, "open_pain")); // weeks 2 to 4
    scene.clear("2026-03-19");                     // the Thursday of week 3
    CHECK(scene.stops() == Codes(3, "open_pain")); // both days of week 2, Monday of week 3
    scene.today = day("2026-03-10");
    CHECK(scene.stops() == Codes(2, "open_pain"));
}

TEST_CASE("a region without a row blocks everything") {
    PainScene scene;
    scene.pains = {pain(PainRegion::hip_and_groin, "2026-03-01")};
    CHECK(scene.stops() == Codes(16, "open_pain"));
}

TEST_CASE("nobody answers for an open pain entry, whatever reason is kept") {
    PainScene scene;
    scene.pains = {pain(PainRegion::elbow, "2026-03-25")};
    for (const auto* date : {"2026-03-23", "2026-03-26"})
        scene.answer("open_pain", date);
    CHECK(scene.stops() == Codes{"open_pain"}); // the row of Thursday the 26th
}

TEST_CASE("a coach's kept reason turns a stop into a warning that says who and why, for that day alone") {
    PainScene scene;
    scene.mark("2026-03-11", DayKind::start); // Monday the 9th has the deadlift
    CHECK(scene.stops() == Codes{"heavy_legs_before_start"});
    scene.answer("heavy_legs_before_start", "2026-03-10");
    CHECK(scene.stops() == Codes{"heavy_legs_before_start"}); // another day
    scene.answers.clear();
    scene.answer("heavy_legs_before_start", "2026-03-09", "too short");
    CHECK(scene.stops() == Codes{"heavy_legs_before_start"});
    scene.answers[0].reason = "a  b  c  d  e";
    CHECK(scene.stops() == Codes{"heavy_legs_before_start"}); // five letters
    scene.answers[0].reason = "short start, two innings";
    scene.answers[0].recorded = scene.today + 1;
    CHECK(scene.stops() == Codes{"heavy_legs_before_start"}); // not yet
    scene.answers[0].recorded = scene.today;
    scene.answers[0].coach = " ";
    CHECK(scene.stops() == Codes{"heavy_legs_before_start"}); // nobody's name
    scene.answers[0].coach = "Rui";
    CHECK(scene.stops() == Codes{});
    const auto findings = scene.found();
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::warns);
    REQUIRE(findings[0].answer);
    CHECK(findings[0].answer->coach == "Rui");
    CHECK(findings[0].sentence.ends_with("Rui answered for it on 2026-03-01: \"short start, two innings\"."));
}

TEST_CASE("rest is nobody's to shorten under 18, or at youth and school level") {
    const auto stops_for = [](const char* born, Level level) {
        PainScene scene;
        scene.athlete.birth_date = day(born);
        scene.athlete.level = level;
        scene.mark("2026-03-05", DayKind::off);
        scene.answer("session_on_taken_day", "2026-03-05");
        return scene.stops();
    };
    CHECK(stops_for("2005-06-01", Level::college) == Codes{});
    CHECK(stops_for("2008-03-05", Level::college) == Codes{}); // 18 on that day
    CHECK(stops_for("2008-03-06", Level::college) == Codes{"session_on_taken_day"});
    CHECK(stops_for("2005-06-01", Level::school) == Codes{"session_on_taken_day"});
    CHECK(stops_for("2005-06-01", Level::youth) == Codes{"session_on_taken_day"});
}

TEST_CASE("a set logged although pain was open warns, on that day and after, once an exercise and day") {
    Scene scene;
    const std::vector pains{pain(PainRegion::elbow, "2026-03-04")};
    const auto set = [](const char* date, const char* exercise, int number) {
        return SetDone{"key-" + std::to_string(number),
                       AthleteId{"ona"},
                       day(date),
                       exercise,
                       number,
                       {},
                       {},
                       {},
                       {},
                       {},
                       ""};
    };
    const std::vector sets{set("2026-03-03", "row", 1),        set("2026-03-04", "row", 1),
                           set("2026-03-05", "row", 1),        set("2026-03-05", "row", 2),
                           set("2026-03-05", "scoop_ball", 1), set("2026-03-05", "unheard_of", 1)};
    const auto found = [&](std::vector<PainClearance> cleared, const char* today) {
        return check_logged_sets(sets, scene.athlete, scene.catalogue, {rows, pains, cleared, {}},
                                 day(today));
    };
    const auto findings = found({}, "2026-03-06");
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].day == day("2026-03-04"));
    CHECK(findings[1].severity == Severity::warns);
    CHECK(findings[1].code == "set_despite_pain");
    CHECK(findings[1].sentence ==
          "2 sets of row on 2026-03-05 were done although pain of the elbow, noted on "
          "2026-03-04 (entry 1), was open.");
    CHECK(found({{AthleteId{"ona"}, 1, day("2026-03-05"), "Dr. Ada Fenwick", "Kim", day("2026-03-05"), ""}},
                "2026-03-06")
              .size() == 1);
    CHECK(found({}, "2026-04-02").size() == 1); // 28 days after the 5th
    CHECK(found({}, "2026-04-03").empty());
}
