// Which kind of file is it, and what forces are in it? One reader for all, fed as the bytes come.
//
// A file is C3D when its second byte is 80 and its first 512 bytes hold a zero byte (text never does) [GuideC3D, "The
// header section"]; everything else is read as delimited text. Then delimited_text.h or c3d_forces.h stands.
// Refusals: theirs.
// What it cannot tell: a file that only looks like one of the two.
// Example: read_recording("t,Fz\n0,700\n0.001,701\n", {})->rate_hz == 1000
#pragma once

#include "recordings/force_recording.h"

#include <memory>
#include <string_view>

namespace amentum {

class RecordingReader {
public:
    explicit RecordingReader(RecordingGiven given);
    ~RecordingReader();
    RecordingReader(RecordingReader&&) noexcept;
    RecordingReader& operator=(RecordingReader&&) noexcept;

    // After a refusal every further call gives the same refusal.
    Result<Done> take(std::string_view piece);
    Result<ForceRecording> finish();

private:
    struct State;
    std::unique_ptr<State> state_;
};

Result<ForceRecording> read_recording(std::string_view whole, const RecordingGiven& given);

} // namespace amentum
