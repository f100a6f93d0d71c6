#include "planning/check_request.h"

#include "values/shortest_decimal.h"

#include <cmath>
#include <set>

namespace amentum {

std::optional<Refusal> check_request(const BlockRequest& request) {
    if (request.weeks < 4 || request.weeks > 16)
        return refuse_range("weeks", request.weeks, 4, 16, "");
    if (request.sessions_per_week < 1 || request.sessions_per_week > 5)
        return refuse_range("sessions_per_week", request.sessions_per_week, 1, 5, "");
    if (!(request.minutes >= shortest_session_minutes && request.minutes <= longest_session_minutes))
        return refuse_range("minutes", request.minutes, shortest_session_minutes, longest_session_minutes,
                            "min");
    for (const int day : request.weekdays)
        if (day < 1 || day > 7)
            return refuse_range("weekdays", day, 1, 7, "", "1 is Monday, 7 is Sunday.");
    const std::set<int> days(request.weekdays.begin(), request.weekdays.end());
    if (!days.empty() && std::ssize(days) < request.sessions_per_week)
        return Refusal{RefusalCode::no_block_fits,
                       std::to_string(request.sessions_per_week) + " sessions a week do not fit on " +
                           std::to_string(days.size()) + " training weekday" + (days.size() == 1 ? "" : "s") +
                           ": name more days or ask for fewer sessions.",
                       "weekdays", std::to_string(days.size()),
                       "at least as many weekdays as sessions_per_week"};
    for (const auto& priority : request.priorities)
        if (!std::isfinite(priority.weight) || priority.weight < 0)
            return Refusal{RefusalCode::out_of_range,
                           "The weight of " + priority.quality + " is " + format_shortest(priority.weight) +
                               ", but a weight is 0 or more.",
                           "priorities", format_shortest(priority.weight), "0 or more"};
    return std::nullopt;
}

} // namespace amentum
