#include "force_traces/jump_power.h"

#include "values/shortest_decimal.h"

#include <cmath>

namespace amentum {
namespace {

double watts(PowerEquation equation, double h, double m) {
    switch (equation) {
    case PowerEquation::sayers_squat:
        return 60.7 * h + 45.3 * m - 2055;
    case PowerEquation::sayers_countermovement:
        return 51.9 * h + 48.9 * m - 2007;
    case PowerEquation::harman_peak:
        return 61.9 * h + 36.0 * m - 1822;
    case PowerEquation::harman_mean:
        return 21.2 * h + 23.0 * m - 1393;
    case PowerEquation::lewis:
        return std::sqrt(4.9) * 9.81 * m * std::sqrt(h / 100);
    case PowerEquation::canavan_women:
        return 65.1 * h + 25.8 * m - 1413.1;
    }
    assert(false);
    return 0;
}

} // namespace

Result<double> jump_power(PowerEquation equation, double height_cm, double body_mass_kg) {
    if (!(height_cm >= 5 && height_cm <= 110))
        return refuse_range("height_cm", height_cm, 5, 110, "cm");
    if (!(body_mass_kg >= 30 && body_mass_kg <= 200))
        return refuse_range("body_mass_kg", body_mass_kg, 30, 200, "kg");
    const double power = watts(equation, height_cm, body_mass_kg);
    if (!(power > 0))
        return Refusal{RefusalCode::method_does_not_apply,
                       "The equation " + word(equation) + " gives " + format_fixed(power, 0) +
                           " W for so small a jump; it does not reach that far down.",
                       "height_cm", format_shortest(height_cm), "a jump for which the equation is above 0 W"};
    return power;
}

} // namespace amentum
