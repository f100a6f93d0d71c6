// Inputs that say whose body it is, as every method of this module takes them.
#pragma once

#include "body_mechanics/body.h"
#include "values/method.h"

namespace amentum::body_mechanics {

inline std::vector<MethodInput> with(std::vector<MethodInput> inputs, const std::vector<MethodInput>& more) {
    inputs.insert(inputs.end(), more.begin(), more.end());
    return inputs;
}

inline std::vector<MethodInput> body_inputs() {
    return {{"table", "of body segments", 0, 0, all_words<BodyTable>(), "de_leva"},
            {"sex", "of the table", 0, 0, all_words<Sex>()},
            {"stature_m", "without shoes", 1.0, 2.4},
            {"body_mass_kg", "of the athlete", 15, 250}};
}

inline Result<Body> body_of(const SegmentTables& tables, const MethodArguments& given) {
    return scale_body(tables, {*from_word<BodyTable>(given.word("table")), *from_word<Sex>(given.word("sex")),
                               Length::metres(given.number("stature_m")),
                               Mass::kilograms(given.number("body_mass_kg"))});
}

} // namespace amentum::body_mechanics
