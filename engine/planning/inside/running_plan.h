// A plan with running sums, so that a changed number of sets is priced at once instead of from the start.
//
// What it adds up is price_plan.h and breaches() of the same plan; a test holds them together. Breaches are measured in
// sets, lines or quarters of an hour's quarter (minutes / 4), so that one weight can price them all.
#pragma once

#include "planning/price_plan.h"

#include <vector>

namespace amentum {

class RunningPlan {
public:
    RunningPlan(const BlockProblem& problem, const PlanSets& plan);

    const PlanSets& sets() const { return plan_; }
    int sets(int meso, int session, int choice) const;
    void set(int meso, int session, int choice, int sets);

    double points() const; // total() of its price
    double broken() const; // 0: no limit is broken

    // What may stand in the session of the meso, and what does.
    const std::vector<int>& candidates(int meso, int session) const { return slot(meso, session).candidates; }
    const std::vector<int>& lines(int meso, int session) const { return slot(meso, session).lines; }
    // Sets the coach has pinned there: -1 not pinned, 0 pinned without a number.
    int pinned(int meso, int session, int choice) const;

private:
    struct Slot {
        std::vector<int> candidates, lines, pinned;
        std::vector<double> open; // by choice, share of the full weeks
        std::vector<int> patterns;
        double minutes = 0;
        int mains = 0, heavy = 0, heavy_mains = 0, pattern_excess = 0;
        bool main_possible = false;
    };
    struct Sums {
        std::vector<Slot> slots;
        std::vector<double> dose, regions, ready;
        std::vector<int> days;                     // by choice
        std::vector<std::vector<char>> start_days; // by start week, by session: heavy legs may stand
        std::vector<double> start_legs;            // by start week
        double hard = 0, arm = 0;
        int lines = 0, day_excess = 0;
        double part = 0; // of all full weeks
        mutable bool stale = true;
        mutable double points = 0, broken = 0;
    };

    Slot& slot(int meso, int session);
    const Slot& slot(int meso, int session) const;
    void count(Sums& sums, Slot& slot, int session, int choice, int from, int to);
    void look(const Sums& sums) const;
    double broken_in(const Sums& sums, const Slot& slot) const;

    const BlockProblem& problem_;
    PlanSets plan_;
    std::vector<Sums> mesos_;
    std::vector<int> pattern_of_; // by choice
    std::vector<char> group_possible_;
    double changes_ = 0;
};

} // namespace amentum
