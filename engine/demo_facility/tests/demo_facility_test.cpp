// The invented hall: the same every time, whole, and plausible. Its truth is our own assumption, so nothing here
// says that real throwers are like this.
#include "demo_facility/demo_facility.h"
#include "demo_facility/people.h"
#include "demo_facility/simulation.h"

#include <doctest/doctest.h>

#include <set>
#include <tuple>

using namespace amentum;

namespace {

const Date last_day = Date::from(std::chrono::year(2026) / 6 / 1);

} // namespace

TEST_CASE("the same seed and day give the same records and truth; another seed gives others") {
    const auto once = make_demo_facility(1, last_day), again = make_demo_facility(1, last_day),
               other = make_demo_facility(2, last_day);
    CHECK(once.records == again.records);
    CHECK(once.truth == again.truth);
    CHECK(!(once.records == other.records));
    CHECK(once.truth != other.truth);
}

TEST_CASE("36 throwers of ages 12 to 31, both hands, both sexes, three sports; one trains at home") {
    const auto made = make_demo_facility(1, last_day);
    CHECK(made.records.athletes.size() == 36);
    std::set<Hand> hands;
    std::set<Sex> sexes;
    std::set<Sport> sports;
    int at_home = 0;
    for (const auto& athlete : made.records.athletes) {
        const int age = whole_years(athlete.birth_date, last_day);
        CHECK(age >= 12);
        CHECK(age <= 31);
        CHECK(athlete.guardian.empty() == (age >= 18));
        hands.insert(athlete.throwing_hand);
        sexes.insert(athlete.sex);
        sports.insert(athlete.sport);
        at_home += athlete.kit.text != "saltgrass-hall";
    }
    CHECK(hands.size() == 2);
    CHECK(sexes.size() == 2);
    CHECK(sports.size() == 3);
    CHECK(at_home == 1);
}

TEST_CASE("no record stands twice, and none lies after the last day but the calendar's") {
    const auto made = make_demo_facility(3, last_day);
    std::set<std::tuple<std::string, int, std::string, Side, int>> readings;
    for (const auto& r : made.records.readings) {
        CHECK(readings.emplace(r.athlete.text, r.date.days_since_1970(), r.test, r.side, r.trial).second);
        CHECK(r.date <= last_day);
    }
    std::set<std::string> keys;
    for (const auto& set : made.records.sets) {
        CHECK(keys.insert(set.key).second);
        CHECK(set.key.size() <= 64);
        CHECK(set.date <= last_day);
    }
    for (const auto& entry : made.records.throws)
        CHECK(entry.date <= last_day);
}

TEST_CASE("youths grow: taller and faster by the day, adults keep their stature") {
    for (const auto& athlete : demo_athletes(last_day)) {
        const double taller = stature_on(athlete, last_day, demo_days) - stature_on(athlete, last_day, 0);
        if (age_on(athlete, last_day, 0) >= 16.5)
            CHECK(taller == doctest::Approx(0));
        if (age_on(athlete, last_day, demo_days) < 16)
            CHECK(taller == doctest::Approx(0.055 * demo_days / 365.25).epsilon(1e-6));
    }
}

TEST_CASE("velocities lie where published groups lie") {
    // Youth and high school 64 +- 10 mph at 14.7 years [Sgroi2015]; college 35 +- 3 m/s [GuidoWerner2012].
    double youth = 0, college = 0;
    int youths = 0, colleges = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed)
        for (const auto& athlete : demo_athletes(last_day)) {
            if (athlete.sport != Sport::baseball || athlete.role != Role::pitcher)
                continue;
            const double ms = simulate_thrower(athlete, last_day, seed).velocity.back();
            const int age = whole_years(athlete.birth_date, last_day);
            if (age >= 12 && age <= 17)
                youth += ms, ++youths;
            if (athlete.level == Level::college)
                college += ms, ++colleges;
        }
    CHECK(youth / youths == doctest::Approx(Speed::miles_per_hour(64).metres_per_second()).epsilon(0.1));
    CHECK(college / colleges == doctest::Approx(35).epsilon(0.06));
}
