#include "measurement/radar.h"

#include <cmath>

namespace amentum {

Result<RadarSpeed> radar_speed(Speed read, Angle off_the_line) {
    const double v = read.metres_per_second();
    if (!(v > 0 && v <= 100))
        return refuse_range("speed", v, 0, 100, "m/s", "Please check the unit.");
    if (!(off_the_line.degrees() >= 0 && off_the_line.degrees() <= 45))
        return refuse_range("radar_angle", off_the_line.degrees(), 0, 45, "degrees",
                            "Further off the line the reading says too little; move the radar.");
    const Speed along = read / std::cos(off_the_line.radians());
    const double error =
        along.metres_per_second() * std::tan(off_the_line.radians()) * Angle::degrees(3).radians();
    RadarSpeed result{along, error, {}};
    if (off_the_line.degrees() > 20)
        result.warnings = {
            "The radar stood more than 20 degrees off the ball's path: the correction is large and "
            "depends on the angle; move it nearer to the line."};
    return result;
}

} // namespace amentum
