#include "measurement/growth.h"

namespace amentum {
namespace {

Result<Done> check_growing(const Growing& athlete) {
    if (!(athlete.age >= 8 && athlete.age <= 18))
        return refuse_range("age", athlete.age, 8, 18, "years",
                            "The equations were fitted on growing athletes.");
    const double h = athlete.stature.centimetres();
    if (!(h >= 100 && h <= 210))
        return refuse_range("stature", h, 100, 210, "cm", "Please check the unit.");
    return Done{};
}

Result<Done> check_taped(const Growing& athlete) {
    if (!athlete.sitting_height)
        return refuse_missing("sitting_height", "height of the crown above the seat");
    if (!athlete.body_mass)
        return refuse_missing("body_mass", "the athlete's body mass");
    const double sh = athlete.sitting_height->centimetres();
    if (!(sh >= 50 && sh <= 115))
        return refuse_range("sitting_height", sh, 50, 115, "cm", "Please check the unit.");
    if (!(sh < athlete.stature.centimetres()))
        return refuse_range("sitting_height", sh, 50, athlete.stature.centimetres(), "cm",
                            "Sitting height is less than stature.");
    const double w = athlete.body_mass->kilograms();
    if (!(w >= 15 && w <= 150))
        return refuse_range("body_mass", w, 15, 150, "kg", "Please check the unit.");
    return Done{};
}

Result<Estimate> offset_of_mirwald(const Growing& athlete) {
    if (const auto sound = check_taped(athlete); !sound)
        return sound.refusal();
    const double age = athlete.age;
    const double h = athlete.stature.centimetres();
    const double sh = athlete.sitting_height->centimetres();
    const double ll = h - sh;
    const double w = athlete.body_mass->kilograms();
    const double ratio = 100 * w / h;
    if (athlete.sex == Sex::male)
        return Estimate{-9.236 + 0.0002708 * ll * sh - 0.001663 * age * ll + 0.007216 * age * sh +
                            0.02292 * ratio,
                        0.592};
    return Estimate{-9.376 + 0.0001882 * ll * sh + 0.0022 * age * ll + 0.005841 * age * sh -
                        0.002658 * age * w + 0.07693 * ratio,
                    0.569};
}

Estimate offset_of_moore(const Growing& athlete) {
    const double product = athlete.age * athlete.stature.centimetres();
    if (athlete.sex == Sex::male)
        return {-7.999994 + 0.0036124 * product, 0.542};
    return {-7.709133 + 0.0042232 * product, 0.528};
}

} // namespace

Speed growth_velocity(double years, Length stature_gained) {
    return Speed::miles_per_hour(1.5 * years + 1.2 * stature_gained.inches());
}

Result<Estimate> estimate_maturity_offset(OffsetEquation equation, const Growing& athlete) {
    if (const auto sound = check_growing(athlete); !sound)
        return sound.refusal();
    if (equation == OffsetEquation::mirwald)
        return offset_of_mirwald(athlete);
    return offset_of_moore(athlete);
}

GrowthBand growth_band(double maturity_offset) {
    if (maturity_offset < -1)
        return GrowthBand::before;
    return maturity_offset > 1 ? GrowthBand::after : GrowthBand::around;
}

} // namespace amentum
