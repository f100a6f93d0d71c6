#include "measurement/one_rep_max.h"

#include "measurement/repetition_chart.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

using enum OneRepMaxEquation;
constexpr std::array seven{epley, brzycki, lander, lombardi, mayhew, oconner, wathan};

double published_factor(OneRepMaxEquation equation, double n) {
    switch (equation) {
    case epley:
        return 1 + n / 30;
    case brzycki:
        return 36 / (37 - n);
    case brzycki_decimal:
        return 1 / (1.0278 - 0.0278 * n);
    case lander:
        return 100 / (101.3 - 2.67123 * n);
    case lombardi:
        return std::pow(n, 0.10);
    case mayhew:
        return 100 / (52.2 + 41.9 * std::exp(-0.055 * n));
    case oconner:
        return 1 + 0.025 * n;
    case wathan:
        return 100 / (48.8 + 53.8 * std::exp(-0.075 * n));
    case chart:
        return 1 / chart_fraction(n);
    }
    assert(!"every equation has a factor");
    return 1;
}

double factor(OneRepMaxEquation equation, double n) {
    if (n >= 2)
        return published_factor(equation, n);
    return 1 + (n - 1) * (published_factor(equation, 2) - 1);
}

// d ln f / dn, by a difference that stays on the published side of n.
double slope_of_log_factor(OneRepMaxEquation equation, double n) {
    const double low = std::max(1.0, n - 0.5);
    const double high = equation == chart ? std::min(most_chart_repetitions, n + 0.5) : n + 0.5;
    return std::log(factor(equation, high) / factor(equation, low)) / (high - low);
}

double relative_error(OneRepMaxEquation equation, double n, double reserve) {
    const double between_lifters = 0.010 * std::sqrt(n - 1);
    const double doubt = reserve > 0 ? 1.0 * slope_of_log_factor(equation, n) : 0.0;
    return std::hypot(spread_between_equations(n), between_lifters, doubt);
}

Result<double> repetitions_to_failure(OneRepMaxEquation equation, double reps, double reserve) {
    if (!(reps >= 1))
        return refuse_range("reps", reps, 1, most_repetitions, "",
                            "A set has at least one clean repetition.");
    if (!(reserve >= 0))
        return refuse_range("reps_in_reserve", reserve, 0, most_reserve, "",
                            "0 means the set ended at failure.");
    const auto too_far = [](std::string field, double given, double allowed, std::string why) {
        return Refusal{RefusalCode::method_does_not_apply, std::move(why), std::move(field),
                       format_shortest(given), "at most " + format_shortest(allowed)};
    };
    if (reserve > most_reserve)
        return too_far(
            "reps_in_reserve", reserve, most_reserve,
            "With more than 5 repetitions left, the guess of how many is too rough to estimate a maximum.");
    const double n = reps + reserve;
    const double most = equation == chart ? most_chart_repetitions : most_repetitions;
    if (n > most)
        return too_far(
            "reps", n, most,
            format_shortest(n) + " repetitions (with those in reserve) are too many to estimate a maximum; " +
                "take a heavier load, for at most " + format_shortest(most) + ", better 5 or fewer.");
    return n;
}

std::vector<std::string> warnings_of(double n) {
    if (n <= most_trusted_repetitions)
        return {};
    return {"More than 10 repetitions: the published equations part ways here by a tenth and more; a heavier "
            "set of 5 "
            "or fewer tells more."};
}

} // namespace

double spread_between_equations(double n) {
    double sum = 0, squares = 0;
    for (const auto equation : seven)
        sum += factor(equation, n);
    const double mean = sum / seven.size();
    for (const auto equation : seven)
        squares += std::pow(factor(equation, n) - mean, 2);
    return std::sqrt(squares / (seven.size() - 1)) / mean;
}

Result<OneRepMax> estimate_one_rep_max(OneRepMaxEquation equation, const RepetitionSet& set) {
    if (!(set.load.kilograms() > 0))
        return refuse_range("load", set.load.kilograms(), 0.5, 600, "kg", "A maximum needs a load.");
    const auto n = repetitions_to_failure(equation, set.reps, set.reps_in_reserve);
    if (!n)
        return n.refusal();
    return OneRepMax{set.load * factor(equation, *n), relative_error(equation, *n, set.reps_in_reserve), *n,
                     warnings_of(*n)};
}

Result<LoadForRepetitions> estimate_load_for_repetitions(OneRepMaxEquation equation, Mass one_rep_max,
                                                         double reps, double reps_in_reserve) {
    if (!(one_rep_max.kilograms() > 0))
        return refuse_range("one_rep_max", one_rep_max.kilograms(), 0.5, 600, "kg", "");
    const auto n = repetitions_to_failure(equation, reps, reps_in_reserve);
    if (!n)
        return n.refusal();
    const double fraction = 1 / factor(equation, *n);
    return LoadForRepetitions{one_rep_max * fraction, fraction, warnings_of(*n)};
}

} // namespace amentum
