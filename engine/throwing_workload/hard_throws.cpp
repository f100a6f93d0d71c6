#include "throwing_workload/hard_throws.h"

#include "throwing_workload/throw_account.h"
#include "values/shortest_decimal.h"

namespace amentum {
namespace {

constexpr double hard_share = 0.9; // of full effort or of own best speed: proposal of this project, no source
constexpr double same_ball_grams = 1;

bool hard_setting(ThrowSetting setting) {
    return setting == ThrowSetting::game || setting == ThrowSetting::bullpen ||
           setting == ThrowSetting::mound || setting == ThrowSetting::long_toss ||
           setting == ThrowSetting::javelin;
}

void keep_faster(std::optional<Speed>& best, const Speed& speed) {
    if (!best || speed > *best)
        best = speed;
}

double in_unit(const Speed& speed, SpeedUnit unit) {
    if (unit == SpeedUnit::mph)
        return speed.miles_per_hour();
    return unit == SpeedUnit::metres_per_second ? speed.metres_per_second() : 3.6 * speed.metres_per_second();
}

std::string spaced(std::string words) {
    for (char& c : words)
        c = c == '_' ? ' ' : c;
    return words;
}

} // namespace

OwnBests::OwnBests(std::span<const ThrowEntry* const> entries) {
    for (const auto* entry : entries) {
        if (!entry->speed)
            continue;
        if (!entry->ball_mass) {
            keep_faster(without_mass_, *entry->speed);
            continue;
        }
        const auto [place, fresh] = by_grams_.try_emplace(entry->ball_mass->grams(), *entry->speed);
        if (!fresh && *entry->speed > place->second)
            place->second = *entry->speed;
    }
}

std::optional<Speed> OwnBests::with(const std::optional<Mass>& ball_mass) const {
    if (!ball_mass)
        return without_mass_;
    std::optional<Speed> best;
    const double grams = ball_mass->grams();
    for (auto ball = by_grams_.lower_bound(grams - same_ball_grams);
         ball != by_grams_.end() && ball->first <= grams + same_ball_grams; ++ball)
        keep_faster(best, ball->second);
    return best;
}

std::optional<Speed> own_best(std::span<const ThrowEntry> entries, const std::optional<Mass>& ball_mass) {
    std::vector<const ThrowEntry*> all;
    for (const auto& entry : entries)
        all.push_back(&entry);
    return OwnBests(all).with(ball_mass);
}

bool is_hard(const ThrowEntry& entry, const std::optional<Speed>& own_best) {
    if (hard_setting(entry.setting))
        return true;
    if (entry.speed && own_best)
        return *entry.speed >= hard_share * *own_best;
    return entry.effort && *entry.effort >= hard_share;
}

std::string describe_effort(const ThrowEntry& entry, const std::optional<Speed>& own_best, SpeedUnit unit) {
    std::string words;
    if (entry.speed) {
        words = format_fixed(in_unit(*entry.speed, unit), 1) + " " + std::string(word(unit));
        words += own_best ? ", " + format_fixed(*entry.speed / *own_best, 2) + " of the own best " +
                                format_fixed(in_unit(*own_best, unit), 1)
                          : ", no own best to compare with";
    } else if (entry.effort) {
        words = "meant at " + format_fixed(*entry.effort, 2) + " of full effort, no speed read";
    } else {
        words = "no speed read, no effort noted";
    }
    if (hard_setting(entry.setting))
        return words + ": hard, as all throws of " + spaced(std::string(word(entry.setting))) + " count";
    return words + (is_hard(entry, own_best) ? ": hard" : ": not hard");
}

std::string describe_own_weeks(const WeekOfThrows& week) {
    const auto unknown = [](int days) {
        return days == 0 ? std::string()
                         : " (" + std::to_string(days) + (days == 1 ? " day" : " days") + " unknown)";
    };
    const std::string least = week.unknown_days > 0 ? "At least " : "";
    std::string words = least + std::to_string(week.throws) + " throws in the week of " + week.monday.text() +
                        (week.whole ? "" : " as far as it stands here") + ", " + std::to_string(week.hard) +
                        " of them hard" + unknown(week.unknown_days);
    const OwnWeeks& own = week.own;
    if (own.weeks == 0)
        return words + "; no whole week before to compare with.";
    const auto spread = [](const LeastMiddleMost& counts) {
        return std::to_string(counts.least) + " to " + std::to_string(counts.most) + ", middle " +
               format_shortest(counts.middle);
    };
    return words + "; " + std::to_string(own.weeks) + (own.weeks == 1 ? " week" : " weeks") +
           " before to compare with: throws " + spread(own.throws) + "; hard " + spread(own.hard_throws) +
           unknown(own.unknown_days) + ".";
}

} // namespace amentum
