// The side view of a solved set-up, as points and forces.
#include "operations/inside/setup_answer.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace amentum {
namespace {

constexpr double laces_behind_edge =
    0.05; // m, of the pad, from its near edge (proposal of this project, no source)

} // namespace

double stance_from_pad(const SolvedHere& here) {
    const double heel = here.setup.stance->metres() + here.given.body.heel();
    return here.setup.lift == Lift::rear_foot_raised_split_squat ? heel - laces_behind_edge : heel;
}

DrawnSetup drawn_setup(const SolvedHere& here) {
    const auto& [pose, body, setup] = std::tie(here.pose, here.given.body, here.setup);
    DrawnSetup drawn{};
    const auto add = [&](const char* name, Vector2 p) { drawn.points.push_back({name, p.x, p.y}); };
    for (const auto& [mark, name] : {std::pair{Mark::heel, "heel"},
                                     {Mark::toe, "toe"},
                                     {Mark::ankle, "ankle"},
                                     {Mark::knee, "knee"},
                                     {Mark::hip, "hip"},
                                     {Mark::shoulder, "shoulder"},
                                     {Mark::head_top, "head_top"},
                                     {Mark::elbow, "elbow"},
                                     {Mark::wrist, "wrist"},
                                     {Mark::grip, "grip"}})
        add(name, pose.at(mark));
    if (setup.load.kilograms() > 0)
        add("load", pose.at(Mark::load));
    if (pose.rear) {
        const Vector2 hold = pose.at(Mark::rear_hold), ankle = pose.at(Mark::rear_ankle);
        add("rear_hold", hold);
        add("rear_ankle", ankle);
        add("rear_knee", pose.at(Mark::rear_knee));
        add("rear_toe", setup.lift == Lift::rear_foot_raised_split_squat
                            ? ankle + 1.6 * (hold - ankle)
                            : hold + Vector2{0.2 * body.foot_length, 0});
    }
    const auto push = [&](const char* name, Vector2 at, Vector2 force) {
        drawn.forces.push_back({name, at.x, at.y, force.x, force.y});
    };
    push(pose.lead ? "front_foot" : "hands", pose.front.p_WP, pose.front.force);
    double turning = cross(pose.front.p_WP, pose.front.force), up = pose.front.force.y;
    if (pose.rear) {
        push("rear_foot", pose.rear->p_WP, pose.rear->force);
        turning += cross(pose.rear->p_WP, pose.rear->force);
        up += pose.rear->force.y;
    }
    if (setup.load.kilograms() > 0)
        push("load", pose.at(Mark::load), {0, -setup.load.kilograms() * lift_gravity});
    drawn.foot_low = pose.at(Mark::heel).x;
    drawn.foot_high = pose.at(Mark::toe).x;
    drawn.pressure_x = pose.front.p_WP.x;
    drawn.pressure_error = pose.lead ? 0.05 * body.foot_length : 0;
    drawn.balance_x = turning / up;
    drawn.floor_y = setup.box_height ? -setup.box_height->metres() : 0;
    if (setup.pad_height) {
        drawn.pad_x = laces_behind_edge - setup.stance->metres();
        drawn.pad_height = setup.pad_height->metres();
    }
    if (setup.box_height)
        drawn.box_height = setup.box_height->metres();
    const auto means = means_of(setup.hold);
    if (means && means != LoadMeans::dumbbell_pair && means != LoadMeans::dumbbell_single &&
        setup.load.kilograms() > 0)
        drawn.disc_radius = 0.225; // plates of 450 mm
    for (const auto& joint : shown_joints(here))
        drawn.scale_moment =
            std::max({drawn.scale_moment, std::abs(joint.moment.low), std::abs(joint.moment.high)});
    return drawn;
}

} // namespace amentum
