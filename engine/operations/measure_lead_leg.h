// measure_lead_leg: joint moments of the lead leg at foot contact or release, from ground force, angles and accelerations.
//
// body_mechanics/lead_leg.h. Forces in newtons or in body weights, forward positive, so that braking is negative. Without
// accelerations the answer is of the leg held still under that force, and says so. Keeps nothing.
// Refuses a force missing or in two units, a leg no body can hold, accelerations of one part only.
// What it cannot tell: sideways force, muscles working against each other, whether more is better.
#pragma once

#include "operations/solve_setup.h"

namespace amentum {

struct MeasureLeadLegRequest : BodyRequest {
    std::optional<double> force_x_n, force_x_bw; // forward positive: braking is negative
    std::optional<double> force_y_n, force_y_bw;
    std::optional<double> pressure_cm, pressure_in; // ahead of the ankle
    double shin_lean_deg;                           // forward positive
    double thigh_deg;                               // from upright, hip behind the knee positive
    // All or none, m/s2 and deg/s2:
    std::optional<double> foot_ax, foot_ay, foot_turning, shank_ax, shank_ay, shank_turning, thigh_ax,
        thigh_ay, thigh_turning;
    std::optional<double> angle_error_deg; // left out: 3
};
BOOST_DESCRIBE_STRUCT(MeasureLeadLegRequest, (BodyRequest),
                      (force_x_n, force_x_bw, force_y_n, force_y_bw, pressure_cm, pressure_in, shin_lean_deg,
                       thigh_deg, foot_ax, foot_ay, foot_turning, shank_ax, shank_ay, shank_turning, thigh_ax,
                       thigh_ay, thigh_turning, angle_error_deg))

struct DrawnLanding {               // metres; x forward, y up, from the floor under the lead ankle
    std::vector<DrawnPoint> points; // heel, toe, ankle, knee, hip
    std::vector<DrawnForce> forces; // front_foot
    double foot_low, foot_high;     // x of heel and toe
    double pressure_x, pressure_error;
    double scale_moment; // N m of the largest arc
};
BOOST_DESCRIBE_STRUCT(DrawnLanding, (),
                      (points, forces, foot_low, foot_high, pressure_x, pressure_error, scale_moment))

struct MeasureLeadLegAnswer {
    ShownBody body;
    std::vector<ShownJoint> joints;
    double force_x_body_weights, force_y_body_weights;
    bool accelerations_used;
    DrawnLanding drawing;
    std::string drawing_words;
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::string cannot_tell;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(MeasureLeadLegAnswer, (),
                      (body, joints, force_x_body_weights, force_y_body_weights, accelerations_used, drawing,
                       drawing_words, words, cautions, cannot_tell, sources))

Result<MeasureLeadLegAnswer> measure_lead_leg(Workplace&, const MeasureLeadLegRequest&);

} // namespace amentum
