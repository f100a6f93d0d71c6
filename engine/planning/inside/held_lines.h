// Plans and the linear model: a plan's lines held in it, and a plan read off its solution.
#pragma once

#include "planning/linear_model.h"

#include <cmath>

namespace amentum {

// A session of a meso.
struct SessionPlace {
    std::size_t meso, session;
    bool operator==(const SessionPlace&) const = default;
};

// Holds the lines of one session as the plan has them; their sets stay free.
inline void hold_lines(const PlanSets& plan, const SessionPlace& at, LinearModel& model) {
    const auto& sets = plan[at.meso][at.session];
    for (std::size_t c = 0; c < sets.size(); ++c) {
        const int used = model.used[at.meso][at.session][c];
        if (used < 0)
            continue;
        auto& column = model.columns[static_cast<std::size_t>(used)];
        column.lower = column.upper = sets[c] > 0;
        if (sets[c] == 0)
            model.columns[static_cast<std::size_t>(model.sets[at.meso][at.session][c])].upper = 0;
    }
}

inline PlanSets plan_of(const LinearModel& model, const std::vector<double>& values) {
    PlanSets plan = model.sets;
    for (auto& meso : plan)
        for (auto& session : meso)
            for (int& sets : session)
                sets = sets < 0 ? 0 : static_cast<int>(std::lround(values[static_cast<std::size_t>(sets)]));
    return plan;
}

} // namespace amentum
