// Teams, pain, catching, games and steps ahead: logs and plans broken on purpose, days counted by hand.
#include "guard_rails/check_planned_throwing.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

Date day(int d) {
    return *parse_date("2026-03-02", "date") + d; // a Monday, and days after it
}

// Ages 13 and 14 of the United States guideline, as m.mlb.com/pitchsmart/pitching-guidelines prints it (shared facts, 4.1); the
// second and third table are invented.
std::vector<PitchRule> tables() {
    PitchRule states{"States", 2026, Sport::baseball, 13, 14, 95, {20, 35, 50, 65, 95}, {}, {}, 2, 100,
                     "",       {"s"}};
    states.second_game = SecondGame::never;
    states.months_off = 4;
    PitchRule harbour{"Harbour", 2026, Sport::baseball, 8, 40, 60, {30, 60}, 40, {}, {}, 2, "", {"h"}};
    harbour.no_catching_from = 41;
    harbour.no_pitching_caught = 4;
    harbour.second_game = SecondGame::after_no_rest_count;
    return {states, harbour};
}

struct Arm {
    Athlete athlete{
        AthleteId{"ira"}, "Ira", day(-5000), Sex::male, Hand::left, Sport::baseball, Role::catcher,
        Level::amateur,   {},    {},         {},        {},         KitId{"k"},      ""}; // 13
    std::vector<ThrowEntry> log;
    std::vector<PitchRule> in_force = tables();
    std::vector<TeamPlace> teams;
    std::vector<PainBlock> rows{{PainRegion::elbow, "elbow", true, {}, {}, {}, "", {"x"}},
                                {PainRegion::knee, "knee", false, {}, {}, {}, "", {"x"}}};
    std::vector<PainEntry> pains;
    std::vector<PainClearance> clearances;
    std::vector<StopAnswered> answers;
    std::vector<CalendarEntry> calendar;

    void game(int d, int count) {
        ThrowEntry entry{athlete.id, day(d), ThrowSetting::game, count, {}, {}, {}, {}, {}, {}, {}, ""};
        for (const auto& each : log)
            entry.occasion += each.date == entry.date;
        log.push_back(entry);
    }
    void caught(int d, int outs) {
        log.push_back({athlete.id, day(d), ThrowSetting::fielding, 0, {}, {}, {}, {}, {}, {}, {}, ""});
        log.back().outs_caught = outs;
    }
    void plays_for(const char* organisation, int first, std::optional<Date> last = {}) {
        teams.push_back({athlete.id, std::string("Team of ") + organisation, organisation, day(first), last});
    }
    void hurts(int d, PainRegion region = PainRegion::elbow) {
        pains.push_back({athlete.id, 1, day(d), region, "", "it hurts", "Kim Osei"});
    }
    std::vector<Finding> today(int d) const {
        const CareRecord care{rows, pains, clearances, answers};
        return check_throwing({athlete, log, in_force, teams, care, day(d)});
    }
    std::vector<Finding> ahead(int d, const std::vector<GameAhead>& games,
                               const std::vector<StepsAhead>& steps = {}) const {
        const CareRecord care{rows, pains, clearances, answers};
        return check_planned_throwing({athlete, log, in_force, teams, care, day(d)}, games, steps, calendar);
    }
};

// "rest_not_over!" for a stop, without the mark for a warning.
std::vector<std::string> codes(const std::vector<Finding>& findings) {
    std::vector<std::string> all;
    for (const auto& finding : findings)
        all.push_back(finding.code + (finding.severity == Severity::stops ? "!" : ""));
    return all;
}
using Codes = std::vector<std::string>;

} // namespace

TEST_CASE("every table of the athlete's teams on that day is asked, all pitches together") {
    Arm arm;
    arm.game(0, 32);                                       // the States ask 1 day, Harbour 1 day
    arm.game(2, 25);                                       // of whichever team
    CHECK(codes(arm.today(3)) == Codes{"rest_not_over!"}); // the States: 25 is above 20; nobody named a team
    arm.plays_for("Harbour", -10);
    CHECK(codes(arm.today(3)) == Codes{}); // Harbour: 25 asks no rest
    arm.plays_for("States", 3);
    CHECK(codes(arm.today(3)) == Codes{"rest_not_over!"}); // from its first day on
    arm.teams.back().date = day(-10);
    arm.teams.back().last_date = day(2);
    CHECK(codes(arm.today(3)) == Codes{});
    CHECK(arm.today(3).empty());
}

TEST_CASE("what was broken is judged by the tables of its own day") {
    Arm arm;
    arm.plays_for("Harbour", -10, day(5));
    arm.plays_for("States", 6);
    arm.game(0, 40); // Harbour: a day of rest; the States would ask two
    arm.game(2, 10);
    CHECK(codes(arm.today(10)) == Codes{});
    arm.teams.pop_back();
    arm.teams[0].organisation = "States";
    CHECK(codes(arm.today(10)) == Codes{"rest_too_short"});
}

