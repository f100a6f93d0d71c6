#include "throwing_workload/throw_account.h"

#include "throwing_workload/workload_averages.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double hard_share = 0.9; // of full effort or of own best speed: proposal of this project, no source
constexpr int warm_up_days = 28;   // the long average's N
constexpr double same_ball_grams = 1;

bool same_ball(const std::optional<Mass>& a, const std::optional<Mass>& b) {
    if (!a || !b)
        return !a && !b;
    return std::abs((*a - *b).grams()) <= same_ball_grams;
}

bool hard_setting(ThrowSetting setting) {
    return setting == ThrowSetting::game || setting == ThrowSetting::bullpen ||
           setting == ThrowSetting::mound || setting == ThrowSetting::long_toss ||
           setting == ThrowSetting::javelin;
}

std::vector<ThrowEntry> up_to(std::span<const ThrowEntry> entries, Date today) {
    std::vector<ThrowEntry> kept;
    std::copy_if(entries.begin(), entries.end(), std::back_inserter(kept),
                 [&](const auto& e) { return e.date <= today; });
    std::stable_sort(kept.begin(), kept.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    return kept;
}

void count_days(ThrowAccount& account, const std::vector<ThrowEntry>& entries, Date today) {
    const Date first = entries.front().date;
    for (Date day = first; day <= today; day = day + 1)
        account.days.push_back({day, 0, 0, 0, 0, day - first < warm_up_days});
    for (const auto& entry : entries) {
        auto& day = account.days[static_cast<std::size_t>(entry.date - first)];
        day.throws += entry.count;
        if (!is_hard(entry, own_best(entries, entry.ball_mass)))
            continue;
        day.hard += entry.count;
        account.last_hard = entry.date;
        account.last_hard_setting = entry.setting;
        account.days_since_hard = today - entry.date;
    }
}

void average_days(ThrowAccount& account) {
    std::vector<double> daily;
    for (const auto& day : account.days)
        daily.push_back(day.throws);
    const auto of_7 = ewma(daily, 7), of_28 = ewma(daily, 28);
    for (std::size_t i = 0; i < daily.size(); ++i) {
        account.days[i].average_7 = of_7[i];
        account.days[i].average_28 = of_28[i];
    }
}

void count_weeks(ThrowAccount& account, Date today) {
    for (const auto& day : account.days) {
        const Date monday = day.date - (day.date.iso_weekday() - 1);
        if (account.weeks.empty() || account.weeks.back().monday != monday)
            account.weeks.push_back({monday, 0, 0, 0});
        auto& week = account.weeks.back();
        week.throws += day.throws;
        week.hard += day.hard;
        week.days_with_throws += day.throws > 0;
        if (today - day.date < 7)
            account.last_7_days += day.throws;
        else if (today - day.date < 14)
            account.the_7_before += day.throws;
    }
}

} // namespace

std::optional<Speed> own_best(std::span<const ThrowEntry> entries, const std::optional<Mass>& ball_mass) {
    std::optional<Speed> best;
    for (const auto& entry : entries)
        if (entry.speed && same_ball(entry.ball_mass, ball_mass) && (!best || *entry.speed > *best))
            best = entry.speed;
    return best;
}

bool is_hard(const ThrowEntry& entry, const std::optional<Speed>& own_best) {
    return hard_setting(entry.setting) || (entry.effort && *entry.effort >= hard_share) ||
           (entry.speed && own_best && *entry.speed >= hard_share * *own_best);
}

std::map<Date, int> game_pitches(std::span<const ThrowEntry> entries) {
    std::map<Date, int> pitches;
    for (const auto& entry : entries)
        if (entry.setting == ThrowSetting::game)
            pitches[entry.date] += entry.count;
    return pitches;
}

ThrowAccount measure_throws(std::span<const ThrowEntry> entries, Date today) {
    ThrowAccount account{{}, {}, 0, 0, {}, {}, {}};
    const auto kept = up_to(entries, today);
    if (kept.empty())
        return account;
    count_days(account, kept, today);
    average_days(account);
    count_weeks(account, today);
    return account;
}

} // namespace amentum
