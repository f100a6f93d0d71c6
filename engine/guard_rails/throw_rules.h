// The rules behind check_throwing, one function a file.
#pragma once

#include "guard_rails/check_throwing.h"

namespace amentum {

// Entries of one athlete, ascending in date, none after today.
std::vector<Finding> check_pitch_rules(const std::vector<ThrowEntry>& entries, const Athlete& athlete,
                                       std::span<const PitchRule> rules, const std::string& organisation,
                                       Date today);
std::vector<Finding> check_soreness(const std::vector<ThrowEntry>& entries, Date today);

} // namespace amentum
