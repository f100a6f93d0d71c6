#include "values/calendar_date.h"

#include <charconv>
#include <cstdio>

namespace amentum {
namespace {

using namespace std::chrono;

bool whole_number(std::string_view text, int& out) {
    const auto end = std::from_chars(text.data(), text.data() + text.size(), out);
    return end.ec == std::errc{} && end.ptr == text.data() + text.size();
}

} // namespace

Date Date::from(year_month_day day) {
    return Date(static_cast<int>(sys_days(day).time_since_epoch().count()));
}

year_month_day Date::calendar() const {
    return year_month_day(sys_days(days(days_)));
}

std::string Date::text() const {
    const auto day = calendar();
    char room[16];
    std::snprintf(room, sizeof room, "%04d-%02u-%02u", static_cast<int>(day.year()),
                  static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return room;
}

int Date::iso_weekday() const {
    return static_cast<int>(weekday(sys_days(days(days_))).iso_encoding());
}

Result<Date> parse_date(std::string_view text, std::string field) {
    int y = 0, m = 0, d = 0;
    const bool shaped = text.size() == 10 && text[4] == '-' && text[7] == '-' &&
                        whole_number(text.substr(0, 4), y) && whole_number(text.substr(5, 2), m) &&
                        whole_number(text.substr(8, 2), d);
    const std::string given(text);
    if (!shaped)
        return Refusal{RefusalCode::wrong_type,
                       field + " is \"" + given + "\", but a day is written YYYY-MM-DD, such as 2026-03-14.",
                       field, given, "YYYY-MM-DD"};
    const year_month_day day(year(y), month(static_cast<unsigned>(m)),
                             std::chrono::day(static_cast<unsigned>(d)));
    if (!day.ok() || y < 1900 || y > 2200)
        return Refusal{RefusalCode::impossible_date,
                       field + " is " + given + ", a day that does not exist here.", field, given,
                       "a day from 1900-01-01 to 2200-12-31"};
    return Date::from(day);
}

int whole_years(Date birth, Date on) {
    const auto b = birth.calendar();
    const auto o = on.calendar();
    const int years = static_cast<int>(o.year()) - static_cast<int>(b.year());
    const bool before_birthday = std::pair(o.month(), o.day()) < std::pair(b.month(), b.day());
    return years - (before_birthday ? 1 : 0);
}

double decimal_years(Date birth, Date on) {
    return (on - birth) / 365.25;
}

} // namespace amentum
