#include "inference/test_scale.h"

#include <cassert>
#include <cmath>

namespace amentum {

DatedValue on_scale(Scale scale, int day, double value, double standard_error) {
    if (scale == Scale::linear)
        return {day, value, standard_error * standard_error};
    assert(value > 0);
    const double fraction = standard_error / value;
    return {day, std::log(value), fraction * fraction};
}

BackOnUnit back_on_unit(Scale scale, const StateOnDay& state, double z) {
    const double half = z * std::sqrt(state.variance);
    if (scale == Scale::linear)
        return {state.mean, {state.mean - half, state.mean + half}};
    return {std::exp(state.mean), {std::exp(state.mean - half), std::exp(state.mean + half)}};
}

double difference_on_unit(Scale scale, double at, double difference) {
    if (scale == Scale::linear)
        return difference;
    return std::exp(at + difference) - std::exp(at);
}

} // namespace amentum
