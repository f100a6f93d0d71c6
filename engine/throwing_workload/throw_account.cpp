#include "throwing_workload/throw_account.h"

#include "throwing_workload/hard_throws.h"
#include "throwing_workload/workload_averages.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr int warm_up_days = 28; // the long average's N
constexpr int own_weeks = 6;
constexpr int high_days_seen = 42;    // six weeks
constexpr std::size_t high_needs = 8; // days with throws: proposal of this project, no source

using Entries = std::vector<const ThrowEntry*>;

Entries up_to(std::span<const ThrowEntry> entries, Date today) {
    Entries kept;
    kept.reserve(entries.size());
    for (const auto& entry : entries)
        if (entry.date <= today)
            kept.push_back(&entry);
    return kept;
}

void keep_worst(std::optional<double>& worst, const std::optional<double>& soreness) {
    if (soreness && (!worst || *soreness > *worst))
        worst = soreness;
}

void add_entry(DayOfThrows& day, const ThrowEntry& entry) {
    day.throws += entry.count;
    day.by_setting[static_cast<std::size_t>(entry.setting)] += entry.count;
    if (entry.setting != ThrowSetting::none)
        day.known = DayKnown::thrown;
    else if (day.known == DayKnown::unknown)
        day.known = DayKnown::none;
    keep_worst(day.soreness.before, entry.soreness_before);
    keep_worst(day.soreness.after, entry.soreness_after);
    keep_worst(day.soreness.next_day, entry.soreness_next_day);
}

void note_last_hard(ThrowAccount& account, const Entries& hard, Date today) {
    if (hard.empty())
        return;
    const auto later = [](const auto* a, const auto* b) { return a->date < b->date; };
    const Date last = (*std::max_element(hard.begin(), hard.end(), later))->date;
    std::array<int, words_of<ThrowSetting>.size()> by_setting = {};
    for (const auto* entry : hard)
        if (entry->date == last)
            by_setting[static_cast<std::size_t>(entry->setting)] += entry->count;
    const auto most = std::max_element(by_setting.begin(), by_setting.end());
    account.last_hard = last;
    account.last_hard_setting = static_cast<ThrowSetting>(most - by_setting.begin());
    account.days_since_hard = today - last;
}

void count_days(ThrowAccount& account, const Entries& entries, Date today) {
    const auto earlier = [](const auto* a, const auto* b) { return a->date < b->date; };
    const Date first = (*std::min_element(entries.begin(), entries.end(), earlier))->date;
    account.days.reserve(static_cast<std::size_t>(today - first + 1));
    for (Date day = first; day <= today; day = day + 1)
        account.days.push_back({day, 0, 0, 0, 0, day - first < warm_up_days});
    const OwnBests bests(entries);
    Entries hard;
    for (const auto* entry : entries) {
        auto& day = account.days[static_cast<std::size_t>(entry->date - first)];
        add_entry(day, *entry);
        if (entry->count == 0 || !is_hard(*entry, entry->speed ? bests.with(entry->ball_mass) : std::nullopt))
            continue;
        day.hard += entry->count;
        hard.push_back(entry);
    }
    note_last_hard(account, hard, today);
}

void average_days(ThrowAccount& account) {
    std::vector<double> daily;
    daily.reserve(account.days.size());
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
        const bool begins = account.weeks.empty() || day.date - account.weeks.back().monday == 7;
        if (begins)
            account.weeks.push_back({day.date - (day.date.iso_weekday() - 1), 0, 0, 0});
        auto& week = account.weeks.back();
        week.throws += day.throws;
        week.hard += day.hard;
        week.days_with_throws += day.throws > 0;
        week.unknown_days += day.known == DayKnown::unknown;
    }
    for (auto& week : account.weeks)
        week.whole = week.monday >= account.days.front().date && week.monday + 6 < today;
}

void count_last_days(ThrowAccount& account, Date today) {
    for (auto day = account.days.rbegin(); day != account.days.rend() && today - day->date < 28; ++day) {
        const int ago = today - day->date;
        const bool known = day->known != DayKnown::unknown;
        account.unknown_last_28 -= known;
        account.unknown_last_7 -= known && ago < 7;
        if (ago < 7)
            account.last_7_days += day->throws;
        else if (ago < 14)
            account.the_7_before += day->throws;
    }
}

LeastMiddleMost spread_of(std::vector<int> counts) {
    std::sort(counts.begin(), counts.end());
    const std::size_t n = counts.size();
    return {counts.front(), (counts[(n - 1) / 2] + counts[n / 2]) / 2.0, counts.back()};
}

OwnWeeks weeks_before(const std::vector<WeekOfThrows>& weeks, std::size_t here) {
    OwnWeeks own;
    std::vector<int> throws, hard;
    for (std::size_t i = here - std::min<std::size_t>(here, own_weeks); i < here; ++i) {
        if (!weeks[i].whole || weeks[i].unknown_days == 7)
            continue;
        ++own.weeks;
        own.unknown_days += weeks[i].unknown_days;
        throws.push_back(weeks[i].throws);
        hard.push_back(weeks[i].hard);
    }
    if (own.weeks > 0) {
        own.throws = spread_of(std::move(throws));
        own.hard_throws = spread_of(std::move(hard));
    }
    return own;
}

void note_high_days(ThrowAccount& account, Date today) {
    std::vector<int> counts;
    for (auto day = account.days.rbegin(); day != account.days.rend() && today - day->date < high_days_seen;
         ++day)
        if (day->throws > 0)
            counts.push_back(day->throws);
    if (counts.size() < high_needs)
        return;
    const std::size_t three_in_four = (3 * counts.size() + 3) / 4;
    std::nth_element(counts.begin(), counts.begin() + static_cast<std::ptrdiff_t>(three_in_four - 1),
                     counts.end());
    account.high_from = counts[three_in_four - 1];
    const auto last = std::find_if(account.days.rbegin(), account.days.rend(),
                                   [&](const auto& day) { return day.throws >= *account.high_from; });
    account.last_high = last->date;
    account.days_since_high = today - last->date;
}

} // namespace

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
    count_last_days(account, today);
    for (std::size_t i = 0; i < account.weeks.size(); ++i)
        account.weeks[i].own = weeks_before(account.weeks, i);
    note_high_days(account, today);
    return account;
}

} // namespace amentum
