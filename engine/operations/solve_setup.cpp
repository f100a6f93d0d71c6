#include "operations/solve_setup.h"

namespace amentum {

Result<SolveSetupAnswer> solve_setup(Workplace&, const SolveSetupRequest&) {
    return Refusal{RefusalCode::too_few_data, "This operation is being built.", "", "", ""};
}

} // namespace amentum
