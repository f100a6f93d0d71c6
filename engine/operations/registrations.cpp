#include "operations/registrations.h"

#include <iterator>

namespace amentum {

std::vector<Operation> registered_operations() {
    std::vector<Operation> all;
    for (auto group :
         {answer_operations(), repeat_operations(), prescription_operations(), record_operations(),
          trace_operations(), line_operations(), setup_operations(), landing_operations()})
        std::move(group.begin(), group.end(), std::back_inserter(all));
    return all;
}

} // namespace amentum
