// How fast was the ball, when the radar stood off its line?
//
//   v = v_read / cos a, a the angle between the radar's line and the ball's path (geometry of the Doppler
//     shift)
// Units: m/s, rad. Valid: a from 0 to 45 degrees, speed above 0 to 100 m/s (what is plausible is the test
//   kind's). Refusals: outside.
// Method error: v tan a x 3 degrees, for an angle read by eye (proposal of this project, no source); 0 in
//   line.
// Warning above 20 degrees.
// What it cannot tell: the device's own error. One unit over-read by 1.7 m/s and showed no cosine loss up to
//   about 20 degrees [SportsBiomech2021]; two pocket units differed by up to 5.5 km/h [JSportsSci2021Radar].
//   Speeds read with two devices, or at two places of the flight, are never compared.
// Example: 84.57 mph read at 20 degrees is 90 mph
#pragma once

#include "values/quantity.h"
#include "values/refusal.h"

#include <string>
#include <vector>

namespace amentum {

struct RadarSpeed {
    Speed speed;
    double method_error; // m/s
    std::vector<std::string> warnings;
};

Result<RadarSpeed> radar_speed(Speed read, Angle off_the_line);

} // namespace amentum
