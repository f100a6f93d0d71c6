#include "operations/inside/usual_setup.h"

#include <cmath>

namespace amentum {
namespace {

double rounded(double x, double step) {
    return std::round(x / step) * step;
}

double usual_trunk(Lift lift) { // degrees
    switch (lift) {
    case Lift::step_up:
    case Lift::back_squat:
        return lift == Lift::step_up ? 35 : 40;
    case Lift::split_squat:
    case Lift::lunge:
        return 15;
    default:
        return 20;
    }
}

double usual_stance(Lift lift) { // of stature
    switch (lift) {
    case Lift::lunge:
        return 0.45;
    case Lift::split_squat:
        return 0.40;
    case Lift::step_up:
        return 0.20;
    default:
        return 0.444;
    }
}

} // namespace

bool is_length(Setting setting) {
    return setting == Setting::stance || setting == Setting::pad_height || setting == Setting::box_height ||
           setting == Setting::handle_height || setting == Setting::clearance;
}

double tape_step(const Facility& facility) {
    return facility.length_unit == LengthUnit::inches ? 0.5 * Length::metres_per_inch : 0.01;
}

double usual_value(const Body& body, Lift lift, Setting setting, const Facility& facility) {
    const double stature = body.given.stature.metres(), step = tape_step(facility);
    switch (setting) {
    case Setting::stance:
        return rounded(usual_stance(lift) * stature, step);
    case Setting::pad_height:
        return rounded(0.222 * stature, step);
    case Setting::box_height:
        return rounded(0.20 * stature, step);
    case Setting::handle_height: // plates of 450 mm [IwfRules]; the hex bar's handles turned up
        return rounded(lift == Lift::hex_bar_deadlift ? 0.30 : 0.225, step);
    case Setting::clearance:
        return rounded(0.08, step);
    case Setting::trunk_lean:
        return usual_trunk(lift);
    case Setting::shin_lean:
        return lift == Lift::straight_bar_deadlift ? 10 : 20;
    case Setting::thigh:
        return lift == Lift::step_up ? 85 : 90;
    case Setting::knee:
        return lift == Lift::straight_bar_deadlift ? 70 : 110;
    case Setting::elbow:
        return 90;
    }
    return 0;
}

SliderEnds slider_ends(const Body& body, Lift lift, Setting setting, const Facility& facility) {
    const double stature = body.given.stature.metres(), step = tape_step(facility);
    const auto ends = [step](double low, double high) {
        return SliderEnds{rounded(low, step), rounded(high, step), step};
    };
    switch (setting) {
    case Setting::stance:
        return lift == Lift::step_up ? ends(0.10, 0.35 * stature) : ends(0.25 * stature, 0.62 * stature);
    case Setting::pad_height:
    case Setting::box_height:
        return ends(0.10, 0.60);
    case Setting::handle_height:
        return ends(0.15, 0.70);
    case Setting::clearance:
        return ends(0.04, 0.30);
    case Setting::trunk_lean:
        return {-5, 75, 1};
    case Setting::shin_lean:
        return {-5, 50, 1};
    case Setting::thigh:
        return {30, 115, 1};
    case Setting::knee:
        return {20, 140, 1};
    case Setting::elbow:
        return {0, 130, 1};
    }
    return {0, 0, 1};
}

SliderEnds load_slider(const Body& body, const Facility& facility) {
    const double step = facility.mass_unit == MassUnit::lb ? 5 * Mass::kilograms_per_pound : 2.5;
    return {0, rounded(2.5 * body.mass(), step), step};
}

std::vector<Setting> settings_missing(const Setup& setup) {
    std::vector<Setting> missing;
    const auto takes = [&](Setting setting) {
        for (const Setting each : settings_of(setup.lift))
            if (each == setting)
                return true;
        return false;
    };
    const auto need = [&](Setting setting) {
        if (takes(setting) && !setting_value(setup, setting))
            missing.push_back(setting);
    };
    const auto need_one = [&](Setting usual, Setting other) {
        if (takes(usual) && !setting_value(setup, usual) && !setting_value(setup, other))
            missing.push_back(usual);
    };
    for (const Setting each :
         {Setting::stance, Setting::pad_height, Setting::box_height, Setting::handle_height, Setting::elbow})
        need(each);
    if (takes(Setting::trunk_lean)) {
        need_one(Setting::trunk_lean, Setting::shin_lean);
        need_one(Setting::thigh, takes(Setting::knee) ? Setting::knee : Setting::clearance);
    } else {
        // Against the bar the shin hardly moves with the knee; the knee is what a lifter sees.
        const bool straight = setup.lift == Lift::straight_bar_deadlift;
        need_one(straight ? Setting::knee : Setting::shin_lean,
                 straight ? Setting::shin_lean : Setting::knee);
    }
    return missing;
}

} // namespace amentum
