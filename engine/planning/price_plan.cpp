#include "planning/price_plan.h"

#include <algorithm>

namespace amentum {
namespace {

// One meso of a plan, looked at from every side a price needs.
class Look {
public:
    Look(const BlockProblem& problem, const PlanSets& plan, std::size_t meso)
        : problem_(problem), sessions_(plan[meso]), meso_(static_cast<int>(meso)) {}

    double full_weeks() const {
        return static_cast<double>(problem_.mesos[static_cast<std::size_t>(meso_)].full_weeks.size());
    }

    // Sum over sessions and choices of what `of` says of a line, as it is written in the template.
    template <class Of>
    double planned(Of of) const {
        double sum = 0;
        for (std::size_t d = 0; d < sessions_.size(); ++d)
            for (std::size_t c = 0; c < sessions_[d].size(); ++c)
                if (sessions_[d][c] > 0)
                    sum += of(problem_.choices[c], sessions_[d][c]);
        return sum;
    }

    // The same for an average full week, leaving out the days on which a line may not stand.
    template <class Of>
    double held(Of of) const {
        double sum = 0;
        for (std::size_t d = 0; d < sessions_.size(); ++d)
            for (std::size_t c = 0; c < sessions_[d].size(); ++c)
                if (sessions_[d][c] > 0)
                    sum += of(problem_.choices[c], sessions_[d][c]) *
                           problem_.open_weeks(meso_, static_cast<int>(d), static_cast<int>(c));
        return sum / full_weeks();
    }

    double dose(std::size_t quality) const {
        return held([&](const Choice& c, int sets) { return sets * c.serves[quality]; });
    }
    double hard_sets(std::optional<Region> region = {}) const {
        return planned(
            [&](const Choice& c, int sets) { return c.hard && (!region || c.region == *region) ? sets : 0; });
    }

private:
    const BlockProblem& problem_;
    const std::vector<std::vector<int>>& sessions_;
    int meso_;
};

double fatigue_of(const BlockProblem& problem, const Look& look) {
    double fatigue = problem.costs.fatigue_of_a_set * look.hard_sets();
    for (int r = 0; r < regions_counted; ++r) {
        const double usual = problem.limits.regions[static_cast<std::size_t>(r)].usual;
        fatigue +=
            problem.costs.fatigue_above * std::max(0.0, look.hard_sets(static_cast<Region>(r)) - usual);
    }
    return fatigue;
}

double ready_short(const BlockProblem& problem, const Look& look) {
    double missing = 0;
    for (int group = 0; group < ready_groups; ++group) {
        const double held = look.held([&](const Choice& c, int sets) { return c.ready == group ? sets : 0; });
        if (problem.can_be_ready(group))
            missing += std::max(0.0, problem.costs.ready_sets - held);
    }
    return missing;
}

double changes(const BlockProblem& problem, const PlanSets& plan) {
    if (!problem.previous)
        return 0;
    double count = 0;
    for (std::size_t m = 0; m < plan.size(); ++m)
        for (std::size_t d = 0; d < plan[m].size(); ++d)
            for (std::size_t c = 0; c < plan[m][d].size(); ++c)
                count += (plan[m][d][c] > 0) != ((*problem.previous)[m][d][c] > 0);
    return count;
}

} // namespace

PlanPrice price_plan(const BlockProblem& problem, const PlanSets& plan) {
    const std::size_t qualities = problem.qualities.size();
    PlanPrice price{std::vector<double>(qualities, 0), std::vector<double>(qualities, 0)};
    const double all = problem.full_weeks();
    for (std::size_t m = 0; m < plan.size(); ++m) {
        const Look look(problem, plan, m);
        const double part = look.full_weeks() / all;
        for (std::size_t q = 0; q < qualities; ++q) {
            const double dose = look.dose(q);
            price.weekly_sets[q] += part * dose;
            price.share_of_quality[q] += part * problem.curve.share(dose);
        }
        price.fatigue += part * fatigue_of(problem, look);
        price.lines += part * problem.costs.line * look.planned([](const Choice&, int) { return 1.0; });
        price.ready += part * problem.costs.ready * ready_short(problem, look);
    }
    for (std::size_t q = 0; q < qualities; ++q)
        price.worth += 100 * problem.weights[q] * price.share_of_quality[q];
    price.change = problem.costs.change * changes(problem, plan);
    return price;
}

} // namespace amentum
