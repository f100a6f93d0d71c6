// A number as it was typed in one of two units, so that a refusal can name the field and speak its unit.
//
// Fields end in _cm or _in, _kg or _lb. Two units of one quantity are refused (two_units); a number outside its limits is
// refused in the unit it was typed in. Left out: the field named is the one of the facility's unit.
#pragma once

#include "reports/shown_units.h"
#include "values/facility.h"
#include "values/refusal.h"

#include <optional>
#include <string>

namespace amentum {

struct TypedLength {
    std::optional<Length> length;
    std::string field; // "stance_in"
    ShownUnit unit;    // of the field
};
Result<TypedLength> typed_length(const std::string& name, std::optional<double> cm, std::optional<double> in,
                                 const Facility&);

struct TypedMass {
    std::optional<Mass> mass;
    std::string field; // "load_lb"
    ShownUnit unit;
};
Result<TypedMass> typed_mass(const std::string& name, std::optional<double> kg, std::optional<double> lb,
                             const Facility&);

// SI numbers; said in the field's unit.
std::optional<Refusal> outside_limits(const std::string& field, double value, double low, double high,
                                      const ShownUnit&, const std::string& why = "");

} // namespace amentum
