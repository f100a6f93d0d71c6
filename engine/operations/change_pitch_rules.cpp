#include "operations/change_pitch_rules.h"

#include "operations/inside/entry_fields.h"
#include "operations/inside/may_pitch.h"
#include "operations/inside/said_by.h"
#include "operations/inside/shown_pitch_tables.h"
#include "throwing_workload/check_pitch_table.h"

#include <algorithm>

namespace amentum {
namespace {

Result<std::vector<PitchRule>> rules_from(const ChangePitchRulesRequest& request,
                                          const std::string& organisation, Sport sport) {
    if (request.published.value_or(false)) {
        if (!request.rows.empty())
            return Refusal{RefusalCode::unknown_choice,
                           "Going back to the published table and giving another are two things; keep one.",
                           "published", "yes", "published: yes without rows, or rows"};
        return std::vector<PitchRule>();
    }
    if (request.rows.empty())
        return refuse_missing("rows", "the table's rows, or published: yes to go back");
    if (!request.year)
        return refuse_missing("year", "of the table");
    const auto age_day = age_day_given("age_on", request.age_on);
    if (!age_day)
        return age_day.refusal();
    std::vector<PitchRule> rules;
    for (std::size_t i = 0; i < request.rows.size(); ++i) {
        auto rule = rule_from(request.rows[i], organisation, sport, *request.year,
                              "rows[" + std::to_string(i) + "].");
        if (!rule)
            return rule.refusal();
        if (*age_day) {
            rule->age_month = (*age_day)->first;
            rule->age_day = (*age_day)->second;
        }
        if (const auto source = trimmed(request.source.value_or("")); !source.empty())
            rule->sources = {source};
        rules.push_back(*std::move(rule));
    }
    if (const auto checked = check_pitch_table(rules); !checked)
        return checked.refusal();
    return rules;
}

std::vector<PitchRule> only(const std::vector<PitchRule>& rules, const std::string& organisation,
                            Sport sport) {
    std::vector<PitchRule> kept;
    std::copy_if(rules.begin(), rules.end(), std::back_inserter(kept),
                 [&](const auto& each) { return each.organisation == organisation && each.sport == sport; });
    return kept;
}

std::optional<Refusal> refuse_no_change(const Workplace::Inside& inside, const FacilityView& view,
                                        const PitchTable& table) {
    const auto published = only(inside.tables.pitch_rules, table.organisation, table.sport);
    const auto held = only(pitch_rules_in_force(inside.tables, view), table.organisation, table.sport);
    if (table.rules.empty() && published.empty())
        return Refusal{RefusalCode::unknown_name, "No table of that organisation came with the program.",
                       "organisation", table.organisation, "an organisation with a published table"};
    if ((table.rules.empty() ? published : table.rules) == held)
        return Refusal{RefusalCode::already_held, "This is what holds already; nothing was changed.", "rows",
                       "", "another table than the one in force"};
    return std::nullopt;
}

// Whose word of today is another one now.
std::vector<std::string> changed_throwers(const ReferenceTables& tables, const FacilityView& before,
                                          const FacilityView& after, Date today) {
    std::vector<std::string> words;
    const auto was = arm_cases(before, tables), is = arm_cases(after, tables);
    for (const auto& [id, arm] : is) {
        const auto then = may_pitch_in_short(may_pitch(was.at(id), tables, today, today));
        const auto now = may_pitch_in_short(may_pitch(arm, tables, today, today));
        if (then != now)
            words.push_back(arm.athlete->name + " today: before " + then + ", now " + now + ".");
    }
    return words;
}

} // namespace

Result<ChangePitchRulesAnswer> change_pitch_rules(Workplace& workplace,
                                                  const ChangePitchRulesRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const std::string organisation = trimmed(request.organisation);
    if (organisation.empty())
        return refuse_missing("organisation", "whose table it is");
    const auto sport = from_word<Sport>(request.sport);
    if (!sport)
        return refuse_choice("sport", request.sport, all_words<Sport>());
    const auto rules = rules_from(request, organisation, *sport);
    if (!rules)
        return rules.refusal();
    const auto author = person_given("author", request.author, "who takes this decision");
    if (!author)
        return author.refusal();
    const auto reason = reason_given("reason", request.reason);
    if (!reason)
        return reason.refusal();
    const auto& kept = before->records.pitch_tables;
    const PitchTable table{kept.empty() ? 1 : kept.back().number + 1,
                           *rules,
                           organisation,
                           *sport,
                           *author,
                           inside.today(),
                           *reason};
    if (const auto refusal = refuse_no_change(inside, *before, table))
        return *refusal;
    RecordSet more;
    more.pitch_tables = {table};
    inside.store.save_records(more);
    const auto after = inside.view();
    ChangePitchRulesAnswer answer{};
    for (auto& shown : shown_pitch_tables(inside.tables, *after, inside.today()))
        if (shown.organisation == organisation && shown.sport == request.sport)
            answer.table = std::move(shown);
    answer.words = {
        "Kept as table " + std::to_string(table.number) + ": " + *author + " (\"" + *reason +
        "\"). Answers from now on go by it; whether the league plays by it, the tool cannot tell."};
    for (auto& words : changed_throwers(inside.tables, *before, *after, inside.today()))
        answer.words.push_back(std::move(words));
    return answer;
}

} // namespace amentum
