#include "measurement/rotation_force.h"

#include "measurement/joint_range.h"

#include <cmath>

namespace amentum {
namespace {

Refusal two_ways(std::string field, std::string sentence, const std::string& one, const std::string& two) {
    return {RefusalCode::method_does_not_apply, std::move(sentence), std::move(field), one + "; " + two,
            "one and the same"};
}

Result<Done> check_force(const std::string& field, const TestResult& force) {
    if (!(force.value > 0 && force.value <= 5000))
        return refuse_range(field, force.value, 1, 5000, "N");
    if (!(force.standard_error > 0 && force.standard_error <= force.value))
        return refuse_range(field + "_error", force.standard_error, 1e-9, force.value, "N",
                            "Without its error a ratio cannot be judged.");
    return Done{};
}

double relative(const Estimate& x) {
    return x.standard_error / x.value;
}

} // namespace

Result<Estimate> measure_rotator_ratio(const RotatorForce& outward, const RotatorForce& inward) {
    if (outward.by != inward.by)
        return two_ways("by", "One force was held by hand, the other by a machine; they make no ratio.",
                        word(outward.by), word(inward.by));
    if (outward.position != inward.position)
        return two_ways("position",
                        "The two forces were pushed in two positions; their ratio would be that of the "
                        "positions, not of the muscles.",
                        outward.position, inward.position);
    if (outward.result.side != inward.result.side)
        return two_ways("side", "Both forces must be of the same arm.", word(outward.result.side),
                        word(inward.result.side));
    if (const auto alike = check_taken_alike(outward.result, inward.result); !alike)
        return alike.refusal();
    if (const auto sound = check_force("outward", outward.result); !sound)
        return sound.refusal();
    if (const auto sound = check_force("inward", inward.result); !sound)
        return sound.refusal();
    const Estimate o{outward.result.value, outward.result.standard_error},
        i{inward.result.value, inward.result.standard_error};
    const double ratio = o.value / i.value;
    return Estimate{ratio, ratio * std::hypot(relative(o), relative(i))};
}

Result<Estimate> measure_force_for_body_mass(const TestResult& force, const Estimate& body_mass) {
    if (const auto sound = check_force("force", force); !sound)
        return sound.refusal();
    if (!(body_mass.value >= 15 && body_mass.value <= 200))
        return refuse_range("body_mass_kg", body_mass.value, 15, 200, "kg");
    const double share = force.value / body_mass.value;
    return Estimate{share, share * std::hypot(force.standard_error / force.value, relative(body_mass))};
}

Result<double> published_rotator_ratio(ForceBy by, double degrees_per_second) {
    if (by == ForceBy::hand_held)
        return Refusal{
            RefusalCode::method_does_not_apply,
            "The published ratios are of a machine that turns at constant speed; a hand-held ratio is not "
            "compared with them.",
            "by", word(by), word(ForceBy::constant_speed_machine)};
    if (degrees_per_second == 180)
        return 0.65;
    if (degrees_per_second == 300)
        return 0.61;
    return Refusal{RefusalCode::out_of_range, "Ratios were published at two speeds only.",
                   "degrees_per_second", std::to_string(static_cast<int>(degrees_per_second)), "180 or 300"};
}

} // namespace amentum
