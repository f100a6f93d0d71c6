#include "recordings/kept_trace.h"

namespace amentum {

std::map<std::string, double> moved_events(const std::vector<EventMove>& moves) {
    std::map<std::string, double> times;
    for (const auto& move : moves) {
        if (move.seconds)
            times[move.event] = *move.seconds;
        else
            times.erase(move.event);
    }
    return times;
}

} // namespace amentum
