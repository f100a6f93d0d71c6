// Reads a C3D file held in memory, whole or cut into pieces.
#pragma once

#include "recordings/c3d_forces.h"

namespace amentum::tests {

inline Result<ForceRecording> read_c3d(std::string_view bytes, RecordingGiven given = {},
                                       std::size_t piece = 0) {
    C3dForceReader reader(std::move(given));
    const std::size_t each = piece == 0 ? std::max<std::size_t>(bytes.size(), 1) : piece;
    for (std::size_t at = 0; at < bytes.size(); at += each)
        if (const auto taken = reader.take(bytes.substr(at, each)); !taken)
            return taken.refusal();
    return reader.finish();
}

inline bool has_note(const ForceRecording& recording, std::string_view part) {
    for (const auto& note : recording.notes)
        if (note.find(part) != std::string::npos)
            return true;
    return false;
}

} // namespace amentum::tests
