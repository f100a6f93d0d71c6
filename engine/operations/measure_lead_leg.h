// measure_lead_leg: joint moments of the lead leg at foot contact or release, from ground force, angles and accelerations.
//
// body_mechanics/lead_leg.h. Force in newtons or body weights. Keeps nothing.
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

struct MeasureLeadLegAnswer {
    ShownBody body;
    std::vector<ShownJoint> joints;
    double force_x_body_weights, force_y_body_weights;
    bool accelerations_used;
    DrawnSetup drawing;
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
