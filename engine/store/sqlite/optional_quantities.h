// A quantity that may be absent to the number of its column, and back. The unit stands in the column's name.
#pragma once

#include "values/quantity.h"

#include <optional>

namespace amentum {

inline std::optional<double> kilograms(const std::optional<Mass>& m) {
    return m ? std::optional(m->kilograms()) : std::nullopt;
}
inline std::optional<double> metres(const std::optional<Length>& l) {
    return l ? std::optional(l->metres()) : std::nullopt;
}
inline std::optional<double> speed_ms(const std::optional<Speed>& s) {
    return s ? std::optional(s->metres_per_second()) : std::nullopt;
}
inline std::optional<Mass> mass_of(std::optional<double> kg) {
    return kg ? std::optional(Mass::kilograms(*kg)) : std::nullopt;
}
inline std::optional<Length> length_of(std::optional<double> m) {
    return m ? std::optional(Length::metres(*m)) : std::nullopt;
}
inline std::optional<Speed> speed_of(std::optional<double> ms) {
    return ms ? std::optional(Speed::metres_per_second(*ms)) : std::nullopt;
}

} // namespace amentum
