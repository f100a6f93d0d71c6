// Joint moments of a moving chain of four links, from joint angles, rates and accelerations:
//   ours     solve_moving_chain, in the plane
//   rival    KDL's ChainIdSolver_RNE (orocos-kdl of Debian) on the same chain, built once; in space, and so with more to
//            count: a rival for the speed of this question, not for what it can do
//   sines    the sine and cosine of the four inclinations alone: what ours cannot go below
// Both start from the same numbers of each joint and answer the same moments, which is checked before timing. 1,000 states
// a repeat; the two run one after the other in each of 50 repeats, the first warms up. Nanoseconds of processor time a
// state and the ratio are medians over the repeats, the ratio within each.
// Run it by `./dev bench`, or: ninja inverse_dynamics_bench && ./bench/inverse_dynamics_bench
#include "body_mechanics/chain_motion.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <ctime>
#include <random>
#include <vector>

#ifdef AMENTUM_WITH_KDL
#include <kdl/chain.hpp>
#include <kdl/chainidsolver_recursive_newton_euler.hpp>
#endif

using namespace amentum;

namespace {

constexpr std::size_t links = 4, states = 1000;
struct Part {
    double length, mass, centre, inertia;
};
constexpr std::array<Part, links> parts{
    {{0.15, 2.2, 0.09, 0.004}, // foot, shank, thigh, trunk of a man of 80 kg, both sides
     {0.455, 6.9, 0.255, 0.087},
     {0.437, 22.7, 0.258, 0.467},
     {0.533, 48.2, 0.334, 3.4}}};

struct State {
    std::array<double, links> q, rate, acceleration; // of each joint, from the link before
};
using Moments = std::array<double, links>; // base first

// Joint angles around those of a lift (foot, shank, thigh, trunk), within `spread` radians.
std::vector<State> random_states(double spread) {
    constexpr std::array<double, links> lift{2.60, -1.50, 1.35, -1.50};
    std::mt19937_64 random(3);
    const auto in = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(random() >> 11) / 9007199254740992.0;
    };
    std::vector<State> all(states);
    for (State& state : all)
        for (std::size_t i = 0; i < links; ++i) {
            state.q[i] = lift[i] + in(-spread, spread);
            state.rate[i] = in(-5, 5);
            state.acceleration[i] = in(-50, 50);
        }
    return all;
}

// The chain is built once, as the rival's is.
class Ours {
public:
    Ours() {
        for (std::size_t i = 0; i < links; ++i)
            moving_[i] = {parts[i].length, parts[i].mass, parts[i].centre, parts[i].inertia, 0, 0, 0};
    }
    Moments operator()(const State& state) {
        double phi = 0, omega = 0, alpha = 0;
        for (std::size_t i = 0; i < links; ++i) {
            moving_[i].phi = phi += state.q[i];
            moving_[i].omega = omega += state.rate[i];
            moving_[i].alpha = alpha += state.acceleration[i];
        }
        std::array<JointLoad, links> loads;
        solve_moving_chain({}, moving_, loads);
        return {loads[0].moment, loads[1].moment, loads[2].moment, loads[3].moment};
    }

private:
    std::array<MovingLink, links> moving_;
};

Moments sines(const State& state) {
    Moments answer{};
    double phi = 0;
    for (std::size_t i = 0; i < links; ++i) {
        phi += state.q[i];
        answer[0] += std::cos(phi) + 2 * std::sin(phi);
    }
    return answer;
}

double processor_nanoseconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e9 * static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec);
}

double median(std::vector<double> of) {
    std::nth_element(of.begin(), of.begin() + static_cast<std::ptrdiff_t>(of.size() / 2), of.end());
    return of[of.size() / 2];
}

volatile double sink; // keeps the compiler from dropping the answers

template <class Solver>
double nanoseconds_a_state(const std::vector<State>& all, Solver solver) {
    const double start = processor_nanoseconds();
    double sum = 0;
    for (const State& state : all)
        sum += solver(state)[0];
    sink = sum;
    return (processor_nanoseconds() - start) / static_cast<double>(all.size());
}

#ifdef AMENTUM_WITH_KDL
class Kdl {
public:
    Kdl() = default;
    Moments operator()(const State& state) {
        for (unsigned i = 0; i < links; ++i) {
            q_(i) = state.q[i];
            rate_(i) = state.rate[i];
            acceleration_(i) = state.acceleration[i];
        }
        solver_.CartToJnt(q_, rate_, acceleration_, no_push_, moments_);
        return {moments_(0), moments_(1), moments_(2), moments_(3)};
    }
    Kdl(const Kdl&) = delete;
    Kdl& operator=(const Kdl&) = delete;

private:
    static KDL::Chain chain() {
        KDL::Chain chain;
        for (const Part& part : parts)
            chain.addSegment(KDL::Segment(
                KDL::Joint(KDL::Joint::RotZ), KDL::Frame(KDL::Vector(part.length, 0, 0)),
                KDL::RigidBodyInertia(part.mass, KDL::Vector(part.centre - part.length, 0, 0),
                                      KDL::RotationalInertia(part.inertia, part.inertia, part.inertia))));
        return chain;
    }
    KDL::Chain chain_ = chain();
    KDL::JntArray q_{links}, rate_{links}, acceleration_{links}, moments_{links};
    KDL::Wrenches no_push_ = KDL::Wrenches(links, KDL::Wrench::Zero());
    KDL::ChainIdSolver_RNE solver_{chain_, KDL::Vector(0, -lift_gravity, 0)};
};

bool same_answers(const std::vector<State>& all, Kdl& kdl) {
    Ours ours;
    for (const State& state : all) {
        const Moments a = ours(state), b = kdl(state);
        for (std::size_t i = 0; i < links; ++i)
            if (!(std::abs(a[i] - b[i]) <= 1e-9 * std::max(1.0, std::abs(b[i])) + 1e-9))
                return false;
    }
    return true;
}
#endif

bool compare(const char* name, const std::vector<State>& all) {
    std::vector<double> mine, theirs, angles, ratios;
    Ours ours;
#ifdef AMENTUM_WITH_KDL
    Kdl kdl;
    if (!same_answers(all, kdl))
        return false;
#endif
    for (int repeat = 0; repeat < 50; ++repeat) {
        const double us = nanoseconds_a_state(all, [&](const State& state) { return ours(state); });
        double them = 0;
#ifdef AMENTUM_WITH_KDL
        them = nanoseconds_a_state(all, [&](const State& state) { return kdl(state); });
#endif
        const double least = nanoseconds_a_state(all, sines);
        if (repeat > 0) { // the first warms up
            angles.push_back(least);
            mine.push_back(us);
            theirs.push_back(them);
            ratios.push_back(them / us);
        }
    }
    std::printf("%-22s %8.0f %8.0f %8.0f %9.1fx\n", name, median(mine), median(angles), median(theirs),
                median(ratios));
    return true;
}

} // namespace

int main() {
    std::printf("%-22s %8s %8s %8s %10s   (goal: 10x)\n", "nanoseconds a state", "ours", "sines", "KDL",
                "KDL/ours");
    if (!compare("postures of a lift", random_states(0.4)) || !compare("any angles", random_states(4))) {
        std::fprintf(stderr, "the two do not answer the same moments\n");
        return 1;
    }
#ifndef AMENTUM_WITH_KDL
    std::printf("SKIPPED the rival: orocos-kdl is not installed\n");
#endif
}
