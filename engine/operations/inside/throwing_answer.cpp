#include "operations/inside/throwing_answer.h"

#include "guard_rails/check_throwing.h"
#include "operations/inside/finding_answer.h"
#include "reports/sentences.h"

namespace amentum {
namespace {

std::vector<ThrowEntry> entries_of(const FacilityView& view, const Athlete& athlete) {
    std::vector<ThrowEntry> entries;
    for (const auto& entry : view.records.throws)
        if (entry.athlete == athlete.id)
            entries.push_back(entry);
    return entries;
}

} // namespace

ThrowAccount throws_of(const FacilityView& view, const Athlete& athlete, Date today) {
    return measure_throws(entries_of(view, athlete), today);
}

std::string hard_throw_words(const ThrowAccount& account) {
    std::string setting = account.last_hard_setting ? word(*account.last_hard_setting) : "";
    if (setting.find('_') != std::string::npos)
        setting[setting.find('_')] = ' ';
    return describe_hard_throw(account.days_since_hard, account.last_hard, setting);
}

std::string throwing_words(const ThrowAccount& account) {
    if (account.days.empty())
        return "No throws are recorded.";
    return std::to_string(account.last_7_days) + " throws in the last 7 days, " +
           std::to_string(account.the_7_before) + " in the 7 before; " + hard_throw_words(account) +
           ". Throws nobody wrote down are not in it.";
}

std::vector<ShownFinding> throwing_findings(const Workplace::Inside& inside, const FacilityView& view,
                                            const Athlete& athlete, Date today) {
    return shown_findings(
        check_throwing(athlete, entries_of(view, athlete), inside.tables.pitch_rules, today));
}

std::vector<std::string> stop_and_refer_words(const ReferenceTables& tables) {
    std::vector<std::string> words;
    for (const auto& sign : tables.stop_signs)
        words.push_back(sign.sentence + (sign.urgent ? " (today)" : ""));
    words.push_back(tables.stop_closing);
    return words;
}

} // namespace amentum
