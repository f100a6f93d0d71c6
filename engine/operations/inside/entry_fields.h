// What a person types on a test day, in the facility's units, and how it becomes a Reading.
#pragma once

#include "operations/record_test.h"
#include "operations/test_day.h"
#include "values/facility.h"
#include "values/reading.h"

namespace amentum {

TestField entry_field(const std::string& reading_field, const Facility&, bool needed);

// Fills the measured fields of a reading from one trial. Refuses one quantity in two units (two_units), and any
// quantity outside the limits that files are held to (records/limits.h), needed by the test or not.
Result<Reading> reading_from(const TrialGiven&, Reading reading);

std::string trimmed(const std::string&); // without spaces at either end: names are kept as files keep them

// One of several units of a quantity: {kg given, lb given}.
Result<std::optional<Mass>> mass_given(std::string name, std::optional<double> kg, std::optional<double> lb);
Result<std::optional<Speed>> speed_given(std::string name, std::optional<double> ms,
                                         std::optional<double> mph, std::optional<double> kmh);
Result<std::optional<Length>> length_given(std::string name, std::optional<Length> first,
                                           std::optional<Length> second);

} // namespace amentum
