#include "planning/block_notes.h"

#include "planning/inside/running_plan.h"
#include "planning/short_list.h"
#include "planning/wave.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <functional>
#include <map>

namespace amentum {
namespace {

using Notes = std::vector<std::string>;

std::string weeks_listed(const std::vector<int>& weeks) {
    std::string text = weeks.size() == 1 ? "week " : "weeks ";
    for (std::size_t i = 0; i < weeks.size(); ++i)
        text += (i ? ", " : "") + std::to_string(weeks[i]);
    return text;
}

std::vector<int> weeks_where(const NoteFacts& facts, const std::function<bool(const PlacedWeek&)>& is) {
    std::vector<int> weeks;
    for (std::size_t w = 0; w < facts.stated.placed.size(); ++w)
        if (is(facts.stated.placed[w]))
            weeks.push_back(static_cast<int>(w) + 1);
    return weeks;
}

void add_limiters(const NoteFacts& facts, Notes& notes) {
    if (!facts.request.limiters_known)
        notes.push_back(
            "The tests cannot tell yet what holds velocity back: sets are spread evenly over all qualities.");
    else if (!facts.worth.led())
        notes.push_back("No limiter was given: sets are spread evenly over all qualities.");
}

void add_youth(const NoteFacts& facts, Notes& notes) {
    if (loading_of(facts.request.athlete, facts.request.start) != Loading::youth)
        return;
    notes.push_back(
        "Youth rules: two or three days not next to each other, 1 to 3 sets, loads for technique under "
        "qualified supervision, no maximal attempts.");
    if (facts.stated.sessions < facts.request.sessions_per_week)
        notes.push_back(std::to_string(facts.request.sessions_per_week) +
                        " sessions a week were asked for; under the "
                        "youth rules there are " +
                        std::to_string(facts.stated.sessions) + ".");
}

void add_days(const NoteFacts& facts, Notes& notes) {
    const auto short_weeks = weeks_where(facts, [](const auto& week) { return week.missing > 0; });
    if (!short_weeks.empty())
        notes.push_back("Fewer sessions for want of free days: " + weeks_listed(short_weeks) + ".");
    const auto forced = weeks_where(facts, [](const auto& week) {
        return std::any_of(week.sessions.begin(), week.sessions.end(),
                           [](const auto& s) { return !s.last_resort.empty(); });
    });
    if (!forced.empty())
        notes.push_back(
            "A session falls on a day of travel because no other day is free: " + weeks_listed(forced) + ".");
}

// The four that are kept ready every week whatever limits.
void add_ready(const NoteFacts& facts, Notes& notes) {
    std::map<std::string, const Exercise*> by_key;
    for (const auto& each : facts.allowed.list)
        by_key[each.exercise->key] = each.exercise;
    for (int group = 0; group < ready_groups; ++group) {
        const auto is = [group](const Exercise& e) { return ready_group(e) == group; };
        const std::string name = ready_group_name(group);
        std::vector<int> without;
        for (int week = 1; week <= facts.request.weeks; ++week) {
            const bool trained = !facts.stated.placed[static_cast<std::size_t>(week - 1)].sessions.empty();
            const bool held = std::any_of(facts.lines.begin(), facts.lines.end(), [&](const BlockLine& line) {
                return line.week == week && is(*by_key.at(line.exercise));
            });
            if (trained && !held)
                without.push_back(week);
        }
        const bool exists = std::any_of(facts.allowed.list.begin(), facts.allowed.list.end(),
                                        [&](const auto& each) { return is(*each.exercise); });
        if (!exists)
            notes.push_back("No exercise for " + name + " is left in this kit.");
        else if (!without.empty())
            notes.push_back("No room for " + name + ": " + weeks_listed(without) + ".");
    }
}

// The line that would bring most if only the minutes of its session were more.
void add_next_line(const NoteFacts& facts, Notes& notes) {
    const BlockProblem& problem = facts.stated.problem;
    RunningPlan plan(problem, facts.plan);
    BlockProblem unhurried = problem;
    unhurried.limits.minutes = longest_session_minutes * 2;
    RunningPlan free(unhurried, facts.plan);
    const double points = plan.points();
    double most = 1e-9;
    std::string next;
    for (int d = 0; d < problem.sessions; ++d)
        for (int c = 0; c < static_cast<int>(problem.choices.size()); ++c) {
            const int sets = problem.choices[static_cast<std::size_t>(c)].fewest_sets;
            std::vector<int> mesos; // where the line is new
            for (int m = 0; m < static_cast<int>(problem.mesos.size()); ++m)
                if (plan.sets(m, d, c) == 0 && problem.may_stand(d, c) && problem.open_weeks(m, d, c) > 0)
                    mesos.push_back(m);
            const auto set_all = [&](int to) {
                for (const int m : mesos) {
                    plan.set(m, d, c, to);
                    free.set(m, d, c, to);
                }
            };
            set_all(sets);
            const double gain = plan.points() - points;
            if (gain > most && plan.broken() > 0 && free.broken() <= 0) {
                most = gain;
                next = facts.allowed.list[static_cast<std::size_t>(c)].exercise->name;
            }
            set_all(0);
        }
    if (!next.empty())
        notes.push_back("With more minutes the next exercise would be: " + next + ".");
}

void add_spared(const NoteFacts& facts, Notes& notes) {
    if (!facts.spared.empty())
        notes.push_back("Left out near a start, with nothing to stand in: " + listed_shortly(facts.spared) +
                        ".");
}

void add_tests(const NoteFacts& facts, Notes& notes) {
    std::vector<std::string> untested;
    for (const auto& line : facts.lines) {
        if (line.part != Part::main_lift || line.load || line.intensity)
            continue;
        for (const auto& each : facts.allowed.list) {
            const bool is_it = each.exercise->key == line.exercise && each.exercise->load_test &&
                               !lower_maximum(facts.request, *each.exercise);
            const auto& name = each.exercise->name;
            if (is_it && std::find(untested.begin(), untested.end(), name) == untested.end())
                untested.push_back(name);
        }
    }
    if (!untested.empty())
        notes.push_back("No test stands behind the load of: " + listed_shortly(untested) +
                        ". The first week finds it by repetitions in reserve.");
}

void add_goal(const NoteFacts& facts, Notes& notes) {
    const bool advanced = training_status(facts.request.athlete) == TrainingStatus::advanced &&
                          loading_of(facts.request.athlete, facts.request.start) == Loading::trained;
    const bool split_squat = std::any_of(facts.lines.begin(), facts.lines.end(), [](const auto& line) {
        return line.part == Part::main_lift && line.exercise.starts_with("rfe_");
    });
    if (advanced && split_squat)
        notes.push_back("A goal some coaches name for advanced throwers: twice body weight in a strict "
                        "rear-foot-elevated "
                        "split squat (common practice, no source).");
}

} // namespace

std::vector<std::string> describe_notes(const NoteFacts& facts) {
    Notes notes;
    add_limiters(facts, notes);
    add_youth(facts, notes);
    add_days(facts, notes);
    notes.insert(notes.end(), facts.allowed.notes.begin(), facts.allowed.notes.end());
    add_ready(facts, notes);
    add_next_line(facts, notes);
    add_spared(facts, notes);
    add_tests(facts, notes);
    add_goal(facts, notes);
    return notes;
}

} // namespace amentum
