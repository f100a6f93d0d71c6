#include "operations/inside/typed_quantity.h"

#include "operations/inside/entry_fields.h"

#include <cmath>

namespace amentum {
namespace {

ShownUnit length_unit(bool inches) {
    return shown_unit(TestUnit::metre, Facility{"", MassUnit::lb, SpeedUnit::mph,
                                                inches ? LengthUnit::inches : LengthUnit::centimetres});
}

std::string in_unit(const std::string& name, const ShownUnit& unit) {
    return name + "_" + unit.unit;
}

double tenths(double x) {
    return std::round(x * 10) / 10;
}

} // namespace

Result<TypedLength> typed_length(const std::string& name, std::optional<double> cm, std::optional<double> in,
                                 const Facility& facility) {
    const bool inches = in || (!cm && facility.length_unit == LengthUnit::inches);
    const ShownUnit unit = length_unit(inches);
    const std::string field = in_unit(name, unit);
    const auto length = length_given(field, cm ? std::optional(Length::centimetres(*cm)) : std::nullopt,
                                     in ? std::optional(Length::inches(*in)) : std::nullopt);
    if (!length)
        return length.refusal();
    return TypedLength{*length, field, unit};
}

Result<TypedMass> typed_mass(const std::string& name, std::optional<double> kg, std::optional<double> lb,
                             const Facility& facility) {
    const bool pounds = lb || (!kg && facility.mass_unit == MassUnit::lb);
    const ShownUnit unit = shown_mass(pounds ? MassUnit::lb : MassUnit::kg);
    const std::string field = in_unit(name, unit);
    const auto mass = mass_given(field, kg, lb);
    if (!mass)
        return mass.refusal();
    return TypedMass{*mass, field, unit};
}

std::optional<Refusal> outside_limits(const std::string& field, double value, double low, double high,
                                      const ShownUnit& unit, const std::string& why) {
    if (value >= low && value <= high)
        return std::nullopt;
    return refuse_range(field, tenths(value * unit.factor), tenths(low * unit.factor),
                        tenths(high * unit.factor), unit.unit, why);
}

} // namespace amentum
