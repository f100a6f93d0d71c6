// Which vertical ground forces does a C3D file hold? Read as it comes, in pieces of any size.
//
//   value = (raw - OFFSET) x SCALE x GEN_SCALE, in double, for whole numbers and reals alike
//   force of a plate: types 1 and 2 a channel each; 3 sums of two and four; 4 CAL_MATRIX x channels
//   lab force: by CORNERS; vertical is the lab axis nearest to the plate's normal [GuideC3D, "Force platforms"]
// Sign: files hold either the force on the athlete or the force on the plate. The sum of F |F| over time must be upward,
//   because somebody stood there; otherwise all forces of the plate are turned, with a note. A plate that never read
//   50 N follows the other one.
// FORCE_PLATFORM:ZERO (frames with empty plates): what the plate reads there is said in a note; nothing is subtracted.
// Which plates: one or two are read as they are; of more, RecordingGiven.vertical names them by number. It may also
//   name analog channels by label, in files that describe no plate. Lateral: the lab axis RecordingGiven.lateral names.
// Units: N, Hz. Valid: 50 to 20,000 Hz, whole 16-bit or 32-bit values, up to 4,194,304 samples a plate and 12,582,912
//   over all series kept.
// Refusals: unreadable_file naming GROUP:PARAMETER, byte or block; wrong_rate; missing_field when a person must choose;
//   out_of_range when the recording is too long. Types of plate from 5 on are refused by their number.
// What it cannot tell: which way the athlete faced; which foot was on which plate, unless labels say so; whether the
//   plate was calibrated. It keeps at most one row of channels beside the samples, however long the file is.
// Example: C3dForceReader reader({}); reader.take(bytes); reader.finish()->plates[0].vertical
#pragma once

#include "recordings/force_recording.h"

#include <memory>
#include <string_view>

namespace amentum {

inline constexpr std::size_t most_c3d_samples_kept = 3 * most_samples; // 48 MB of floats, all series together

class C3dForceReader {
public:
    explicit C3dForceReader(RecordingGiven given);
    ~C3dForceReader();
    C3dForceReader(C3dForceReader&&) noexcept;
    C3dForceReader& operator=(C3dForceReader&&) noexcept;

    // After a refusal every further call gives the same refusal.
    Result<Done> take(std::string_view piece);
    Result<ForceRecording> finish();

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace amentum
