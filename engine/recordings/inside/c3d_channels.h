// The analog channels of a C3D file: value = (raw - OFFSET) x SCALE x GEN_SCALE, in UNITS [GuideC3D, "The analog group"].
#pragma once

#include "recordings/force_recording.h"
#include "recordings/inside/c3d_plates.h"

namespace amentum {

struct C3dChannels {
    std::uint64_t used;
    std::vector<std::string> labels, units;
    std::vector<double> scales, offsets;
    double general_scale;
    std::vector<std::string> notes;

    std::string name(std::size_t channel) const; // "analog channel 3 (Fz1)", from 0
};

Result<C3dChannels> c3d_channels(const C3dHead& head, const C3dDataLayout& layout);

// One term of a sum: share x the channel's value x newtons. The channel is counted from 1 as in the file.
Result<C3dTerm> c3d_term(C3dChannels& channels, int number, double share, double newtons,
                         const std::string& field);

// Newtons a unit of the channel's values, by what the person says, else by ANALOG:UNITS; refused when neither tells.
Result<double> newtons_of_channel(C3dChannels& channels, int number, const RecordingGiven& given);

} // namespace amentum
