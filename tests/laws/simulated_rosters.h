// Rosters whose truth is written down, and how often intervals hold it. For the laws of the joint model.
//
// Sessions (a day, a radar) are shared by athletes; each shifts velocity. Qualities are correlated between athletes and wander;
// velocity follows each athlete's own slopes. On purpose, departures from the model can be asked for.
#pragma once

#include "inference/joint_model.h"
#include "inference/mixed_model.h"
#include "inference/random_stream.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

namespace amentum {

enum class Departure { none, heavy_tails, growth_spurt, skipped_when_sore };

struct World { // units: mph, and spreads of a quality between athletes
    int athletes = 200, days = 12, sessions = 60, last_day = 1500;
    std::vector<double> within{0.90, 0.50, 1.20, 0.30, 0.00, 0.60};
    std::vector<double> between{1.50, 1.00, 2.50, -0.20, 0.50, 1.00};
    std::vector<double> error{0.30, 0.35, 0.25, 0.40, 0.45, 0.30};
    std::vector<double> walk{0.10, 0.09, 0.08, 0.06, 0.06, 0.10}; // SD in 30 days
    double velocity_error = 0.8, own_level = 3, session = 0.5, own_slopes = 0.25;
    double between_neighbours = 0.3, between_changes = 0.25; // correlations
    double velocity_missing = 0.08, missing = 0.15;
    Departure departure = Departure::none;
};

struct SimulatedRoster {
    RosterData joint;
    std::vector<std::vector<std::vector<std::optional<double>>>> observed; // by athlete, day, quality
    std::vector<std::vector<int>> session;                                 // by athlete, day
    std::vector<std::vector<double>> own;                                  // slopes of each athlete
};

inline double noise_of(RandomStream& random, Departure departure) {
    const double z = random.next_normal();
    if (departure != Departure::heavy_tails)
        return z;
    double square = 0; // Student's t, 3 degrees of freedom, of scale 1: its SD is 1.73
    for (int i = 0; i < 3; ++i)
        square += std::pow(random.next_normal(), 2);
    return z / std::sqrt(square / 3);
}

// Normal deviates with correlation r of any two: r shared.
inline std::vector<double> alike(RandomStream& random, std::size_t count, double r) {
    const double shared = std::sqrt(r) * random.next_normal();
    std::vector<double> z(count);
    for (double& each : z)
        each = shared + std::sqrt(1 - r) * random.next_normal();
    return z;
}

// Correlation r^|i - j|.
inline std::vector<double> neighbours(RandomStream& random, std::size_t count, double r) {
    std::vector<double> z(count);
    for (std::size_t k = 0; k < count; ++k)
        z[k] = k == 0 ? random.next_normal() : r * z[k - 1] + std::sqrt(1 - r * r) * random.next_normal();
    return z;
}

inline constexpr double spurt_velocity = 3, spurt_quality = 0.8;  // mph, spreads, in all
inline constexpr double spurt_days = 365, share_young = 0.4;      // who grow within these years
inline constexpr double sore_velocity = 0.8, sore_quality = 0.25; // for soreness 1: about 1 SD of an error
inline constexpr double skipped_at_ease = 0.05, skipped_a_sore = 0.4; // chance that a test is left out

// The sessions an athlete came to, all different, rising.
inline std::vector<int> sessions_met(RandomStream& random, int all, int met) {
    std::vector<int> order(static_cast<std::size_t>(all));
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = static_cast<int>(i);
    for (std::size_t i = 0; i < static_cast<std::size_t>(met); ++i)
        std::swap(order[i], order[i + static_cast<std::size_t>(random.next_uniform() *
                                                               static_cast<double>(order.size() - i))]);
    order.resize(static_cast<std::size_t>(met));
    std::sort(order.begin(), order.end());
    return order;
}

struct SimulatedSession {
    int day;
    double shift; // of velocity, mph
};

struct SimulatedAthlete {
    std::vector<double> level, own, change; // qualities, slopes, what was gained so far
    double velocity;                        // at the start
    bool grows;
    double growth_from; // day

