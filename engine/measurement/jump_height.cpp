#include "measurement/jump_height.h"

#include "measurement/ball_flight.h"

namespace amentum {

Result<Length> jump_height_from_flight_time(Duration flight_time) {
    const double t = flight_time.seconds();
    if (!(t >= 0.1 && t <= 1.2))
        return refuse_range("flight_time", t, 0.1, 1.2, "s", "Please check the unit: 550 ms is 0.550 s.");
    return Length::metres(standard_gravity * t * t / 8);
}

Result<Length> jump_height_from_take_off_velocity(Speed take_off) {
    const double v = take_off.metres_per_second();
    if (!(v >= 0.4 && v <= 6))
        return refuse_range("velocity", v, 0.4, 6, "m/s", "Please check the unit.");
    return Length::metres(v * v / (2 * standard_gravity));
}

} // namespace amentum
