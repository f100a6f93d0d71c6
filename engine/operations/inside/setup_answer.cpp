#include "operations/inside/setup_answer.h"

#include "body_mechanics/holds.h"
#include "body_mechanics/rear_share.h"
#include "operations/inside/usual_setup.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;
bool has(const std::vector<Setting>& list, Setting setting) {
    return std::find(list.begin(), list.end(), setting) != list.end();
}

// What the posture makes of a setting that was not given.
double solved_value(const SolvedHere& here, Setting setting) {
    const Pose& pose = here.pose;
    switch (setting) {
    case Setting::trunk_lean:
        return pose.trunk / degree;
    case Setting::shin_lean:
        return pose.shin / degree;
    case Setting::thigh:
        return pose.thigh / degree;
    case Setting::knee:
        return pose.knee() / degree;
    case Setting::clearance:
        return pose.at(Mark::rear_knee).y; // no lift that takes it stands on a box
    default:
        return setting_value(here.setup, setting).value_or(0);
    }
}

std::string how_of(const SolvedHere& here, Setting setting) {
    if (!setting_value(here.setup, setting))
        return "solved";
    if (here.found && setting_varied(*here.found) == setting)
        return "found";
    return has(here.asked.usual, setting) ? "usual" : "given";
}

std::string key_of(Setting setting) { // the request's field without its unit
    switch (setting) {
    case Setting::pad_height:
        return "pad";
    case Setting::box_height:
        return "box";
    case Setting::handle_height:
        return "handle";
    default:
        return std::string(word(setting));
    }
}

ShownSetting shown_setting(const SolvedHere& here, Setting setting) {
    const auto& [given, asked] = std::tie(here.given, here.asked);
    const bool length = is_length(setting);
    const auto unit = length ? shown_unit(TestUnit::metre, given.facility) : ShownUnit{"degrees", 1, 0};
    const auto ends = slider_ends(given.body, here.setup.lift, setting, given.facility);
    const std::string how = how_of(here, setting), key = key_of(setting);
    const double value = how == "solved" ? solved_value(here, setting) : *setting_value(here.setup, setting);
    const bool balanced =
        how == "solved" && here.band && (setting == Setting::trunk_lean || setting == Setting::shin_lean);
    const int decimals = length ? (unit.unit == "in" ? 1 : 0) : how == "solved" ? 1 : 0;
    return {key,
            key + (length ? "_" + unit.unit : "_deg"),
            setting_name(here.setup.lift, setting),
            value * unit.factor,
            unit.unit,
            decimals,
            ends.low * unit.factor,
            ends.high * unit.factor,
            ends.step * unit.factor,
            how,
            balanced ? here.band->solved_angle_error : 0};
}

std::string given_or_usual(bool given) {
    return given ? "given" : "usual";
}

ShownSetting load_setting(const SolvedHere& here) {
    const auto unit = shown_mass(here.given.facility.mass_unit);
    const auto ends = load_slider(here.given.body, here.given.facility);
    const bool found = here.found == Varied::load;
    return {"load",
            "load_" + unit.unit,
            "Load",
            shown_load_in(here.setup.load, unit),
            unit.unit,
            found || unit.unit == "kg" ? 1 : 0,
            ends.low * unit.factor,
            ends.high * unit.factor,
            ends.step * unit.factor,
            found                   ? "found"
            : here.asked.usual_load ? "usual"
                                    : "given",
            0};
}

void add_assumed(const SolvedHere& here, std::vector<ShownSetting>& shown) {
    const Setup& setup = here.setup;
    if (setup.lift == Lift::pull_up)
        return;
    shown.push_back({"pressure_share", "pressure_share", "Pressure ahead of the ankle, of foot length",
                     setup.pressure_share, "", 2, -0.10, 0.50, 0.01,
                     given_or_usual(here.asked.given_pressure), 0.05});
    if (const auto usual = rear_share_of(setup.lift)) {
        shown.push_back({"rear_share", "rear_share", "Share of the weight on the back foot",
                         setup.rear_share.value_or(usual->share), "", 2, 0, 0.5, 0.01,
                         given_or_usual(here.asked.given_share), usual->sd});
        shown.push_back({"rear_force", "rear_force_n", "Level force under the back foot, forward",
                         setup.rear_force_x.newtons(), "N", 0, -150, 150, 5,
                         given_or_usual(here.asked.given_rear_force), 0});
    }
    if (!on_trunk(setup.hold))
        return;
    const auto unit = shown_unit(TestUnit::metre, here.given.facility);
    const bool inches = unit.unit == "in";
    shown.push_back({"load_ahead", "load_ahead_" + unit.unit, "Load ahead of the trunk's line",
                     hold_place(setup).ahead * unit.factor, unit.unit, 1, inches ? -6.0 : -15.0,
                     inches ? 14.0 : 35.0, inches ? 0.5 : 1.0, given_or_usual(here.asked.given_ahead),
                     0.015 * unit.factor});
}

std::string does(const char* positive, const char* negative, double moment) {
    return std::string(moment >= 0 ? positive : negative) + " with " + format_fixed(std::abs(moment), 0) +
           " N m";
}

ShownJoint shown_joint(const char* joint, const char* name, std::optional<double> angle, double moment,
                       double error, const char* positive, const char* negative) {
    return {joint, name, angle, shown_estimate(moment, Estimate{moment, error}.central(), {"N m", 1, 0}),
            does(positive, negative, moment)};
}

