#include "guard_rails/block_rules.h"

#include "guard_rails/inside/pain_words.h"

namespace amentum {

std::vector<Finding> check_pain(const BlockCase& whole) {
    std::vector<Finding> findings;
    for (const auto& line : whole.block.lines) {
        const auto* exercise = whole.exercise(line);
        if (!exercise || line.date < whole.today)
            continue;
        for (const auto& pain : open_pains_of(whole.care, whole.athlete.id, line.date))
            if (pain_blocks_exercise(whole.care, pain, *exercise))
                findings.push_back({Severity::stops, "open_pain",
                                    exercise->name + " on " + line.date.text() +
                                        " is not given: " + describe_pain(whole.care, pain) + ", is open.",
                                    pain_rule, pain_source, "Leave it out. " + refer_words, place_of(line),
                                    line.date, MayAnswer::nobody});
    }
    return findings;
}

} // namespace amentum
