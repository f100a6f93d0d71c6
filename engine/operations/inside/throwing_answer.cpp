#include "operations/inside/throwing_answer.h"

#include "guard_rails/check_throwing.h"
#include "operations/inside/finding_answer.h"
#include "reports/sentences.h"
#include "throwing_workload/pitch_tables_in_force.h"

#include <algorithm>

namespace amentum {
namespace {

std::vector<ThrowEntry> entries_of(const FacilityView& view, const Athlete& athlete) {
    std::vector<ThrowEntry> entries;
    for (const auto& entry : view.records.throws)
        if (entry.athlete == athlete.id)
            entries.push_back(entry);
    return entries;
}

std::string unknown_days_words(int unknown) {
    if (unknown == 0)
        return "";
    return std::to_string(unknown) + (unknown == 1 ? " of these seven days is" : " of these seven days are") +
           " of nobody's word. ";
}

} // namespace

ThrowAccount throws_of(const FacilityView& view, const Athlete& athlete, Date today) {
    return measure_throws(entries_of(view, athlete), today);
}

std::string setting_words(ThrowSetting setting) {
    std::string words = word(setting);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

std::string hard_throw_words(const ThrowAccount& account) {
    return describe_hard_throw(account.days_since_hard, account.last_hard,
                               account.last_hard_setting ? setting_words(*account.last_hard_setting) : "");
}

std::string throwing_words(const ThrowAccount& account) {
    if (account.days.empty())
        return "No throws are recorded.";
    return std::to_string(account.last_7_days) + " throws in the last 7 days, " +
           std::to_string(account.the_7_before) + " in the 7 before; " + hard_throw_words(account) + ". " +
           unknown_days_words(account.unknown_last_7) + "Throws nobody wrote down are not in it.";
}

std::vector<ShownFinding> throwing_findings(const Workplace::Inside& inside, const FacilityView& view,
                                            const Athlete& athlete, Date today) {
    const auto tables = pitch_tables_in_force(inside.tables.pitch_rules, view.records.pitch_tables);
    const auto entries = entries_of(view, athlete);
    const CareRecord care = care_record(inside.tables, view);
    return shown_findings(check_throwing({athlete, entries, tables, view.records.teams, care, today}));
}

std::vector<std::string> stop_and_refer_words(const ReferenceTables& tables) {
    std::vector<std::string> words;
    for (const auto& sign : tables.stop_signs)
        words.push_back(sign.sentence + (sign.urgent ? " (today)" : ""));
    words.push_back(tables.stop_closing);
    return words;
}

} // namespace amentum
