#include "operations/inside/arm_ledger.h"

#include "operations/inside/planned_outings.h"
#include "operations/inside/throwing_answer.h"
#include "throwing_workload/open_pains.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cctype>

namespace amentum {
namespace {

std::optional<double> worst(const DaySoreness& soreness) {
    std::optional<double> most;
    for (const auto& each : {soreness.before, soreness.after, soreness.next_day})
        if (each && (!most || *each > *most))
            most = each;
    return most;
}

std::string capital(std::string text) {
    text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
    return text;
}

std::string soreness_words(const ThrowEntry& entry) {
    std::string words;
    for (const auto& [when, given] :
         {std::pair("before", entry.soreness_before), std::pair("after", entry.soreness_after),
          std::pair("next day", entry.soreness_next_day)})
        if (given)
            words += (words.empty() ? "" : ", ") + format_shortest(*given) + " " + when;
    return words.empty() ? "" : "; soreness " + words + " (of 10)";
}

std::string entry_words(const ThrowEntry& entry, const ArmCase& arm, const Facility& facility) {
    if (entry.setting == ThrowSetting::none)
        return "No throws.";
    std::string words = capital(setting_words(entry.setting));
    if (entry.occasion > 1)
        words += " " + std::to_string(entry.occasion);
    if (!entry.game.empty())
        words += " (" + entry.game + ")";
    words +=
        ", " + std::to_string(entry.count) + (entry.setting == ThrowSetting::game ? " pitches" : " throws");
    if (!entry.team.empty())
        words += ", for " + entry.team;
    if (entry.outs)
        words += ", " + std::to_string(*entry.outs) + " outs";
    if (entry.outs_caught)
        words += ", " + std::to_string(*entry.outs_caught) + " outs caught";
    return words + "; " +
           describe_effort(entry, own_best(arm.entries, entry.ball_mass), facility.speed_unit) +
           soreness_words(entry) + (entry.accuracy.empty() ? "" : "; " + entry.accuracy);
}

ArmDay day_of(const DayOfThrows& day, const ArmCase& arm, const Facility& facility) {
    ArmDay shown{day.date.text(),
                 word(day.known),
                 day.throws,
                 day.hard,
                 day.of(ThrowSetting::game),
                 {},
                 worst(day.soreness),
                 day.average_7,
                 day.average_28,
                 day.warming_up,
                 planned_on(arm, day.date),
                 !open_pains(arm.pains, arm.clearances, day.date).empty()};
    for (const auto& entry : arm.entries)
        if (entry.date == day.date)
            shown.entries.push_back(entry_words(entry, arm, facility));
    return shown;
}

} // namespace

const std::string why_no_ratio_words =
    "A ratio of short to long workload is not shown. The last 7 days stand in both of its means, so that it "
    "is 4 u / (u + 3) of "
    "the uncoupled one and never above 4 whatever was thrown; independent weeks correlate by 0.5 through "
    "that alone "
    "[Lolli2019]; and made-up long averages foretold injuries about as well as the real ones, 0.57 where 0.5 "
    "is a coin "
    "[Impellizzeri2020]. The lines are a description; nothing here predicts injury.";

std::vector<ArmDay> arm_ledger(const ArmCase& arm, const ThrowAccount& account, const Facility& facility,
                               Date today, int days) {
    std::vector<ArmDay> ledger;
    for (const auto& day : account.days)
        if (today - day.date < days)
            ledger.push_back(day_of(day, arm, facility));
    return ledger;
}

std::vector<ArmWeek> arm_weeks(const ThrowAccount& account, int days) {
    std::vector<ArmWeek> weeks;
    for (const auto& week : account.weeks)
        weeks.push_back({week.monday.text(), week.throws, week.hard, week.unknown_days, week.whole});
    const auto wanted = static_cast<std::size_t>(days / 7 + 1);
    if (weeks.size() > wanted)
        weeks.erase(weeks.begin(), weeks.end() - static_cast<std::ptrdiff_t>(wanted));
    return weeks;
}

std::vector<std::string> account_words(const ThrowAccount& account) {
    if (account.days.empty())
        return {"No throws are recorded."};
    std::vector<std::string> words{describe_own_weeks(account.weeks.back()), throwing_words(account)};
    if (account.unknown_last_28 > 0)
        words.push_back("Of the last 28 days " + std::to_string(account.unknown_last_28) +
                        " are of nobody's word: sums and lines that hold them are at least that much.");
    if (account.days_since_high && account.high_from)
        words.push_back(std::to_string(*account.days_since_high) + " days since the last high day (" +
                        std::to_string(*account.high_from) + " throws or more, for this thrower).");
    if (account.days.back().warming_up)
        words.push_back("The lines are warming up: the first 28 days lean on where they began.");
    return words;
}

} // namespace amentum
