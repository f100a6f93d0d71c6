#include "inference/methods.h"

#include <iterator>

namespace amentum::inference {

std::vector<Method> methods() {
    std::vector<Method> all;
    for (auto some :
         {methods_of_trajectories(), methods_of_changes(), methods_of_choices(), methods_of_models()})
        std::move(some.begin(), some.end(), std::back_inserter(all));
    return all;
}

} // namespace amentum::inference
