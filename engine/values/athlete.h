// A thrower, as far as the tool needs to know one.
//
// Sex is the one used for published reference tables, nothing else. Stature and sitting height are the latest taped.
// Restrictions are keys of data/cautions.csv ("medial_elbow_symptoms"): they steer what may be prescribed;
// they are not a diagnosis. Body mass is a test result, not a field: it has a date and an error.
#pragma once

#include "values/calendar_date.h"
#include "values/enum_words.h"
#include "values/identifier.h"
#include "values/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

enum class Sex { female, male };
enum class Hand { left, right };
enum class Sport { baseball, softball, javelin };
enum class Role { pitcher, catcher, fielder, thrower };
enum class Level { youth, school, college, amateur, professional };

template <>
inline constexpr std::array<std::pair<Sex, std::string_view>, 2> words_of<Sex>{
    {{Sex::female, "female"}, {Sex::male, "male"}}};
template <>
inline constexpr std::array<std::pair<Hand, std::string_view>, 2> words_of<Hand>{
    {{Hand::left, "left"}, {Hand::right, "right"}}};
template <>
inline constexpr std::array<std::pair<Sport, std::string_view>, 3> words_of<Sport>{
    {{Sport::baseball, "baseball"}, {Sport::softball, "softball"}, {Sport::javelin, "javelin"}}};
template <>
inline constexpr std::array<std::pair<Role, std::string_view>, 4> words_of<Role>{
    {{Role::pitcher, "pitcher"},
     {Role::catcher, "catcher"},
     {Role::fielder, "fielder"},
     {Role::thrower, "thrower"}}};
template <>
inline constexpr std::array<std::pair<Level, std::string_view>, 5> words_of<Level>{
    {{Level::youth, "youth"},
     {Level::school, "school"},
     {Level::college, "college"},
     {Level::amateur, "amateur"},
     {Level::professional, "professional"}}};

struct Athlete {
    AthleteId id;     // slug of the name
    std::string name; // unique in the facility
    Date birth_date;
    Sex sex;
    Hand throwing_hand;
    Sport sport;
    Role role;
    Level level;
    std::optional<Length> stature;        // 1.0 to 2.4 m
    std::optional<Length> sitting_height; // 0.5 to 1.3 m
    std::optional<double> training_years; // of supervised strength training, 0 to 40
    std::vector<std::string> restrictions;
    KitId kit;            // where the athlete trains
    std::string guardian; // whom to tell, for a minor; may be empty

    friend bool operator==(const Athlete&, const Athlete&) = default;
};

} // namespace amentum
