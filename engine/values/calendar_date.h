// A day in the gym's own calendar. Proleptic Gregorian, no time of day, no zone: "2026-03-14" (ISO 8601).
//
// Arithmetic is in whole days; age follows birthdays (a 29 February birthday counts from 1 March in common years).
// Refuses: text that is not YYYY-MM-DD, a day that does not exist, years outside 1900 to 2200.
#pragma once

#include "values/refusal.h"

#include <chrono>
#include <compare>
#include <string>
#include <string_view>

namespace amentum {

class Date {
public:
    static Date from_days(int days_since_1970) { return Date(days_since_1970); }
    static Date from(std::chrono::year_month_day day);
    int days_since_1970() const { return days_; }
    std::chrono::year_month_day calendar() const;
    std::string text() const; // 2026-03-14
    int iso_weekday() const;  // 1 Monday ... 7 Sunday
    friend auto operator<=>(const Date&, const Date&) = default;
    friend Date operator+(Date d, int days) { return Date(d.days_ + days); }
    friend Date operator-(Date d, int days) { return Date(d.days_ - days); }
    friend int operator-(Date a, Date b) { return a.days_ - b.days_; } // days from b to a

private:
    explicit Date(int days) : days_(days) {}
    int days_;
};

Result<Date> parse_date(std::string_view text, std::string field);
int whole_years(Date birth, Date on);
double decimal_years(Date birth, Date on); // days / 365.25

} // namespace amentum