std::optional<Pose> moved_pose(const SolvedHere& here, double share) {
    Setup setup = here.setup;
    setup.rear_share = share;
    if (share < 0)
        return std::nullopt;
    auto pose = solve_pose(here.given.body, setup);
    return pose ? std::optional(*std::move(pose)) : std::nullopt;
}

// The rear leg's moments rest on its share of the weight above all: that part of their band alone.
LegMoments rear_errors(const SolvedHere& here) {
    const auto usual = rear_share_of(here.setup.lift);
    const double share = here.pose.rear_share;
    const auto more = moved_pose(here, share + usual->sd), less = moved_pose(here, share - usual->sd);
    const Pose& high = more ? *more : here.pose;
    const Pose& low = less ? *less : here.pose;
    const double sides = more && less ? 2 : 1;
    return {(high.rear_leg->ankle - low.rear_leg->ankle) / sides,
            (high.rear_leg->knee - low.rear_leg->knee) / sides,
            (high.rear_leg->hip - low.rear_leg->hip) / sides};
}

// Of a pull-up: forearm and upper arm each moved by the error of their length.
std::pair<double, double> arm_errors(const SolvedHere& here) {
    double elbow = 0, shoulder = 0;
    for (BodyLink Body::*link : {&Body::upper_arm, &Body::forearm}) {
        const auto moved = [&](double sign) {
            Body body = here.given.body;
            const double before = (body.*link).length;
            (body.*link).length += sign * (body.*link).length_error;
            (body.*link).centre *= (body.*link).length / before;
            return solve_pose(body, here.setup);
        };
        const auto more = moved(1), less = moved(-1);
        if (!more || !less)
            continue;
        elbow += std::pow((more->elbow - less->elbow) / 2, 2);
        shoulder += std::pow((more->shoulder - less->shoulder) / 2, 2);
    }
    return {std::sqrt(elbow), std::sqrt(shoulder)};
}

} // namespace

std::vector<ShownSetting> shown_settings(const SolvedHere& here) {
    std::vector<ShownSetting> shown;
    if (here.setup.hold != Hold::body)
        shown.push_back(load_setting(here));
    for (const Setting setting : settings_of(here.setup.lift))
        shown.push_back(shown_setting(here, setting));
    add_assumed(here, shown);
    return shown;
}

std::vector<ShownJoint> shown_joints(const SolvedHere& here) {
    const Pose& pose = here.pose;
    if (!pose.lead) {
        const auto [elbow, shoulder] = arm_errors(here);
        return {shown_joint("elbow", "elbow, each arm", here.setup.elbow->degrees(), pose.elbow / 2,
                            elbow / 2, "bends", "is held straight"),
                shown_joint("shoulder", "shoulder, each arm", std::nullopt, pose.shoulder / 2, shoulder / 2,
                            "pulls the arm down", "holds the arm up")};
    }
    const double legs = pose.legs;
    const char* of_leg = legs == 2 ? "each" : "lead";
    const auto name = [&](const char* joint) { return std::string(joint) + ", " + of_leg + " leg"; };
    const auto lead = [&](const char* joint, const std::string& said, std::optional<double> angle,
                          const Estimate& both, const char* positive, const char* negative) {
        return shown_joint(joint, said.c_str(), angle, both.value / legs, both.standard_error / legs,
                           positive, negative);
    };
    std::vector<ShownJoint> joints{
        lead("lead_ankle", name("ankle"), pose.shin / degree, here.band->ankle, "presses the foot down",
             "lifts the foot"),
        lead("lead_knee", name("knee"), pose.knee() / degree, here.band->knee, "straightens",
             "is held from behind"),
        lead("lead_hip", name("hip"), pose.hip() / degree, here.band->hip, "straightens", "bends")};
    if (!pose.rear_leg)
        return joints;
    const LegMoments error = rear_errors(here);
    joints.push_back(shown_joint("rear_knee", "knee, back leg", std::nullopt, pose.rear_leg->knee,
                                 std::abs(error.knee), "straightens", "is held from behind"));
    joints.push_back(shown_joint("rear_hip", "hip, back leg", std::nullopt, pose.rear_leg->hip,
                                 std::abs(error.hip), "straightens", "bends"));
    return joints;
}

std::optional<ShownEstimate> shown_share(const SolvedHere& here) {
    if (!here.band || !here.band->hip_share)
        return std::nullopt;
    const Estimate share = *here.band->hip_share;
    return shown_estimate(100 * share.value,
                          Estimate{100 * share.value, 100 * share.standard_error}.central(), {"%", 1, 0});
}

std::vector<ShownCause> shown_causes(const SolvedHere& here) {
    std::vector<ShownCause> shown;
    if (!here.band)
        return shown;
    const double legs = here.pose.legs;
    const auto name = [](Cause cause) {
        switch (cause) {
        case Cause::rear_share:
            return "how much the back foot carries";
        case Cause::pressure:
            return "where under the foot the weight stands";
        case Cause::shank:
            return "length of the shank";
        case Cause::thigh:
            return "length of the thigh";
        case Cause::trunk:
            return "length of the trunk";
        case Cause::hold:
            return "where the load sits on the trunk";
        }
        return "";
    };
    for (const auto& cause : here.band->causes)
        shown.push_back({std::string(word(cause.cause)), name(cause.cause), cause.knee / legs,
                         cause.hip / legs,
                         cause.hip_share ? std::optional(100 * *cause.hip_share) : std::nullopt});
    std::sort(shown.begin(), shown.end(), [](const auto& a, const auto& b) {
        return std::hypot(a.knee, a.hip) > std::hypot(b.knee, b.hip);
    });
    return shown;
}

} // namespace amentum
