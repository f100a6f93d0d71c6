// The arms of 5,000 throwers over 365 days, all worked out anew from what was written down: pitching days sorted and added up,
// what a table of limits leaves on each of the 365 days, the next day to pitch, and the account of throws. One core.
//   all        seconds for the 5,000 throwers: the allowance of each day and the account. Bar: under 1 s
//   one        milliseconds for one thrower asked today: pitching days, allowance, next day, months off, account. Bar: under 1 ms
//   one day    microseconds of one allowance
// Rival, in the same run: the rules written a second time, slow and obvious (tests/laws/slow_pitch_rules.h), which the laws hold
// against the engine; timed on 5 throwers, a hundred days each, and its answers are checked against ours before timing.
// Processor time of this thread; medians of five repeats after one that warms up.
// Run it by `./dev bench`, or: ninja pitch_rules_bench && ./bench/pitch_rules_bench
#include "slow_pitch_rules.h"
#include "throwing_workload/months_off.h"
#include "throwing_workload/throw_account.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <functional>
#include <random>

using namespace amentum;

namespace {

constexpr int throwers = 5000, days_of_year = 365, rival_throwers = 5, rival_days = 100;
const Date first = Date::from(std::chrono::year(2025) / 12 / 1);
const Date today = first + (days_of_year - 1);

// As the guideline at 13 to 16 years, with every other limit set as well, so that each is worked out.
std::vector<PitchRule> rows() {
    std::vector<PitchRule> all;
    for (int age = 7; age <= 19; age += 2) {
        PitchRule row{"Bench league",
                      2026,
                      Sport::baseball,
                      age,
                      age + 1,
                      95,
                      {20, 35, 50, 65, 95},
                      80,
                      60,
                      2,
                      100,
                      "",
                      {}};
        row.second_game = SecondGame::after_no_rest_count;
        row.last_batter = LastBatter::counts_as_reached;
        row.no_pitching_caught = 4;
        row.months_off = 4;
        row.months_off_running = 2;
        all.push_back(row);
    }
    return all;
}

// An entry on four days of five: catch, bullpens, a game a week, sometimes two.
std::vector<ThrowEntry> year_of_one(int number) {
    std::mt19937_64 stream(static_cast<std::uint64_t>(number));
    const auto whole = [&](int low, int high) {
        return low + static_cast<int>(stream() % static_cast<std::uint64_t>(high - low + 1));
    };
    std::vector<ThrowEntry> entries;
    for (int k = 0; k < days_of_year; ++k) {
        const int what = whole(0, 9);
        const auto setting = what < 2   ? ThrowSetting::none
                             : what < 6 ? ThrowSetting::catch_play
                             : what < 8 ? ThrowSetting::bullpen
                                        : ThrowSetting::game;
        ThrowEntry entry{AthleteId{"a"},
                         first + k,
                         setting,
                         setting == ThrowSetting::none ? 0 : whole(10, 60),
                         {},
                         {},
                         {},
                         {},
                         {},
                         {},
                         {},
                         ""};
        if (setting == ThrowSetting::game) {
            entry.outs = whole(0, 9);
            entry.before_last_batter = std::max(0, entry.count - whole(1, 6));
        }
        if (setting == ThrowSetting::bullpen)
            entry.speed = Speed::metres_per_second(30 + whole(0, 50) / 10.0);
        entries.push_back(entry);
    }
    std::shuffle(entries.begin(), entries.end(), stream);
    return entries;
}

double processor_seconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e9;
}

double median_seconds(const std::function<void()>& work) {
    std::vector<double> took;
    for (int repeat = 0; repeat < 6; ++repeat) {
        const double start = processor_seconds();
        work();
        if (repeat > 0) // the first warms up
            took.push_back(processor_seconds() - start);
    }
    std::nth_element(took.begin(), took.begin() + 2, took.end());
    return took[2];
}

volatile long sink; // keeps the compiler from dropping the answers

long allowed_in_year(const PitchTableOfArm& table, std::span<const PitchingDay> days) {
    long pitches = 0;
    for (Date day = first; day <= today; day = day + 1)
        pitches += measure_allowance(table, days, day)->most;
    return pitches;
}

long asked_today(const PitchTableOfArm& table, const std::vector<ThrowEntry>& entries) {
    const auto days = pitching_days(entries);
    const auto next = next_day_to_pitch(table, days, today);
    const auto off = check_months_off(table.rows.front(), measure_time_off(entries, today));
    return measure_allowance(table, days, today)->most + (next ? next->days_since_1970() : 0) +
           static_cast<long>(off.sentence.size()) + measure_throws(entries, today).last_7_days;
}

bool same_answers(const std::vector<slow::Arm>& arms, const std::vector<PitchRule>& table) {
    for (const auto& arm : arms) {
        const auto days = pitching_days(arm.entries);
        for (Date day = today - rival_days; day < today; day = day + 1)
            if (measure_allowance({table, arm.born}, days, day)->most != arm.most(day, ""))
                return false;
    }
    return true;
}

void say(const char* what, double value, const char* unit, double bar) {
    std::printf("%-72s %9.3f %s   bar %g: %s\n", what, value, unit, bar, value < bar ? "met" : "MISSED");
}

} // namespace

int main() {
    const auto table = rows();
    const Date born = Date::from(std::chrono::year(2012) / 6 / 15); // 13, then 14 years
    const PitchTableOfArm of_arm{table, born};
    std::vector<std::vector<ThrowEntry>> all;
    for (int number = 0; number < throwers; ++number)
        all.push_back(year_of_one(number));
    std::vector<slow::Arm> arms;
    for (int number = 0; number < rival_throwers; ++number)
        arms.push_back({table, born, all[static_cast<std::size_t>(number)]});
    if (!same_answers(arms, table)) {
        std::printf("the two writings of the rules disagree\n");
        return 1;
    }
    const double year = median_seconds([&] {
        for (const auto& entries : all)
            sink = allowed_in_year(of_arm, pitching_days(entries));
    });
    const double accounts = median_seconds([&] {
        for (const auto& entries : all)
            sink = measure_throws(entries, today).last_7_days;
    });
    const double one = median_seconds([&] {
        for (int number = 0; number < 500; ++number)
            sink = asked_today(of_arm, all[static_cast<std::size_t>(number)]);
    });
    const double rival = median_seconds([&] {
        for (const auto& arm : arms)
            for (Date day = today - rival_days; day < today; day = day + 1)
                sink = arm.most(day, "");
    });
    const double ours_us = 1e6 * year / (throwers * days_of_year);
    const double rival_us = 1e6 * rival / (rival_throwers * rival_days);
    std::printf("pitch rules, %d throwers, %d days, %zu entries\n", throwers, days_of_year,
                throwers * all[0].size());
    say("all: allowances of every day, and the accounts", year + accounts, "s ", 1);
    std::printf("     of it allowances %.3f s, accounts %.3f s\n", year, accounts);
    say("one: a thrower asked today (allowance, next day, months off, account)", 1e3 * one / 500, "ms", 1);
    say("one day's allowance, its share of sorting the year included", ours_us, "us", 1);
    std::printf("rival, the slow writing: %.1f us an allowance, %.0f times ours\n", rival_us,
                rival_us / ours_us);
}