TEST_CASE("published rest: 40 pitches on Monday at 13, pitching again on Thursday") {
    Arm arm;
    arm.game(0, 40); // shared facts, check value 14
    for (const int d : {1, 2}) {
        const auto findings = arm.today(d);
        REQUIRE(codes(findings) == Codes{"rest_not_over!"});
        CHECK(findings[0].what_to_do == "No pitching in games before 2026-03-05.");
        CHECK(findings[0].may_answer == MayAnswer::nobody);
        CHECK(findings[0].day == day(d));
    }
    CHECK(codes(arm.today(3)) == Codes{});
}

TEST_CASE("an adult's rest may be answered for, with a reason, for that day") {
    Arm arm;
    arm.plays_for("Harbour", -10);
    arm.game(0, 35); // one day of rest
    const auto kept = [&](int d) {
        arm.answers = {{arm.athlete.id, "rest_not_over", day(d), "two batters in the final", "Rui", day(1)}};
    };
    kept(1);
    CHECK(codes(arm.today(1)) == Codes{"rest_not_over!"}); // 13 years: nobody
    arm.athlete.birth_date = day(-8000);                   // 21
    CHECK(codes(arm.today(1)) == Codes{"rest_not_over"});
    CHECK(arm.today(1)[0].may_answer == MayAnswer::coach);
    kept(2);
    CHECK(codes(arm.today(1)) == Codes{"rest_not_over!"});
}

TEST_CASE("two games of one day, a game's maximum, and the innings of a year") {
    Arm states;
    states.game(0, 10);
    CHECK(codes(states.today(0)) == Codes{"second_game!"});
    states.game(0, 10);
    CHECK(codes(states.today(0)) == Codes{"second_game", "second_game!"});
    Arm harbour;
    harbour.plays_for("Harbour", -10);
    harbour.game(0, 30);
    CHECK(codes(harbour.today(0)) == Codes{}); // 30 asks no rest, so a second game may follow
    harbour.game(0, 5);
    CHECK(codes(harbour.today(2)) == Codes{}); // 35 altogether: a day of rest, over
    harbour.log[0].count = 31;
    CHECK(codes(harbour.today(2)) == Codes{"second_game"});
    harbour.log[0].count = 41;
    CHECK(codes(harbour.today(2)) == Codes{"game_maximum", "second_game"});
    harbour.log.pop_back();
    harbour.log[0].count = 20;
    harbour.log[0].outs = 6; // two innings, the most of a year
    CHECK(codes(harbour.today(20)) == Codes{"innings_a_year!"});
    harbour.log[0].outs = 7;
    CHECK(codes(harbour.today(20)) == Codes{"innings_a_year", "innings_a_year!"});
    harbour.log[0].outs = 5;
    CHECK(codes(harbour.today(20)) == Codes{});
}

TEST_CASE("pitching bars catching, and catching bars pitching") {
    Arm arm;
    arm.plays_for("Harbour", -10);
    arm.caught(0, 11); // below four innings
    CHECK(codes(arm.today(0)) == Codes{});
    arm.log[0].outs_caught = 12;
    CHECK(codes(arm.today(0)) == Codes{"caught_today!"});
    arm.game(0, 5);
    CHECK(codes(arm.today(4)) == Codes{"pitched_and_caught"});
    Arm pitcher;
    pitcher.plays_for("Harbour", -10);
    pitcher.game(0, 20);
    pitcher.log[0].occasion = 1;
    pitcher.game(0, 20);
    CHECK(codes(pitcher.today(0)) == Codes{"second_game!"}); // 40 ask rest; catching may go on
    pitcher.log[1].count = 21;
    CHECK(codes(pitcher.today(0)) == Codes{"second_game!", "no_catching_today!"});
    pitcher.caught(0, 3);
    CHECK(codes(pitcher.today(4)) == Codes{"pitched_and_caught"});
}

TEST_CASE("months off: only when not even the unknown days could make them up") {
    Arm arm;
    arm.athlete.birth_date = day(-5000);
    for (int d = -364; d <= 0;
         ++d) // a few pitches, every third day; throws every day: 120 days would be 4 months
        if ((d + 364) % 3 == 0)
            arm.game(d, 1);
    CHECK(codes(arm.today(20)) == Codes{}); // 242 unknown days and more
    arm.in_force[0].months_off = 9;         // 270 days: 365 - 117 = 248 at most
    CHECK(codes(arm.today(20)) == Codes{"months_off_too_short"});
}

