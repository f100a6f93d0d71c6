#include "measurement/methods.h"

#include <iterator>

namespace amentum::measurement {

std::vector<Method> methods() {
    std::vector<Method> all;
    for (const auto topic :
         {methods_of_lifts, methods_of_balls, methods_of_bodies, methods_of_errors, methods_of_units}) {
        auto some = topic();
        std::move(some.begin(), some.end(), std::back_inserter(all));
    }
    return all;
}

} // namespace amentum::measurement
