#include "body_mechanics/lift_settings.h"

#include "body_mechanics/holds.h"
#include "body_mechanics/rear_share.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

using enum Setting;
constexpr std::array raised{stance, pad_height, trunk_lean, shin_lean, thigh, clearance};
constexpr std::array split{stance, trunk_lean, shin_lean, thigh, clearance};
constexpr std::array stepping{stance, box_height, trunk_lean, shin_lean, thigh};
constexpr std::array squatting{trunk_lean, shin_lean, thigh, knee};
constexpr std::array pulling{handle_height, shin_lean, knee};
constexpr std::array hanging{elbow};

constexpr double heaviest_kg = 500;

std::string name_of(Setting setting) {
    return std::string(word(setting));
}

std::string lift_words(Lift lift) {
    std::string words(word(lift));
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

Result<Done> need_all(const Setup& setup, std::span<const Setting> needed) {
    for (const Setting setting : needed)
        if (!setting_value(setup, setting))
            return refuse_missing(name_of(setting), "a " + lift_words(setup.lift) + " is set up by it");
    return Done{};
}

// Of two settings that decide the same thing.
Result<Done> need_one(const Setup& setup, Setting a, Setting b) {
    const bool has_a = setting_value(setup, a).has_value(), has_b = setting_value(setup, b).has_value();
    const std::string both = name_of(a) + " or " + name_of(b);
    if (!has_a && !has_b)
        return refuse_missing(name_of(a), "one of " + both + "; balance gives the other");
    if (has_a && has_b)
        return Refusal{RefusalCode::over_determined,
                       "Please give only one of " + both +
                           ": with both, posture and balance would contradict each other.",
                       name_of(b), "both", "one of " + both};
    return Done{};
}

Result<Done> check_choices(const Setup& setup) {
    switch (setup.lift) {
    case Lift::rear_foot_raised_split_squat:
    case Lift::split_squat:
    case Lift::lunge:
    case Lift::step_up: {
        constexpr std::array of_raised{stance, pad_height};
        constexpr std::array of_step{stance, box_height, thigh};
        constexpr std::array of_split{stance};
        const std::span<const Setting> needed =
            setup.lift == Lift::rear_foot_raised_split_squat ? std::span<const Setting>(of_raised)
            : setup.lift == Lift::step_up                    ? std::span<const Setting>(of_step)
                                                             : std::span<const Setting>(of_split);
        if (const auto all = need_all(setup, needed); !all)
            return all.refusal();
        if (const auto lean = need_one(setup, trunk_lean, shin_lean); !lean)
            return lean.refusal();
        return setup.lift == Lift::step_up ? Result<Done>(Done{}) : need_one(setup, thigh, clearance);
    }
    case Lift::back_squat:
    case Lift::front_squat:
        if (const auto lean = need_one(setup, trunk_lean, shin_lean); !lean)
            return lean.refusal();
        return need_one(setup, thigh, knee);
    case Lift::hex_bar_deadlift:
    case Lift::straight_bar_deadlift:
        if (!setup.handle_height)
            return refuse_missing("handle_height", "the height of the grip at the start of the pull");
        return need_one(setup, shin_lean, knee);
    case Lift::pull_up:
        return setup.elbow ? Result<Done>(Done{}) : refuse_missing("elbow", "how far the elbows are bent");
    }
    assert(!"every lift has its choices");
    return Done{};
}

Result<Done> check_assumptions(const Setup& setup) {
    const auto inside = [](const char* field, double value, double low, double high,
                           const char* unit) -> Result<Done> {
        if (!(value >= low && value <= high))
            return refuse_range(field, value, low, high, unit);
        return Done{};
    };
    if (auto r = inside("load", setup.load.kilograms(), 0, heaviest_kg, "kg"); !r)
        return r;
    if (auto r = inside("pressure_share", setup.pressure_share, -0.25, 0.75, "of the foot's length"); !r)
        return r;
    if (auto r = inside("rear_share", setup.rear_share.value_or(0), 0, 0.6, ""); !r)
        return r;
    if (auto r = inside("rear_force_x", setup.rear_force_x.newtons(), -500, 500, "N"); !r)
        return r;
    if (auto r = inside("load_along", setup.load_along.value_or(0), 0, 1.2, "of the trunk's length"); !r)
        return r;
    return inside("load_ahead", setup.load_ahead ? setup.load_ahead->metres() : 0, -0.3, 0.6, "m");
}

} // namespace

