// Ground reaction forces as an instrument wrote them down: equal time steps, one series a plate, newtons.
//
// Vertical is positive upward, whatever the file's convention was (the reader turns the sign and says so in `notes`).
// Nothing is smoothed, zeroed or cut here: that belongs to force_traces, which reports what it corrects.
// Samples are kept as 32-bit floats: 24 bits resolve 0.0003 N at 5,000 N, finer than any 16-bit plate.
// Contract: one or two plates, all series equally long (lateral may be empty), rate_hz within the limits below.
#pragma once

#include "values/reading.h"
#include "values/refusal.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace amentum {

inline constexpr double lowest_rate_hz = 50;
inline constexpr double highest_rate_hz = 20000;
inline constexpr std::size_t most_samples = std::size_t{1} << 22; // a plate: 35 minutes at 2,000 Hz

struct PlateForces {
    std::string name; // the column's or the plate's name as the file has it
    Side side =
        Side::none; // the foot on it: by the file's words or by what the person said; none when one plate
    std::vector<float> vertical; // N
    std::vector<float> lateral;  // N, across the direction the athlete faces; empty when the file has none
};

struct ForceRecording {
    double rate_hz;
    std::vector<PlateForces> plates;
    std::vector<std::string> notes; // whole sentences: what was found and assumed while reading

    std::size_t samples() const { return plates.empty() ? 0 : plates.front().vertical.size(); }
    double seconds() const { return static_cast<double>(samples()) / rate_hz; }
};

enum class ForceUnit { newton, kilogram, volt };
template <>
inline constexpr std::array<std::pair<ForceUnit, std::string_view>, 3> words_of<ForceUnit>{
    {{ForceUnit::newton, "N"}, {ForceUnit::kilogram, "kg"}, {ForceUnit::volt, "V"}}};

// What a person says about a file; whatever is left out is found in the file or refused.
struct RecordingGiven {
    std::optional<double> rate_hz; // needed when neither a time column nor a header line tells it
    std::optional<ForceUnit> unit;
    std::optional<double> newtons_per_volt; // needed with V
    std::vector<std::string> vertical;      // names or numbers (from 1) of columns or plates; left foot first
    std::vector<std::string> lateral;       // likewise, for side bounds
    bool left_foot_on_second = false;       // two plates: the first one found is the right foot's
};

} // namespace amentum
