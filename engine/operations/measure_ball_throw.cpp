#include "operations/measure_ball_throw.h"

#include "body_mechanics/ball_throw.h"
#include "operations/inside/body_given.h"
#include "operations/inside/typed_quantity.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

LinkMotion motion_of(double inclination, std::optional<double> rate, std::optional<double> acceleration) {
    return {Angle::degrees(inclination), rate.value_or(0), acceleration.value_or(0)};
}

Result<OverheadThrow> throw_given(const BodyGivenHere& given, const MeasureBallThrowRequest& request) {
    const auto stance = from_word<ThrowStance>(request.stance);
    if (!stance)
        return refuse_choice("stance", request.stance, all_words<ThrowStance>());
    const auto ball = typed_mass("ball", request.ball_kg, request.ball_lb, given.facility);
    if (!ball)
        return ball.refusal();
    if (!ball->mass)
        return refuse_missing(ball->field, "the mass of the ball");
    if (const auto beyond = outside_limits(ball->field, ball->mass->kilograms(), 0.05, 10, ball->unit))
        return *beyond;
    OverheadThrow thrown{
        *stance,
        *ball->mass,
        {},
        motion_of(request.thigh_deg, request.thigh_rate, request.thigh_acceleration),
        motion_of(request.trunk_deg, request.trunk_rate, request.trunk_acceleration),
        motion_of(request.upper_arm_deg, request.upper_arm_rate, request.upper_arm_acceleration),
        motion_of(request.forearm_deg, request.forearm_rate, request.forearm_acceleration)};
    if (request.shank_deg)
        thrown.shank = motion_of(*request.shank_deg, request.shank_rate, request.shank_acceleration);
    else if (request.shank_rate || request.shank_acceleration)
        return refuse_missing("shank_deg", "the inclination that goes with the shank's rate");
    return thrown;
}

// The engine's names of inclinations, as they were typed.
Refusal as_asked(Refusal refusal) {
    for (const char* name : {"shank", "thigh", "trunk", "upper_arm", "forearm"})
        if (refusal.field == name) {
            refusal.field = std::string(name) + "_deg";
            const auto at = refusal.sentence.find(name);
            if (refusal.code != RefusalCode::method_does_not_apply && at != std::string::npos)
                refusal.sentence.replace(at, std::string(name).size(), refusal.field);
        }
    return refusal;
}

ShownThrowJoint shown_joint(const char* joint, const char* name, const Estimate& moment, double still) {
    const auto way = [](double value) { return value >= 0 ? " N m forward" : " N m backward"; };
    const auto [low, high] = moment.central();
    const double sign = moment.value >= 0 ? 1 : -1; // the band counted in the moment's own direction
    const double least = sign > 0 ? low : -high, most = sign > 0 ? high : -low;
    std::string words = std::string(name) + ": " + format_fixed(std::abs(moment.value), 0) +
                        way(moment.value) + " (80 %: " + format_fixed(least, 0) + " to " +
                        format_fixed(most, 0) + "); held still it would be " +
                        format_fixed(std::abs(still), 0) + way(still);
    if (low < 0 && high > 0)
        words += "; its band holds zero, so the direction is not certain";
    return {joint, name, moment.value, low, high, still, words};
}

std::vector<ShownThrowJoint> shown_joints(const ThrowLoads& loads) {
    const auto& [moving, error, still] = std::tie(loads.moving, loads.moving_error, loads.still);
    std::vector<ShownThrowJoint> joints{
        shown_joint("elbow", "both elbows", {moving.elbow, error.elbow}, still.elbow),
        shown_joint("shoulder", "both shoulders", {moving.shoulder, error.shoulder}, still.shoulder),
        shown_joint("hip", "both hips", {moving.hip, error.hip}, still.hip),
        shown_joint("knee", "both knees", {moving.knee, error.knee}, still.knee)};
    if (moving.ankle)
        joints.push_back(shown_joint("ankle", "both ankles", {*moving.ankle, *error.ankle}, *still.ankle));
    return joints;
}

DrawnThrow drawing_of(const ThrowLoads& loads, const std::vector<ShownThrowJoint>& joints) {
    const std::vector<const char*> names =
        loads.points.size() == 7
            ? std::vector<const char*>{"ankle", "knee", "hip", "shoulder", "elbow", "wrist", "ball"}
            : std::vector<const char*>{"knee", "hip", "shoulder", "elbow", "wrist", "ball"};
    DrawnThrow drawn{{}, {}, loads.ball_velocity.x, loads.ball_velocity.y, 0};
    for (std::size_t i = 0; i < names.size(); ++i)
        drawn.points.push_back({names[i], loads.points[i].x, loads.points[i].y});
    const Vector2 base = loads.points.front();
    drawn.forces = {{"base", base.x, base.y, loads.base_force.x, loads.base_force.y}};
    for (const auto& joint : joints)
        drawn.scale_moment = std::max(drawn.scale_moment, std::abs(joint.moment));
    return drawn;
}

