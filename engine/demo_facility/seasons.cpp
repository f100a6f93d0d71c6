// Seasons, throws and logged training sets of the invented throwers.
#include "demo_facility/hall_loads.h"
#include "demo_facility/people.h"
#include "demo_facility/test_days.h"
#include "inference/random_stream.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr int logged_weeks = 16;
constexpr int weeks_ahead = 8;

enum class Time { season, build_up, rest };

Time time_of_year(Date date) {
    const auto month = static_cast<unsigned>(date.calendar().month());
    if (month >= 3 && month <= 9)
        return Time::season;
    return month == 10 || month == 11 ? Time::rest : Time::build_up;
}

int most_pitches(const Athlete& athlete, Date date) {
    const int age = whole_years(athlete.birth_date, date);
    return age <= 12 ? 50 : age <= 14 ? 60 : age <= 18 ? 75 : 92; // well inside every published daily maximum
}

ThrowEntry entry(const Athlete& athlete, Date date, ThrowSetting setting, int count, RandomStream& stream) {
    ThrowEntry t{athlete.id, date, setting, count, {}, {}, {}, {}, {}, {}, {}, ""};
    t.soreness_before = std::floor(2 * stream.next_uniform());
    t.soreness_after = *t.soreness_before + std::floor(2 * stream.next_uniform());
    return t;
}

bool starts_games(const Athlete& athlete) {
    return athlete.role == Role::pitcher || athlete.role == Role::thrower;
}

void add_week(RecordSet& records, const Athlete& athlete, const TrueThrower& thrower, Date monday,
              Date last_day, RandomStream& stream) {
    const Time time = time_of_year(monday);
    if (time == Time::rest)
        return;
    const auto keep = [&](ThrowEntry t) {
        if (t.date <= last_day)
            records.throws.push_back(std::move(t));
    };
    const int catches = 30 + static_cast<int>(25 * stream.next_uniform());
    for (const int weekday : {1, 3})
        keep(entry(athlete, monday + weekday, ThrowSetting::catch_play, catches, stream));
    if (!starts_games(athlete))
        return;
    if (athlete.sport == Sport::javelin) {
        keep(entry(athlete, monday + 2, ThrowSetting::javelin,
                   18 + static_cast<int>(10 * stream.next_uniform()), stream));
        return;
    }
    const int day = std::clamp(demo_days - (last_day - monday), 0, demo_days);
    ThrowEntry bullpen = entry(athlete, monday + 2, ThrowSetting::bullpen,
                               25 + static_cast<int>(10 * stream.next_uniform()), stream);
    bullpen.speed = Speed::metres_per_second(
        std::round(10 * (thrower.velocity[static_cast<std::size_t>(day)] * 0.96)) / 10);
    bullpen.effort = 0.9;
    keep(bullpen);
    if (time == Time::season && stream.next_uniform() < 0.85) {
        keep(entry(athlete, monday + 5, ThrowSetting::game,
                   most_pitches(athlete, monday) - static_cast<int>(20 * stream.next_uniform()), stream));
        records.calendar.push_back({athlete.id, monday + 5, monday + 5, DayKind::start, "home"});
    }
}

void add_calendar(RecordSet& records, const Athlete& athlete, Date last_day) {
    const Date first_monday = last_day + (8 - last_day.iso_weekday());
    for (int week = 0; week < weeks_ahead; ++week) {
        const Date monday = first_monday + 7 * week;
        if (time_of_year(monday) != Time::season)
            continue;
        records.calendar.push_back({athlete.id, monday + 2, monday + 2, DayKind::practice, "club practice"});
        if (starts_games(athlete))
            records.calendar.push_back({athlete.id, monday + 5, monday + 5, DayKind::start, "home"});
        else
            records.calendar.push_back({athlete.id, monday + 5, monday + 5, DayKind::game, "home"});
    }
}

struct SetGiven {
    const char* exercise;
    const char* test;
    HallTool tool;
    double share; // of the test's value that the exercise's maximum is
    int reps;
};
constexpr SetGiven trained[] = {
    {"rfe_split_squat_safety_bar", "split_squat_max", HallTool::safety_bar, 0.95, 6},
    {"hex_bar_deadlift_high", "hex_bar_high_max", HallTool::high_hex_bar, 1, 5}};
constexpr int reserve_wanted = 2;

void add_session(RecordSet& records, const Athlete& athlete, const TrueThrower& thrower, Date date,
                 Date last_day, RandomStream& stream) {
    const int day = demo_days - (last_day - date);
    for (const auto& given : trained) {
        const double maximum = given.share * true_test_value(athlete, thrower, last_day, day, given.test);
        const auto set =
            hall_set(given.tool, Mass::kilograms(maximum), given.reps + reserve_wanted, given.reps);
        if (!set)
            continue; // the bar alone is too heavy for this
        for (int number = 1; number <= 3; ++number) {
            const double left = 30 * (maximum / set->load.kilograms() - 1) - given.reps;
            const double felt = std::clamp(std::round(left + stream.next_normal()), 0.0, 5.0);
            records.sets.push_back({"demo-" + athlete.id.text + "-" + date.text() + "-" +
                                        std::to_string(true_test(given.test).quality) +
                                        std::to_string(number),
                                    athlete.id,
                                    date,
                                    given.exercise,
                                    number,
                                    set->load,
                                    given.reps,
                                    felt,
                                    {},
                                    {},
                                    ""});
        }
    }
}

} // namespace

void add_season(RecordSet& records, const Athlete& athlete, const TrueThrower& thrower, Date last_day,
                std::uint64_t seed) {
    RandomStream stream(seed_from(seed + 2, athlete.id.text));
    const Date first = last_day - demo_days;
    for (Date monday = first + (8 - first.iso_weekday()); monday <= last_day; monday = monday + 7)
        add_week(records, athlete, thrower, monday, last_day, stream);
    add_calendar(records, athlete, last_day);
}

void add_logged_sets(RecordSet& records, const Athlete& athlete, const TrueThrower& thrower, Date last_day,
                     std::uint64_t seed) {
    if (athlete.kit.text != hall_kit || age_on(athlete, last_day, demo_days) < 17)
        return;
    RandomStream stream(seed_from(seed + 3, athlete.id.text));
    if (stream.next_uniform() < 0.4)
        return; // not everybody writes sets down
    for (int week = logged_weeks; week >= 1; --week)
        for (const int shift : {0, 3}) {
            if (stream.next_uniform() < 0.2)
                continue;
            add_session(records, athlete, thrower, last_day - 7 * week + shift, last_day, stream);
        }
}

} // namespace amentum
