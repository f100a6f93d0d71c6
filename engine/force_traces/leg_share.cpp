#include "force_traces/leg_share.h"

#include "force_traces/trace_errors.h"

#include <cmath>

namespace amentum {
namespace {

double impulse_of_plate(const PlateForces& plate, const ZeroLine& line, SampleSpan span, double rate_hz) {
    double sum = 0;
    for (std::size_t i = span.from; i < span.to; ++i)
        sum += static_cast<double>(plate.vertical[i]) - line.at(static_cast<double>(i) / rate_hz);
    return sum / rate_hz;
}

} // namespace

std::optional<LegShare> leg_share(const ForceRecording& recording, const PlateZero& zero, double sample_sd_n,
                                  SampleSpan span) {
    double left = 0, right = 0;
    bool has_left = false, has_right = false;
    for (std::size_t p = 0; p < recording.plates.size(); ++p) {
        const auto& plate = recording.plates[p];
        const double impulse = impulse_of_plate(plate, zero.lines[p], span, recording.rate_hz);
        left += plate.side == Side::left ? impulse : 0;
        right += plate.side == Side::right ? impulse : 0;
        has_left = has_left || plate.side == Side::left;
        has_right = has_right || plate.side == Side::right;
    }
    const double both = left + right;
    if (!has_left || !has_right || span.length() < 2 || !(both > 0))
        return std::nullopt;
    // The noise and zero error of the total, half of its variance each plate.
    const double seconds = static_cast<double>(span.length()) / recording.rate_hz;
    const double each =
        root_of_squares(zero.error_n * seconds, sample_sd_n * std::sqrt(seconds / recording.rate_hz)) /
        std::sqrt(2.0);
    return LegShare{100 * (left - right) / both,
                    200 * root_of_squares(right * each, left * each) / (both * both)};
}

} // namespace amentum
