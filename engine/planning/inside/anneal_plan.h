// One cooling of a plan over its sessions, from a given plan and heat, within a count of moves.
//
// Moves: a set more or less, a line in, out or exchanged, a line carried to another session, a session copied from another
// meso; two or three of these at once. Breaches cost more and more as the temperature falls; only a plan without any is
// kept. Pinned lines stay as they are.
// Units: points. The same problem, start, moves and seed: the same plan.
#pragma once

#include "planning/inside/running_plan.h"
#include "planning/inside/seeded_stream.h"

#include <cstdint>
#include <functional>
#include <optional>

namespace amentum {

class Annealing {
public:
    // `among`: by choice, what may come in; nothing given: all that may stand.
    Annealing(const BlockProblem& problem, const PlanSets& from, std::uint64_t seed,
              const std::vector<char>& among = {});

    // `hottest`: points lost now and then at the start. `going` is told the share of the moves done; false: asked to stop.
    bool run(std::int64_t moves, double hottest, const std::function<bool(double share)>& going = {});

    const std::optional<PlanSets>& best() const { return best_; }
    double best_points() const { return best_points_; }

    // For the cooling (cooling.h).
    bool change();
    void take_back();
    void keep(); // where it is the best so far
    double points() const { return plan_.points(); }
    double broken() const { return plan_.broken(); }

private:
    struct Was {
        int meso, session, choice, sets;
    };

    void move();
    void one_set(int m, int d);
    void add(int m, int d);
    void leave_out(int m, int d);
    void exchange(int m, int d);
    void carry_over(int m, int d);
    void copy(int m, int d);

    int depth();
    void put(int m, int d, int c, int sets);
    int drawn_line(int m, int d); // -1: none
    int drawn_candidate(int m, int d);
    bool may_stand(int m, int d, int c) const;

    const BlockProblem& problem_;
    RunningPlan plan_;
    SeededStream stream_;
    std::vector<std::vector<std::vector<int>>> candidates_; // [meso][session], of `among`
    std::vector<Was> undo_;
    std::optional<PlanSets> best_;
    double best_points_ = 0;
};

} // namespace amentum
