#include "operations/inside/efforts.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

struct ReadingOfMetric {
    TraceTest effort;
    bool both_legs; // otherwise one leg
    const char* metric;
    const char* test;
};

constexpr ReadingOfMetric readings_table[] = {
    {TraceTest::countermovement_jump, true, "jump_height_impulse", "jump_height_plate"},
    {TraceTest::countermovement_jump, true, "peak_power", "jump_peak_power"},
    {TraceTest::squat_jump, true, "jump_height_impulse", "squat_jump_height_plate"},
    {TraceTest::drop_jump, true, "reactive_strength_flight", "drop_jump_ratio"},
    {TraceTest::isometric_pull, true, "gross_peak_force", "mid_thigh_pull_force"},
    {TraceTest::lateral_bound, false, "take_off_speed_sideways", "lateral_bound_speed"},
};

Side side_of(Legs legs) {
    return legs == Legs::both ? Side::none : (legs == Legs::left ? Side::left : Side::right);
}

// False when a number the reading needs is not among the metrics.
bool fill(Reading& reading, const std::string& metric, const TraceMeasurement& measured) {
    const auto value = [&](const char* key) {
        const TraceMetric* found = measured.metric(key);
        return found ? std::optional(found->value) : std::nullopt;
    };
    const auto number = value(metric.c_str());
    if (!number)
        return false;
    if (metric == "jump_height_impulse")
        reading.height = Length::metres(*number);
    else if (metric == "peak_power")
        reading.power = Power::watts(*number);
    else if (metric == "gross_peak_force")
        reading.force = Force::newtons(*number);
    else if (metric == "take_off_speed_sideways")
        reading.speed = Speed::metres_per_second(*number);
    else { // a rebound is kept by its two times
        const auto flight = value("flight_time"), contact = value("contact_time");
        if (!flight || !contact)
            return false;
        reading.flight_time = Duration::seconds(*flight);
        reading.contact_time = Duration::seconds(*contact);
    }
    return true;
}

} // namespace

const std::vector<EffortWords>& all_efforts() {
    static const std::vector<EffortWords> all{
        {TraceTest::countermovement_jump, "Countermovement jump",
         "Hands on the hips, still for at least a second, dip and jump, land on the plate and stand still.",
         false, false},
        {TraceTest::squat_jump, "Squat jump",
         "Hands on the hips, held still for two seconds with the knees bent square, then up without a dip; "
         "land on the "
         "plate and stand still.",
         false, false},
        {TraceTest::drop_jump, "Drop jump",
         "Step off the box without jumping up, hands on the hips, rebound as high and as fast as possible, "
         "land and "
         "stand still.",
         true, false},
        {TraceTest::repeated_hops, "Repeated hops",
         "Still for a second, then hops from stiff ankles, short on the ground and high, then stand still.",
         false, false},
        {TraceTest::isometric_pull, "Pull held still",
         "Bar fixed at mid-thigh, straps, still for a second with light tension, then as hard and fast as "
         "possible for "
         "three to five seconds, and let go before the recording ends.",
         false, false},
        {TraceTest::lateral_bound, "Side bound",
         "On one leg, still for a second, as far to the other side as possible, landing off the plate.",
         false, true}};
    return all;
}

const EffortWords& effort_words(TraceTest effort) {
    const auto& all = all_efforts();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const auto& each) { return each.effort == effort; });
    assert(found != all.end());
    return *found;
}

std::string test_of_metric(const TraceGiven& given, const std::string& metric) {
    for (const auto& row : readings_table)
        if (row.effort == given.test && row.both_legs == (given.legs == Legs::both) && row.metric == metric)
            return row.test;
    return "";
}

std::vector<Reading> readings_of_trace(const KeptTrace& trace, const TraceMeasurement& measured) {
    std::vector<Reading> readings;
    for (const auto& row : readings_table) {
        if (test_of_metric(measured.given, row.metric) != row.test)
            continue;
        Reading reading{trace.athlete, trace.date, row.test};
        reading.side = side_of(measured.given.legs);
        reading.trial = trace.trial;
        reading.device = trace.device;
        reading.note = "force trace " + trace.id;
        if (fill(reading, row.metric, measured))
            readings.push_back(std::move(reading));
    }
    return readings;
}

} // namespace amentum
