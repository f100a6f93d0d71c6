#include "operations/solve_equivalent.h"

namespace amentum {

Result<SolveEquivalentAnswer> solve_equivalent(Workplace&, const SolveEquivalentRequest&) {
    return Refusal{RefusalCode::too_few_data, "This operation is being built.", "", "", ""};
}

} // namespace amentum
