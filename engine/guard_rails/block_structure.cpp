#include "guard_rails/answered_stops.h"
#include "guard_rails/block_rules.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <map>
#include <set>

namespace amentum {
namespace {

constexpr int weeks_kept = 3;         // of a main lift: common practice, no source
constexpr int most_weeks_in_full = 5; // then one of reduced volume: every 5.6 weeks on average [Rogerson2024]
constexpr double reduced_share = 0.7; // of the most sets of a week so far: cuts of 30 to 70 % (from memory)
constexpr double rounding_minutes = 0.01;

using SessionKey = std::pair<int, int>; // week, session

void check_lines(const BlockCase& whole, std::vector<Finding>& findings) {
    for (const auto& line : whole.block.lines) {
        if (line.sets < 1 || line.reps < 1)
            findings.push_back({Severity::stops, "nothing_to_do",
                                whole.name(line) + " has " + std::to_string(line.sets) + " sets of " +
                                    std::to_string(line.reps) + ".",
                                "Sets and repetitions are at least 1.", own_proposal,
                                "Write the sets, or take the line out.", place_of(line)});
        const Date first = whole.block.start + 7 * (line.week - 1);
        if (line.week < 1 || line.week > whole.block.weeks || line.date < first || line.date > first + 6)
            findings.push_back({Severity::stops, "date_outside_week",
                                whole.name(line) + " is dated " + line.date.text() + ", outside week " +
                                    std::to_string(line.week) + ".",
                                "A session's day lies in its week.", own_proposal, "Set the day again.",
                                place_of(line)});
    }
}

void check_sessions(const BlockCase& whole, std::vector<Finding>& findings) {
    std::map<SessionKey, double> minutes;
    std::map<SessionKey, std::set<Date>> dates;
    std::map<Date, std::set<SessionKey>> on_day;
    std::map<int, std::set<int>> of_week;
    for (const auto& line : whole.block.lines) {
        const SessionKey key{line.week, line.session};
        if (const auto* exercise = whole.exercise(line))
            minutes[key] += exercise->setup_minutes + line.sets * exercise->set_minutes;
        dates[key].insert(line.date);
        on_day[line.date].insert(key);
        of_week[line.week].insert(line.session);
    }
    for (const auto& [key, needed] : minutes)
        if (needed > whole.block.minutes + rounding_minutes)
            findings.push_back({Severity::stops,
                                "too_long",
                                "The session needs " + format_fixed(needed, 0) + " minutes and has " +
                                    format_fixed(whole.block.minutes, 0) + ".",
                                "The sets, their rests and the set-up fit into the session.",
                                own_proposal,
                                "Take sets or a line out.",
                                {key.first, key.second, {}},
                                *dates.at(key).begin(),
                                MayAnswer::coach});
    for (const auto& [key, days] : dates)
        if (days.size() > 1)
            findings.push_back({Severity::stops,
                                "session_on_two_days",
                                "One session has lines on two days.",
                                "A session has one day.",
                                own_proposal,
                                "Set the day again.",
                                {key.first, key.second, {}}});
    for (const auto& [day, keys] : on_day)
        if (keys.size() > 1)
            findings.push_back({Severity::stops,
                                "two_sessions_one_day",
                                "Two sessions fall on " + day.text() + ".",
                                "One session a day.",
                                own_proposal,
                                "Move one of them.",
                                {keys.rbegin()->first, keys.rbegin()->second, {}},
                                day,
                                who_answers_for_rest(whole.athlete, day)});
    for (const auto& [week, sessions] : of_week)
        if (static_cast<int>(sessions.size()) > whole.block.sessions_per_week)
            findings.push_back({Severity::warns,
                                "too_many_sessions",
                                "Week " + std::to_string(week) + " has " + std::to_string(sessions.size()) +
                                    " sessions; " + std::to_string(whole.block.sessions_per_week) +
                                    " were asked for.",
                                "No more sessions than asked for.",
                                own_proposal,
                                "Leave one out.",
                                {week, {}, {}}});
}

// A lift that gives way near a start is not changed: such weeks count as kept, and so do stand-ins on such
// days.
void check_main_lifts(const BlockCase& whole, std::vector<Finding>& findings) {
    std::map<std::string, std::set<int>> weeks_of;
    std::map<std::string, const BlockLine*> first_line;
    std::set<int> spared_weeks;
    for (const auto& line : whole.block.lines) {
        const auto* exercise = whole.exercise(line);
        const bool spared = whole.close_before_a_start(line.date);
        if (spared)
            spared_weeks.insert(line.week);
        if (!exercise || exercise->part != Part::main_lift || line.part != Part::main_lift)
            continue;
        weeks_of[line.exercise].insert(line.week);
        if (!spared)
            first_line.try_emplace(line.exercise, &line);
    }
    for (const auto& [key, line] : first_line) {
        auto weeks = weeks_of.at(key);
        weeks.insert(spared_weeks.begin(), spared_weeks.end());
        if (static_cast<int>(weeks.size()) >= std::min(weeks_kept, whole.block.weeks))
            continue;
        findings.push_back({Severity::warns, "main_lift_not_kept",
                            whole.name(*line) + " is a main lift in " + std::to_string(weeks.size()) +
                                " of " + std::to_string(whole.block.weeks) + " weeks.",
                            "A main lift is kept for at least three weeks, so that its load can rise.",
                            common_practice, "Keep it longer, or take another lift that is kept.",
                            place_of(*line)});
    }
}

void check_reduced_weeks(const BlockCase& whole, std::vector<Finding>& findings) {
    std::map<int, int> sets_of;
    for (int week = 1; week <= whole.block.weeks; ++week)
        sets_of[week] = 0;
    for (const auto& line : whole.block.lines)
        if (const auto week = sets_of.find(line.week); week != sets_of.end())
            week->second += line.sets;
    int in_full = 0, most = 0;
    for (const auto& [week, sets] : sets_of) {
        const bool reduced = sets <= reduced_share * most;
        in_full = reduced ? 0 : in_full + 1;
        most = std::max(most, sets);
        if (in_full != most_weeks_in_full + 1)
            continue;
        findings.push_back(
            {Severity::warns,
             "no_reduced_week",
             "Weeks " + std::to_string(week - most_weeks_in_full) + " to " + std::to_string(week) +
                 " have no week of clearly fewer sets.",
             "One week in every six has at most 70 % of the sets; never a full stop, which costs strength.",
             "Coleman2024, Rogerson2024",
             "Cut the sets of one of them by a third to a half, not the loads.",
             {week, {}, {}}});
        in_full = 0;
    }
}

} // namespace

std::vector<Finding> check_structure(const BlockCase& whole) {
    std::vector<Finding> findings;
    check_lines(whole, findings);
    check_sessions(whole, findings);
    check_main_lifts(whole, findings);
    check_reduced_weeks(whole, findings);
    return findings;
}

} // namespace amentum
