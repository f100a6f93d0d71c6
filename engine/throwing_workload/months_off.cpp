#include "throwing_workload/months_off.h"

#include <algorithm>
#include <vector>

namespace amentum {
namespace {

constexpr int days_of_a_month = 30; // proposal of this project, no source

struct DayTold {
    bool told = false;
    bool pitched = false;
    bool threw = false;
};

std::vector<DayTold> days_told(std::span<const ThrowEntry> entries, Date first, Date last) {
    std::vector<DayTold> days(static_cast<std::size_t>(last - first + 1));
    for (const auto& entry : entries) {
        if (entry.date < first || entry.date > last)
            continue;
        auto& day = days[static_cast<std::size_t>(entry.date - first)];
        day.told = true;
        day.pitched |= entry.setting == ThrowSetting::game && entry.count > 0;
        day.threw |= entry.count > 0 || entry.outs_caught.value_or(0) > 0;
    }
    return days;
}

DaysOff days_off(const std::vector<DayTold>& days, bool DayTold::*loaded) {
    DaysOff off;
    int known = 0, possible = 0; // the runs that go on
    for (const auto& day : days) {
        const bool is_known = day.told && !(day.*loaded), is_possible = !(day.*loaded);
        off.known += is_known;
        off.at_most += is_possible;
        known = is_known ? known + 1 : 0;
        possible = is_possible ? possible + 1 : 0;
        off.longest_known = std::max(off.longest_known, known);
        off.longest_at_most = std::max(off.longest_at_most, possible);
    }
    return off;
}

TimeOffWord word_for(const std::optional<int>& months, int known, int at_most) {
    if (!months)
        return TimeOffWord::not_asked;
    const int asked = *months * days_of_a_month;
    if (known >= asked)
        return TimeOffWord::enough;
    return at_most < asked ? TimeOffWord::too_short : TimeOffWord::cannot_tell;
}

std::string days_words(int known, int at_most) {
    return at_most == known ? std::to_string(known) + " days"
                            : std::to_string(known) + " to " + std::to_string(at_most) + " days";
}

std::string word_words(TimeOffWord word) {
    if (word == TimeOffWord::enough)
        return "enough";
    return word == TimeOffWord::too_short ? "too short" : "cannot tell, it hangs on days nobody spoke of";
}

std::string asked_words(int months) {
    return std::to_string(months) + " x 30 days asked";
}

std::string sentence_of(const PitchRule& rule, const TimeOff& off, const MonthsOffAnswer& answer) {
    std::string words = "From " + off.first.text() + " to " + off.last.text() + ": ";
    const bool pitching = rule.months_off_from == MonthsOffFrom::pitching;
    const DaysOff& days = pitching ? off.from_pitching : off.from_throwing;
    if (!rule.months_off && !rule.months_off_running)
        return words + "no months off asked.";
    if (rule.months_off)
        words += days_words(days.known, days.at_most) +
                 (pitching ? " without pitches in a game, " : " without a throw, ") +
                 asked_words(*rule.months_off) + ": " + word_words(answer.altogether) + ".";
    if (rule.months_off_running)
        words += (rule.months_off ? " In one piece without a throw: " : "in one piece without a throw: ") +
                 days_words(off.from_throwing.longest_known, off.from_throwing.longest_at_most) + ", " +
                 asked_words(*rule.months_off_running) + ": " + word_words(answer.in_one_piece) + ".";
    return words;
}

} // namespace

Date first_of_12_months(Date day) {
    using namespace std::chrono;
    const auto same = day.calendar() - years(1);
    return Date::from(same.ok() ? same : same.year() / February / 28) + 1;
}

TimeOff measure_time_off(std::span<const ThrowEntry> entries, Date day) {
    const Date first = first_of_12_months(day);
    const auto days = days_told(entries, first, day);
    const auto unknown = std::count_if(days.begin(), days.end(), [](const DayTold& d) { return !d.told; });
    return {first, day, static_cast<int>(unknown), days_off(days, &DayTold::pitched),
            days_off(days, &DayTold::threw)};
}

MonthsOffAnswer check_months_off(const PitchRule& rule, const TimeOff& off) {
    const DaysOff& days =
        rule.months_off_from == MonthsOffFrom::pitching ? off.from_pitching : off.from_throwing;
    MonthsOffAnswer answer{
        word_for(rule.months_off, days.known, days.at_most),
        word_for(rule.months_off_running, off.from_throwing.longest_known, off.from_throwing.longest_at_most),
        ""};
    answer.sentence = sentence_of(rule, off, answer);
    return answer;
}

} // namespace amentum
