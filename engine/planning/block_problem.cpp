#include "planning/block_problem.h"

#include <algorithm>

namespace amentum {

int BlockProblem::full_weeks() const {
    int weeks = 0;
    for (const auto& meso : mesos)
        weeks += static_cast<int>(meso.full_weeks.size());
    return weeks;
}

int BlockProblem::open_weeks(int meso, int session, int choice) const {
    const auto& what = choices[static_cast<std::size_t>(choice)];
    const auto d = static_cast<std::size_t>(session);
    const auto& weeks = mesos[static_cast<std::size_t>(meso)].full_weeks;
    return static_cast<int>(std::count_if(weeks.begin(), weeks.end(), [&](const FullWeek& week) {
        return week.held[d] && !(what.heavy_legs && week.legs_spared[d]) &&
               !(what.hard_on_arm && week.arm_spared[d]);
    }));
}

bool BlockProblem::may_stand(int session, int choice) const {
    if (!choices[static_cast<std::size_t>(choice)].sessions[static_cast<std::size_t>(session)])
        return false;
    return std::none_of(barred.begin(), barred.end(), [&](const Barred& bar) {
        return bar.choice == choice && (!bar.session || *bar.session == session);
    });
}

bool BlockProblem::can_be_ready(int group) const {
    for (int c = 0; c < static_cast<int>(choices.size()); ++c)
        for (int d = 0; choices[static_cast<std::size_t>(c)].ready == group && d < sessions; ++d)
            if (may_stand(d, c))
                return true;
    return false;
}

bool BlockProblem::main_lift_possible(int meso, int session) const {
    for (int c = 0; c < static_cast<int>(choices.size()); ++c)
        if (choices[static_cast<std::size_t>(c)].main_lift && may_stand(session, c) &&
            open_weeks(meso, session, c) > 0)
            return true;
    return false;
}

PlanSets empty_plan(const BlockProblem& problem) {
    return PlanSets(problem.mesos.size(),
                    std::vector<std::vector<int>>(static_cast<std::size_t>(problem.sessions),
                                                  std::vector<int>(problem.choices.size(), 0)));
}

} // namespace amentum
