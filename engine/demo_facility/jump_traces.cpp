#include "demo_facility/jump_traces.h"

#include "inference/random_stream.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace amentum {
namespace {

constexpr double g = 9.80665, rate_hz = 500, seconds = 5.5;
constexpr double dip_s = 0.40, push_s = 0.40, leave_s = 0.03, land_s = 0.25;
constexpr double dip_share = 0.62; // of body weight, at the deepest
constexpr std::size_t throwers_on_plates = 3, days_on_plates = 2;

struct Jump {
    double mass_kg, take_off_speed, start_s, left_share;
};

double lobe(double t, double length) {
    return t <= 0 || t >= length ? 0 : std::pow(std::sin(std::numbers::pi * t / length), 2);
}

double force_at(const Jump& jump, double t) {
    const double weight = jump.mass_kg * g;
    const double push =
        (2 * jump.mass_kg * (jump.take_off_speed + g * leave_s / 2) + dip_share * weight * dip_s) / push_s;
    double since = t - jump.start_s;
    if (since < dip_s)
        return weight * (1 - dip_share * lobe(since, dip_s));
    if ((since -= dip_s) < push_s)
        return weight + push * lobe(since, push_s);
    if ((since -= push_s) < leave_s)
        return weight * (1 - since / leave_s);
    if ((since -= leave_s) < 2 * jump.take_off_speed / g)
        return 0;
    since -= 2 * jump.take_off_speed / g;
    return weight + 2 * jump.mass_kg * jump.take_off_speed / land_s * lobe(since, land_s);
}

ForceRecording recorded(const Jump& jump, RandomStream& stream) {
    ForceRecording recording{rate_hz,
                             {{"left plate", Side::left, {}, {}}, {"right plate", Side::right, {}, {}}},
                             {"Made by the simulation of the demo facility."}};
    const double offset[] = {1.5 * stream.next_normal(), 1.5 * stream.next_normal()};
    for (int i = 0; i < static_cast<int>(seconds * rate_hz); ++i) {
        const double force = force_at(jump, i / rate_hz);
        const double share[] = {jump.left_share, 1 - jump.left_share};
        for (std::size_t plate = 0; plate < 2; ++plate) {
            const double read = force * share[plate] + offset[plate] + 1.2 * stream.next_normal();
            recording.plates[plate].vertical.push_back(static_cast<float>(std::round(2 * read) / 2));
        }
    }
    return recording;
}

// The mean height of a day's jumps on the mat, day by day.
std::map<Date, double> jump_days(const RecordSet& records, const AthleteId& athlete) {
    std::map<Date, std::pair<double, int>> sums;
    for (const auto& r : records.readings)
        if (r.athlete == athlete && r.test == "jump_height_flight" && r.flight_time) {
            auto& [sum, count] = sums[r.date];
            sum += g * std::pow(r.flight_time->seconds(), 2) / 8;
            ++count;
        }
    std::map<Date, double> heights;
    for (const auto& [date, sum] : sums)
        heights[date] = sum.first / sum.second;
    return heights;
}

double body_mass_on(const RecordSet& records, const AthleteId& athlete, Date day) {
    double kg = 75;
    for (const auto& r : records.readings)
        if (r.athlete == athlete && r.body_mass && r.test == "body_mass" && r.date <= day)
            kg = r.body_mass->kilograms();
    return kg;
}

void add_day(std::vector<KeptTrace>& traces, const RecordSet& records, const Athlete& athlete, Date day,
             double height, RandomStream& stream) {
    const double kg = body_mass_on(records, athlete.id, day);
    const double habit = 0.5 + 0.015 * stream.next_normal();
    for (int trial = 1; trial <= 3; ++trial) {
        const double reached =
            0.93 * height * std::exp(0.03 * stream.next_normal()); // a mat reads more than a plate
        const Jump jump{kg, std::sqrt(2 * g * reached), 1.4 + 0.4 * stream.next_uniform(),
                        habit + 0.005 * stream.next_normal()};
        const std::string name = athlete.id.text + "-cmj-" + day.text() + "-" + std::to_string(trial);
        KeptTrace trace{"demo-" + name,
                        athlete.id,
                        day,
                        "countermovement_jump",
                        "both",
                        trial,
                        name + ".csv",
                        0,
                        "made-by-the-demo",
                        {},
                        {},
                        "plates 1 and 2",
                        "",
                        recorded(jump, stream)};
        traces.push_back(std::move(trace));
    }
}

} // namespace

std::vector<KeptTrace> make_jump_traces(const RecordSet& records, std::uint64_t seed) {
    std::vector<KeptTrace> traces;
    std::size_t throwers = 0;
    for (const auto& athlete : records.athletes) {
        const auto days = jump_days(records, athlete.id);
        if (days.size() < 6 || throwers == throwers_on_plates)
            continue;
        ++throwers;
        RandomStream stream(seed_from(seed, "plates " + athlete.id.text));
        auto day = days.rbegin();
        for (std::size_t i = 0; i < days_on_plates; ++i, ++day)
            add_day(traces, records, athlete, day->first, day->second, stream);
    }
    return traces;
}

} // namespace amentum
