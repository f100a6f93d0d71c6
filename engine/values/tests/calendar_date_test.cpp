// Days of the proleptic Gregorian calendar; weekdays and leap years checked against known dates (ISO 8601 examples and
// the calendar itself).
#include "values/calendar_date.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

Date day(const char* text) {
    return *parse_date(text, "date");
}

} // namespace

TEST_CASE("a day is read, said and counted") {
    CHECK(day("1970-01-01").days_since_1970() == 0);
    CHECK(day("2000-03-01").days_since_1970() == 11017); // date -d 2000-03-01 +%s / 86400
    CHECK(day("2026-11-25").text() == "2026-11-25");
    CHECK(day("2026-11-25").iso_weekday() == 3); // a Wednesday
    CHECK((day("2024-02-28") + 1).text() == "2024-02-29");
    CHECK((day("2023-02-28") + 1).text() == "2023-03-01");
    CHECK(day("2026-03-01") - day("2026-02-01") == 28);
}

TEST_CASE("days that do not exist, or are written otherwise, are refused with their field") {
    for (const char* text :
         {"2026-02-30", "2023-02-29", "2026-13-01", "1899-12-31", "2201-01-01", "-026-01-01"}) {
        const auto parsed = parse_date(text, "birth_date");
        REQUIRE(!parsed);
        CHECK(parsed.refusal().code == RefusalCode::impossible_date);
        CHECK(parsed.refusal().field == "birth_date");
    }
    for (const char* text : {"", "2026-1-01", "01/02/2026", "2026-01-01 ", "2026-0a-01"}) {
        const auto parsed = parse_date(text, "date");
        REQUIRE(!parsed);
        CHECK(parsed.refusal().code == RefusalCode::wrong_type);
    }
}

TEST_CASE("leap years of the Gregorian calendar: by 4, not by 100, but by 400") {
    for (const char* text : {"2000-02-29", "2024-02-29", "1904-02-29", "2096-02-29"})
        CHECK(parse_date(text, "date"));
    for (const char* text : {"1900-02-29", "2100-02-29", "2026-02-29", "2024-02-30"})
        CHECK(!parse_date(text, "date"));
    CHECK(day("2024-03-01") - day("2024-02-01") == 29);
    CHECK(day("2001-01-01") - day("2000-01-01") == 366);
}

TEST_CASE("every day from 1970 to 2069 has its own text, comes back from it, and weekdays go round") {
    for (int n = 0; n < 36525; ++n) { // 100 years of 365 days and 25 leap days
        const Date on = Date::from_days(n);
        CHECK(on.days_since_1970() == n);
        CHECK(day(on.text().c_str()) == on);
        CHECK(on.iso_weekday() == (n + 3) % 7 + 1); // 1970-01-01 was a Thursday
    }
    CHECK(Date::from_days(36524).text() == "2069-12-31");
}

TEST_CASE("age follows birthdays; a leap-day birthday counts from 1 March in common years") {
    CHECK(whole_years(day("2010-06-15"), day("2026-06-14")) == 15);
    CHECK(whole_years(day("2010-06-15"), day("2026-06-15")) == 16);
    CHECK(whole_years(day("2008-02-29"), day("2025-02-28")) == 16);
    CHECK(whole_years(day("2008-02-29"), day("2025-03-01")) == 17);
    CHECK(decimal_years(day("2010-01-01"), day("2014-01-01")) == doctest::Approx(4));
}
