// A week of one meso before its sets have days: sets of each choice, with running sums.
//
// What it adds up is price_plan.h and breaches() for the week as a whole: a choice has as few lines as its sets need, no
// more than the days it may have; what holds for a session (minutes, lines, patterns, lifts) holds for all together. So
// every plan has such a week, no poorer than itself, but not every week has a plan.
// Left out: pins, changes from the plan before, neighbouring days, legs before a start, and which days are closed in some
// weeks (the most open day counts).
#pragma once

#include "planning/block_problem.h"

#include <vector>

namespace amentum {

class RunningWeek {
public:
    RunningWeek(const BlockProblem& problem, int meso);

    int sets(int choice) const { return sets_[index(choice)]; }
    const std::vector<int>& candidates() const { return candidates_; }
    const std::vector<int>& held() const { return held_; } // choices with sets, in no order
    int fewest(int choice) const { return kinds_[index(choice)].fewest; }
    int most(int choice) const { return kinds_[index(choice)].most; } // of one line
    int days(int choice) const { return kinds_[index(choice)].days; }
    int lines(int choice, int sets) const; // as few as hold them
    bool allows(int choice, int sets) const;
    void set(int choice, int sets); // a number it allows

    double points() const; // of a block of this meso alone
    double broken() const; // as RunningPlan measures it

private:
    struct Kind { // what a move reads of a choice, close together
        double set_minutes, setup_minutes, open;
        int fewest, most, days, pattern, first_serving, servings;
        int region, ready; // -1: no hard set; none kept ready
        int main, heavy, heavy_main, arm;
    };
    struct Serving {
        int quality;
        double of_a_set;
    };
    struct Line { // of the dose curve: it is the least of them, as it is concave
        double share_at_0, slope;
    };
    static std::size_t index(int i) { return static_cast<std::size_t>(i); }

    const BlockProblem& problem_;
    std::vector<Kind> kinds_; // by choice
    std::vector<Serving> servings_;
    std::vector<Line> curve_;
    std::vector<int> sets_, candidates_, held_, place_; // place: of a choice in `held`
    std::vector<double> dose_, worth_;                  // by quality
    std::vector<double> regions_, ready_;
    std::vector<int> patterns_;
    double wanted_ready_[ready_groups] = {};
    double minutes_ = 0;
    int hard_ = 0, arm_ = 0, lines_ = 0, mains_ = 0, heavy_ = 0, heavy_mains_ = 0, pattern_excess_ = 0;
    int mains_wanted_ = 0; // sessions in which one is wanted
};

} // namespace amentum
