#include "demo_facility/other_side.h"

#include "demo_facility/people.h"
#include "demo_facility/test_days.h"
#include "inference/random_stream.h"

#include <cmath>
#include <map>

namespace amentum {
namespace {

constexpr std::size_t fewest_days = 6, days_measured = 2;

struct OtherSide {
    const char* test;
    double shift;  // degrees, on the mean of the side measured before
    double factor; // of a force
};
constexpr OtherSide others[] = {{"shoulder_external_rotation", -outward_less_deg, 1},
                                {"shoulder_internal_rotation", inward_more_deg, 1},
                                {"hip_internal_rotation", 0, 1},
                                {"grip_force", 0, other_grip}};

std::map<Date, std::vector<Reading>> days_of(const RecordSet& records, const AthleteId& athlete,
                                             const char* test) {
    std::map<Date, std::vector<Reading>> days;
    for (const auto& r : records.readings)
        if (r.athlete == athlete && r.test == test)
            days[r.date].push_back(r);
    return days;
}

double mean_of(const std::vector<Reading>& readings) {
    double sum = 0;
    for (const auto& r : readings)
        sum += r.angle ? r.angle->degrees() : r.force->newtons();
    return sum / static_cast<double>(readings.size());
}

} // namespace

void add_other_side(RecordSet& records, const Athlete& athlete, std::uint64_t seed) {
    if (athlete.kit.text != hall_kit)
        return;
    RandomStream stream(seed_from(seed + 8, athlete.id.text));
    for (const auto& other : others) {
        const auto days = days_of(records, athlete.id, other.test);
        if (days.size() < fewest_days)
            continue;
        auto day = days.rbegin();
        for (std::size_t i = 0; i < days_measured; ++i, ++day) {
            const TrueTest& error = true_test(other.test);
            const double level = (mean_of(day->second) + other.shift) * other.factor;
            const bool force = day->second.front().force.has_value();
            const double scale = force ? level : 1; // a force's errors are fractions
            const double today = level + scale * error.day * stream.next_normal();
            for (Reading r : day->second) {
                r.side = r.side == Side::left ? Side::right : Side::left;
                const double read = std::round(today + scale * error.trial * stream.next_normal());
                if (force)
                    r.force = Force::newtons(read);
                else
                    r.angle = Angle::degrees(read);
                records.readings.push_back(r);
            }
        }
    }
}

} // namespace amentum
