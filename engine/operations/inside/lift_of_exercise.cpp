#include "operations/inside/lift_of_exercise.h"

#include "body_mechanics/holds.h"
#include "operations/inside/usual_setup.h"

#include <algorithm>

namespace amentum {
namespace {

std::optional<Lift> lift_by_key(const Exercise& exercise) {
    const auto starts = [&](const char* text) { return exercise.key.starts_with(text); };
    if (starts("rfe_split_squat"))
        return Lift::rear_foot_raised_split_squat;
    if (starts("split_squat_front_foot"))
        return std::nullopt;
    if (exercise.pattern == "split_squat")
        return Lift::split_squat;
    if (starts("reverse_lunge") || starts("walking_lunge"))
        return Lift::lunge;
    if (starts("step_up"))
        return Lift::step_up;
    if (starts("back_squat"))
        return Lift::back_squat;
    if (starts("front_squat") || starts("goblet_squat"))
        return Lift::front_squat;
    if (starts("hex_bar_deadlift"))
        return Lift::hex_bar_deadlift;
    if (starts("deadlift_straight_bar"))
        return Lift::straight_bar_deadlift;
    return std::nullopt;
}

std::optional<Hold> hold_by_means(LoadMeans means, Lift lift) {
    switch (means) {
    case LoadMeans::straight_bar:
        return lift == Lift::front_squat             ? Hold::front_bar
               : lift == Lift::straight_bar_deadlift ? Hold::bar_in_hands
                                                     : Hold::straight_bar;
    case LoadMeans::safety_bar:
        return Hold::safety_bar;
    case LoadMeans::camber_bar:
        return Hold::camber_bar;
    case LoadMeans::dumbbell_pair:
        return Hold::dumbbells;
    case LoadMeans::dumbbell_single:
        return Hold::goblet;
    case LoadMeans::hex_bar:
        return Hold::hex_bar;
    case LoadMeans::body:
        return Hold::body;
    default:
        return std::nullopt;
    }
}

// Of the handle this exercise is pulled from, when the kit says how high it is.
std::optional<Length> height_of_handle(const Kit& kit, const Exercise& exercise) {
    for (const auto& item : kit.items)
        if (item.kind == ItemKind::hex_bar && item.height && exercise.item &&
            item.label.find(*exercise.item) != std::string::npos)
            return item.height;
    return std::nullopt;
}

} // namespace

std::optional<LiftOfExercise> lift_of(const Exercise& exercise) {
    const auto lift = lift_by_key(exercise);
    const auto hold = lift ? hold_by_means(exercise.means, *lift) : std::nullopt;
    if (!hold)
        return std::nullopt;
    const auto holds = holds_of(*lift);
    if (std::find(holds.begin(), holds.end(), *hold) == holds.end())
        return std::nullopt;
    return LiftOfExercise{*lift, *hold};
}

SetupsOfExercises usual_setups(const Body& body, std::span<const Exercise> exercises, const Kit& kit,
                               const Facility& facility) {
    SetupsOfExercises setups;
    for (const auto& exercise : exercises) {
        const auto lift = lift_of(exercise);
        if (!lift)
            continue;
        Setup setup{lift->lift, lift->hold, Mass::kilograms(0)};
        if (lift->lift == Lift::hex_bar_deadlift)
            setup.handle_height = height_of_handle(kit, exercise);
        for (const Setting setting : settings_missing(setup))
            put_setting(setup, setting, usual_value(body, lift->lift, setting, facility));
        setups.emplace(exercise.key, setup);
    }
    return setups;
}

} // namespace amentum
