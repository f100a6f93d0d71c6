#include "body_mechanics/solve_pose.h"

#include "body_mechanics/inside/closures.h"
#include "body_mechanics/lift_settings.h"
#include "body_mechanics/rear_share.h"

#include <cassert>
#include <numbers>

namespace amentum {

Refusal refuse_posture(std::string field, std::string sentence) {
    return {RefusalCode::no_such_posture, std::move(sentence), std::move(field), "",
            "a set-up this body can stand in"};
}

std::optional<Refusal> beyond_any_body(const Pose& pose) {
    constexpr double degree = std::numbers::pi / 180, slack = 1e-9;
    const auto beyond = [&](double angle, double low, double high) {
        return angle < low * degree - slack || angle > high * degree + slack;
    };
    if (beyond(pose.shin, -30, 60))
        return refuse_posture("shin_lean",
                              "The shin would lean further than any ankle lets it with the heel down.");
    if (beyond(pose.knee(), 0, 160))
        return refuse_posture("knee", pose.knee() < 0 ? "The knee would bend backward."
                                                      : "The knee would bend further than any knee does.");
    if (beyond(pose.hip(), -30, 150))
        return refuse_posture("trunk_lean", pose.hip() < 0
                                                ? "The hip would stretch further back than any hip does."
                                                : "The trunk would lie deeper on the thigh than any hip "
                                                  "lets it.");
    return std::nullopt;
}

Result<Pose> solve_pose(const Body& body, const Setup& setup) {
    if (const auto checked = check_settings(setup); !checked)
        return checked.refusal();
    switch (setup.lift) {
    case Lift::rear_foot_raised_split_squat:
    case Lift::split_squat:
    case Lift::lunge:
    case Lift::step_up:
        return solve_split_stance(body, setup);
    case Lift::back_squat:
    case Lift::front_squat:
    case Lift::hex_bar_deadlift:
    case Lift::straight_bar_deadlift:
        return solve_two_feet(body, setup);
    case Lift::pull_up:
        return solve_hanging(body, setup);
    }
    assert(!"every lift has its closure");
    return refuse_posture("lift", "");
}

Result<Pose> solve_pose_near(const Body& body, const Setup& setup, const Pose& near) {
    if (!rear_share_of(setup.lift))
        return solve_pose(body, setup);
    if (const auto checked = check_settings(setup); !checked)
        return checked.refusal();
    return solve_split_stance_near(body, setup, near);
}

} // namespace amentum
