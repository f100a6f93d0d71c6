// What force acted on all plates together, sample by sample?
//
//   F(i) = sum of the plates' vertical forces; likewise sideways
// Units: N, Hz; samples a second 180 to 20,000. Nothing is smoothed: smoothing the force moves the numbers by about
//   3 % [Harry2022] and lowers the early forces of a pull by 1.2 to 3.3 % [DosSantos2018].
// Refusals: fewer than 180 samples a second (wrong_rate): the instant of take-off is read on the sample grid, half a
//   sample late on average, so a jump reads v / 2 times the sample time too low; from 1,000 Hz down that is 0.1 to
//   0.2 cm at 500 Hz, 0.5 to 0.6 cm at 200 Hz, 1.3 to 1.5 cm at 100 Hz [SamplingPoster2010].
//   A plate that stays at its highest value for 10 ms and 8 samples after a steep rise (saturated_plate; the two
//   numbers are this project's proposal). A sample that is not a number (wrong_type).
// What it cannot tell: clipping that lasts less than 10 ms; a plate calibrated wrongly.
// Example: 1,000 Hz, two plates of 400 N each -> 800 N
#pragma once

#include "recordings/force_recording.h"
#include "values/refusal.h"

#include <cstddef>
#include <string>
#include <vector>

namespace amentum {

inline constexpr double gravity_at_plate = 9.80665; // m/s^2, the standard value [NistSp811, B.8]
inline constexpr double lowest_jump_rate_hz = 180;

struct SampleSpan { // samples from, from + 1, ... to - 1
    std::size_t from;
    std::size_t to;
    std::size_t length() const { return to - from; }
    std::size_t middle() const { return from + (to - from) / 2; }
};

struct ForceSignal {
    double rate_hz;
    std::vector<double> vertical; // N, all plates together
    std::vector<double> lateral;  // N, all plates together; empty when the file has none

    double step_s() const { return 1 / rate_hz; }
    double seconds(std::size_t sample) const { return static_cast<double>(sample) / rate_hz; }
    std::size_t samples_in(double seconds) const { // rounded to the nearest
        return static_cast<std::size_t>(seconds * rate_hz + 0.5);
    }
};

Result<ForceSignal> sum_plates(const ForceRecording& recording);

// The words for a low rate, or nothing from 500 Hz on.
std::string describe_rate_bias(double rate_hz);

} // namespace amentum
