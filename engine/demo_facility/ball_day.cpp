#include "demo_facility/ball_day.h"

#include "demo_facility/people.h"
#include "demo_facility/test_days.h"
#include "inference/random_stream.h"

#include <array>
#include <cmath>
#include <utility>

namespace amentum {
namespace {

constexpr std::array<std::pair<const char*, double>, 3> balls{{{"standing_overhead_throw_4lb", 4},
                                                               {"standing_overhead_throw_6lb", 6},
                                                               {"standing_overhead_throw_8lb", 8}}};

} // namespace

std::optional<double> standing_ball(const std::string& test) {
    for (const auto& [name, pounds] : balls)
        if (name == test)
            return pounds;
    return std::nullopt;
}

double true_ball_power(const Athlete& athlete) {
    RandomStream stream(seed_from(6, athlete.id.text));
    return -0.19 - 0.26 * stream.next_uniform();
}

void add_ball_day(RecordSet& records, const Athlete& athlete, const TrueThrower& thrower, Date last_day,
                  std::uint64_t seed) {
    const int day = demo_days - ball_day_before_last;
    if (athlete.kit.text != hall_kit || !thrower.findable || age_on(athlete, last_day, day) < 16)
        return;
    RandomStream stream(seed_from(seed + 7, athlete.id.text));
    const double form = std::exp(true_test(balls.front().first).day * stream.next_normal());
    for (const auto& [test, pounds] : balls)
        for (int trial = 1; trial <= 5; ++trial) {
            Reading r{athlete.id, last_day - ball_day_before_last, test};
            r.trial = trial;
            const double speed = form * true_test_value(athlete, thrower, last_day, day, test) *
                                 std::exp(true_test(test).trial * stream.next_normal());
            r.speed =
                Speed::miles_per_hour(std::round(10 * Speed::metres_per_second(speed).miles_per_hour()) / 10);
            r.device = "radar 1";
            r.place = PlaceMeasured::out_of_hand;
            records.readings.push_back(r);
        }
}

} // namespace amentum
