#include "body_mechanics/pose_band.h"

#include "body_mechanics/inside/assumption_moves.h"
#include "body_mechanics/inside/closures.h"

#include <cassert>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;

double solved_angle(const Pose& pose) { // the one balance was left to find, degrees
    const bool shin_free = pose.setup.trunk_lean || !pose.setup.shin_lean;
    return (shin_free ? pose.shin : pose.trunk) / degree;
}

// What adding `amount` to an assumption changes, from the poses on either side of it.
std::optional<PoseChange> change_of(Cause cause, double amount, const Body& body, const Setup& setup,
                                    const Pose& pose) {
    const auto moved_by = [&](double step) -> Result<Pose> {
        Body other = body;
        Setup changed = setup;
        move_assumption(cause, step, other, changed);
        return solve_pose_near(other, changed, pose);
    };
    const auto more = moved_by(amount), less = moved_by(-amount);
    if (!more && !less)
        return std::nullopt;
    const Pose& high = more ? *more : pose;
    const Pose& low = less ? *less : pose;
    const double sides = more && less ? 2 : 1;
    PoseChange change{cause,
                      (high.lead->ankle - low.lead->ankle) / sides,
                      (high.lead->knee - low.lead->knee) / sides,
                      (high.lead->hip - low.lead->hip) / sides,
                      std::nullopt,
                      (solved_angle(high) - solved_angle(low)) / sides};
    if (const auto a = low.hip_share(), b = high.hip_share(); a && b)
        change.hip_share = (*b - *a) / sides;
    return change;
}

} // namespace

PoseBand estimate_pose_band(const Body& body, const Setup& setup, const Pose& pose) {
    assert(pose.lead);
    PoseBand band{{pose.lead->ankle, 0}, {pose.lead->knee, 0}, {pose.lead->hip, 0}, {}, 0, {}, {}, {}};
    double ankle = 0, knee = 0, hip = 0, share = 0, angle = 0; // variances
    bool share_known = pose.hip_share().has_value();
    for (const Cause cause : causes_of(setup)) {
        const auto change = change_of(cause, error_of(cause, body, setup), body, setup, pose);
        if (!change) {
            band.not_moved.push_back(cause);
            continue;
        }
        ankle += change->ankle * change->ankle;
        knee += change->knee * change->knee;
        hip += change->hip * change->hip;
        angle += change->solved_angle * change->solved_angle;
        share_known = share_known && change->hip_share;
        share += change->hip_share ? *change->hip_share * *change->hip_share : 0;
        band.causes.push_back(*change);
    }
    band.ankle.standard_error = std::sqrt(ankle);
    band.knee.standard_error = std::sqrt(knee);
    band.hip.standard_error = std::sqrt(hip);
    band.solved_angle_error = std::sqrt(angle);
    if (share_known)
        band.hip_share = Estimate{*pose.hip_share(), std::sqrt(share)};
    for (const Cause length : {Cause::shank, Cause::thigh, Cause::trunk})
        if (const auto change = change_of(length, 0.01, body, setup, pose))
            band.per_centimetre.push_back(*change);
    return band;
}

} // namespace amentum
