// How an annealing search cools, and which losses it takes on the way [Kirkpatrick1983].
//
// A loss is taken with the chance exp(-loss / temperature): where loss <= temperature ln(1 / u), u drawn from the middles
// of 1,024 equal parts of (0, 1). The temperature falls by one factor a step, while the points a unit broken costs rise by
// another. Plain arithmetic throughout, so that no library's logarithm decides what is taken.
// Units: points.
#pragma once

#include "planning/inside/seeded_stream.h"

#include <functional>

namespace amentum {

inline constexpr int steps_of_cooling = 200;
inline constexpr double lightest_breach = 2,
                        heaviest_breach = 60; // points of a unit broken; found on random problems

double drawn_threshold(SeededStream& stream); // ln(1 / u)

// The factor that leads from one number to the other when it is taken once a step; both above 0.
double factor_a_step(double from, double to);

// Cools a state that can do these: change() itself at random (false: nothing was changed), take_back() the change,
// keep() what it is with nothing broken, and say its points() and broken(). False: asked to stop.
template <class State>
bool cool(State& state, SeededStream& stream, std::int64_t moves, double hottest, double coldest,
          const std::function<bool(double share)>& going = {}) {
    double temperature = hottest, breach = lightest_breach;
    const double cooling = factor_a_step(hottest, coldest);
    const double heavier = factor_a_step(lightest_breach, heaviest_breach);
    for (int step = 0; step < steps_of_cooling; ++step) {
        if (going && !going(double(step) / steps_of_cooling))
            return false;
        double value = state.points() - breach * state.broken();
        for (std::int64_t i = 0; i < moves / steps_of_cooling; ++i) {
            if (!state.change())
                continue;
            const double broken = state.broken();
            const double next = state.points() - breach * broken;
            if (value - next > temperature * drawn_threshold(stream)) {
                state.take_back();
                continue;
            }
            value = next;
            if (broken <= 0)
                state.keep();
        }
        temperature *= cooling;
        breach *= heavier;
    }
    return true;
}

} // namespace amentum
