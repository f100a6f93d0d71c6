#include "operations/inside/may_pitch.h"

#include "operations/inside/arm_steps.h"
#include "operations/inside/shown_pains.h"
#include "throwing_workload/open_pains.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

constexpr int longest_rest = 6; // days a table can ask for

std::string count_words(int count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

// Days of pitching up to the day asked about: what comes later is not thrown yet.
std::span<const PitchingDay> days_up_to(const std::vector<PitchingDay>& days, Date day) {
    const auto end = std::upper_bound(days.begin(), days.end(), day,
                                      [](Date asked, const auto& each) { return asked < each.date; });
    return {days.data(), static_cast<std::size_t>(end - days.begin())};
}

std::string unknown_words(const ArmCase& arm, Date day, Date today) {
    std::set<Date> known;
    for (const auto& entry : arm.entries)
        known.insert(entry.date);
    int unknown = 0, asked = 0;
    for (Date each = day - longest_rest; each < day && each < today; each = each + 1, ++asked)
        unknown += !known.contains(each);
    if (unknown == 0)
        return "";
    return " Nothing is written down of " + std::to_string(unknown) + " of the last " +
           count_words(asked, "day", "days") + ": they count as without pitches.";
}

struct TableWord {
    const ArmTable* table;
    std::optional<PitchAllowance> allowance; // none: no row for the age
    std::optional<Date> next;
};

std::string refused_ages(const std::vector<TableWord>& words, const Athlete& athlete, Date day) {
    std::string names;
    for (const auto& each : words)
        names += (names.empty() ? "" : ", ") + each.table->organisation;
    return "Cannot tell: no row of the " + names + " covers " +
           std::to_string(whole_years(athlete.birth_date, day)) + " years.";
}

std::vector<TableWord> words_of_tables(const std::vector<ArmTable>& tables, const ArmCase& arm, Date day) {
    std::vector<TableWord> words;
    const auto days = days_up_to(arm.days, day);
    for (const auto& table : tables) {
        const PitchTableOfArm rows{table.rows, arm.athlete->birth_date};
        const auto allowance = measure_allowance(rows, days, day);
        words.push_back({&table, allowance ? std::optional(*allowance) : std::nullopt,
                         allowance ? next_day_to_pitch(rows, days, day) : std::nullopt});
    }
    return words;
}

// The first day on which every table allows a pitch.
std::optional<Date> common_next_day(const std::vector<TableWord>& words, const ArmCase& arm, Date day) {
    const auto days = days_up_to(arm.days, day);
    Date next = day;
    for (bool moved = true; moved;) {
        moved = false;
        for (const auto& each : words) {
            if (!each.allowance)
                continue;
            const auto own = next_day_to_pitch({each.table->rows, arm.athlete->birth_date}, days, next);
            if (!own)
                return std::nullopt;
            moved = moved || next < *own;
            next = std::max(next, *own);
        }
    }
    return next;
}

std::string source_of(const PitchRule& rule) {
    std::string keys;
    for (const auto& key : rule.sources)
        keys += (keys.empty() ? "" : ", ") + key;
    return rule.organisation + " " + std::to_string(rule.year) + (keys.empty() ? "" : " [" + keys + "]");
}

std::vector<ShownLimit> shown_limits(const std::vector<TableWord>& words, const ArmCase& arm, Date day) {
    std::vector<ShownLimit> shown;
    for (const auto& each : words) {
        if (!each.allowance)
            continue;
        const PitchTableOfArm rows{each.table->rows, arm.athlete->birth_date};
        for (const auto& limit : each.allowance->limits)
            shown.push_back({each.table->organisation, word(limit.limit), limit.most,
                             describe_limit(rows, limit, day), source_of(*rule_on(rows, day))});
    }
    std::stable_sort(shown.begin(), shown.end(),
                     [](const auto& a, const auto& b) { return a.most < b.most; });
    return shown;
}

std::string catch_words(const std::vector<TableWord>& words, const ArmCase& arm, Date day) {
    for (const auto& each : words) {
        const PitchTableOfArm rows{each.table->rows, arm.athlete->birth_date};
        if (!each.allowance || may_catch(rows, days_up_to(arm.days, day), day))
            continue;
        return "No catching on " + day.text() + ": " + each.table->organisation + ", from " +
               count_words(rule_on(rows, day)->no_catching_from.value_or(0), "pitch", "pitches") +
               " on a day.";
    }
    return "";
}

// Whose word it is: "by the Canada baseball rule (Harbour Terns)".
std::string whose(const ArmTable& table) {
    std::string teams;
    for (const auto& team : table.teams)
        teams += (teams.empty() ? "" : ", ") + team;
    return "by the " + table.organisation +
           (teams.empty() ? ", as no team is written down" : " (" + teams + ")");
}

std::optional<std::string> pain_answer(const ArmCase& arm, const ReferenceTables& tables, Date day) {
    for (const auto& pain : open_pains(arm.pains, arm.clearances, day)) {
        const PainBlock& block = pain_block_of(tables, pain.region);
        if (block.throwing)
            return "No throwing: pain entry " + std::to_string(pain.number) + " (" + block.name + ", " +
                   pain.date.text() +
                   ") is open. A named adult records who cleared it; nobody can override it here.";
    }
    return std::nullopt;
}

const TableWord& strictest(const std::vector<TableWord>& words) {
    const TableWord* least = nullptr;
    for (const auto& each : words)
        if (each.allowance && (!least || each.allowance->most < least->allowance->most))
            least = &each;
    return *least;
}

std::string yes_words(const MayPitch& answer, const TableWord& least, Date day) {
    const auto& binding = answer.limits.front();
    const bool plain = binding.limit == word(PitchLimit::daily_maximum);
    return "Yes, at most " + count_words(*answer.most, "pitch", "pitches") + " on " + weekday_words(day) +
           ", " + whose(*least.table) + "." + (plain ? "" : " " + binding.words);
}

std::string no_words(const MayPitch& answer, const TableWord& least, Date day) {
    return "No, not on " + weekday_words(day) + ", " + whose(*least.table) + ". " +
           answer.limits.front().words +
           (answer.next_day ? " Next on " + weekday_words(*answer.next_day) + "."
                            : " No next day within 400 days.");
}

// A table's no that a coach answered for stays a no, with the coach's word beside it.
std::string answered_words(const ArmCase& arm, Date day) {
    std::string words;
    for (const auto& each : arm.stops_answered)
        if (each.date == day)
            words += " " + each.coach + " answers for that day: \"" + each.reason + "\".";
    return words;
}

} // namespace

