// A block as numbers: what may be chosen, what each set serves, which limits hold. Every solver here reads this
// and nothing else: the search (search_plan.h), the mixed-integer model (linear_model.h), the pricing (price_plan.h).
//
// Decided: sets of each choice in each session of each meso. A meso is a run of at least three weeks in which the
// template of the week stays the same, so that a main lift is kept three weeks by construction. A reduced week has
// about half the sets at the same intensity and counts neither for worth nor for the ramp.
//
// Worth, in points; 100 points: every quality trained to its full dose, every week, nothing spent:
//   worth = sum_q weight_q  sum_m (full weeks of m / full weeks of all) 100 f(dose_qm)
//   dose_qm = weekly sets that serve q, averaged over the full weeks of meso m
//           = sum_{d,c} sets_mdc . serves_cq . (full weeks in which c may stand in d) / (full weeks of m)
//   f       concave, piecewise linear: share of the effect of ten weekly sets (dose_curve.h)
// less its costs (all convex, so that a linear bound exists):
//   fatigue   fatigue_of_a_set for each weekly hard set, and fatigue_above for each beyond a region's usual number
//   line      for each line of the week: what is done rarely is learned slowly
//   ready     ready_cost for each weekly set a group kept ready is short of its wanted number
//   change    change_cost for each (meso, session, choice) used in only one of this plan and `previous`
// each but `change` averaged over the full weeks like worth.
// Every number named here is a proposal of this project, no source, except where dose_curve.h says otherwise.
// Units: sets, minutes, points. What it cannot tell: whether gains of two qualities add up; the points order blocks,
// they forecast nothing.
//
// Example: one quality, weight 1, one choice serving it wholly, 5 sets in one session: worth 82 (dose_curve.h).
#pragma once

#include "planning/dose_curve.h"
#include "values/exercise.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

inline constexpr int regions_counted = 6; // enum Region
inline constexpr int ready_groups = 4;    // pulling or shoulder, trunk, hips, length overhead

// One exercise that may be chosen.
struct Choice {
    std::string exercise; // its key
    std::string name;     // for a sentence
    std::string pattern;  // at most one choice of a pattern in a session
    Part part;
    Region region;
    double set_minutes;
    double setup_minutes;
    int fewest_sets; // 1 ..., when chosen at all
    int most_sets;
    std::vector<double> serves; // by quality, 0 to 1 and a little more where it is preferred
    bool hard;                  // counts as a hard set: main lift, assistance or speed
    bool main_lift;
    bool heavy_legs;
    bool hard_on_arm;
    std::optional<int> ready;   // the group it keeps ready
    std::vector<bool> sessions; // where it may stand, by session
};

// A week of a meso; only full weeks are listed.
struct FullWeek {
    int week;                      // 1 ...
    std::vector<bool> held;        // by session: false: no day was found for it
    std::vector<bool> legs_spared; // by session: within 48 h before a start
    std::vector<bool> arm_spared;  // by session: on the day of a start or the day after
    bool start_week;               // a start falls in this week or on the two days after it
};

struct Meso {
    int first_week;
    int last_week;
    std::vector<FullWeek> full_weeks; // at least one
};

// A weekly number of hard sets of a region: what is usual, and the most.
struct RegionLimit {
    double usual;
    double most;
};

// The coach's own: hold this choice in (or out of) a session of every meso.
struct Pinned {
    int choice;
    int session;
    std::optional<int> sets; // none: as many as the search likes, at least the fewest
};
struct Barred {
    int choice;
    std::optional<int> session; // none: every session
};
// At least so many weekly sets that serve a quality, in every meso.
struct LeastDose {
    int quality;
    double weekly_sets;
};

struct PlanLimits {
    double minutes;                    // of a session
    int most_lines = 9;                // in a session
    int most_main_lifts = 2;           // in a session
    int most_heavy_mains = 1;          // main lifts heavy for the legs, in a session
    int most_heavy_legs = 2;           // lines heavy for the legs, in a session
    int most_days = 2;                 // a week, of one choice
    std::vector<RegionLimit> regions;  // regions_counted of them
    double most_arm_sets;              // weekly sets hard on a tired arm
    double most_leg_sets_before_start; // weekly sets heavy for the legs in a start week, as they may stand
    double ramp = 1.15;                // planned weekly hard sets of a meso over those of the meso before
    bool main_lift_wanted = true;      // in every session where one may stand
    // Pairs of sessions on neighbouring days: not both may hold a main lift heavy for the legs.
    std::vector<std::pair<int, int>> neighbours;
};

struct Costs {
    double fatigue_of_a_set = 0.02;
    double fatigue_above = 0.25;
    double line = 0.05;
    double ready = 1.0;
    double ready_sets = 2; // weekly sets wanted of each group for which a choice exists
    double change = 0;
};

// Sets by [meso][session][choice]; 0: not chosen.
using PlanSets = std::vector<std::vector<std::vector<int>>>;

struct BlockProblem {
    std::vector<std::string> qualities; // keys
    std::vector<double> weights;        // by quality, 0 or more, adding to 1
    std::vector<Choice> choices;
    int sessions; // of a week
    std::vector<Meso> mesos;
    PlanLimits limits;
    Costs costs;
    DoseCurve curve;
    std::vector<Pinned> pinned = {};
    std::vector<Barred> barred = {};
    std::vector<LeastDose> least = {};
    std::optional<PlanSets> previous = {}; // for costs.change

    int full_weeks() const; // of all mesos
    // Full weeks of the meso in which the choice may stand in the session: the day is held and spares neither the legs
    // it loads nor the arm it tires.
    int open_weeks(int meso, int session, int choice) const;
    bool may_stand(int session, int choice) const;        // its own sessions and the coach's bars
    bool can_be_ready(int group) const;                   // a choice of the group may stand somewhere
    bool main_lift_possible(int meso, int session) const; // a main lift may stand there in some full week
};

PlanSets empty_plan(const BlockProblem&);

} // namespace amentum
