#include "guard_rails/inside/pain_words.h"
#include "guard_rails/inside/throw_rules.h"

#include <map>

namespace amentum {
namespace {

constexpr int history_after_days = 28; // proposal of this project, no source

std::string capital(std::string sentence) {
    if (!sentence.empty() && sentence[0] >= 'a' && sentence[0] <= 'z')
        sentence[0] = static_cast<char>(sentence[0] - 'a' + 'A');
    return sentence;
}

} // namespace

std::vector<Finding> pain_stops(const ThrowingCase& arm, Date day) {
    std::vector<Finding> findings;
    for (const auto& pain : open_pains_of(arm.care, arm.athlete.id, day))
        if (pain_blocks_throwing(arm.care, pain))
            findings.push_back(
                {Severity::stops,
                 "open_pain",
                 capital(describe_pain(arm.care, pain)) + ", is open: no throwing on " + day.text() + ".",
                 pain_rule,
                 pain_source,
                 "No throws. " + refer_words,
                 {},
                 day});
    return findings;
}

std::vector<Finding> check_arm_pain(const ThrowLog& log) {
    const ThrowingCase& arm = log.arm;
    auto findings = pain_stops(arm, arm.today);
    std::map<Date, int> throws;
    for (const auto& entry : log.entries)
        if (entry.count > 0 && arm.today - entry.date <= history_after_days)
            throws[entry.date] += entry.count;
    for (const auto& [day, count] : throws)
        for (const auto& pain : open_pains_of(arm.care, arm.athlete.id, day))
            if (pain.date < day && pain_blocks_throwing(arm.care, pain))
                findings.push_back({Severity::warns,
                                    "thrown_despite_pain",
                                    std::to_string(count) + (count == 1 ? " throw on " : " throws on ") +
                                        day.text() + " although " + describe_pain(arm.care, pain) +
                                        ", was open.",
                                    pain_rule,
                                    pain_source,
                                    refer_words,
                                    {},
                                    day});
    return findings;
}

} // namespace amentum
