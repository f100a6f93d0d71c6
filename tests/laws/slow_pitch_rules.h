// The rules on pitching written a second time: slow, day by day, pitch by pitch, straight from the sentences. It shares the values
// (rows, entries, days by number) with the engine and no code: no sorting, no running sums, and a calendar of its own that is
// counted day by day from 1 January 1980 (a Tuesday) to the end of 2035. For the laws of pitch_seasons_test.cpp and as the
// rival of the bench.
#pragma once

#include "throwing_workload/pitch_allowance.h"

#include <tuple>

namespace slow {

using amentum::Date;
using amentum::LastBatter;
using amentum::PitchLimit;
using amentum::PitchRule;
using amentum::SecondGame;
using amentum::ThrowEntry;
using amentum::ThrowSetting;

using YearMonthDay = std::tuple<int, int, int>;
constexpr int first_day =
    3652; // 1980-01-01, days after 1970-01-01: ten years, of which 1972 and 1976 leap years

inline bool leap(int year) {
    return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

inline int length_of(int year, int month) {
    if (month == 2)
        return leap(year) ? 29 : 28;
    return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
}

inline YearMonthDay calendar(Date date) {
    static const std::vector<YearMonthDay> pages = [] {
        std::vector<YearMonthDay> all;
        for (int year = 1980; year <= 2035; ++year)
            for (int month = 1; month <= 12; ++month)
                for (int day = 1; day <= length_of(year, month); ++day)
                    all.push_back({year, month, day});
        return all;
    }();
    return pages.at(static_cast<std::size_t>(date.days_since_1970() - first_day));
}

// One arm, the rows of one organisation and sport, and everything anybody wrote down, in any order.
struct Arm {
    std::vector<PitchRule> rows;
    Date born;
    std::vector<ThrowEntry> entries;

    // Birthdays passed on that day of the calendar, one by one.
    int birthdays_to(YearMonthDay day) const {
        const auto [born_year, month, day_of_month] = calendar(born);
        int age = 0;
        for (int year = born_year + 1; year <= std::get<0>(day); ++year) {
            const bool no_such_day = month == 2 && day_of_month == 29 && !leap(year);
            const YearMonthDay birthday =
                no_such_day ? YearMonthDay{year, 3, 1} : YearMonthDay{year, month, day_of_month};
            if (birthday <= day)
                ++age;
        }
        return age;
    }

    const PitchRule* row_on(Date date) const {
        const PitchRule* newest = nullptr;
        for (const auto& row : rows) {
            YearMonthDay reckoned = calendar(date);
            if (row.age_month)
                reckoned = {std::get<0>(reckoned), *row.age_month, *row.age_day};
            const int age = birthdays_to(reckoned);
            if (age >= row.age_low && age <= row.age_high)
                if (!newest || row.year > newest->year)
                    newest = &row;
        }
        return newest;
    }

    // Each outing of a day in its order, the named game left out.
    template <class Visit>
    void outings(Date date, const std::string& left_out, Visit visit) const {
        for (int occasion = 1; occasion <= 9; ++occasion)
            for (const auto& e : entries)
                if (e.date == date && e.setting == ThrowSetting::game && e.occasion == occasion &&
                    (left_out.empty() || e.game != left_out))
                    visit(e);
    }

    int pitches_on(Date date, const std::string& left_out = "") const {
        int pitches = 0;
        outings(date, left_out, [&](const ThrowEntry& e) { pitches += e.count; });
        return pitches;
    }

    // The pitch of the day that was the last before the last batter came up; nothing when nobody wrote it down.
    std::optional<int> before_last_batter(Date date, const std::string& left_out = "") const {
        std::optional<int> before;
        int thrown = 0;
        outings(date, left_out, [&](const ThrowEntry& e) {
            before = e.before_last_batter;
            if (before)
                *before += thrown;
            thrown += e.count;
        });
        return before;
    }

    // A band's end thrown to the last batter is what the day counts as; the later of two.
    int counts_as(const PitchRule& row, Date date, const std::string& left_out = "") const {
        const int thrown = pitches_on(date, left_out);
        const auto before = before_last_batter(date, left_out);
        if (row.last_batter != LastBatter::counts_as_reached || !before)
            return thrown;
        int counts = thrown;
        for (int pitch = *before + 1; pitch <= thrown; ++pitch)
            for (const auto& end : row.rest_to)
                if (end == pitch)
                    counts = pitch;
        return counts;
    }

    static int rest_for(const PitchRule& row, int pitches) {
        int bands = 0;
        for (const auto& end : row.rest_to)
            bands += end.has_value();
        for (int rest = 0; rest < bands; ++rest)
            if (pitches <= *row.rest_to[static_cast<std::size_t>(rest)])
                return rest;
        return bands == 0 ? 0 : bands - 1;
    }

    bool resting(Date date) const {
        for (int ago = 1; ago <= 10; ++ago) {
            const Date earlier = date - ago;
            if (pitches_on(earlier) == 0)
                continue;
            const PitchRule* row = row_on(earlier);
            if (row && ago <= rest_for(*row, counts_as(*row, earlier)))
                return true;
        }
        return false;
    }

    int days_running_to_the_day_before(Date date) const {
        int days = 0;
        while (pitches_on(date - days - 1) > 0)
            ++days;
        return days;
    }

    int outs_in_12_months(Date date) const {
        auto [year, month, day] = calendar(date);
        const YearMonthDay year_before{year - 1, month, month == 2 && day == 29 ? 28 : day};
        int outs = 0;
        for (const auto& e : entries)
            if (e.date <= date && calendar(e.date) > year_before)
                outs += e.outs.value_or(0);
        return outs;
    }

    int outs_caught(Date date) const {
        int outs = 0;
        for (const auto& e : entries)
            if (e.date == date)
                outs += e.outs_caught.value_or(0);
        return outs;
    }

    int pitches_in_game(const std::string& game, Date to) const {
        int pitches = 0;
        for (const auto& e : entries)
            if (!game.empty() && e.game == game && e.date <= to && e.setting == ThrowSetting::game)
                pitches += e.count;
        return pitches;
    }

    bool second_game_barred(const PitchRule& row, Date date, const std::string& game) const {
        if (pitches_on(date, game) == 0 || row.second_game == SecondGame::unsaid)
            return false;
        return row.second_game == SecondGame::never || rest_for(row, counts_as(row, date, game)) > 0;
    }

    // Which limits would so many more pitches on that day, in that game, break? A bit each, as PitchLimit counts them.
    unsigned broken(Date date, const std::string& game, int pitches) const {
        const PitchRule& row = *row_on(date);
        const int running = days_running_to_the_day_before(date), on_day = pitches_on(date) + pitches;
        unsigned limits = 0;
        const auto breaks = [&](PitchLimit limit, bool broken) {
            limits |= broken ? 1u << static_cast<unsigned>(limit) : 0u;
        };
        breaks(PitchLimit::rest, resting(date));
        breaks(PitchLimit::days_running, row.most_days_running && running + 1 > *row.most_days_running);
        breaks(PitchLimit::third_day, row.third_day_max && running >= 2 && on_day > *row.third_day_max);
        breaks(PitchLimit::second_game, second_game_barred(row, date, game));
        breaks(PitchLimit::caught,
               row.no_pitching_caught && outs_caught(date) >= 3 * *row.no_pitching_caught);
        breaks(PitchLimit::innings, row.yearly_innings && outs_in_12_months(date) >= 3 * *row.yearly_innings);
        breaks(PitchLimit::daily_maximum, on_day > row.daily_max);
        breaks(PitchLimit::game_maximum,
               row.game_max && pitches_in_game(game, date) + pitches > *row.game_max);
        return limits;
    }

    // One pitch more at a time, until a limit breaks.
    int most(Date date, const std::string& game) const {
        int pitches = 0;
        while (broken(date, game, pitches + 1) == 0)
            ++pitches;
        return pitches;
    }

    std::optional<Date> next_day(Date date) const {
        for (int ahead = 0; ahead <= 400; ++ahead)
            if (row_on(date + ahead) && broken(date + ahead, "", 1) == 0)
                return date + ahead;
        return std::nullopt;
    }
};

} // namespace slow
