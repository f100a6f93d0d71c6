#include "operations/inside/planned_outings.h"

#include "guard_rails/check_planned_throwing.h"
#include "operations/inside/arm_steps.h"
#include "operations/inside/finding_answer.h"
#include "operations/inside/may_pitch.h"
#include "values/season.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

constexpr int days_ahead = 28;
constexpr std::size_t usual_outings = 5;
constexpr int usual_days = 60; // proposals of this project, no source
constexpr int legs_before = 2; // days without heavy legs before a start: guard_rails/check_block.h

std::optional<int> usual_count(const ArmCase& arm, Date today) {
    double sum = 0;
    std::size_t outings = 0;
    for (auto day = arm.days.rbegin(); day != arm.days.rend() && outings < usual_outings; ++day)
        if (day->pitches > 0 && day->date <= today && today - day->date <= usual_days) {
            sum += day->pitches;
            ++outings;
        }
    return outings ? std::optional(static_cast<int>(std::lround(sum / static_cast<double>(outings))))
                   : std::nullopt;
}

std::optional<int> daily_maximum(const ArmCase& arm, Date day) {
    std::optional<int> least;
    for (const auto& table : arm.tables_on(day))
        if (const auto* rule = rule_on({table.rows, arm.athlete->birth_date}, day))
            least = std::min(least.value_or(rule->daily_max), rule->daily_max);
    return least;
}

void throw_as_planned(ArmCase& arm, Date day, int pitches) {
    ThrowEntry outing{arm.athlete->id, day, ThrowSetting::game, pitches, {}, {}, {}, {}, {}, {}, {}, ""};
    arm.entries.push_back(outing);
    arm.days = pitching_days(arm.entries);
}

std::string days_without_heavy_legs(Date start) {
    return " Nothing heavy for the legs on " + (start - legs_before).text() + " and " + (start - 1).text() +
           ".";
}

// The first start after `day` that falls before `next`.
std::string what_it_stands_on(const std::vector<Date>& starts, Date day, Date next) {
    for (const auto& each : starts)
        if (day < each && each < next)
            return " That stands in the way of the start on " + weekday_words(each) + ".";
    return "";
}

std::vector<Date> starts_ahead(const ArmCase& arm, Date today) {
    std::set<Date> starts;
    for (const auto& entry : arm.calendar)
        if (entry.kind == DayKind::start)
            for (Date day = std::max(entry.date, today); day <= entry.last_date && day <= today + days_ahead;
                 day = day + 1)
                starts.insert(day);
    return {starts.begin(), starts.end()};
}

// Each start with the pitches it is likely to take; without a usual count, the most a table leaves.
std::vector<GameAhead> games_ahead(const ArmCase& arm, Date today) {
    std::vector<GameAhead> games;
    for (const auto& day : starts_ahead(arm, today)) {
        const auto most = daily_maximum(arm, day);
        const auto usual = usual_count(arm, today);
        if (const auto count = usual && most ? std::optional(std::min(*usual, *most)) : usual ? usual : most)
            games.push_back({day, *count});
    }
    return games;
}

PlannedOuting outing_of(ArmCase& arm, const ReferenceTables& tables, const std::vector<Date>& starts,
                        Date day, Date today) {
    const auto word_now = may_pitch(arm, tables, day, today);
    PlannedOuting outing{day.text(), word(DayKind::start), "", word_now.most, {}, ""};
    outing.words = "Start on " + weekday_words(day) + ": " + may_pitch_in_short(word_now) + ".";
    if (word_now.most && *word_now.most == 0 && !word_now.limits.empty())
        outing.words += " " + word_now.limits.front().words;
    const auto most = daily_maximum(arm, day);
    if (!most || word_now.most.value_or(0) == 0) {
        outing.words += days_without_heavy_legs(day);
        return outing;
    }
    const auto usual = usual_count(arm, today);
    const int count = std::min(usual.value_or(*most), *word_now.most);
    throw_as_planned(arm, day, count);
    const auto after = may_pitch(arm, tables, day + 1, today);
    if (after.next_day) {
        outing.next_after_usual = after.next_day->text();
        outing.words += std::string(" After ") + (usual ? "the usual " : "") + std::to_string(count) +
                        (usual ? "" : ", the most,") + " next on " + weekday_words(*after.next_day) + "." +
                        what_it_stands_on(starts, day, *after.next_day);
    }
    outing.words += days_without_heavy_legs(day);
    return outing;
}

} // namespace

std::vector<ShownFinding> planned_throwing_findings(const Workplace::Inside& inside, const FacilityView& view,
                                                    const Athlete& athlete, Date today,
                                                    std::vector<std::string>& checked) {
    const auto arm = arm_case(view, inside.tables, athlete);
    const auto games = games_ahead(arm, today);
    const auto in_force = steps_in_force(arm.steps);
    std::vector<StepsAhead> steps;
    for (const auto& each : in_force) {
        const auto progress =
            measure_steps(each, {arm.entries, arm.pains_that_stop_throwing, arm.clearances}, today);
        steps.push_back({each, plan_steps_ahead(each, progress, today, days_spoken_for(arm))});
        checked.push_back("steps of " + each.author + ", " + std::to_string(each.steps.size()));
    }
    if (!games.empty())
        checked.push_back(std::to_string(games.size()) + (games.size() == 1 ? " start" : " starts") + " to " +
                          games.back().date.text() + ", each at the usual count");
    const CareRecord care = care_record(inside.tables, view);
    return shown_findings(check_planned_throwing(
        {athlete, arm.entries, arm.in_force, arm.places, care, today}, games, steps, arm.calendar));
}

std::string planned_on(const ArmCase& arm, Date day) {
    std::string words;
    for (const auto& entry : arm.calendar)
        if (entry.date <= day && day <= entry.last_date)
            words += (words.empty() ? "" : "; ") + word(entry.kind);
    return words;
}

std::vector<PlannedOuting> planned_outings(const ArmCase& arm, const ReferenceTables& tables, Date today) {
    ArmCase as_planned = arm;
    const auto starts = starts_ahead(arm, today);
    std::vector<PlannedOuting> outings;
    for (const auto& day : starts)
        outings.push_back(outing_of(as_planned, tables, starts, day, today));
    for (const auto& entry : arm.calendar)
        if (entry.kind == DayKind::game && today <= entry.last_date && entry.date <= today + days_ahead)
            outings.push_back({std::max(entry.date, today).text(),
                               word(entry.kind),
                               entry.note,
                               0,
                               {},
                               "Game on " + weekday_words(std::max(entry.date, today)) + "."});
    std::stable_sort(outings.begin(), outings.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    return outings;
}

} // namespace amentum
