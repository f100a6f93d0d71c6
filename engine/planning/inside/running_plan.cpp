#include "planning/inside/running_plan.h"

#include <algorithm>
#include <map>

namespace amentum {
namespace {

constexpr double minutes_of_a_set = 4; // a minute too many counts as a quarter of a set too many

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

double over(double is, double most) {
    return std::max(0.0, is - most);
}

} // namespace

RunningPlan::RunningPlan(const BlockProblem& problem, const PlanSets& plan)
    : problem_(problem), plan_(empty_plan(problem)), mesos_(problem.mesos.size()) {
    std::map<std::string, int> patterns;
    for (const auto& choice : problem.choices)
        pattern_of_.push_back(
            patterns.try_emplace(choice.pattern, static_cast<int>(patterns.size())).first->second);
    for (int g = 0; g < ready_groups; ++g)
        group_possible_.push_back(problem.can_be_ready(g));
    const auto choices = problem.choices.size();
    for (int m = 0; m < static_cast<int>(mesos_.size()); ++m) {
        Sums& sums = mesos_[at(m)];
        const auto& weeks = problem.mesos[at(m)].full_weeks;
        sums.part = static_cast<double>(weeks.size()) / problem.full_weeks();
        sums.dose.assign(problem.qualities.size(), 0);
        sums.regions.assign(regions_counted, 0);
        sums.ready.assign(ready_groups, 0);
        sums.days.assign(choices, 0);
        for (const auto& week : weeks)
            if (week.start_week) {
                std::vector<char> held;
                for (std::size_t d = 0; d < at(problem.sessions); ++d)
                    held.push_back(week.held[d] && !week.legs_spared[d]);
                sums.start_days.push_back(std::move(held));
                sums.start_legs.push_back(0);
            }
        for (int d = 0; d < problem.sessions; ++d) {
            Slot slot;
            slot.pinned.assign(choices, -1);
            slot.open.assign(choices, 0);
            slot.patterns.assign(patterns.size(), 0);
            slot.main_possible = problem.main_lift_possible(m, d);
            for (int c = 0; c < static_cast<int>(choices); ++c) {
                const int open = problem.open_weeks(m, d, c);
                slot.open[at(c)] = static_cast<double>(open) / static_cast<double>(weeks.size());
                if (open > 0 && problem.may_stand(d, c))
                    slot.candidates.push_back(c);
            }
            for (const auto& pin : problem.pinned)
                if (pin.session == d && problem.open_weeks(m, d, pin.choice) > 0)
                    slot.pinned[at(pin.choice)] = pin.sets.value_or(0);
            sums.slots.push_back(std::move(slot));
        }
    }
    if (problem.previous)
        for (const auto& meso : *problem.previous)
            for (const auto& session : meso)
                for (const int sets : session)
                    changes_ += sets > 0;
    for (int m = 0; m < static_cast<int>(plan.size()); ++m)
        for (int d = 0; d < problem.sessions; ++d)
            for (int c = 0; c < static_cast<int>(choices); ++c)
                set(m, d, c, plan[at(m)][at(d)][at(c)]);
}

RunningPlan::Slot& RunningPlan::slot(int meso, int session) {
    return mesos_[at(meso)].slots[at(session)];
}
const RunningPlan::Slot& RunningPlan::slot(int meso, int session) const {
    return mesos_[at(meso)].slots[at(session)];
}
int RunningPlan::sets(int meso, int session, int choice) const {
    return plan_[at(meso)][at(session)][at(choice)];
}
int RunningPlan::pinned(int meso, int session, int choice) const {
    return slot(meso, session).pinned[at(choice)];
}

void RunningPlan::set(int meso, int session, int choice, int sets) {
    int& held = plan_[at(meso)][at(session)][at(choice)];
    if (held == sets)
        return;
    if (problem_.previous && (held > 0) != (sets > 0)) {
        const bool before = (*problem_.previous)[at(meso)][at(session)][at(choice)] > 0;
        changes_ += before == (sets > 0) ? -1 : 1;
    }
    count(mesos_[at(meso)], slot(meso, session), session, choice, held, sets);
    held = sets;
}

void RunningPlan::count(Sums& sums, Slot& slot, int session, int choice, int from, int to) {
    const Choice& what = problem_.choices[at(choice)];
    const double open = slot.open[at(choice)];
    const int more = to - from;
    const int line = (to > 0) - (from > 0);
    slot.minutes += more * what.set_minutes + line * what.setup_minutes;
    for (std::size_t q = 0; q < sums.dose.size(); ++q)
        sums.dose[q] += more * what.serves[q] * open;
    if (what.hard) {
        sums.regions[static_cast<std::size_t>(what.region)] += more;
        sums.hard += more;
    }
    if (what.hard_on_arm)
        sums.arm += more;
    if (what.ready)
        sums.ready[at(*what.ready)] += more * open;
    if (what.heavy_legs)
        for (std::size_t w = 0; w < sums.start_legs.size(); ++w)
            if (sums.start_days[w][at(session)])
                sums.start_legs[w] += more;
    sums.stale = true;
    if (line == 0)
        return;
    if (line > 0)
        slot.lines.push_back(choice);
    else
        slot.lines.erase(std::find(slot.lines.begin(), slot.lines.end(), choice));
    sums.lines += line;
    slot.mains += line * what.main_lift;
    slot.heavy += line * what.heavy_legs;
    slot.heavy_mains += line * (what.heavy_legs && what.main_lift);
    int& pattern = slot.patterns[at(pattern_of_[at(choice)])];
    slot.pattern_excess -= std::max(0, pattern - 1);
    pattern += line;
    slot.pattern_excess += std::max(0, pattern - 1);
    int& days = sums.days[at(choice)];
    sums.day_excess -= std::max(0, days - problem_.limits.most_days);
    days += line;
    sums.day_excess += std::max(0, days - problem_.limits.most_days);
}

double RunningPlan::broken_in(const Sums&, const Slot& slot) const {
    const PlanLimits& limits = problem_.limits;
    double broken = over(slot.minutes, limits.minutes + 1e-9) / minutes_of_a_set;
    broken += over(static_cast<double>(slot.lines.size()), limits.most_lines);
    broken += over(slot.mains, limits.most_main_lifts) + over(slot.heavy, limits.most_heavy_legs) +
              over(slot.heavy_mains, limits.most_heavy_mains) + slot.pattern_excess;
    if (limits.main_lift_wanted && slot.main_possible && slot.mains == 0)
        broken += 1;
    return broken;
}

void RunningPlan::look(const Sums& sums) const {
    const PlanLimits& limits = problem_.limits;
    const Costs& costs = problem_.costs;
    double worth = 0;
    for (std::size_t q = 0; q < sums.dose.size(); ++q)
        worth += problem_.weights[q] * problem_.curve.share(std::max(0.0, sums.dose[q]));
    double cost = costs.fatigue_of_a_set * sums.hard + costs.line * sums.lines;
    double broken = over(sums.arm, limits.most_arm_sets) + sums.day_excess;
    for (std::size_t r = 0; r < sums.regions.size(); ++r) {
        cost += costs.fatigue_above * over(sums.regions[r], limits.regions[r].usual);
        broken += over(sums.regions[r], limits.regions[r].most);
    }
    for (std::size_t g = 0; g < sums.ready.size(); ++g)
        if (group_possible_[g])
            cost += costs.ready * over(costs.ready_sets, sums.ready[g]);
    for (const auto& slot : sums.slots)
        broken += broken_in(sums, slot);
    for (const auto& [a, b] : limits.neighbours)
        broken += sums.slots[at(a)].heavy_mains > 0 && sums.slots[at(b)].heavy_mains > 0;
    for (const double legs : sums.start_legs)
        broken += over(legs, limits.most_leg_sets_before_start);
    for (const auto& least : problem_.least)
        broken += over(least.weekly_sets, sums.dose[at(least.quality)] + 1e-9);
    sums.points = sums.part * (100 * worth - cost);
    sums.broken = broken;
    sums.stale = false;
}

double RunningPlan::points() const {
    double points = -problem_.costs.change * changes_;
    for (const auto& sums : mesos_) {
        if (sums.stale)
            look(sums);
        points += sums.points;
    }
    return points;
}

double RunningPlan::broken() const {
    double broken = 0;
    for (std::size_t m = 0; m < mesos_.size(); ++m) {
        if (mesos_[m].stale)
            look(mesos_[m]);
        broken += mesos_[m].broken;
        if (m > 0)
            broken += over(mesos_[m].hard, problem_.limits.ramp * mesos_[m - 1].hard + 1e-9);
    }
    return broken;
}

} // namespace amentum
