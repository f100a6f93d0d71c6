#include "measurement/side_comparison.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

Result<Done> check_value(const std::string& field, double value) {
    if (value > 0 && value <= 1e6)
        return Done{};
    return refuse_range(field, value, 1e-6, 1e6, "", "A share of the total needs two values above 0.");
}

Result<Done> check_error(const std::string& field, const Estimate& side) {
    if (side.standard_error > 0 && side.standard_error <= side.value)
        return Done{};
    return refuse_range(field, side.standard_error, 1e-9, side.value, "",
                        "Without its error a difference cannot be judged.");
}

} // namespace

Result<SideFormulas> side_formulas(double other, double throwing) {
    if (const auto sound = check_value("other", other); !sound)
        return sound.refusal();
    if (const auto sound = check_value("throwing", throwing); !sound)
        return sound.refusal();
    const double larger = std::max(other, throwing), smaller = std::min(other, throwing);
    const double over_total = 100 * (throwing - other) / (throwing + other);
    const double angle = std::atan(other / throwing) * 180 / std::numbers::pi;
    return SideFormulas{over_total, 100 * (larger - smaller) / larger, 100 * smaller / larger, 2 * over_total,
                        100 * (45 - angle) / 90};
}

SideVerdict judge_difference(const Estimate& difference) {
    const double size = std::abs(difference.value);
    if (size > z95 * difference.standard_error)
        return SideVerdict::larger_than_error;
    return size > z80 * difference.standard_error ? SideVerdict::cannot_tell : SideVerdict::within_error;
}

Result<SideComparison> compare_sides(const Estimate& other, const Estimate& throwing, SidesTested tested) {
    const auto formulas = side_formulas(other.value, throwing.value);
    if (!formulas)
        return formulas.refusal();
    if (const auto sound = check_error("other_error", other); !sound)
        return sound.refusal();
    if (const auto sound = check_error("throwing_error", throwing); !sound)
        return sound.refusal();
    const double total = other.value + throwing.value;
    const double error =
        200 * std::hypot(other.value * throwing.standard_error, throwing.value * other.standard_error) /
        (total * total);
    const Estimate difference{formulas->over_total, error};
    return SideComparison{difference, *formulas, judge_difference(difference), tested};
}

Result<Estimate> change_between(const SideComparison& before, const SideComparison& after) {
    if (before.tested != after.tested)
        return Refusal{RefusalCode::method_does_not_apply,
                       "One test took the sides one at a time, the other both at once; they answer different "
                       "questions and are not compared.",
                       "tested", word(before.tested) + ", " + word(after.tested), "one and the same"};
    return Estimate{after.over_total.value - before.over_total.value,
                    std::hypot(after.over_total.standard_error, before.over_total.standard_error)};
}

} // namespace amentum
