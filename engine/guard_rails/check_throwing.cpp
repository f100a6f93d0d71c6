#include "guard_rails/check_throwing.h"

#include "guard_rails/throw_rules.h"

#include <algorithm>
#include <iterator>

namespace amentum {

std::vector<Finding> check_throwing(const Athlete& athlete, std::span<const ThrowEntry> entries,
                                    std::span<const PitchRule> rules, Date today,
                                    const std::string& organisation) {
    std::vector<ThrowEntry> own;
    std::copy_if(entries.begin(), entries.end(), std::back_inserter(own),
                 [&](const auto& e) { return e.athlete == athlete.id && e.date <= today; });
    std::stable_sort(own.begin(), own.end(), [](const auto& a, const auto& b) { return a.date < b.date; });

    auto findings = check_soreness(own, today);
    auto broken = check_pitch_rules(own, athlete, rules, organisation, today);
    std::move(broken.begin(), broken.end(), std::back_inserter(findings));
    return findings;
}

} // namespace amentum
