#include "operations/check_arm.h"

#include "operations/inside/arm_ledger.h"
#include "operations/inside/arm_steps.h"
#include "operations/inside/arm_watch.h"
#include "operations/inside/finding_answer.h"
#include "operations/inside/may_pitch.h"
#include "operations/inside/planned_outings.h"
#include "operations/inside/shown_pains.h"
#include "operations/inside/throwing_answer.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int least_days = 7, most_days = 400, usual_days = 84;
constexpr int furthest_ahead = 400;

Result<Date> day_asked(const std::optional<std::string>& given, Date today) {
    if (!given)
        return today;
    const auto day = parse_date(*given, "date");
    if (day && *day > today + furthest_ahead)
        return Refusal{RefusalCode::out_of_range, "That is too far ahead to say.", "date", *given,
                       "up to " + (today + furthest_ahead).text()};
    return day;
}

std::optional<Refusal> refuse_organisation(const ArmCase& arm, const std::optional<std::string>& organisation,
                                           Date day) {
    if (!organisation)
        return std::nullopt;
    std::vector<std::string> known;
    for (const auto& table : arm.tables_on(day))
        known.push_back(table.organisation);
    if (std::find(known.begin(), known.end(), *organisation) != known.end())
        return std::nullopt;
    return refuse_unknown("organisation", *organisation, known);
}

} // namespace

Result<CheckArmAnswer> check_arm(Workplace& workplace, const CheckArmRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const Date today = inside.today();
    const auto found = athlete_named(*view, request.athlete);
    if (!found)
        return found.refusal();
    const Athlete& athlete = **found;
    const auto day = day_asked(request.date, today);
    if (!day)
        return day.refusal();
    const int days = request.days.value_or(usual_days);
    if (days < least_days || days > most_days)
        return refuse_range("days", days, least_days, most_days, "days");
    const auto arm = arm_case(*view, inside.tables, athlete);
    if (const auto refusal = refuse_organisation(arm, request.organisation, *day))
        return *refusal;
    const auto facility = view->records.facility.value_or(Facility{"This facility"});
    const auto may = may_pitch(arm, inside.tables, *day, today, request.organisation);
    const auto account = measure_throws(arm.entries, today);
    const auto ranges = watch_ranges(*view, athlete, today);
    const auto growth = watch_growth(*view, athlete, today);

    CheckArmAnswer answer{};
    answer.athlete = athlete.id.text;
    answer.name = athlete.name;
    answer.today = today.text();
    answer.day = day->text();
    answer.age = whole_years(athlete.birth_date, *day);
    answer.sport = word(athlete.sport);
    answer.role = word(athlete.role);
    answer.teams = team_words(arm, *day);
    answer.may_pitch = may.word;
    answer.short_answer = may.short_answer;
    answer.most = may.most;
    answer.next_day = may.next_day ? may.next_day->text() : "";
    answer.limits = may.limits;
    answer.may_catch = may.may_catch;
    answer.pains = shown_pains(inside.tables, *view, athlete.id, today);
    answer.steps = arm_steps(arm, facility, today);
    answer.findings = throwing_findings(inside, *view, athlete, today);
    for (const auto& watch : {shown_findings(ranges.findings), shown_findings(growth.findings)})
        answer.findings.insert(answer.findings.end(), watch.begin(), watch.end());
    answer.planned = planned_outings(arm, inside.tables, today);
    answer.ledger = arm_ledger(arm, account, facility, today, days);
    answer.weeks = arm_weeks(account, days);
    answer.account = account_words(account);
    answer.ranges = ranges.words;
    answer.growth = growth.words;
    answer.why_no_ratio = why_no_ratio_words;
    answer.stop_and_refer = stop_and_refer_words(inside.tables);
    return answer;
}

} // namespace amentum
