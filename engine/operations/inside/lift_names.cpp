#include "operations/inside/lift_names.h"

#include <cassert>

namespace amentum {

std::string lift_name(Lift lift) {
    switch (lift) {
    case Lift::rear_foot_raised_split_squat:
        return "Rear-foot-raised split squat";
    case Lift::split_squat:
        return "Split squat";
    case Lift::lunge:
        return "Lunge";
    case Lift::step_up:
        return "Step-up";
    case Lift::back_squat:
        return "Back squat";
    case Lift::front_squat:
        return "Front squat";
    case Lift::hex_bar_deadlift:
        return "Hex-bar deadlift";
    case Lift::straight_bar_deadlift:
        return "Straight-bar deadlift";
    case Lift::pull_up:
        return "Pull-up";
    }
    assert(!"every lift has a name");
    return {};
}

std::string hold_name(Hold hold) {
    switch (hold) {
    case Hold::straight_bar:
        return "straight bar on the upper back";
    case Hold::safety_bar:
        return "safety-type bar, pads on the shoulders";
    case Hold::camber_bar:
        return "camber bar on the upper back, plates low";
    case Hold::front_bar:
        return "bar across the front of the shoulders";
    case Hold::dumbbells:
        return "a dumbbell in each hand, hanging";
    case Hold::goblet:
        return "one dumbbell upright at the breastbone";
    case Hold::hex_bar:
        return "hex bar, handles beside the hips";
    case Hold::bar_in_hands:
        return "straight bar in the hands";
    case Hold::belt:
        return "plates hung from a belt";
    case Hold::body:
        return "nothing held";
    }
    assert(!"every hold has a name");
    return {};
}

std::string setting_name(Lift lift, Setting setting) {
    switch (setting) {
    case Setting::stance:
        return lift == Lift::rear_foot_raised_split_squat ? "Stance, lead ankle to back laces"
                                                          : "Stance, lead ankle to the ball of the back foot";
    case Setting::pad_height:
        return "Height of the back foot's pad";
    case Setting::box_height:
        return "Height of the box";
    case Setting::handle_height:
        return "Height of the grip at the start";
    case Setting::trunk_lean:
        return "Lean of the trunk";
    case Setting::shin_lean:
        return "Lean of the lead shin";
    case Setting::thigh:
        return "Lead thigh from upright, 90 is level";
    case Setting::knee:
        return "Bend of the knee";
    case Setting::elbow:
        return "Bend of the elbows";
    case Setting::clearance:
        return "Back knee over the floor";
    }
    assert(!"every setting has a name");
    return {};
}

std::string short_name(Setting setting) {
    switch (setting) {
    case Setting::stance:
        return "stance";
    case Setting::pad_height:
        return "pad";
    case Setting::box_height:
        return "box";
    case Setting::handle_height:
        return "grip over the floor";
    case Setting::trunk_lean:
        return "trunk lean";
    case Setting::shin_lean:
        return "shin lean";
    case Setting::thigh:
        return "thigh";
    case Setting::knee:
        return "knee bend";
    case Setting::elbow:
        return "elbow bend";
    case Setting::clearance:
        return "back knee over the floor";
    }
    assert(!"every setting has a name");
    return {};
}

std::string target_name(Target target) {
    switch (target) {
    case Target::knee_angle:
        return "Bend of the lead knee";
    case Target::hip_angle:
        return "Bend of the lead hip";
    case Target::shin_angle:
        return "Lean of the shin";
    case Target::trunk_angle:
        return "Lean of the trunk";
    case Target::hip_share:
        return "Hip share";
    case Target::knee_moment:
        return "Knee moment of one leg";
    case Target::hip_moment:
        return "Hip moment of one leg";
    }
    assert(!"every target has a name");
    return {};
}

std::string varied_name(Varied varied) {
    const auto setting = setting_varied(varied);
    return setting ? short_name(*setting) : "load";
}

std::optional<LoadMeans> means_of(Hold hold) {
    switch (hold) {
    case Hold::straight_bar:
    case Hold::front_bar:
    case Hold::bar_in_hands:
        return LoadMeans::straight_bar;
    case Hold::safety_bar:
        return LoadMeans::safety_bar;
    case Hold::camber_bar:
        return LoadMeans::camber_bar;
    case Hold::dumbbells:
        return LoadMeans::dumbbell_pair;
    case Hold::goblet:
        return LoadMeans::dumbbell_single;
    case Hold::hex_bar:
        return LoadMeans::hex_bar;
    case Hold::belt:
        return LoadMeans::added_plate;
    case Hold::body:
        return std::nullopt;
    }
    return std::nullopt;
}

std::string pattern_of(Lift lift) {
    switch (lift) {
    case Lift::rear_foot_raised_split_squat:
    case Lift::split_squat:
        return "split_squat";
    case Lift::lunge:
        return "lunge";
    case Lift::step_up:
        return "step_up";
    case Lift::back_squat:
    case Lift::front_squat:
        return "squat";
    case Lift::hex_bar_deadlift:
    case Lift::straight_bar_deadlift:
        return "hinge";
    case Lift::pull_up:
        return "vertical_pull";
    }
    return {};
}

bool on_split_feet(Lift lift) {
    return lift == Lift::rear_foot_raised_split_squat || lift == Lift::split_squat || lift == Lift::lunge ||
           lift == Lift::step_up;
}

bool on_trunk(Hold hold) {
    return hold == Hold::straight_bar || hold == Hold::safety_bar || hold == Hold::camber_bar ||
           hold == Hold::front_bar || hold == Hold::goblet;
}

} // namespace amentum
