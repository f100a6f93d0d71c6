// The operations that turn a measured instant into joint moments: the lead leg under its ground force, an overhead throw.
#include "operations/inside/body_meanings.h"
#include "operations/inside/terminal_text.h"
#include "operations/make_operation.h"
#include "operations/measure_ball_throw.h"
#include "operations/measure_lead_leg.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string end_words(const value& answer) {
    return "\n" + list_said(answer.at("cautions"), "Note: ") + paragraph(said(answer.at("cannot_tell")));
}

std::string lead_leg_words(const value& answer) {
    std::string text = said(answer.at("body").at("name")) + "\n\n" + list_said(answer.at("words"), "") +
                       "\n" + padded("  joint", 22) + padded("bend", 8) + padded("moment, 80 %", 28) + "\n";
    for (const auto& joint : answer.at("joints").as_array()) {
        const auto& angle = joint.at("angle");
        text += "  " + padded(said(joint.at("name")), 20) +
                padded(angle.is_null() ? "-" : number_said(angle, 0) + " deg", 8) +
                padded(estimate_said(joint.at("moment")), 28) + said(joint.at("words")) + "\n";
    }
    return text + end_words(answer);
}

std::string throw_words(const value& answer) {
    std::string text = said(answer.at("body").at("name")) + ", " + said(answer.at("stance")) + ", ball " +
                       number_said(answer.at("ball"), 1) + " " + said(answer.at("ball_unit")) + "\n\n" +
                       list_said(answer.at("words"), "") + "\n";
    for (const auto& joint : answer.at("joints").as_array())
        text += "  " + said(joint.at("words")) + "\n";
    return text + end_words(answer);
}

const Meanings lead_leg_meanings{
    {"force_x_n", "level ground force on the lead foot, forward positive: braking is negative"},
    {"force_x_bw", "the same in body weights"},
    {"force_y_n", "upward ground force on the lead foot"},
    {"force_y_bw", "the same in body weights"},
    {"pressure_cm", "centre of pressure ahead of the ankle"},
    {"pressure_in", "the same in inches"},
    {"shin_lean_deg", "of the shin from upright, forward positive"},
    {"thigh_deg", "of the thigh from upright, hip behind the knee positive"},
    {"foot_ax", "m/s2, forward, of the foot's mass centre; accelerations: all nine or none"},
    {"foot_ay", "m/s2, upward"},
    {"foot_turning", "deg/s2, from forward to up positive"},
    {"shank_ax", "as the foot's"},
    {"shank_ay", "as the foot's"},
    {"shank_turning", "as the foot's"},
    {"thigh_ax", "as the foot's"},
    {"thigh_ay", "as the foot's"},
    {"thigh_turning", "as the foot's"},
    {"angle_error_deg", "standard error of the two angles; left out: 3"}};

const Meanings throw_meanings{{"stance", "kneeling or standing"},
                              {"ball_kg", "mass of the ball"},
                              {"ball_lb", "the same in pounds"},
                              {"shank_deg", "inclination from forward level, 90 up; standing only"},
                              {"thigh_deg", "inclination from the knee up"},
                              {"trunk_deg", "inclination from the hip up"},
                              {"upper_arm_deg", "inclination from the shoulder on; above 90 leans back"},
                              {"forearm_deg", "inclination from the elbow on"},
                              {"shank_rate", "deg/s; forward is negative; left out: 0"},
                              {"thigh_rate", "as the shank's"},
                              {"trunk_rate", "as the shank's"},
                              {"upper_arm_rate", "as the shank's"},
                              {"forearm_rate", "as the shank's"},
                              {"shank_acceleration", "deg/s2; left out: 0"},
                              {"thigh_acceleration", "as the shank's"},
                              {"trunk_acceleration", "as the shank's"},
                              {"upper_arm_acceleration", "as the shank's"},
                              {"forearm_acceleration", "as the shank's"}};

} // namespace

std::vector<Operation> landing_operations() {
    return {
        make_operation(
            "measure_lead_leg",
            "What the joints of the lead leg do at foot contact or release, for the ground force measured.",
            Effect::reads, joined({body_meanings(), lead_leg_meanings}), &measure_lead_leg, &lead_leg_words),
        make_operation("measure_ball_throw",
                       "Which joint moments an overhead ball throw takes, at the motion read from film.",
                       Effect::reads, joined({body_meanings(), throw_meanings}), &measure_ball_throw,
                       &throw_words),
    };
}

} // namespace amentum
