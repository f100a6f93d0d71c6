#include "demo_facility/demo_facility.h"

#include "demo_facility/arm_account.h"
#include "demo_facility/body_tests.h"
#include "demo_facility/jump_traces.h"
#include "demo_facility/other_side.h"
#include "demo_facility/people.h"
#include "demo_facility/statures.h"
#include "demo_facility/test_days.h"
#include "demo_facility/truth.h"

namespace amentum {

DemoFacility make_demo_facility(std::uint64_t seed, Date last_day) {
    DemoFacility made;
    made.records.facility = Facility{"Saltgrass Throwing Hall"};
    made.records.kits = demo_kits();
    made.records.athletes = demo_athletes(last_day);
    std::vector<TrueThrower> throwers;
    for (const auto& athlete : made.records.athletes) {
        throwers.push_back(simulate_thrower(athlete, last_day, seed));
        add_test_days(made.records, athlete, throwers.back(), last_day, seed);
        add_other_side(made.records, athlete, seed);
        add_season(made.records, athlete, throwers.back(), last_day, seed);
        add_logged_sets(made.records, athlete, throwers.back(), last_day, seed);
    }
    made.traces = make_jump_traces(made.records, seed);
    for (const auto& athlete : made.records.athletes)
        add_body_tests(made.records, athlete);
    for (const auto& athlete : made.records.athletes)
        add_statures(made.records, athlete, last_day, seed);
    add_arm_account(made.records, last_day, seed);
    made.truth = describe_truth(made.records.athletes, throwers, seed, last_day);
    return made;
}

} // namespace amentum
