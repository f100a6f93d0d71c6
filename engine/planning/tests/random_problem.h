// Random problems of a block, for tests and benches: the same seed, the same problem, on every machine.
//
// Sizes and limits as in a gym of throwers: choices of six parts in patterns, a quality or three served by each, minutes
// in quarters. Every number is invented. `loose`: hours enough; `tight`: short sessions, few places for each choice, and
// regions full before the session is. Every problem without wishes has a plan, unless by ill luck; with pins, bars and
// least doses it may have none.
#pragma once

#include "planning/block_problem.h"

#include <cstdint>
#include <string>

namespace amentum::invented {

enum class Room { loose, tight };

struct RandomProblem {
    int choices = 100;
    int sessions = 4;
    int mesos = 1;
    Room room = Room::loose;
    std::uint64_t seed = 1;
    int qualities = 9;
    bool starts = false; // a game in some weeks, a day without a session in some
    int pins = 0, bars = 0, least_doses = 0;
    bool previous = false; // a plan to change as little as possible
};

// SplitMix64 [Steele2014]: of its own here, as planning does not use inference.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(seed) {}
    std::uint64_t bits() {
        std::uint64_t z = (state_ += 0x9e3779b97f4a7c15u);
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
        return z ^ (z >> 31);
    }
    int whole(int low, int high) { return low + static_cast<int>(bits() % std::uint64_t(high - low + 1)); }
    bool one_in(int many) { return whole(1, many) == 1; }

private:
    std::uint64_t state_;
};

inline Choice random_choice(Dice& dice, const RandomProblem& of, int number) {
    static constexpr Part parts[]{Part::speed,    Part::main_lift, Part::assistance, Part::assistance,
                                  Part::shoulder, Part::main_lift, Part::speed,      Part::assistance,
                                  Part::trunk,    Part::mobility};
    static constexpr Region regions[]{Region::legs,     Region::legs,  Region::upper_pull, Region::upper_push,
                                      Region::shoulder, Region::trunk, Region::whole_body};
    Choice c{};
    c.part = parts[number % 10];
    const bool main = c.part == Part::main_lift;
    c.region = c.part == Part::shoulder ? Region::shoulder
               : c.part == Part::trunk  ? Region::trunk
                                        : regions[dice.whole(0, main ? 3 : 6)];
    c.exercise = "exercise_" + std::to_string(number + 1);
    c.name = "exercise " + std::to_string(number + 1);
    c.pattern = std::string(word(c.part)) + "_" + std::to_string(dice.whole(1, 1 + of.choices / 24));
    c.set_minutes = (main ? 3 : 1.5) + 0.25 * dice.whole(0, 4);
    c.setup_minutes = 0.25 * dice.whole(1, main ? 12 : 6);
    c.fewest_sets = dice.whole(1, main ? 3 : 2);
    c.most_sets = c.fewest_sets + dice.whole(1, 3);
    c.serves.assign(static_cast<std::size_t>(of.qualities), 0);
    const auto quality = [&] { return static_cast<std::size_t>(dice.whole(0, of.qualities - 1)); };
    for (int also = dice.whole(0, 2); also > 0; --also)
        c.serves[quality()] = 0.1 * dice.whole(1, 4);
    c.serves[quality()] = 0.1 * dice.whole(5, 10);
    c.hard = c.part == Part::speed || main || c.part == Part::assistance;
    c.main_lift = main;
    c.heavy_legs = c.region == Region::legs && c.hard && (main || dice.one_in(3));
    c.hard_on_arm = c.region == Region::shoulder || (c.part == Part::speed && dice.one_in(2));
    if (!main && dice.one_in(4))
        c.ready = dice.whole(0, ready_groups - 1);
    for (int d = 0; d < of.sessions; ++d)
        c.sessions.push_back(!dice.one_in(of.room == Room::tight ? 2 : 6));
    return c;
}

