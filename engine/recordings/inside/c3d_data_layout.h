// How do the data of a C3D file lie: frames of points, then analog rows (one value a channel)?
//
//   POINT:USED, RATE, SCALE, FRAMES, LONG_FRAMES, DATA_START; ANALOG:USED, RATE, FORMAT;
//   TRIAL:ACTUAL_START_FIELD, ACTUAL_END_FIELD (low word, high word). A parameter is believed before the header
//   [GuideC3D]. Frames: TRIAL first, then LONG_FRAMES, FRAMES, header; the last two are no answer at 65,535, unless
//   nothing else is there.
// Refusals: unreadable_file; wrong_rate for rates that do not fit each other.
#pragma once

#include "recordings/c3d_parameters.h"

namespace amentum {

struct C3dDataLayout {
    C3dProcessor processor;
    C3dStorage storage;
    bool unsigned_analog;
    std::uint64_t points;
    std::uint64_t channels;
    std::uint64_t samples_a_frame; // analog rows
    std::uint64_t frames;
    std::string frames_told_by; // "POINT:FRAMES"
    double frames_a_second;     // 0 when the file has no points and does not say
    double rate_hz;             // analog rows a second
    std::uint64_t data_at;      // bytes before the data
    std::vector<std::string> notes;

    std::uint64_t value_bytes() const { return storage == C3dStorage::integer ? 2 : 4; }
    std::uint64_t row_bytes() const { return channels * value_bytes(); }
    std::uint64_t point_bytes() const { return points * 4 * value_bytes(); }
    std::uint64_t frame_bytes() const { return point_bytes() + samples_a_frame * row_bytes(); }
    std::uint64_t data_end() const { return data_at + frames * frame_bytes(); }
};

Result<C3dDataLayout> c3d_data_layout(const C3dHead& head);

} // namespace amentum
