// A lift as it is usually set up for a body of this height, and the ends of each setting's slider.
//
// Usual values: common practice, no source; lengths as shares of stature, rounded to what a tape on the floor shows. They
// fill what a request leaves out, and the answer says so; body_mechanics itself refuses a gap.
#pragma once

#include "body_mechanics/body.h"
#include "body_mechanics/lift_settings.h"
#include "values/facility.h"

namespace amentum {

struct SliderEnds {
    double low, high, step; // m or degrees
};

bool is_length(Setting);
double tape_step(const Facility&); // half an inch or a centimetre, in metres

double usual_value(const Body&, Lift, Setting, const Facility&); // m or degrees
SliderEnds slider_ends(const Body&, Lift, Setting, const Facility&);
SliderEnds load_slider(const Body&, const Facility&); // kg

// Which settings are missing for the lift to be set up: of two that exclude each other the usual one, unless one is there.
std::vector<Setting> settings_missing(const Setup&);

} // namespace amentum
