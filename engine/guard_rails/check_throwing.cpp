#include "guard_rails/check_throwing.h"

#include "guard_rails/answered_stops.h"
#include "guard_rails/inside/throw_rules.h"

#include <algorithm>
#include <iterator>

namespace amentum {

ThrowLog throw_log(const ThrowingCase& arm) {
    ThrowLog log{arm, {}, {}};
    log.entries.reserve(arm.entries.size());
    std::copy_if(arm.entries.begin(), arm.entries.end(), std::back_inserter(log.entries),
                 [&](const auto& e) { return e.athlete == arm.athlete.id && e.date <= arm.today; });
    const auto earlier = [](const auto& a, const auto& b) { return a.date < b.date; };
    if (!std::is_sorted(log.entries.begin(), log.entries.end(), earlier)) // kept records are
        std::stable_sort(log.entries.begin(), log.entries.end(), earlier);
    log.days = pitching_days(log.entries);
    return log;
}

std::vector<Finding> check_throwing(const ThrowingCase& arm) {
    const ThrowLog log = throw_log(arm);
    auto findings = check_arm_pain(log);
    for (auto more : {check_soreness(log.entries, arm.today), check_pitch_rules(log)})
        std::move(more.begin(), more.end(), std::back_inserter(findings));
    return with_answers(std::move(findings), arm.athlete.id, arm.care.stops_answered, arm.today);
}

} // namespace amentum
