#include "operations/inside/length_effects.h"

namespace amentum {

LengthEffects length_effects(const BodyGivenHere&) {
    LengthEffects answer{};
    answer.why_none = "What one centimetre more of a length changes is not worked out yet.";
    return answer;
}

} // namespace amentum