MayPitch may_pitch(const ArmCase& arm, const ReferenceTables& tables, Date day, Date today,
                   const std::optional<std::string>& organisation) {
    auto asked = arm.tables_on(day);
    if (organisation)
        std::erase_if(asked, [&](const auto& each) { return each.organisation != *organisation; });
    MayPitch answer;
    const auto words = words_of_tables(asked, arm, day);
    const bool any = std::any_of(words.begin(), words.end(), [](const auto& e) { return e.allowance; });
    answer.limits = shown_limits(words, arm, day);
    answer.may_catch = catch_words(words, arm, day);
    if (const auto pain = pain_answer(arm, tables, day)) {
        answer.word = "no";
        answer.short_answer = *pain;
        answer.most = 0;
        return answer;
    }
    if (const auto plan = plan_not_through(arm, today)) {
        answer.word = "no";
        answer.short_answer = *plan;
        answer.most = 0;
        return answer;
    }
    if (!any) {
        answer.word = "cannot_tell";
        answer.short_answer = words.empty() ? "Cannot tell: no table of limits covers this sport."
                                            : refused_ages(words, *arm.athlete, day);
        return answer;
    }
    const TableWord& least = strictest(words);
    answer.most = least.allowance->most;
    answer.next_day = common_next_day(words, arm, day);
    answer.word = *answer.most > 0 ? "yes" : "no";
    answer.short_answer = (*answer.most > 0 ? yes_words(answer, least, day) : no_words(answer, least, day)) +
                          unknown_words(arm, day, today);
    if (answer.word == "no")
        answer.short_answer += answered_words(arm, day);
    return answer;
}

std::string may_pitch_in_short(const MayPitch& answer) {
    if (answer.word == "cannot_tell")
        return "cannot tell";
    if (*answer.most > 0)
        return "at most " + count_words(*answer.most, "pitch", "pitches");
    return "none" + (answer.next_day ? "; next on " + answer.next_day->text() : std::string());
}

std::vector<std::string> team_words(const ArmCase& arm, Date day) {
    std::vector<std::string> words;
    for (const auto& place : arm.places)
        if (place.date <= day && (!place.last_date || day <= *place.last_date))
            words.push_back(place.team + (place.organisation.empty() ? std::string(", by no table known here")
                                                                     : ", by the " + place.organisation));
    return words;
}

} // namespace amentum