TEST_CASE("open pain of the arm stops throwing; throws of later days warn; a knee stops no throw") {
    Arm arm;
    arm.hurts(0);
    arm.game(0, 10); // the throws of the day may have come before the pain
    const auto findings = arm.today(0);
    CHECK(codes(findings) == Codes{"open_pain!", "second_game!"});
    CHECK(findings[0].sentence ==
          "Pain of the elbow, noted on 2026-03-02 (entry 1), is open: no throwing on 2026-03-02.");
    CHECK(findings[0].may_answer == MayAnswer::nobody);
    arm.log[0].date = day(1);
    CHECK(codes(arm.today(3)) == Codes{"open_pain!", "thrown_despite_pain"});
    arm.clearances = {{arm.athlete.id, 1, day(3), "Dr. Ada Fenwick", "Kim", day(3), ""}};
    CHECK(codes(arm.today(3)) == Codes{"thrown_despite_pain"});
    arm.pains[0].region = PainRegion::knee;
    CHECK(codes(arm.today(3)) == Codes{});
    arm.pains[0].region = PainRegion::low_back; // no row
    CHECK(codes(arm.today(2)) == Codes{"open_pain!", "thrown_despite_pain"});
}

TEST_CASE(
    "games ahead: in order, a stopped one stops nothing after it, a shortened one counts as shortened") {
    Arm arm;
    arm.game(0, 40); // until Thursday, day 3
    const auto findings = arm.ahead(1, {{day(2), 60}, {day(3), 95}, {day(7), 20}});
    CHECK(codes(findings) == Codes{"rest_not_over!", "rest_not_over!"});
    CHECK(findings[0].day == day(2));
    CHECK(findings[0].sentence ==
          "The game of 2026-03-04 is planned for 60 pitches; none is left on that day.");
    CHECK(findings[0].what_to_do == "No pitching in games before 2026-03-05. Plan another pitcher.");
    CHECK(findings[1].day == day(7)); // 95 on day 3: four days of rest, to day 7
    CHECK(findings[1].sentence.ends_with("This counts games planned before it as thrown."));
    const auto shortened = arm.ahead(1, {{day(3), 120}, {day(8), 20}});
    CHECK(codes(shortened) == Codes{"daily_maximum!"}); // 95 are left of 120
    CHECK(shortened[0].what_to_do == "Plan at most 95 pitches, and another pitcher after that.");
    CHECK(codes(arm.ahead(1, {{day(-1), 120}})) == Codes{}); // the past is only read
    arm.hurts(1);
    CHECK(codes(arm.ahead(1, {{day(3), 20}})) == Codes{"open_pain!"});
    arm.clearances = {{arm.athlete.id, 1, day(3), "Dr. Ada Fenwick", "Kim", day(1), ""}};
    CHECK(codes(arm.ahead(1, {{day(3), 20}})) == Codes{});
}

TEST_CASE(
    "steps ahead: off days, the gate, the order and the days between; a clinician's come before games") {
    Arm arm;
    arm.calendar = {{arm.athlete.id, day(9), day(10), DayKind::off, ""}};
    ThrowSteps steps{arm.athlete.id, 1,     StepsOrigin::clinician, "Noor Hale", day(2), 1, {}, "",
                     "Kim Osei",     day(0)};
    steps.steps.assign(4, ThrowStep{30, {}, {}, ""});
    const auto found = [&](std::vector<PlannedThrowStep> planned) {
        return codes(arm.ahead(0, {}, {{steps, planned}}));
    };
    CHECK(found({{0, day(2)}, {1, day(4)}, {2, day(6)}}) == Codes{});
    CHECK(found({{0, day(1)}}) == Codes{"step_before_gate!"});
    CHECK(found({{0, day(2)}, {1, day(3)}}) == Codes{"step_too_soon!"});
    CHECK(found({{0, day(2)}, {2, day(4)}}) == Codes{"step_skipped!"});
    CHECK(found({{0, day(9)}}) == Codes{"throws_on_day_off!"});
    CHECK(codes(arm.ahead(0, {{day(5), 20}}, {{steps, {}}})) == Codes{"steps_not_through!"});
    CHECK(arm.ahead(0, {{day(5), 20}}, {{steps, {}}})[0].may_answer == MayAnswer::nobody);
    arm.hurts(0);
    CHECK(found({{0, day(3)}}) == Codes{"open_pain!", "step_before_gate!"});
    steps.origin = StepsOrigin::ramp;
    arm.pains.clear();
    CHECK(codes(arm.ahead(0, {{day(5), 20}}, {{steps, {}}})) == Codes{"steps_not_through"});
    steps.steps.clear(); // ended
    CHECK(codes(arm.ahead(0, {{day(5), 20}}, {{steps, {}}})) == Codes{});
}
