#include "operations/registrations.h"

#include <iterator>

namespace amentum {

std::vector<Operation> registered_operations() {
    std::vector<Operation> all;
    for (auto group :
         {answer_operations(), judgement_operations(), prior_operations(), repeat_operations(),
          prescription_operations(), kit_operations(), kept_block_operations(), squad_operations(),
          arm_operations(), care_operations(), season_operations(), record_operations(), trace_operations(),
          line_operations(), setup_operations(), landing_operations()})
        std::move(group.begin(), group.end(), std::back_inserter(all));
    return all;
}

} // namespace amentum
