// Which plates or channels of a C3D file are meant; see c3d_forces.h.
#pragma once

#include "recordings/inside/c3d_channels.h"

namespace amentum {

// A plate, or a channel by itself; counted from 1, the other one 0.
struct C3dChoice {
    int plate;
    int channel;
    friend bool operator==(const C3dChoice&, const C3dChoice&) = default;
};

// A number counts plates when the file has any, else channels; any other word is the label of a channel.
Result<C3dChoice> find_c3d_choice(const std::vector<C3dPlate>& plates, const C3dChannels& channels,
                                  const std::string& asked);

// One or two, as named, or all plates of the file when it has no more than two.
Result<std::vector<C3dChoice>> choose_c3d_plates(const RecordingGiven& given,
                                                 const std::vector<C3dPlate>& plates,
                                                 const C3dChannels& channels);

} // namespace amentum
