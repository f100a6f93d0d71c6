// What do the joints of the lead leg do at foot contact or release, for the ground force measured?
//
// Foot, shank and thigh from the floor up (solve_chain), the ground force at the centre of pressure, each segment's
// accelerations when they are known. Without them the answer is static and says so: at an impact they matter.
// Sign: positive pushes the foot down, straightens the knee, straightens the hip.
// Band: each given number moved by its error, half differences added in squares (first order, independent); body and
// accelerations are taken as they are.
// Units: N, m, degrees, m/s2, rad/s2. Ranges: vertical force 0 to 5 body weights, horizontal within +-3, shin -60 to 80
// degrees, thigh -45 to 120, the two together (the knee's bend) -10 to 150, their error 0 to 20, centre of pressure between
// heel and toe (out_of_range with the field otherwise). Accelerations of one part only: missing_field.
// Published for comparison: braking shear 0.72 body weights under the lead leg of 7 pitchers [MacWilliams1998].
// What it cannot tell: sideways force (42 % of body weight under a windmill stride foot [Guido2009]), muscles working
// against each other, whether more is better.
// Example: 1000 N straight up, 5 cm ahead of the ankle of a straight upright leg, foot of 1 kg with its centre there too:
// ankle 49.5 N m, knee -49.5 (held from behind), hip 49.5
#pragma once

#include "body_mechanics/body.h"
#include "values/interval.h"

#include <string>
#include <vector>

namespace amentum {

struct SegmentAcceleration {
    Vector2 centre;     // of the mass centre, m/s2
    double turning = 0; // rad/s2, positive from x to y
};

struct LandingInstant {
    Force force_x; // forward positive: braking is negative
    Force force_y;
    Length pressure_ahead;                                              // of the ankle
    Angle shin, thigh;                                                  // as in setup.h
    std::optional<SegmentAcceleration> foot, shank, thigh_acceleration; // all or none
    Angle angle_error = Angle::degrees(3);          // of shin and thigh each (proposal, no source)
    Length pressure_error = Length::centimetres(1); // (proposal, no source)
    double force_error_share = 0.02;                // of each force (proposal, no source)
};

struct LeadLegLoads {
    Estimate ankle, knee, hip; // N m, extending positive
    bool accelerations_used;
    double force_y_body_weights, force_x_body_weights;
    Angle knee_flexion;
    std::array<Vector2, 5> points; // heel, toe, ankle, knee, hip
    std::vector<std::string> warnings;
};

Result<LeadLegLoads> measure_lead_leg(const Body& body, const LandingInstant& instant);

} // namespace amentum
