#include "inference/regression_to_the_mean.h"

#include "values/interval.h"

#include <cassert>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

double normal_density(double z) {
    return std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
}

} // namespace

double reliability_of(const TestedGroup& group) {
    assert(group.between_sd > 0 && group.error_sd > 0);
    const double between = group.between_sd * group.between_sd;
    return between / (between + group.error_sd * group.error_sd);
}

double expected_return(const TestedGroup& group, double first_test) {
    return (1 - reliability_of(group)) * (group.mean - first_test);
}

double expected_return_of_those_below(const TestedGroup& group, double cut) {
    const double observed_sd = std::hypot(group.between_sd, group.error_sd);
    const double a = (cut - group.mean) / observed_sd;
    return (1 - reliability_of(group)) * observed_sd * normal_density(a) / normal_cdf(a);
}

} // namespace amentum
