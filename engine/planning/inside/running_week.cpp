#include "planning/inside/running_week.h"

#include <algorithm>
#include <map>

namespace amentum {
namespace {

constexpr double minutes_of_a_set = 4; // as in running_plan.cpp

double over(double is, double most) {
    return std::max(0.0, is - most);
}

} // namespace

RunningWeek::RunningWeek(const BlockProblem& problem, int meso)
    : problem_(problem), sets_(problem.choices.size(), 0), place_(problem.choices.size(), 0),
      dose_(problem.qualities.size(), 0), worth_(problem.qualities.size(), 0), regions_(regions_counted, 0),
      ready_(ready_groups, 0) {
    const auto weeks = static_cast<double>(problem.mesos[index(meso)].full_weeks.size());
    std::map<std::string, int> patterns;
    for (int c = 0; c < static_cast<int>(problem.choices.size()); ++c) {
        const Choice& choice = problem.choices[index(c)];
        int days = 0, most_open = 0;
        for (int d = 0; d < problem.sessions; ++d)
            if (const int open = problem.open_weeks(meso, d, c); open > 0 && problem.may_stand(d, c)) {
                ++days;
                most_open = std::max(most_open, open);
            }
        if (days > 0)
            candidates_.push_back(c);
        const int pattern =
            patterns.try_emplace(choice.pattern, static_cast<int>(patterns.size())).first->second;
        const double open = most_open / weeks;
        const auto first = static_cast<int>(servings_.size());
        for (std::size_t q = 0; q < choice.serves.size(); ++q)
            if (choice.serves[q] != 0)
                servings_.push_back({static_cast<int>(q), choice.serves[q] * open});
        kinds_.push_back({choice.set_minutes, choice.setup_minutes, open, choice.fewest_sets,
                          choice.most_sets, std::min(days, problem.limits.most_days), pattern, first,
                          static_cast<int>(servings_.size()) - first,
                          choice.hard ? static_cast<int>(choice.region) : -1, choice.ready.value_or(-1),
                          choice.main_lift, choice.heavy_legs, choice.heavy_legs && choice.main_lift,
                          choice.hard_on_arm});
    }
    patterns_.assign(patterns.size(), 0);
    const auto& knots = problem.curve.knots;
    for (std::size_t k = 1; k < knots.size(); ++k) {
        const double slope = (knots[k].share - knots[k - 1].share) / (knots[k].sets - knots[k - 1].sets);
        curve_.push_back({knots[k].share - slope * knots[k].sets, slope});
    }
    curve_.push_back({knots.back().share, 0});
    for (int g = 0; g < ready_groups; ++g)
        wanted_ready_[g] = problem.can_be_ready(g) ? problem.costs.ready_sets : 0;
    for (int d = 0; d < problem.sessions; ++d)
        mains_wanted_ += problem.limits.main_lift_wanted && problem.main_lift_possible(meso, d);
}

int RunningWeek::lines(int choice, int sets) const {
    const int most = kinds_[index(choice)].most;
    return (sets + most - 1) / most;
}

bool RunningWeek::allows(int choice, int sets) const {
    const int many = lines(choice, sets);
    return sets >= 0 && many <= days(choice) && sets >= many * fewest(choice);
}

void RunningWeek::set(int choice, int sets) {
    const Kind& kind = kinds_[index(choice)];
    const int before = sets_[index(choice)];
    const int more = sets - before;
    const int line = lines(choice, sets) - lines(choice, before);
    sets_[index(choice)] = sets;
    minutes_ += more * kind.set_minutes + line * kind.setup_minutes;
    for (int i = kind.first_serving; i < kind.first_serving + kind.servings; ++i) {
        const Serving& serving = servings_[index(i)];
        const std::size_t q = index(serving.quality);
        dose_[q] += more * serving.of_a_set;
        double share = 1;
        for (const Line& each : curve_)
            share = std::min(share, each.share_at_0 + dose_[q] * each.slope);
        worth_[q] = 100 * problem_.weights[q] * share;
    }
    if (kind.region >= 0) {
        regions_[index(kind.region)] += more;
        hard_ += more;
    }
    if (kind.ready >= 0)
        ready_[index(kind.ready)] += more * kind.open;
    arm_ += more * kind.arm;
    if (line == 0)
        return;
    if (before == 0) {
        place_[index(choice)] = static_cast<int>(held_.size());
        held_.push_back(choice);
    } else if (sets == 0) {
        const int last = held_.back();
        held_[index(place_[index(choice)])] = last;
        place_[index(last)] = place_[index(choice)];
        held_.pop_back();
    }
    lines_ += line;
    mains_ += line * kind.main;
    heavy_ += line * kind.heavy;
    heavy_mains_ += line * kind.heavy_main;
    int& pattern = patterns_[index(kind.pattern)];
    pattern_excess_ -= std::max(0, pattern - problem_.sessions);
    pattern += line;
    pattern_excess_ += std::max(0, pattern - problem_.sessions);
}

double RunningWeek::points() const {
    const Costs& costs = problem_.costs;
    double worth = 0;
    for (const double of_quality : worth_)
        worth += of_quality;
    double cost = costs.fatigue_of_a_set * hard_ + costs.line * lines_;
    for (std::size_t r = 0; r < regions_.size(); ++r)
        cost += costs.fatigue_above * over(regions_[r], problem_.limits.regions[r].usual);
    for (std::size_t g = 0; g < ready_.size(); ++g)
        cost += costs.ready * over(wanted_ready_[g], ready_[g]);
    return worth - cost;
}

double RunningWeek::broken() const {
    const PlanLimits& limits = problem_.limits;
    const int sessions = problem_.sessions;
    double broken = over(minutes_, sessions * limits.minutes + 1e-9) / minutes_of_a_set;
    broken += over(arm_, limits.most_arm_sets) + pattern_excess_;
    for (std::size_t r = 0; r < regions_.size(); ++r)
        broken += over(regions_[r], limits.regions[r].most);
    broken += std::max(0, lines_ - sessions * limits.most_lines) +
              std::max(0, mains_ - sessions * limits.most_main_lifts) +
              std::max(0, heavy_ - sessions * limits.most_heavy_legs) +
              std::max(0, heavy_mains_ - sessions * limits.most_heavy_mains) +
              std::max(0, mains_wanted_ - mains_);
    for (const LeastDose& least : problem_.least)
        broken += over(least.weekly_sets, dose_[index(least.quality)] + 1e-9);
    return broken;
}

} // namespace amentum
