#include "operations/inside/body_meanings.h"

namespace amentum {

const Meanings& body_meanings() {
    static const Meanings meanings{
        {"athlete", "the athlete's name or id; left out: sex, stature and body mass describe a body"},
        {"sex", "of the reference table, female or male; left out: the athlete's"},
        {"table", "de_leva (when left out) or winter"},
        {"stature_cm", "standing height; left out: the latest held"},
        {"stature_in", "the same in inches"},
        {"body_mass_kg", "left out: the latest held"},
        {"body_mass_lb", "the same in pounds"},
        {"thigh_cm",
         "hip to knee joint centre, taped; left out: the latest test, otherwise scaled by stature"},
        {"thigh_in", "the same in inches"},
        {"shank_cm", "knee to ankle joint centre, taped; left out as for the thigh"},
        {"shank_in", "the same in inches"},
        {"trunk_cm", "middle of the hips to middle of the shoulders, taped; left out as for the thigh"},
        {"trunk_in", "the same in inches"},
        {"upper_arm_cm", "shoulder to elbow joint centre, taped; left out as for the thigh"},
        {"upper_arm_in", "the same in inches"},
        {"forearm_cm", "elbow to wrist joint centre, taped; left out as for the thigh"},
        {"forearm_in", "the same in inches"},
        {"foot_cm", "heel to tip of the toe; left out as for the thigh"},
        {"foot_in", "the same in inches"}};
    return meanings;
}

Meanings joined(std::initializer_list<Meanings> groups) {
    Meanings all;
    for (const auto& group : groups)
        all.insert(group.begin(), group.end());
    return all;
}

} // namespace amentum
