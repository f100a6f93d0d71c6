// Every plan of a small problem, one by one, and the best of them: what an exact solver must find.
#pragma once

#include "planning/price_plan.h"

#include <optional>
#include <vector>

namespace amentum::invented {

struct BestOfAll {
    PlanSets plan;
    double points;
};

// Counts the sets of each line up like the wheels of a milometer: 0, fewest, ..., most, and the next wheel.
inline std::optional<BestOfAll> best_of_every_plan(const BlockProblem& problem) {
    struct Wheel {
        std::size_t meso, session, choice;
    };
    std::vector<Wheel> wheels;
    for (std::size_t m = 0; m < problem.mesos.size(); ++m)
        for (std::size_t d = 0; d < static_cast<std::size_t>(problem.sessions); ++d)
            for (std::size_t c = 0; c < problem.choices.size(); ++c)
                if (problem.choices[c].sessions[d])
                    wheels.push_back({m, d, c});
    PlanSets plan = empty_plan(problem);
    std::optional<BestOfAll> best;
    for (std::size_t turned = 0; turned < wheels.size();) {
        if (breaches(problem, plan).empty())
            if (const double points = price_plan(problem, plan).total(); !best || points > best->points)
                best = BestOfAll{plan, points};
        for (turned = 0; turned < wheels.size(); ++turned) {
            const Wheel& wheel = wheels[turned];
            const Choice& choice = problem.choices[wheel.choice];
            int& sets = plan[wheel.meso][wheel.session][wheel.choice];
            sets = sets == 0 ? choice.fewest_sets : sets + 1;
            if (sets <= choice.most_sets)
                break;
            sets = 0;
        }
    }
    return best;
}

} // namespace amentum::invented
