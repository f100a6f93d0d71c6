// The account of the arms of the invented hall is one a coach could have kept: every day once, unknown days few and known.
#include "demo_facility/demo_facility.h"
#include "demo_facility/people.h"
#include "demo_facility/statures.h"

#include <doctest/doctest.h>

#include <map>
#include <set>

using namespace amentum;

namespace {

const Date last_day = Date::from(std::chrono::year(2026) / 6 / 1);

const RecordSet& hall() {
    static const RecordSet records = make_demo_facility(1, last_day).records;
    return records;
}

const Athlete& athlete_called(const char* name) {
    for (const auto& athlete : hall().athletes)
        if (athlete.name == name)
            return athlete;
    FAIL("there is no ", name);
    return hall().athletes.front();
}

// Days of the 20 months that stand in no entry.
int unknown_days(const Athlete& athlete) {
    std::set<Date> known;
    for (const auto& t : hall().throws)
        if (t.athlete == athlete.id && t.date < last_day)
            known.insert(t.date);
    return demo_days - static_cast<int>(known.size());
}

} // namespace

TEST_CASE("a day without throws stands alone on its day, with nothing in it") {
    std::map<std::pair<std::string, int>, int> entries;
    for (const auto& t : hall().throws)
        ++entries[{t.athlete.text, t.date.days_since_1970()}];
    int without = 0;
    for (const auto& t : hall().throws) {
        if (t.setting != ThrowSetting::none)
            continue;
        ++without;
        CHECK(entries[{t.athlete.text, t.date.days_since_1970()}] == 1);
        CHECK(t.count == 0);
        CHECK(t.date < last_day); // a day that is not over is not known
    }
    CHECK(without > 10'000);
}

TEST_CASE("two Octobers' fortnights are unknown of everybody, and more only of three who forget") {
    // 610 days before 2026-06-01 is 2024-09-29: two Octobers, 14 days each, all of them in the weeks of rest.
    int forgetful = 0;
    for (const auto& athlete : hall().athletes) {
        const int unknown = unknown_days(athlete);
        CHECK(unknown >= 28);
        forgetful += unknown > 28;
        CHECK(unknown < demo_days / 2);
    }
    CHECK(forgetful == 3);
}

TEST_CASE("a youth of two teams: both go on, and games of both stand in the account") {
    const auto id = athlete_called("Mateo Lindqvist").id;
    std::set<std::string> teams, organisations, played;
    for (const auto& place : hall().teams)
        if (place.athlete == id) {
            teams.insert(place.team);
            organisations.insert(place.organisation);
        }
    for (const auto& t : hall().throws)
        if (t.athlete == id && t.setting == ThrowSetting::game)
            played.insert(t.team);
    CHECK(teams.size() == 2);
    CHECK(organisations.size() == 2);
    CHECK(played == teams);
}

TEST_CASE("every game has its outs, and no more than a pitcher of that age gets of so many pitches") {
    int named = 0;
    for (const auto& t : hall().throws) {
        CHECK(t.outs.has_value() == (t.setting == ThrowSetting::game));
        named += !t.game.empty();
        if (!t.outs)
            continue;
        CHECK(*t.outs >= 3);
        CHECK(*t.outs <= 27);
        CHECK(t.count >=
              3 * *t.outs); // an out of fewer than three pitches is rare, a game of them unheard of
    }
    CHECK(named == 2);
}

TEST_CASE("one pain entry is closed by a clearance and followed by a clinician's steps, one is open") {
    REQUIRE(hall().pains.size() == 2);
    REQUIRE(hall().clearances.size() == 1);
    REQUIRE(hall().throw_steps.size() == 1);
    const auto& pain = hall().pains.front();
    const auto& cleared = hall().clearances.front();
    const auto& steps = hall().throw_steps.front();
    CHECK(cleared.athlete == pain.athlete);
    CHECK(cleared.date > pain.date);
    CHECK(steps.athlete == pain.athlete);
    CHECK(steps.origin == StepsOrigin::clinician);
    CHECK(steps.start > cleared.date);
    const auto& open = hall().pains.back();
    CHECK(athlete_called("Pascal Dunmorrow").id == open.athlete);
    CHECK(open.region == PainRegion::knee);
}

TEST_CASE("youths are measured every month, and one of them grows faster than 0.6 cm a month") {
    // 0.6 cm a month is a spurt: facts of the trade, proposal of this project.
    const auto half_a_year = [](const char* name) {
        const Athlete& a = athlete_called(name);
        return stature_taped_on(a, last_day, demo_days) - stature_taped_on(a, last_day, demo_days - 183);
    };
    CHECK(half_a_year("Caleb Underhaugh") / 6 > 0.006);
    CHECK(half_a_year("Mateo Lindqvist") / 6 < 0.006);
    CHECK(stature_taped_on(athlete_called("Caleb Underhaugh"), last_day, demo_days) == doctest::Approx(1.66));
    std::map<std::string, int> months;
    for (const auto& r : hall().readings)
        months[r.athlete.text] += r.test == "stature" && r.trial == 2;
    int measured = 0;
    for (const auto& athlete : hall().athletes) {
        const bool young = whole_years(athlete.birth_date, last_day) < 16;
        CHECK((months[athlete.id.text] >= 18) == young);
        measured += young;
    }
    CHECK(measured == 8);
}
