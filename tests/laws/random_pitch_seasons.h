// Seasons of one arm drawn at random, for the laws of pitch_seasons_test.cpp: a table, a birthday, several teams, four weeks of
// entries in shuffled order and some older ones, all from the test's own stream.
#pragma once

#include "slow_pitch_rules.h"

#include <algorithm>
#include <chrono>
#include <random>

namespace seasons {

using namespace amentum;

class Draw {
public:
    explicit Draw(std::uint64_t seed) : stream_(seed) {}
    int whole(int low, int high) { // both included; by the remainder, whose lean is below 1e-15 here
        return low + static_cast<int>(stream_() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool one_in(int n) { return whole(1, n) == 1; }
    std::optional<int> perhaps(int n, int low, int high) { // given once in n
        return one_in(n) ? std::optional(whole(low, high)) : std::nullopt;
    }
    template <class E>
    E word_of() {
        return words_of<E>[static_cast<std::size_t>(whole(0, static_cast<int>(words_of<E>.size()) - 1))]
            .first;
    }
    std::mt19937_64& stream() { return stream_; }

private:
    std::mt19937_64 stream_;
};

inline PitchRule drawn_row(Draw& draw, int year, int age_low, int age_high) {
    PitchRule row{"Drawn league",
                  year,
                  Sport::baseball,
                  age_low,
                  age_high,
                  draw.whole(20, 120),
                  {},
                  {},
                  {},
                  {},
                  {},
                  "",
                  {}};
    const int bands = draw.whole(0, 6);
    int end = row.daily_max;
    for (int k = bands - 1; k >= 0; --k) { // from the last, which is the daily maximum, downwards
        row.rest_to[static_cast<std::size_t>(k)] = end;
        end = draw.whole(std::max(k, 1), std::max(end - 1, 1));
    }
    row.game_max = draw.perhaps(3, 10, row.daily_max);
    row.third_day_max = draw.perhaps(3, 0, row.daily_max);
    row.most_days_running = draw.perhaps(2, 1, 4);
    row.yearly_innings = draw.perhaps(4, 1, 60);
    row.second_game = draw.word_of<SecondGame>();
    row.last_batter = draw.word_of<LastBatter>();
    row.no_catching_from = draw.perhaps(3, 1, 60);
    row.no_pitching_caught = draw.perhaps(3, 1, 6);
    return row;
}

// Bands of ages without hole, one or two years of the table, one day to reckon the age by or the birthday.
inline std::vector<PitchRule> drawn_rows(Draw& draw) {
    std::vector<PitchRule> rows;
    const auto month = draw.perhaps(3, 1, 12);
    const auto day = month ? std::optional(draw.whole(1, *month == 2 ? 28 : 30)) : std::nullopt;
    for (int year = 2026 - (draw.one_in(5) ? 1 : 0); year <= 2026; ++year)
        for (int age = draw.whole(6, 9); age <= 15;) {
            const int high = age + draw.whole(0, 4);
            rows.push_back(drawn_row(draw, year, age, high));
            rows.back().age_month = month;
            rows.back().age_day = day;
            age = high + 1;
        }
    return rows;
}

inline ThrowEntry outing(Draw& draw, Date date, int occasion) {
    static const std::vector<std::string> games{"", "", "first", "second", "third"};
    static const std::vector<std::string> teams{"", "Harbour", "Saltgrass"};
    ThrowEntry entry{AthleteId{"a"},
                     date,
                     ThrowSetting::game,
                     draw.whole(1, draw.one_in(4) ? 130 : 45),
                     {},
                     {},
                     {},
                     {},
                     {},
                     {},
                     {},
                     ""};
    entry.occasion = occasion;
    entry.game = games[static_cast<std::size_t>(draw.whole(0, 4))];
    entry.team = teams[static_cast<std::size_t>(draw.whole(0, 2))];
    entry.outs = draw.perhaps(2, 0, 21);
    entry.before_last_batter = draw.perhaps(2, std::max(0, entry.count - 12), entry.count);
    return entry;
}

// Not before they could throw: a birthday in or near the weeks once in two, on 29 February once in ten.
inline Date drawn_birthday(Draw& draw, Date first) {
    using namespace std::chrono;
    const auto year = first.calendar().year() - years(draw.whole(8, 17));
    if (draw.one_in(10))
        for (auto y = year;; ++y)
            if (y.is_leap())
                return Date::from(y / February / 29);
    const Date of_that_year = Date::from(year / January / 1);
    const Date this_january = Date::from(first.calendar().year() / January / 1);
    return of_that_year + (draw.one_in(2) ? first - this_january + draw.whole(-3, 31) : draw.whole(0, 364));
}

constexpr int days_of_season = 28;

inline void add_other_day(Draw& draw, Date day, std::vector<ThrowEntry>& entries) {
    ThrowEntry entry = outing(draw, day, 1); // catching, a bullpen, or the word that nothing was thrown
    entry.outs = {};
    entry.before_last_batter = {};
    entry.setting = draw.one_in(2)   ? ThrowSetting::fielding
                    : draw.one_in(2) ? ThrowSetting::bullpen
                                     : ThrowSetting::none;
    if (entry.setting == ThrowSetting::fielding)
        entry.outs_caught = draw.whole(0, 27);
    if (entry.setting == ThrowSetting::none)
        entry.count = 0;
    entries.push_back(entry);
}

struct Season {
    slow::Arm arm;
    Date first; // of the four weeks
};

inline Season drawn_season(Draw& draw) {
    const Date first = Date::from(std::chrono::year(2023) / 1 / 1) + draw.whole(0, 6 * 365);
    Season season{{drawn_rows(draw), drawn_birthday(draw, first), {}}, first};
    auto& entries = season.arm.entries;
    const int busy = draw.whole(2, 6);
    for (Date day = first; day < first + days_of_season; day = day + 1) {
        if (draw.one_in(busy)) {
            const int outings = draw.one_in(4) ? draw.whole(2, 3) : 1;
            for (int occasion = 1; occasion <= outings; ++occasion)
                entries.push_back(outing(draw, day, occasion));
        }
        if (draw.one_in(6))
            add_other_day(draw, day, entries);
    }
    if (draw.one_in(3)) // last year's, for the innings and for games of the same name
        for (int back : {365, 366, 364, draw.whole(30, 400)})
            if (draw.one_in(2))
                entries.push_back(outing(draw, first + draw.whole(0, 27) - back, 9));
    std::shuffle(entries.begin(), entries.end(), draw.stream());
    return season;
}

} // namespace seasons
