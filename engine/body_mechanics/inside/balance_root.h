// Where does a balance change its sign? Walks [low, high] in equal steps, then closes in on the first crossing.
//
// f may answer NaN where there is no posture. Between a step with a posture and one without, the edge is found by bisection,
// so that a crossing just before it is not missed. A crossing at which f does not come to zero is a jump between two kinds
// of posture, not a balance: it is passed over. Closing in is Alefeld, Potra and Shi's algorithm 748 of Boost.Math.
#pragma once

#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <limits>
#include <optional>

namespace amentum {

inline constexpr double no_posture_here = std::numeric_limits<double>::quiet_NaN();

struct BalanceRoot {
    std::optional<double> at;
    bool any_posture = false; // f had a value somewhere
    double nearest_miss = 0;  // the value of f closest to zero, when there is no crossing
    double nearest_at = 0;
};

template <class F>
class BalanceWalk {
public:
    BalanceWalk(F f, double scale) : f_(f), zero_(1e-9 * scale) {}

    BalanceRoot walk(double low, double high, int steps) {
        double x_before = low, before = value_at(low);
        for (int i = 1; i <= steps && !answer_.at; ++i) {
            const double x = low + (high - low) * i / steps, now = value_at(x);
            if (std::isnan(before) == std::isnan(now))
                close_in(x_before, x, before, now);
            else if (std::isnan(now))
                to_edge(x_before, x, before);
            else
                to_edge(x, x_before, now);
            before = now;
            x_before = x;
        }
        return answer_;
    }

private:
    double value_at(double x) {
        const double value = f_(x);
        if (std::isnan(value))
            return value;
        if (!answer_.any_posture || std::abs(value) < std::abs(answer_.nearest_miss)) {
            answer_.nearest_miss = value;
            answer_.nearest_at = x;
        }
        answer_.any_posture = true;
        return value;
    }

    void close_in(double a, double b, double f_a, double f_b) {
        if (!(f_a * f_b <= 0)) // nor when both have no posture
            return;
        std::uintmax_t most = 60;
        const auto [low, high] = boost::math::tools::toms748_solve(
            f_, a, b, f_a, f_b, boost::math::tools::eps_tolerance<double>(46), most);
        const double at = (low + high) / 2;
        if (std::abs(f_(at)) <= zero_)
            answer_.at = at;
    }

    // `with` has a posture, `without` has none; the last posture between them decides.
    void to_edge(double with, double without, double f_with) {
        const double from = with, f_from = f_with;
        for (int i = 0; i < 24; ++i) {
            const double middle = (with + without) / 2, value = value_at(middle);
            (std::isnan(value) ? without : with) = middle;
            if (std::isnan(value))
                continue;
            f_with = value;
            if (f_from * value <= 0)
                break;
        }
        if (from < with)
            close_in(from, with, f_from, f_with);
        else
            close_in(with, from, f_with, f_from);
    }

    F f_;
    double zero_;
    BalanceRoot answer_;
};

// scale: of f, such as a metre; a root is where f is within 1e-9 of it.
template <class F>
BalanceRoot find_balance(F f, double low, double high, int steps, double scale = 1) {
    return BalanceWalk<F>(f, scale).walk(low, high, steps);
}

} // namespace amentum
