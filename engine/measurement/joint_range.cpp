#include "measurement/joint_range.h"

#include <cmath>

namespace amentum {
namespace {

std::string or_none(const std::string& name) {
    return name.empty() ? "not named" : name;
}

Refusal differ(std::string field, std::string what, const std::string& one, const std::string& two) {
    return {RefusalCode::method_does_not_apply,
            "These results were taken by two " + what + " (" + or_none(one) + ", " + or_none(two) +
                "); their difference would be that of the " + what + ", not of the athlete.",
            std::move(field), one + ", " + two, "one and the same"};
}

Result<Done> check_two_sides(const TestResult& a, const TestResult& b) {
    if (a.test != b.test)
        return differ("test", "tests", a.test, b.test);
    if (a.side != b.side && a.side != Side::none && b.side != Side::none)
        return check_taken_alike(a, b);
    return Refusal{RefusalCode::method_does_not_apply, "A side difference needs one result of each side.",
                   "side", word(a.side) + ", " + word(b.side), "left and right"};
}

Result<Done> check_one_side(const ShoulderRotation& rotation) {
    if (rotation.external.side == rotation.internal.side)
        return check_taken_alike(rotation.external, rotation.internal);
    return Refusal{RefusalCode::method_does_not_apply, "Both rotations must be of the same side.", "side",
                   word(rotation.external.side) + ", " + word(rotation.internal.side), "one side"};
}

} // namespace

Result<Done> check_taken_alike(const TestResult& a, const TestResult& b) {
    if (a.athlete != b.athlete)
        return differ("athlete", "athletes", a.athlete.text, b.athlete.text);
    if (a.rater != b.rater)
        return differ("rater", "raters", a.rater, b.rater);
    if (a.device != b.device)
        return differ("device", "tools", a.device, b.device);
    if (a.place != b.place)
        return differ("place", "places of measuring", word(a.place), word(b.place));
    if (a.date != b.date)
        return differ("date", "days", a.date.text(), b.date.text());
    return Done{};
}

Result<Estimate> measure_side_difference(const TestResult& throwing, const TestResult& other) {
    if (const auto sides = check_two_sides(throwing, other); !sides)
        return sides.refusal();
    return Estimate{throwing.value - other.value, std::hypot(throwing.standard_error, other.standard_error)};
}

Result<Estimate> measure_total_rotation(const ShoulderRotation& one_side) {
    if (const auto alike = check_one_side(one_side); !alike)
        return alike.refusal();
    return Estimate{one_side.external.value + one_side.internal.value,
                    std::hypot(one_side.external.standard_error, one_side.internal.standard_error)};
}

Result<Estimate> measure_rotation_deficit(const ShoulderRotation& throwing, const ShoulderRotation& other) {
    const auto external = measure_side_difference(throwing.external, other.external);
    if (!external)
        return external.refusal();
    const auto internal = measure_side_difference(throwing.internal, other.internal);
    if (!internal)
        return internal.refusal();
    if (const auto one_side = check_one_side(throwing); !one_side)
        return one_side.refusal();
    return Estimate{-(external->value + internal->value),
                    std::hypot(external->standard_error, internal->standard_error)};
}

double chance_of_false_flag(double true_deficit, double threshold, double standard_error_of_one_angle) {
    assert(standard_error_of_one_angle > 0);
    return normal_cdf((true_deficit - threshold) / (2 * standard_error_of_one_angle));
}

} // namespace amentum