    void move(const World& world, RandomStream& random, double root_of_time) {
        const auto step = alike(random, change.size(), world.between_changes);
        for (std::size_t k = 0; k < change.size(); ++k)
            change[k] += world.walk[k] * root_of_time * step[k];
    }
    double grown_on(int day) const {
        return grows ? std::clamp((day - growth_from) / spurt_days, 0.0, 1.0) : 0;
    }
    double true_value(std::size_t quality, int day, double sore) const {
        if (quality > 0)
            return level[quality - 1] + change[quality - 1] - sore_quality * sore +
                   (quality == 1 ? spurt_quality * grown_on(day) : 0);
        double value = velocity + spurt_velocity * grown_on(day) - sore_velocity * sore;
        for (std::size_t k = 0; k < change.size(); ++k)
            value += own[k] * change[k];
        return value;
    }
};

inline SimulatedAthlete start_athlete(const World& world, RandomStream& random) {
    const std::size_t p = world.within.size();
    SimulatedAthlete athlete{
        neighbours(random, p, world.between_neighbours), world.within, std::vector<double>(p, 0.0),
        80 + world.own_level * random.next_normal(),     false,        0};
    for (std::size_t k = 0; k < p; ++k) {
        athlete.velocity += world.between[k] * athlete.level[k];
        athlete.own[k] += world.own_slopes * random.next_normal();
    }
    athlete.grows = world.departure == Departure::growth_spurt && random.next_uniform() < share_young;
    athlete.growth_from = random.next_uniform() * (world.last_day - spurt_days);
    return athlete;
}

// One test day; without a value: missing.
inline std::vector<std::optional<double>> test_athlete(const World& world, RandomStream& random,
                                                       const SimulatedAthlete& athlete,
                                                       const SimulatedSession& session) {
    const bool may_be_sore = world.departure == Departure::skipped_when_sore;
    const double sore = may_be_sore ? std::max(0.0, random.next_normal()) : 0;
    const double skipped = sore > 0 ? std::min(1.0, skipped_at_ease + skipped_a_sore * sore) : 0;
    std::vector<std::optional<double>> values(world.within.size() + 1);
    for (std::size_t q = 0; q < values.size(); ++q) {
        const double error = q == 0 ? world.velocity_error : world.error[q - 1];
        const double value = athlete.true_value(q, session.day, sore) + (q == 0 ? session.shift : 0) +
                             error * noise_of(random, world.departure);
        const bool missing = random.next_uniform() < (q == 0 ? world.velocity_missing : world.missing) ||
                             random.next_uniform() < skipped;
        if (!missing)
            values[q] = value;
    }
    return values;
}

inline void add_athlete(const World& world, RandomStream& random,
                        const std::vector<SimulatedSession>& sessions, SimulatedRoster& made) {
    SimulatedAthlete athlete = start_athlete(world, random);
    const auto met = sessions_met(random, world.sessions, world.days);
    std::vector<std::vector<std::optional<double>>> seen;
    RosterAthlete tested;
    std::optional<int> before;
    for (const int s : met) {
        const auto& session = sessions[static_cast<std::size_t>(s)];
        // What was gained before the first test: as in 120 days.
        athlete.move(world, random, before ? std::sqrt((session.day - *before) / 30.0) : 2);
        before = session.day;
        seen.push_back(test_athlete(world, random, athlete, session));
        RosterDay day{session.day, {}};
        for (std::size_t q = 0; q < seen.back().size(); ++q)
            if (const auto& value = seen.back()[q])
                day.readings.push_back({static_cast<int>(q), *value, 1, q == 0 ? s : -1});
        if (!day.readings.empty())
            tested.days.push_back(std::move(day));
    }
    if (tested.days.empty())
        return; // skipped all
    made.joint.athletes.push_back(std::move(tested));
    made.observed.push_back(std::move(seen));
    made.session.push_back(met);
    made.own.push_back(athlete.own);
}

inline SimulatedRoster simulate_roster(const World& world, std::uint64_t seed) {
    RandomStream random(seed_from(seed, "simulated roster"));
    SimulatedRoster made;
    made.joint = {static_cast<int>(world.within.size()) + 1, 0, {}, 0, {}};
    made.joint.sessions.assign(static_cast<std::size_t>(world.sessions), 0);
    std::vector<SimulatedSession> sessions;
    const double apart = static_cast<double>(world.last_day) / world.sessions;
    for (int s = 0; s < world.sessions; ++s) { // all on days of their own
        const int day = static_cast<int>(apart * (s + random.next_uniform()));
        sessions.push_back(
            {s > 0 ? std::max(day, sessions.back().day + 1) : day, world.session * random.next_normal()});
    }
    for (int i = 0; i < world.athletes; ++i)
        add_athlete(world, random, sessions, made);
    return made;
}

// Days with all readings; each quality less the athlete's mean, the means beside it; sessions crossed with athletes.
inline MixedRows centred_rows(const SimulatedRoster& made) {
    const int p = made.joint.qualities - 1;
    MixedRows rows{1 + 2 * p, 1, {}, {}, {}, {}, {{}}};
    std::vector<int> number(made.joint.sessions.size(), -1);
    int sessions = 0, athletes = 0;
    for (std::size_t i = 0; i < made.observed.size(); ++i) {
        std::vector<std::size_t> whole;
        for (std::size_t t = 0; t < made.observed[i].size(); ++t)
            if (std::all_of(made.observed[i][t].begin(), made.observed[i][t].end(),
                            [](const auto& value) { return value.has_value(); }))
                whole.push_back(t);
        if (whole.empty())
            continue;
        std::vector<double> mean(static_cast<std::size_t>(p), 0.0);
        for (const std::size_t t : whole)
            for (std::size_t k = 0; k < mean.size(); ++k)
                mean[k] += *made.observed[i][t][k + 1] / static_cast<double>(whole.size());
        for (const std::size_t t : whole) {
            rows.y.push_back(*made.observed[i][t][0]);
            rows.X.push_back(1);
            for (std::size_t k = 0; k < mean.size(); ++k)
                rows.X.push_back(*made.observed[i][t][k + 1] - mean[k]);
            rows.X.insert(rows.X.end(), mean.begin(), mean.end());
            rows.Z.push_back(1);
            rows.group.push_back(athletes);
            int& session = number[static_cast<std::size_t>(made.session[i][t])];
            if (session < 0)
                session = sessions++;
            rows.crossed[0].push_back(session);
        }
        ++athletes;
    }
    return rows;
}

struct HeldTruths {
    int held95 = 0, held80 = 0, all = 0;
    double off = 0, stated = 0; // sums of estimate less truth, and of standard errors
    void add(double truth, const Estimate& estimate) {
        const double z = std::abs(estimate.value - truth) / estimate.standard_error;
        held95 += z <= z95;
        held80 += z <= z80;
        ++all;
        off += estimate.value - truth;
        stated += estimate.standard_error;
    }
    void add(const HeldTruths& other) {
        held95 += other.held95;
        held80 += other.held80;
        all += other.all;
        off += other.off;
        stated += other.stated;
    }
    double share95() const { return static_cast<double>(held95) / all; }
    double share80() const { return static_cast<double>(held80) / all; }
    double bias() const { return off / all; }
    double usual_error() const { return stated / all; }
};

// Four standard deviations of a share of n independent intervals: beyond it once in 16,000 times.
inline double band(double share, int n) {
    return 4 * std::sqrt(share * (1 - share) / n);
}

// each(0) ... each(count - 1) on two threads; what they say must not depend on the order.
inline void on_two_threads(std::size_t count, const std::function<void(std::size_t)>& each) {
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < count; i = next++)
            each(i);
    };
    const std::jthread one(work), other(work);
}

} // namespace amentum
