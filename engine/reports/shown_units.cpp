#include "reports/shown_units.h"

#include "values/quantity.h"

#include <cassert>

namespace amentum {

ShownUnit shown_mass(MassUnit unit) {
    if (unit == MassUnit::lb)
        return {"lb", Mass::kilograms(1).pounds(), 1};
    return {"kg", 1.0, 1};
}

ShownUnit shown_unit(TestUnit unit, const Facility& facility) {
    switch (unit) {
    case TestUnit::kilogram:
        return shown_mass(facility.mass_unit);
    case TestUnit::metre:
        if (facility.length_unit == LengthUnit::inches)
            return {"in", Length::metres(1).inches(), 1};
        return {"cm", 100.0, 1};
    case TestUnit::metre_per_second:
        if (facility.speed_unit == SpeedUnit::mph)
            return {"mph", Speed::metres_per_second(1).miles_per_hour(), 1};
        if (facility.speed_unit == SpeedUnit::kilometres_per_hour)
            return {"km/h", 3.6, 1};
        return {"m/s", 1.0, 2};
    case TestUnit::degree:
        return {"deg", 1.0, 1}; // the mean of two readings ends in a half
    case TestUnit::newton:
        return {"N", 1.0, 0};
    case TestUnit::watt:
        return {"W", 1.0, 0};
    case TestUnit::one:
        return {"", 1.0, 2};
    }
    assert(!"every unit has a way to be shown");
    return {"", 1.0, 2};
}

} // namespace amentum
