// Random plans of a problem, for tests of the solvers: put together line by line, and spoiled on purpose.
#pragma once

#include "planning/price_plan.h"
#include "planning/tests/random_problem.h"

namespace amentum::invented {

struct Place {
    int meso, session, choice;
};

inline int& sets_at(PlanSets& plan, const Place& at) {
    return plan[static_cast<std::size_t>(at.meso)][static_cast<std::size_t>(at.session)]
               [static_cast<std::size_t>(at.choice)];
}

// Where a line may stand but for the coach's bars.
inline Place random_place(const BlockProblem& problem, Dice& dice) {
    for (;;) {
        const Place at{dice.whole(0, static_cast<int>(problem.mesos.size()) - 1),
                       dice.whole(0, problem.sessions - 1),
                       dice.whole(0, static_cast<int>(problem.choices.size()) - 1)};
        if (problem.choices[static_cast<std::size_t>(at.choice)]
                .sessions[static_cast<std::size_t>(at.session)] &&
            problem.open_weeks(at.meso, at.session, at.choice) > 0)
            return at;
    }
}

// Tries so many random lines, and keeps each that breaks no more limits than before; the first steps go to main lifts
// and pins, without which no plan is whole. The plan may still have breaches.
inline PlanSets random_plan(const BlockProblem& problem, Dice& dice, int steps) {
    PlanSets plan = empty_plan(problem);
    auto broken = breaches(problem, plan).size();
    const auto attempt = [&](const Place& at, int sets) {
        const int before = sets_at(plan, at);
        sets_at(plan, at) = sets;
        const auto now = breaches(problem, plan).size();
        if (now <= broken)
            broken = now;
        else
            sets_at(plan, at) = before;
    };
    for (int m = 0; m < static_cast<int>(problem.mesos.size()); ++m)
        for (const auto& pin : problem.pinned)
            attempt({m, pin.session, pin.choice},
                    pin.sets.value_or(problem.choices[static_cast<std::size_t>(pin.choice)].fewest_sets));
    for (int step = 0; step < 2 * steps; ++step) {
        const Place at = random_place(problem, dice);
        const Choice& choice = problem.choices[static_cast<std::size_t>(at.choice)];
        if (step >= steps || choice.main_lift)
            attempt(at, dice.whole(choice.fewest_sets, choice.most_sets));
    }
    return plan;
}

// One random change for the worse, or for the better.
inline void spoil_plan(const BlockProblem& problem, Dice& dice, PlanSets& plan) {
    int& sets = sets_at(plan, random_place(problem, dice));
    sets = sets > 0 && dice.one_in(2) ? 0 : dice.whole(0, 7);
}

} // namespace amentum::invented
