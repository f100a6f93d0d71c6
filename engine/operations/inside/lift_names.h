// What lifts, holds and settings are called on pages and cards, and which part of the catalogue speaks of them.
#pragma once

#include "body_mechanics/lift_settings.h"
#include "body_mechanics/search_setup.h"
#include "body_mechanics/setup.h"
#include "values/exercise.h"

#include <optional>
#include <string>

namespace amentum {

std::string lift_name(Lift);             // "Rear-foot-raised split squat"
std::string hold_name(Hold);             // "bar across the upper back"
std::string setting_name(Lift, Setting); // "Stance, lead ankle to back laces"
std::string short_name(Setting);         // "stance", within a sentence
std::string target_name(Target);         // "Hip share"
std::string varied_name(Varied);         // "stance"
std::optional<LoadMeans> means_of(Hold); // none: nothing held
std::string pattern_of(Lift);            // of data/exercises.csv
bool on_split_feet(Lift);                // one foot ahead of the other
bool on_trunk(Hold);                     // the load's place is open to load_ahead

} // namespace amentum