inline Meso random_meso(Dice& dice, const RandomProblem& of, int first_week) {
    const std::vector<bool> all(static_cast<std::size_t>(of.sessions), true);
    const std::vector<bool> none(static_cast<std::size_t>(of.sessions), false);
    Meso meso{first_week, first_week + 3, {}};
    for (int week = first_week; week < first_week + 3; ++week) {
        FullWeek full{week, all, none, none, false};
        if (of.starts && dice.one_in(3)) {
            const auto day = static_cast<std::size_t>(dice.whole(0, of.sessions - 1));
            full.start_week = full.legs_spared[day] = full.arm_spared[(day + 1) % all.size()] = true;
        }
        if (of.starts && dice.one_in(6))
            full.held[static_cast<std::size_t>(dice.whole(0, of.sessions - 1))] = false;
        meso.full_weeks.push_back(full);
    }
    return meso;
}

inline PlanLimits random_limits(Dice& dice, const RandomProblem& of) {
    const bool tight = of.room == Room::tight;
    PlanLimits limits{};
    limits.minutes = tight ? 30 + 5 * dice.whole(0, 2) : 60 + 5 * dice.whole(0, 4);
    limits.most_lines = tight ? 7 : 9;
    for (int r = 0; r < regions_counted; ++r) {
        const double usual = tight ? 4.0 + dice.whole(0, 4) : 12.0 + dice.whole(0, 4);
        limits.regions.push_back({usual, usual + (tight ? 4 : 8)});
    }
    limits.most_arm_sets = tight ? 5 : 16;
    limits.most_leg_sets_before_start = tight ? 5 : 8;
    for (int d = 0; d + 1 < of.sessions; ++d)
        if (dice.one_in(tight ? 2 : 4))
            limits.neighbours.push_back({d, d + 1});
    return limits;
}

inline void add_wishes(BlockProblem& problem, Dice& dice, const RandomProblem& of) {
    const auto any = [&] { return dice.whole(0, of.choices - 1); };
    for (int p = 0; p < of.pins; ++p) {
        Pinned pin{any(), dice.whole(0, of.sessions - 1), {}};
        const Choice& held = problem.choices[static_cast<std::size_t>(pin.choice)];
        if (dice.one_in(2))
            pin.sets = dice.whole(held.fewest_sets, held.most_sets);
        if (held.sessions[static_cast<std::size_t>(pin.session)])
            problem.pinned.push_back(pin);
    }
    for (int b = 0; b < of.bars; ++b) {
        Barred bar{any(), {}};
        if (dice.one_in(2))
            bar.session = dice.whole(0, of.sessions - 1);
        problem.barred.push_back(bar);
    }
    for (int l = 0; l < of.least_doses; ++l)
        problem.least.push_back({dice.whole(0, of.qualities - 1), 1.0 + dice.whole(0, 2)});
    if (!of.previous)
        return;
    problem.costs.change = 0.3;
    problem.previous = empty_plan(problem);
    for (auto& meso : *problem.previous)
        for (auto& session : meso)
            for (int line = 0; line < 6; ++line)
                session[static_cast<std::size_t>(any())] = 2;
}

inline BlockProblem random_problem(const RandomProblem& of) {
    Dice dice(of.seed);
    BlockProblem problem{};
    int parts = 0;
    std::vector<int> weights;
    for (int q = 0; q < of.qualities; ++q) {
        problem.qualities.push_back("quality_" + std::to_string(q + 1));
        weights.push_back(dice.whole(1, 10));
        parts += weights.back();
    }
    for (const int weight : weights)
        problem.weights.push_back(double(weight) / parts);
    for (int c = 0; c < of.choices; ++c)
        problem.choices.push_back(random_choice(dice, of, c));
    problem.sessions = of.sessions;
    for (int m = 0; m < of.mesos; ++m)
        problem.mesos.push_back(random_meso(dice, of, 1 + 4 * m));
    problem.limits = random_limits(dice, of);
    problem.curve = usual_dose_curve();
    add_wishes(problem, dice, of);
    return problem;
}

} // namespace amentum::invented
