// Days of zones against the clock changes and offsets that the tz database publishes. Instants are given in UTC.
#include "operations/inside/local_day.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace std::chrono;

namespace {

sys_seconds utc(int year, unsigned month, unsigned day, int hour, int minute = 0) {
    return sys_days(std::chrono::year(year) / static_cast<int>(month) / static_cast<int>(day)) + hours(hour) +
           minutes(minute);
}

std::string day_in(const char* zone, sys_seconds instant) {
    const auto day = local_day(zone, instant);
    return day ? day->text() : day.refusal().sentence;
}

} // namespace

TEST_CASE("midnight is the zone's own, in summer and in winter") {
    CHECK(day_in("America/Halifax", utc(2026, 1, 10, 3, 59)) == "2026-01-09"); // UTC-4 in winter
    CHECK(day_in("America/Halifax", utc(2026, 1, 10, 4, 0)) == "2026-01-10");
    CHECK(day_in("America/Halifax", utc(2026, 7, 10, 2, 59)) == "2026-07-09"); // UTC-3 in summer
    CHECK(day_in("America/Halifax", utc(2026, 7, 10, 3, 0)) == "2026-07-10");
}

TEST_CASE("a day of 23 or of 25 hours is one day") {
    // In the United States daylight saving of 2026 begins on 8 March and ends on 1 November, at 2 a.m. local time.
    CHECK(day_in("America/New_York", utc(2026, 3, 8, 5, 0)) == "2026-03-08"); // 0:00, UTC-5
    CHECK(day_in("America/New_York", utc(2026, 3, 9, 3, 59)) == "2026-03-08");
    CHECK(day_in("America/New_York", utc(2026, 3, 9, 4, 0)) == "2026-03-09"); // 23 hours later, UTC-4
    CHECK(day_in("America/New_York", utc(2026, 11, 1, 4, 0)) == "2026-11-01");
    CHECK(day_in("America/New_York", utc(2026, 11, 2, 4, 59)) == "2026-11-01");
    CHECK(day_in("America/New_York", utc(2026, 11, 2, 5, 0)) == "2026-11-02"); // 25 hours later
}

TEST_CASE("one instant has two days across the date line") {
    const auto instant = utc(2026, 5, 31, 20, 0);
    CHECK(day_in("Asia/Tokyo", instant) == "2026-06-01");         // 5 a.m., UTC+9
    CHECK(day_in("America/Halifax", instant) == "2026-05-31");    // 5 p.m.
    CHECK(day_in("Pacific/Kiritimati", instant) == "2026-06-01"); // UTC+14
    CHECK(day_in("Pacific/Pago_Pago", instant) == "2026-05-31");  // UTC-11
}

TEST_CASE("29 February is a day like any other, and comes before 1 March") {
    CHECK(day_in("Europe/Berlin", utc(2028, 2, 28, 23, 0)) == "2028-02-29");
    CHECK(day_in("Europe/Berlin", utc(2028, 2, 29, 23, 0)) == "2028-03-01");
}

TEST_CASE("an unknown zone is refused by its name") {
    const auto day = local_day("Atlantis/Saltgrass", utc(2026, 6, 1, 12));
    REQUIRE_FALSE(day);
    CHECK(day.refusal().field == "time_zone");
    CHECK(day.refusal().given == "Atlantis/Saltgrass");
    CHECK(day.refusal().code == RefusalCode::unknown_name);
}
