#include "force_traces/jump_events.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double lead_s = 0.030;
constexpr double calm_s = 0.1;
constexpr double rest_s = 0.5;

} // namespace

double contact_threshold_n(const PlateZero& zero) {
    return std::max(10.0, 5 * zero.sd_n);
}

std::size_t samples_in_a_row(double rate_hz) {
    return std::max<std::size_t>(5, static_cast<std::size_t>(std::ceil(0.005 * rate_hz)));
}

std::vector<AirTime> air_times(const ForceSignal& signal, const PlateZero& zero) {
    const auto& force = signal.vertical;
    const double threshold = contact_threshold_n(zero);
    const std::size_t row = samples_in_a_row(signal.rate_hz);
    std::vector<AirTime> found;
    for (const auto& span : zero.unloaded) {
        AirTime air;
        std::size_t loaded = 0;
        for (std::size_t i = span.middle(); i-- > 0 && loaded < row;) {
            loaded = force[i] > threshold ? loaded + 1 : 0;
            if (loaded == row)
                air.take_off = i + row;
        }
        loaded = 0;
        for (std::size_t i = span.middle(); i < force.size() && loaded < row; ++i) {
            loaded = force[i] > threshold ? loaded + 1 : 0;
            if (loaded == row)
                air.landing = i + 1 - row;
        }
        const bool same = !found.empty() && found.back().take_off == air.take_off; // a spike split one flight
        if (!same)
            found.push_back(air);
    }
    return found;
}

std::optional<MovementStart> movement_start(const ForceSignal& signal, const QuietStanding& quiet,
                                            std::size_t until) {
    const double band = std::max(5 * quiet.sd_n, 0.005 * quiet.weight_n);
    const std::size_t row = samples_in_a_row(signal.rate_hz), calm = signal.samples_in(calm_s);
    std::optional<MovementStart> found;
    std::size_t inside = calm, above = 0, below = 0;
    for (std::size_t i = quiet.span.to; i < until; ++i) {
        const double off = signal.vertical[i] - quiet.weight_n;
        inside = std::abs(off) <= band ? inside + 1 : 0;
        above = off > band ? above + 1 : 0;
        below = off < -band ? below + 1 : 0;
        if (inside >= calm)
            found.reset();
        if (!found && (above == row || below == row)) {
            const std::size_t crossing = i + 1 - row;
            const std::size_t lead = signal.samples_in(lead_s); // less than the quiet second
            found = MovementStart{crossing - lead, crossing, above == row};
        }
    }
    return found;
}

std::optional<std::size_t> rest_after(const ForceSignal& signal, const QuietStanding& quiet,
                                      SampleSpan within) {
    const double band = std::max(5 * quiet.sd_n, 0.05 * quiet.weight_n);
    const std::size_t needed = signal.samples_in(rest_s);
    std::size_t inside = 0;
    for (std::size_t i = within.from; i < within.to; ++i) {
        inside = std::abs(signal.vertical[i] - quiet.weight_n) <= band ? inside + 1 : 0;
        if (inside == needed)
            return i + 1 - needed;
    }
    return std::nullopt;
}

} // namespace amentum
