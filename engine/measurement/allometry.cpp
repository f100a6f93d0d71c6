#include "measurement/allometry.h"

#include "measurement/body_mass_lifts.h"

#include <cmath>

namespace amentum {

Result<double> allometric_strength(Mass lifted, Mass body_mass, double exponent) {
    if (!(lifted.kilograms() > 0))
        return refuse_range("load", lifted.kilograms(), 0.5, 600, "kg", "");
    if (const auto plausible = check_body_mass(body_mass); !plausible)
        return plausible.refusal();
    if (!(exponent >= 0 && exponent <= 1))
        return refuse_range("exponent", exponent, 0, 1, "", "");
    return lifted.kilograms() / std::pow(body_mass.kilograms(), exponent);
}

Result<double> ball_mass_exponent(const std::vector<Mass>& masses, const std::vector<Speed>& speeds) {
    if (masses.size() != speeds.size())
        return Refusal{RefusalCode::wrong_type, "Each ball needs a mass and a speed.", "speeds",
                       std::to_string(speeds.size()) + " speeds", std::to_string(masses.size()) + " speeds"};
    const auto n = static_cast<double>(masses.size());
    double mean_m = 0, mean_v = 0, square = 0, product = 0;
    for (std::size_t i = 0; i < masses.size(); ++i) {
        if (!(masses[i].kilograms() > 0))
            return refuse_range("masses", masses[i].kilograms(), 0.05, 10, "kg", "");
        if (!(speeds[i].metres_per_second() > 0))
            return refuse_range("speeds", speeds[i].metres_per_second(), 0.5, 60, "m/s", "");
        mean_m += std::log(masses[i].kilograms()) / n;
        mean_v += std::log(speeds[i].metres_per_second()) / n;
    }
    for (std::size_t i = 0; i < masses.size(); ++i) {
        const double dm = std::log(masses[i].kilograms()) - mean_m;
        square += dm * dm;
        product += dm * (std::log(speeds[i].metres_per_second()) - mean_v);
    }
    if (!(square > 1e-6))
        return Refusal{RefusalCode::too_few_data, "The slope needs balls of two or more different masses.",
                       "masses", std::to_string(masses.size()) + " balls", "2 different masses or more"};
    return product / square;
}

} // namespace amentum
