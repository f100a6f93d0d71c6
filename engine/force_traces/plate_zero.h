// What does the empty plate read, and how far does that wander?
//
// Unloaded spans are found, not assumed: below 150 N, flat for at least 80 ms (within 5 SD, at least 10 N, of their
// level), and within 60 N of the lowest such level, so that a deep dip of a light athlete is not taken for flight.
//   zero(t) = a + b t    least squares over the samples of all unloaded spans, each plate by itself; b only when two
//                        spans lie a second apart and b exceeds three of its standard errors; else zero = mean
// The line is taken off the force. A plate whose unloaded samples are all alike, or one fifth of them exactly zero and
// none below, was set to zero by its device: nothing is taken off, and that is said, for an offset cannot be seen then.
// Units: N, s. Refusals (offset_too_large): |zero| above 50 N, or |b| above 5 N/s.
// An offset that stays in both weighing and jump lowers a jump: 5 N by 5.3 mm at 80 kg and 0.41 m (closed form:
//   change of speed = -v offset / W). The limits 150, 80, 60, 50, 5 are this project's proposals.
// What it cannot tell: an offset when nobody left the plate, or when the device hides it; a wrong calibration.
// Example: flight reads +5.8 N -> 5.8 N are taken off every sample, and the words say so.
#pragma once

#include "force_traces/force_signal.h"

namespace amentum {

struct ZeroLine {
    double start_n = 0;
    double drift_n_per_s = 0;
    double at(double seconds) const { return start_n + drift_n_per_s * seconds; }
};

struct PlateZero {
    std::vector<SampleSpan> unloaded;
    std::vector<ZeroLine> lines; // one a plate
    double sd_n = 0;             // of the unloaded total about its line; 0 when hidden or never unloaded
    double error_n = 0;          // standard error of the total's zero: sd / sqrt(unloaded samples)
    bool seen = false;           // an unloaded span with its noise was there
    std::vector<std::string> corrections; // whole sentences
};

Result<PlateZero> measure_plate_zero(const ForceRecording& recording, const ForceSignal& signal);

// Takes the lines of all plates off the signal.
void subtract_zero(const PlateZero& zero, ForceSignal& signal);

} // namespace amentum
