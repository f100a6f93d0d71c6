// solve_equivalent: the load of other ways to hold a lift that asks the same of the lead leg as this set-up does.
//
// Demand and band: body_mechanics/equivalent_load.h; `demand` says what must be the same: leg (hip and knee together, when
// left out), hip or knee. Every other hold of the lift, or those in `to_holds`, is solved with the same stance, heights,
// depth and lean. Loads are then matched with what the athlete's kit can make. Grip is named as the limit where it is one: a
// pair of 100-lb dumbbells is 200 lb, and grip gives out first (common practice, no source). Keeps nothing.
#pragma once

#include "operations/solve_setup.h"

namespace amentum {

struct SolveEquivalentRequest : BodyRequest, SetupRequest {
    std::vector<std::string> to_holds; // empty: every other hold of the lift
    std::optional<std::string> demand; // leg (when left out), hip, knee
};
BOOST_DESCRIBE_STRUCT(SolveEquivalentRequest, (BodyRequest, SetupRequest), (to_holds, demand))

struct ShownEquivalent {
    std::string hold;
    std::string hold_name;
    std::optional<ShownEstimate> load; // in the kit's unit; null: refused, see why_not
    std::optional<double> makeable;    // nearest load this kit makes; null: no such item
    std::string made_of;               // "45 lb bar, 2 x 45 lb", or why none
    std::optional<double> hip_share;   // per cent, with that load
    std::string limit;                 // "grip", "upper back", "" when the leg decides
    std::string words;
    std::string why_not;
};
BOOST_DESCRIBE_STRUCT(ShownEquivalent, (),
                      (hold, hold_name, load, makeable, made_of, hip_share, limit, words, why_not))

struct SolveEquivalentAnswer {
    ShownBody body;
    std::string lift;
    std::string lift_name;
    std::string hold_name;
    double load;
    std::string load_unit;
    std::string demand_of; // leg, hip, knee
    ShownEstimate demand;  // N m of one lead leg
    std::string kit;
    std::vector<ShownEquivalent> equivalents;
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(SolveEquivalentAnswer, (),
                      (body, lift, lift_name, hold_name, load, load_unit, demand_of, demand, kit, equivalents,
                       words, cautions, sources))

Result<SolveEquivalentAnswer> solve_equivalent(Workplace&, const SolveEquivalentRequest&);

} // namespace amentum
