#include "operations/measure_lead_leg.h"

#include "body_mechanics/lead_leg.h"
#include "operations/inside/body_given.h"
#include "operations/inside/typed_quantity.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;

struct TypedForce {
    double newtons;
    std::string field;
    ShownUnit unit;
};

// A force in newtons or in body weights, one of them.
Result<TypedForce> typed_force(const std::string& name, std::optional<double> n, std::optional<double> bw,
                               double weight, double low, double high) {
    if (n && bw)
        return Refusal{RefusalCode::two_units, name + " is given twice: in newtons and in body weights.",
                       name + "_bw", format_shortest(*bw), "one of " + name + "_n, " + name + "_bw"};
    if (!n && !bw)
        return refuse_missing(name + "_n", "the ground force in newtons, or " + name + "_bw in body weights");
    const TypedForce typed = n ? TypedForce{*n, name + "_n", {"N", 1, 0}}
                               : TypedForce{*bw * weight, name + "_bw", {"body weights", 1 / weight, 2}};
    if (const auto beyond =
            outside_limits(typed.field, typed.newtons, low * weight, high * weight, typed.unit))
        return *beyond;
    return typed;
}

// Three numbers of one part: all, or none.
Result<std::optional<SegmentAcceleration>> acceleration_of(const std::string& part, std::optional<double> ax,
                                                           std::optional<double> ay,
                                                           std::optional<double> turning) {
    if (!ax && !ay && !turning)
        return std::optional<SegmentAcceleration>{};
    if (!ax || !ay || !turning)
        return refuse_missing(part + (!ax   ? "_ax"
                                      : !ay ? "_ay"
                                            : "_turning"),
                              "an acceleration has all three: " + part + "_ax, " + part + "_ay in m/s2 and " +
                                  part + "_turning in deg/s2");
    return std::optional(SegmentAcceleration{{*ax, *ay}, *turning * degree});
}

Result<LandingInstant> instant_given(const BodyGivenHere& given, const MeasureLeadLegRequest& request) {
    const double weight = given.body.mass() * lift_gravity;
    const auto force_x = typed_force("force_x", request.force_x_n, request.force_x_bw, weight, -3, 3);
    if (!force_x)
        return force_x.refusal();
    const auto force_y = typed_force("force_y", request.force_y_n, request.force_y_bw, weight, 0, 5);
    if (!force_y)
        return force_y.refusal();
    const auto pressure = typed_length("pressure", request.pressure_cm, request.pressure_in, given.facility);
    if (!pressure)
        return pressure.refusal();
    if (!pressure->length)
        return refuse_missing(pressure->field, "how far ahead of the ankle the centre of pressure lies");
    if (const auto beyond = outside_limits(pressure->field, pressure->length->metres(), given.body.heel(),
                                           given.body.toe(), pressure->unit, "It lies under the foot."))
        return *beyond;
    const auto foot = acceleration_of("foot", request.foot_ax, request.foot_ay, request.foot_turning);
    const auto shank = acceleration_of("shank", request.shank_ax, request.shank_ay, request.shank_turning);
    const auto thigh = acceleration_of("thigh", request.thigh_ax, request.thigh_ay, request.thigh_turning);
    for (const auto* each : {&foot, &shank, &thigh})
        if (!*each)
            return each->refusal();
    LandingInstant instant{Force::newtons(force_x->newtons),
                           Force::newtons(force_y->newtons),
                           *pressure->length,
                           Angle::degrees(request.shin_lean_deg),
                           Angle::degrees(request.thigh_deg),
                           *foot,
                           *shank,
                           *thigh};
    if (request.angle_error_deg)
        instant.angle_error = Angle::degrees(*request.angle_error_deg);
    return instant;
}

// The engine's names of angles, as they were typed.
Refusal as_asked(Refusal refusal) {
    for (const char* name : {"shin_lean", "thigh", "angle_error"})
        if (refusal.field == name) {
            refusal.field = std::string(name) + "_deg";
            refusal.sentence.replace(0, std::string(name).size(), refusal.field);
        }
    return refusal;
}

ShownJoint shown_joint(const char* joint, const char* name, std::optional<double> angle,
                       const Estimate& moment, const std::string& positive, const std::string& negative) {
    const bool straightens = moment.value >= 0;
    const auto band = moment.central();
    std::string words =
        (straightens ? positive : negative) + " with " + format_fixed(std::abs(moment.value), 0) + " N m";
    if (band.low < 0 && band.high > 0)
        words += "; its band holds zero, so the direction is not certain";
    return {joint, name, angle, shown_estimate(moment.value, band, {"N m", 1, 0}), words};
}

