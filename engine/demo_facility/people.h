// Who trains at the invented hall, and what stands in it.
#pragma once

#include "values/record_set.h"

#include <vector>

namespace amentum {

std::vector<Athlete> demo_athletes(Date last_day);
std::vector<Kit> demo_kits();

inline constexpr int demo_days = 610; // 20 months
inline constexpr const char* hall_kit = "saltgrass-hall";

} // namespace amentum
