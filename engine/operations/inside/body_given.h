// The body an operation on posture is about: an athlete held, or one described, or both.
//
// What is given in the request stands before what is held. Stature: given, the latest `stature` test, the athlete's own
// field. Body mass: given, or the latest body_mass test. Lengths: given, or the latest test of thigh_length and the like,
// otherwise scaled by stature. Refuses an unknown athlete, sex or table, missing stature or body mass, one quantity in two
// units, and lengths no such body has; `field` is the one that was typed.
#pragma once

#include "body_mechanics/body.h"
#include "operations/describe_body.h"
#include "operations/inside/inside.h"

namespace amentum {

struct BodyGivenHere {
    const Athlete* athlete; // null when only described
    Facility facility;
    Body body;
    ShownBody shown;
    std::vector<std::string>
        part_from; // beside body.parts: "0.2425 of stature [DeLeva1996]", "taped 2026-05-06"
    std::vector<std::string> cautions; // tables of adults for a child; the athlete's own restrictions
    std::vector<std::string> sources;
};

// The view must outlive the answer.
Result<BodyGivenHere> body_given(const Workplace::Inside&, const FacilityView&, const BodyRequest&);

// The latest result of a test that feeds its trajectory; null when there is none.
const TestResult* latest_result(const FacilityView&, const Athlete*, const std::string& test);

std::string part_name(const BodyPart&, BodyTable); // "upper arm"
std::string ends_in_words(const BodyPart&);        // "hip to knee joint centre"

} // namespace amentum