std::vector<ShownJoint> shown_joints(const LeadLegLoads& loads) {
    return {shown_joint("lead_ankle", "ankle, lead leg", std::nullopt, loads.ankle, "pushes the foot down",
                        "holds the foot up"),
            shown_joint("lead_knee", "knee, lead leg", loads.knee_flexion.degrees(), loads.knee,
                        "straightens the knee", "holds the knee from behind"),
            shown_joint("lead_hip", "hip, lead leg", std::nullopt, loads.hip, "straightens the hip",
                        "bends the hip")};
}

DrawnLanding drawing_of(const LeadLegLoads& loads, const LandingInstant& instant) {
    const char* names[] = {"heel", "toe", "ankle", "knee", "hip"};
    DrawnLanding drawn{};
    for (std::size_t i = 0; i < loads.points.size(); ++i)
        drawn.points.push_back({names[i], loads.points[i].x, loads.points[i].y});
    drawn.foot_low = loads.points[0].x;
    drawn.foot_high = loads.points[1].x;
    drawn.pressure_x = instant.pressure_ahead.metres();
    drawn.pressure_error = instant.pressure_error.metres();
    drawn.forces = {
        {"front_foot", drawn.pressure_x, 0, instant.force_x.newtons(), instant.force_y.newtons()}};
    for (const Estimate& moment : {loads.ankle, loads.knee, loads.hip})
        drawn.scale_moment =
            std::max(drawn.scale_moment, std::abs(moment.value) + z80 * moment.standard_error);
    return drawn;
}

std::string in_words(const LeadLegLoads& loads, const LandingInstant& instant) {
    return "Side view, facing right: the lead foot flat on the floor, shin " +
           format_fixed(std::abs(instant.shin.degrees()), 0) +
           (instant.shin.degrees() < 0 ? " degrees leaning back" : " degrees leaning forward") +
           ", knee bent " + format_fixed(loads.knee_flexion.degrees(), 0) +
           " degrees. The floor pushes with " + format_fixed(loads.force_y_body_weights, 2) +
           " body weights up and " + format_fixed(std::abs(loads.force_x_body_weights), 2) +
           (loads.force_x_body_weights < 0 ? " backward." : " forward.");
}

std::vector<std::string> sentences_of(const LeadLegLoads& loads) {
    return {"The floor pushes up with " + format_fixed(loads.force_y_body_weights, 2) + " body weights and " +
                (loads.force_x_body_weights < 0 ? "brakes with " : "pushes forward with ") +
                format_fixed(std::abs(loads.force_x_body_weights), 2) + "; the knee is bent " +
                format_fixed(loads.knee_flexion.degrees(), 0) + " degrees.",
            "For comparison, not as a goal: the lead legs of seven pitchers braked with 0.72 body weights at "
            "most "
            "[MacWilliams1998]; under the stride foot of 53 young windmill pitchers it was 1.39 up and 0.42 "
            "sideways "
            "[Guido2009]."};
}

} // namespace

Result<MeasureLeadLegAnswer> measure_lead_leg(Workplace& workplace, const MeasureLeadLegRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto given = body_given(inside, *view, request);
    if (!given)
        return given.refusal();
    const auto instant = instant_given(*given, request);
    if (!instant)
        return instant.refusal();
    const auto loads = measure_lead_leg(given->body, *instant);
    if (!loads)
        return as_asked(loads.refusal());
    MeasureLeadLegAnswer answer{
        given->shown,
        shown_joints(*loads),
        loads->force_x_body_weights,
        loads->force_y_body_weights,
        loads->accelerations_used,
        drawing_of(*loads, *instant),
        in_words(*loads, *instant),
        sentences_of(*loads),
        loads->warnings,
        "Cannot tell: sideways force, muscles working against each other, or whether more "
        "force is better for this thrower.",
        given->sources};
    answer.cautions.insert(answer.cautions.end(), given->cautions.begin(), given->cautions.end());
    answer.sources.insert(answer.sources.end(),
                          {"DuarteWatanabe", "MacWilliams1998", "Guido2009", "ProjectProposal"});
    return answer;
}

} // namespace amentum