SettingLimits limits_of(Setting setting) {
    switch (setting) {
    case stance:
        return {0.1, 2.0, "m"};
    case pad_height:
    case box_height:
        return {0.05, 0.8, "m"};
    case handle_height:
        return {0.1, 1.0, "m"};
    case trunk_lean:
        return {-20, 85, "degrees"};
    case shin_lean:
        return {-20, 60, "degrees"};
    case thigh:
        return {5, 125, "degrees"};
    case knee:
        return {5, 160, "degrees"};
    case elbow:
        return {0, 150, "degrees"};
    case clearance:
        return {0.03, 0.6, "m"};
    }
    assert(!"every setting has its limits");
    return {0, 0, ""};
}

std::span<const Setting> settings_of(Lift lift) {
    switch (lift) {
    case Lift::rear_foot_raised_split_squat:
        return raised;
    case Lift::split_squat:
    case Lift::lunge:
        return split;
    case Lift::step_up:
        return stepping;
    case Lift::back_squat:
    case Lift::front_squat:
        return squatting;
    case Lift::hex_bar_deadlift:
    case Lift::straight_bar_deadlift:
        return pulling;
    case Lift::pull_up:
        return hanging;
    }
    assert(!"every lift has its settings");
    return {};
}

std::optional<double> setting_value(const Setup& setup, Setting setting) {
    const auto metres = [](const std::optional<Length>& given) {
        return given ? std::optional(given->metres()) : std::nullopt;
    };
    const auto degrees = [](const std::optional<Angle>& given) {
        return given ? std::optional(given->degrees()) : std::nullopt;
    };
    switch (setting) {
    case stance:
        return metres(setup.stance);
    case pad_height:
        return metres(setup.pad_height);
    case box_height:
        return metres(setup.box_height);
    case handle_height:
        return metres(setup.handle_height);
    case trunk_lean:
        return degrees(setup.trunk_lean);
    case shin_lean:
        return degrees(setup.shin_lean);
    case thigh:
        return degrees(setup.thigh);
    case knee:
        return degrees(setup.knee);
    case elbow:
        return degrees(setup.elbow);
    case clearance:
        return metres(setup.clearance);
    }
    assert(!"every setting has a value or none");
    return std::nullopt;
}

void put_setting(Setup& setup, Setting setting, double value) {
    switch (setting) {
    case stance:
        setup.stance = Length::metres(value);
        return;
    case pad_height:
        setup.pad_height = Length::metres(value);
        return;
    case box_height:
        setup.box_height = Length::metres(value);
        return;
    case handle_height:
        setup.handle_height = Length::metres(value);
        return;
    case trunk_lean:
        setup.trunk_lean = Angle::degrees(value);
        return;
    case shin_lean:
        setup.shin_lean = Angle::degrees(value);
        return;
    case thigh:
        setup.thigh = Angle::degrees(value);
        return;
    case knee:
        setup.knee = Angle::degrees(value);
        return;
    case elbow:
        setup.elbow = Angle::degrees(value);
        return;
    case clearance:
        setup.clearance = Length::metres(value);
        return;
    }
}

Result<Done> check_settings(const Setup& setup) {
    const auto allowed = settings_of(setup.lift);
    for (const auto& [setting, name] : words_of<Setting>) {
        const auto value = setting_value(setup, setting);
        if (!value)
            continue;
        if (std::find(allowed.begin(), allowed.end(), setting) == allowed.end())
            return Refusal{RefusalCode::method_does_not_apply,
                           "A " + lift_words(setup.lift) + " is not set up by its " + std::string(name) + ".",
                           std::string(name), "", "left out"};
        const auto [low, high, unit] = limits_of(setting);
        if (!(*value >= low && *value <= high))
            return refuse_range(std::string(name), *value, low, high, unit);
    }
    const auto holds = holds_of(setup.lift);
    if (std::find(holds.begin(), holds.end(), setup.hold) == holds.end()) {
        std::string words;
        for (const Hold hold : holds)
            words += (words.empty() ? "" : ", ") + std::string(word(hold));
        return Refusal{RefusalCode::method_does_not_apply,
                       "A " + lift_words(setup.lift) + " is not done with this hold.", "hold",
                       std::string(word(setup.hold)), "one of " + words};
    }
    if (setup.hold == Hold::body && setup.load.kilograms() > 0)
        return Refusal{RefusalCode::method_does_not_apply, "Nothing is held, so there is no load.", "load",
                       "above 0", "0, or a hold for it"};
    if (const auto choices = check_choices(setup); !choices)
        return choices.refusal();
    if (const auto usual = rear_share_of(setup.lift);
        usual && setup.rear_share.value_or(usual->share) == 0 && setup.rear_force_x.newtons() != 0)
        return Refusal{RefusalCode::method_does_not_apply, "A back foot that carries nothing pushes nothing.",
                       "rear_force_x", "", "0, or a rear_share above 0"};
    return check_assumptions(setup);
}

} // namespace amentum