// Part of a motion given, part not: what was not given counts as zero, and that is said.
std::vector<std::string> left_out_words(const MeasureBallThrowRequest& request) {
    const std::pair<const char*, std::optional<double>> read[] = {
        {"shank rate", request.shank_rate},
        {"thigh rate", request.thigh_rate},
        {"trunk rate", request.trunk_rate},
        {"upper arm rate", request.upper_arm_rate},
        {"forearm rate", request.forearm_rate},
        {"shank acceleration", request.shank_acceleration},
        {"thigh acceleration", request.thigh_acceleration},
        {"trunk acceleration", request.trunk_acceleration},
        {"upper arm acceleration", request.upper_arm_acceleration},
        {"forearm acceleration", request.forearm_acceleration}};
    std::string names;
    bool moves = false;
    for (const auto& [name, value] : read) {
        moves = moves || value.value_or(0) != 0;
        if (!value && (request.shank_deg || !std::string_view(name).starts_with("shank")))
            names += (names.empty() ? "" : ", ") + std::string(name);
    }
    if (names.empty() || !moves) // held still: the warning says so
        return {};
    return {"Left out, and counted as zero: " + names + "."};
}

std::string in_words(const MeasureBallThrowRequest& request, const ThrowLoads& loads) {
    const auto degrees = [](double value) { return format_fixed(value, 0) + " degrees"; };
    const Vector2 ball = loads.points.back();
    return "Side view, throwing to the right, " + request.stance + ": thighs at " +
           degrees(request.thigh_deg) + ", trunk at " + degrees(request.trunk_deg) + ", upper arms at " +
           degrees(request.upper_arm_deg) + ", forearms at " + degrees(request.forearm_deg) +
           ", all from forward level with 90 straight up. The ball is " + format_fixed(ball.y * 100, 0) +
           " cm over the floor and " + format_fixed(std::abs(ball.x) * 100, 0) +
           (ball.x < 0 ? " cm behind" : " cm ahead of") + " the base.";
}

} // namespace

Result<MeasureBallThrowAnswer> measure_ball_throw(Workplace& workplace,
                                                  const MeasureBallThrowRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto given = body_given(inside, *view, request);
    if (!given)
        return given.refusal();
    const auto thrown = throw_given(*given, request);
    if (!thrown)
        return thrown.refusal();
    const auto loads = measure_ball_throw(given->body, *thrown);
    if (!loads)
        return as_asked(loads.refusal());
    const auto mass = shown_mass(given->facility.mass_unit);
    const auto speed = shown_unit(TestUnit::metre_per_second, given->facility);
    const double speed_shown = length(loads->ball_velocity) * speed.factor;
    const auto joints = shown_joints(*loads);
    MeasureBallThrowAnswer answer{
        given->shown,
        request.stance,
        shown_load_in(thrown->ball, mass),
        mass.unit,
        speed_shown,
        speed.unit,
        joints,
        drawing_of(*loads, joints),
        in_words(request, *loads),
        {"At this instant the ball moves at " + format_fixed(speed_shown, speed.decimals) + " " + speed.unit +
             ", and the arms need " + format_fixed(std::abs(loads->moving.shoulder), 0) +
             " N m at both shoulders together to move as given.",
         "The moments rest on the rates and accelerations as given: half the acceleration is about half the "
         "moment. Bands hold 3 degrees an inclination, 5 % of each rate and 15 % of each acceleration "
         "(proposals of this project, no source); a motion smoothed too much or too little may err by more."},
        left_out_words(request),
        "Cannot tell: how the two arms share, spin about the long axes, or the sideways (valgus) moment at "
        "the elbow.",
        given->sources};
    answer.cautions.insert(answer.cautions.end(), loads->warnings.begin(), loads->warnings.end());
    answer.cautions.insert(answer.cautions.end(), given->cautions.begin(), given->cautions.end());
    answer.sources.insert(answer.sources.end(), {"DuarteWatanabe", "CommonPractice", "ProjectProposal"});
    return answer;
}

} // namespace amentum
