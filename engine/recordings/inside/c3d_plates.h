// The force plates of a C3D file, as sums of its analog channels [GuideC3D, "The force platform group"].
//
//   type 1, 2   Fx, Fy, Fz are channels 1, 2, 3
//   type 3      Fx = channel 1 + 2, Fy = channel 3 + 4, Fz = channel 5 + 6 + 7 + 8
//   type 4      F_i = sum over j of CAL_MATRIX(i, j) x channel j; i runs fastest in the file
// Lab axes of a plate with corners c1 (+x +y), c2 (-x +y), c3 (-x -y), c4 (+x -y): x along c1 + c4 - c2 - c3, y along
//   c1 + c2 - c3 - c4, z = x cross y. Vertical is the lab axis nearest to z.
// Refusals name FORCE_PLATFORM:..., the plate and what is allowed.
#pragma once

#include "recordings/inside/c3d_data_layout.h"

#include <array>

namespace amentum {

using Vector3 = std::array<double, 3>;

struct C3dPlate {
    int number;                   // from 1
    int type;                     // as the file says; 1 to 4 can be read
    std::vector<int> channels;    // from 1
    std::vector<Vector3> corners; // four, or none
    std::vector<double> matrix;   // 36 for type 4
};

// In the order of the file. Only what is in the file: whether a plate can be read is asked when it is wanted.
Result<std::vector<C3dPlate>> c3d_plates(const C3dHead& head);

// One force, in newtons: the sum over terms of weight x (raw - offset).
struct C3dTerm {
    std::size_t channel; // from 0
    double offset;
    double weight;
};
using C3dSeries = std::vector<C3dTerm>;

struct C3dPlateAxes {
    Vector3 x, y, z;            // the plate's axes in the lab
    std::optional<int> upright; // lab axis (0 x, 1 y, 2 z) nearest to z; none without corners
    double tilt_degrees;        // between z and that axis
};
Result<C3dPlateAxes> c3d_plate_axes(const C3dPlate& plate);

// Share of each of the plate's channels in the force along one direction given in plate axes.
Result<std::vector<double>> c3d_channel_shares(const C3dPlate& plate, const Vector3& direction);

} // namespace amentum
