// Time of one plate-loading answer, against two rivals timed in the same run:
//   brute force   walks every multiset of the pairs owned for each question; it only finds the mass, while
//   our answer
//                 also names the plates of both neighbours in words
//   greedy        puts on the heaviest plate that still fits; fast, but it misses loads, and how often is
//   counted
// Run it by `./dev bench`, or: ninja plate_loading_bench && ./bench/plate_loading_bench
// Each time is the median of nine repeats after one warm-up, in microseconds a question, on 500 fixed
// targets.
#include "equipment/solve_load.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <limits>
#include <random>

using namespace amentum;

namespace {

struct Setup {
    const char* name;
    MassUnit unit;
    double bar;
    std::vector<std::pair<double, int>> pairs; // heaviest first
    double lowest, highest, grid;              // of the targets
};

const std::vector<Setup> setups{
    {"pounds, one rack",
     MassUnit::lb,
     45,
     {{45, 3}, {35, 1}, {25, 1}, {10, 2}, {5, 1}, {2.5, 1}},
     50,
     480,
     1},
    {"pairs 20, 15, 10 kg", MassUnit::kg, 20, {{20, 1}, {15, 1}, {10, 1}}, 20, 110, 2.5},
    {"kilograms, full set",
     MassUnit::kg,
     20,
     {{25, 4}, {20, 2}, {15, 2}, {10, 2}, {5, 2}, {2.5, 2}, {1.25, 2}, {0.5, 2}},
     20,
     400,
     0.5},
    {"weighed, few pairs",
     MassUnit::kg,
     20.17,
     {{20.31, 2}, {19.87, 1}, {15.12, 1}, {10.07, 2}, {9.91, 1}, {5.03, 1}, {2.47, 2}, {1.26, 1}},
     20,
     230,
     0.1},
};

Kit kit_of(const Setup& setup) {
    const auto mass = [&](double x) {
        return setup.unit == MassUnit::kg ? Mass::kilograms(x) : Mass::pounds(x);
    };
    Kit kit{KitId{"bench"},
            "bench",
            setup.unit,
            {{ItemKind::straight_bar, "bar", 1, mass(setup.bar), {}, {}, {}, {}}}};
    for (const auto& [each, count] : setup.pairs)
        kit.items.push_back({ItemKind::plate, std::to_string(each), 2 * count, mass(each), {}, {}, {}, {}});
    return kit;
}

std::vector<double> targets_of(const Setup& setup) {
    std::mt19937_64 random(7);
    std::vector<double> targets;
    const auto steps = static_cast<std::uint64_t>((setup.highest - setup.lowest) / setup.grid);
    for (int i = 0; i < 500; ++i)
        targets.push_back(setup.lowest + setup.grid * static_cast<double>(random() % steps));
    return targets;
}

// The heaviest load not above the target; all in hundredths of the setup's unit.
using Hundredths = long;
Hundredths hundredths(double x) {
    return std::lround(100 * x);
}

void walk(const Setup& setup, std::size_t from, Hundredths load, Hundredths target, Hundredths& best) {
    if (from == setup.pairs.size()) {
        if (load <= target)
            best = std::max(best, load);
        return;
    }
    for (int count = 0; count <= setup.pairs[from].second; ++count)
        walk(setup, from + 1, load + 2 * count * hundredths(setup.pairs[from].first), target, best);
}

Hundredths brute_force(const Setup& setup, double target) {
    Hundredths best = std::numeric_limits<Hundredths>::min();
    walk(setup, 0, hundredths(setup.bar), hundredths(target), best);
    return best;
}

Hundredths greedy(const Setup& setup, double target) {
    Hundredths load = hundredths(setup.bar);
    for (const auto& [each, count] : setup.pairs)
        for (int i = 0; i < count && load + 2 * hundredths(each) <= hundredths(target); ++i)
            load += 2 * hundredths(each);
    return load;
}

template <class Question>
double microseconds(const std::vector<double>& targets, Question question) {
    using clock = std::chrono::steady_clock;
    std::vector<double> repeats;
    for (int repeat = 0; repeat < 10; ++repeat) {
        const auto start = clock::now();
        for (const double target : targets)
            question(target);
        const std::chrono::duration<double, std::micro> took = clock::now() - start;
        if (repeat > 0)
            repeats.push_back(took.count() / static_cast<double>(targets.size())); // the first warms up
    }
    std::nth_element(repeats.begin(), repeats.begin() + 4, repeats.end());
    return repeats[4];
}

volatile double sink; // keeps the compiler from dropping the answers

void bench(const Setup& setup) {
    const Kit kit = kit_of(setup);
    const auto targets = targets_of(setup);
    const auto mass = [&](double x) {
        return setup.unit == MassUnit::kg ? Mass::kilograms(x) : Mass::pounds(x);
    };
    const auto table = *LoadTable::of(kit, LoadMeans::straight_bar);
    const double once = microseconds(targets, [&](double t) {
        sink = solve_load(kit, LoadMeans::straight_bar, mass(t))->nearest.total.kilograms();
    });
    const double kept =
        microseconds(targets, [&](double t) { sink = table.choose(mass(t)).nearest.total.kilograms(); });
    const double brute =
        microseconds(targets, [&](double t) { sink = static_cast<double>(brute_force(setup, t)); });
    int missed = 0, differ = 0;
    for (const double t : targets) {
        const Hundredths exact = brute_force(setup, t);
        const auto ours = table.choose(mass(t)).not_above;
        const Hundredths made = !ours                        ? std::numeric_limits<Hundredths>::min()
                                : setup.unit == MassUnit::kg ? hundredths(ours->total.kilograms())
                                                             : hundredths(ours->total.pounds());
        differ += made != exact;
        missed += exact > 0 && greedy(setup, t) != exact;
    }
    std::printf("%-22s %7zu %10.2f %10.2f %12.2f %8.1fx %8.1fx %9.1f%% %8d\n", setup.name, table.size(), once,
                kept, brute, brute / once, brute / kept, 100.0 * missed / static_cast<double>(targets.size()),
                differ);
}

} // namespace

int main() {
    std::printf("%-22s %7s %10s %10s %12s %9s %9s %10s %8s\n", "plates", "loads", "once, us", "kept, us",
                "brute, us", "brute/1", "brute/k", "greedy off", "we differ");
    for (const auto& setup : setups)
        bench(setup);
    std::printf(
        "\nonce: solve_load builds its table for each question; kept: one LoadTable asked 500 times.\n"
        "greedy off: share of targets where greedy makes a lighter load than the exact one.\n");
}
