// Where does a balance change its sign? Walks [low, high] in equal steps, then closes in on the first crossing.
//
// f may answer NaN where there is no posture; a crossing is looked for only between neighbours that both have one.
// Closing in is Alefeld, Potra and Shi's algorithm 748 of Boost.Math, to 46 bits.
#pragma once

#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <limits>
#include <optional>

namespace amentum {

inline constexpr double no_posture_here = std::numeric_limits<double>::quiet_NaN();

struct BalanceRoot {
    std::optional<double> at;
    bool any_posture = false;   // f had a value somewhere
    double nearest_miss = 0;    // the value of f closest to zero, when there is no crossing
    double nearest_at = 0;
};

template <class F>
BalanceRoot find_balance(F f, double low, double high, int steps) {
    BalanceRoot answer;
    double before = f(low), x_before = low;
    const auto note = [&](double x, double value) {
        if (std::isnan(value))
            return;
        if (!answer.any_posture || std::abs(value) < std::abs(answer.nearest_miss)) {
            answer.nearest_miss = value;
            answer.nearest_at = x;
        }
        answer.any_posture = true;
    };
    note(low, before);
    for (int i = 1; i <= steps; ++i) {
        const double x = low + (high - low) * i / steps, now = f(x);
        note(x, now);
        if (before == 0) {
            answer.at = x_before;
            return answer;
        }
        if (before * now <= 0) { // false beside a NaN
            std::uintmax_t most = 60;
            const auto [a, b] =
                boost::math::tools::toms748_solve(f, x_before, x, before, now, boost::math::tools::eps_tolerance<double>(46), most);
            answer.at = (a + b) / 2;
            return answer;
        }
        before = now;
        x_before = x;
    }
    return answer;
}

} // namespace amentum
