// Which settings does a lift take, inside which limits? (The table stands in setup.h.)
//
// Limits are those of any body and gym, wide on purpose (proposals of this project, no source); what this athlete can
// reach is found by solving. Refusals: missing_field, over_determined, method_does_not_apply (a setting or hold the lift
// does not have), out_of_range; `field` is the setting's name in setup.h.
#pragma once

#include "body_mechanics/setup.h"
#include "values/refusal.h"

#include <span>
#include <string_view>

namespace amentum {

enum class Setting {
    stance,
    pad_height,
    box_height,
    handle_height,
    trunk_lean,
    shin_lean,
    thigh,
    knee,
    elbow,
    clearance
};
template <>
inline constexpr std::array<std::pair<Setting, std::string_view>, 10> words_of<Setting>{
    {{Setting::stance, "stance"},
     {Setting::pad_height, "pad_height"},
     {Setting::box_height, "box_height"},
     {Setting::handle_height, "handle_height"},
     {Setting::trunk_lean, "trunk_lean"},
     {Setting::shin_lean, "shin_lean"},
     {Setting::thigh, "thigh"},
     {Setting::knee, "knee"},
     {Setting::elbow, "elbow"},
     {Setting::clearance, "clearance"}}};

struct SettingLimits {
    double low; // m or degrees
    double high;
    const char* unit;
};
SettingLimits limits_of(Setting setting);

std::span<const Setting> settings_of(Lift lift); // every one it may take

std::optional<double> setting_value(const Setup& setup, Setting setting); // m or degrees
void put_setting(Setup& setup, Setting setting, double value);            // m or degrees

Result<Done> check_settings(const Setup& setup);

} // namespace amentum
