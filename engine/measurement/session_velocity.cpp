#include "measurement/session_velocity.h"

#include "measurement/measurement_error.h"

#include <cmath>
#include <numeric>

namespace amentum {
namespace {

Result<double> standard_error_of_session(double throws, const VelocityErrors& errors) {
    if (!(throws >= 1 && throws <= 60))
        return refuse_range("throws", throws, 1, 60, "", "");
    if (!(errors.between_throws >= 0))
        return refuse_range("between_throws", errors.between_throws, 0, 10, "", "");
    if (!(errors.between_sessions >= 0))
        return refuse_range("between_sessions", errors.between_sessions, 0, 10, "", "");
    return std::hypot(errors.between_sessions, errors.between_throws / std::sqrt(throws));
}

} // namespace

Result<Estimate> measure_session_velocity(const std::vector<double>& speeds, const VelocityErrors& errors) {
    const auto count = static_cast<double>(speeds.size());
    const auto error = standard_error_of_session(count, errors);
    if (!error)
        return error.refusal();
    return Estimate{std::accumulate(speeds.begin(), speeds.end(), 0.0) / count, *error};
}

Result<double> smallest_session_change(int throws, const VelocityErrors& errors, double z) {
    const auto error = standard_error_of_session(throws, errors);
    if (!error)
        return error.refusal();
    return smallest_detectable_change(*error, z);
}

} // namespace amentum
