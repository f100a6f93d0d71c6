// Does the engine find the truth of the invented hall again? The simulation knows each thrower's true value on each
// day; the trajectories see only the noisy tests. Their 80 % bands must hold the truth about four times in five.
//
// Bands of one thrower are not independent, so shares are of throwers: their SD is that of the throwers' own shares over the
// root of their number. The bands are too narrow here, for growth and blocks are trends and a trajectory is a random walk:
// what was measured stands beside each bound and in docs/guide/demo_facility.md.
#include "demo_facility/demo_facility.h"
#include "demo_facility/people.h"
#include "demo_facility/simulation.h"
#include "demo_facility/test_days.h"
#include "inference/roster_variances.h"
#include "inference/test_scale.h"
#include "measurement/measure_test.h"
#include "records/reference_tables.h"

#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <functional>
#include <map>
#include <sstream>

using namespace amentum;

namespace {

const Date last_day = Date::from(std::chrono::year(2026) / 6 / 1);

ReferenceTables tables() {
    std::map<std::string, std::string> texts;
    for (const auto& name : reference_file_names()) {
        std::ifstream file(std::string(AMENTUM_SOURCE_DIR "/data/") + name);
        std::ostringstream text;
        text << file.rdbuf();
        texts[name] = text.str();
    }
    return *parse_reference_tables(texts);
}

using Groups = std::map<std::string, std::map<int, std::vector<Reading>>>; // by athlete, by day

Groups readings_of(const RecordSet& records, const std::string& test) {
    Groups groups;
    for (const auto& r : records.readings)
        if (r.test == test &&
            r.device != "radar 2") // the second radar reads high, and is kept out of the line
            groups[r.athlete.text][r.date.days_since_1970()].push_back(r);
    return groups;
}

struct Shares {
    std::vector<double> of_throwers;
    int bands = 0;
    double mean() const {
        double sum = 0;
        for (const double share : of_throwers)
            sum += share;
        return sum / static_cast<double>(of_throwers.size());
    }
    double error() const {
        double squares = 0;
        for (const double share : of_throwers)
            squares += (share - mean()) * (share - mean());
        const double n = static_cast<double>(of_throwers.size());
        return std::sqrt(squares / (n - 1) / n);
    }
};

// `truth`: the value on the test's scale, of a thrower on a day of the simulation (0 ... demo_days).
void add_bands(const TestKind& kind, std::uint64_t seed,
               const std::function<double(const Athlete&, const TrueThrower&, int)>& truth, Shares& shares) {
    const auto made = make_demo_facility(seed, last_day);
    std::map<std::string, std::vector<DatedValue>> series;
    for (const auto& [athlete, days] : readings_of(made.records, kind.key))
        for (const auto& [day, readings] : days)
            if (const auto result = measure_test(kind, readings))
                series[athlete].push_back(on_scale(kind.scale, day, result->value, result->standard_error));
    std::vector<std::vector<DatedValue>> roster;
    for (const auto& [athlete, values] : series)
        roster.push_back(values);
    const auto variances = estimate_roster_variances(roster);
    for (const auto& athlete : made.records.athletes) {
        auto values = series[athlete.id.text];
        if (values.size() < 2)
            continue;
        for (auto& value : values)
            value.variance *= variances.error_factor;
        const auto trajectory = estimate_trajectory(values, variances.drift);
        const auto thrower = simulate_thrower(athlete, last_day, seed);
        int inside = 0;
        for (const auto& point : trajectory.points) {
            const double half = z80 * std::sqrt(point.smoothed.variance);
            const double true_value =
                truth(athlete, thrower, demo_days - (last_day.days_since_1970() - point.day));
            inside += std::abs(true_value - point.smoothed.mean) <= half;
        }
        const auto count = trajectory.points.size();
        shares.bands += static_cast<int>(count);
        shares.of_throwers.push_back(static_cast<double>(inside) / static_cast<double>(count));
    }
}

constexpr std::uint64_t seeds = 4;

Shares bands_that_hold(const TestKind& kind,
                       const std::function<double(const Athlete&, const TrueThrower&, int)>& truth) {
    Shares shares;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed)
        add_bands(kind, seed, truth, shares);
    MESSAGE(kind.key << ": " << 100 * shares.mean() << " +- " << 100 * shares.error() << " % of "
                     << shares.bands << " bands of " << shares.of_throwers.size()
                     << " throwers hold the truth");
    return shares;
}

// Not 80 %: at least `documented`, within three SDs, and no more than stated.
void check_shares(const Shares& shares, double documented) {
    CHECK(shares.bands > 1000);
    CHECK(shares.mean() > documented - 3 * shares.error());
    CHECK(shares.mean() < 0.8 + 3 * shares.error());
}

} // namespace

TEST_CASE("80 % bands of throwing velocity hold the true velocity a little less often than stated") {
    const auto all = tables();
    check_shares(bands_that_hold(*all.test_kind("throwing_velocity"),
                                 [](const Athlete&, const TrueThrower& thrower, int day) {
                                     return thrower.velocity[static_cast<std::size_t>(day)];
                                 }),
                 0.76); // measured: 0.759, SD 0.014
}

TEST_CASE("80 % bands of the hex-bar pull and of the kneeling throw") {
    const auto all = tables();
    for (const std::string test : {"hex_bar_high_max", "kneeling_overhead_throw_4lb"})
        check_shares(bands_that_hold(*all.test_kind(test),
                                     [&](const Athlete& athlete, const TrueThrower& thrower, int day) {
                                         return std::log(
                                             true_test_value(athlete, thrower, last_day, day, test));
                                     }),
                     0.76); // measured: 0.762, SD 0.018, and 0.798, SD 0.019
}
