#include "planning/search_plan.h"

#include "planning/inside/anneal_plan.h"
#include "planning/inside/search_week.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

// Points lost now and then at the start of a cooling; found on the random problems of the tests.
constexpr double hottest = 1.5, from_a_plan = 0.2; // over sessions: from nothing, from a plan
constexpr double hottest_week = 0.04,
                 from_a_week = 0.03;      // of the week before its days, and over sessions after it
constexpr double roomy = 2;               // a week laid on days breaks no more than this
constexpr int week_moves = 2;             // times those of a start: a move without days costs less than half
constexpr double days_after_a_week = 0.2; // of the moves of a start
constexpr int longer_cooling = 2, longer_coolings = 2; // from a plan, in starts a meso

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

// Pinned lines stand from the start, because no move takes them away.
PlanSets with_pins(const BlockProblem& problem, PlanSets plan) {
    for (std::size_t m = 0; m < plan.size(); ++m)
        for (const auto& pin : problem.pinned) {
            if (problem.open_weeks(static_cast<int>(m), pin.session, pin.choice) == 0)
                continue;
            int& sets = plan[m][at(pin.session)][at(pin.choice)];
            if (pin.sets || sets == 0)
                sets = pin.sets.value_or(problem.choices[at(pin.choice)].fewest_sets);
        }
    return plan;
}

// Only what may stand, with numbers the choice allows.
PlanSets standing(const BlockProblem& problem, PlanSets plan) {
    for (std::size_t m = 0; m < plan.size(); ++m)
        for (int d = 0; d < problem.sessions; ++d)
            for (std::size_t c = 0; c < problem.choices.size(); ++c) {
                int& sets = plan[m][at(d)][c];
                const int choice = static_cast<int>(c);
                const Choice& what = problem.choices[c];
                if (!problem.may_stand(d, choice) || problem.open_weeks(static_cast<int>(m), d, choice) == 0)
                    sets = 0;
                if (sets > 0)
                    sets = std::clamp(sets, what.fewest_sets, what.most_sets);
            }
    return plan;
}

BlockProblem first_meso_of(const BlockProblem& problem) {
    BlockProblem one = problem;
    one.mesos.resize(1);
    if (one.previous)
        one.previous->resize(1);
    return one;
}

class Search {
public:
    Search(const BlockProblem& problem, const SearchBudget& budget, const std::function<bool(double)>& going)
        : problem_(problem), one_(first_meso_of(problem)), budget_(budget), going_(going),
          week_first_(problem.pinned.empty() && !problem.previous) {}

    std::optional<PlanSets> run(const PlanSets* from) {
        const bool alike = problem_.mesos.size() > 1; // one meso alone first, then all from copies of it
        const int longer = longer_cooling * static_cast<int>(problem_.mesos.size());
        const std::array<int, 3> rounds{budget_.starts, (2 * budget_.starts + 2) / 3,
                                        (budget_.starts + 2) / 3};
        of_ =
            rounds[0] + rounds[1] + rounds[2] + (from ? longer : 0) + (alike ? longer_coolings * longer : 0);
        if (from)
            cool(problem_, standing(problem_, *from), longer, from_a_plan, {}, best_);
        std::vector<char> among; // all, until there are plans
        for (const int starts : rounds) {
            std::vector<PlanSets> plans;
            for (int start = 0; start < starts && !stopped_; ++start)
                if (auto plan = start_alone(among, alike ? alone_ : best_))
                    plans.push_back(*std::move(plan));
            if (!plans.empty())
                among = held_by(std::move(plans));
        }
        if (alike && alone_)
            for (int start = 0; start < longer_coolings && !stopped_; ++start)
                cool(problem_, standing(problem_, PlanSets(problem_.mesos.size(), alone_->plan.front())),
                     longer, from_a_plan, {}, best_);
        return best_ ? std::optional(std::move(best_->plan)) : std::nullopt;
    }

private:
    struct Found {
        PlanSets plan;
        double points;
    };

    // A start of the first meso alone, among some choices.
    std::optional<PlanSets> start_alone(const std::vector<char>& among, std::optional<Found>& best) {
        if (week_first_) {
            const PlanSets week = week_before_days(one_, week_moves * budget_.moves_of_a_start, hottest_week,
                                                   next_seed(), among);
            week_first_ = RunningPlan(one_, week).broken() <= roomy;
            if (week_first_)
                return cool(one_, week, days_after_a_week, from_a_week, among, best);
        }
        return cool(one_, empty_plan(one_), 1, hottest, among, best);
    }

    // `moves`: times those of a start.
    std::optional<PlanSets> cool(const BlockProblem& problem, const PlanSets& from, double moves, double heat,
                                 const std::vector<char>& among, std::optional<Found>& best) {
        Annealing annealing(problem, with_pins(problem, from), next_seed(), among);
        annealing.run(static_cast<std::int64_t>(moves * double(budget_.moves_of_a_start)), heat,
                      [&](double share) {
                          stopped_ = stopped_ || (going_ && !going_((done_ + share * moves) / of_));
                          return !stopped_;
                      });
        done_ += moves < 1 ? 1 : moves;
        if (annealing.best() && (!best || annealing.best_points() > best->points))
            best = {*annealing.best(), annealing.best_points()};
        return annealing.best();
    }

    // By choice: in one of the plans or in the best so far.
    std::vector<char> held_by(std::vector<PlanSets> plans) const {
        if (const auto& best = alone_ ? alone_ : best_)
            plans.push_back(best->plan);
        std::vector<char> held(problem_.choices.size(), 0);
        for (const auto& plan : plans)
            for (const auto& meso : plan)
                for (const auto& session : meso)
                    for (std::size_t c = 0; c < session.size(); ++c)
                        held[c] |= session[c] > 0;
        return held;
    }

    std::uint64_t next_seed() { return budget_.seed * 1000 + number_++; }

    const BlockProblem& problem_;
    const BlockProblem one_; // its first meso alone
    const SearchBudget& budget_;
    const std::function<bool(double)>& going_;
    bool week_first_;
    std::optional<Found> alone_, best_; // of the first meso, where there are more; of all
    std::uint64_t number_ = 0;
    double done_ = 0, of_ = 0; // in starts
    bool stopped_ = false;
};

} // namespace

std::optional<PlanSets> search_plan(const BlockProblem& problem, const SearchBudget& budget,
                                    const PlanSets* from, const std::function<bool(double share)>& going) {
    return Search(problem, budget, going).run(from);
}

} // namespace amentum
