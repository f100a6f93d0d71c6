#include "guard_rails/check_logged_sets.h"

#include "guard_rails/inside/pain_words.h"

#include <algorithm>
#include <map>

namespace amentum {
namespace {

constexpr int history_after_days = 28; // proposal of this project, no source

Finding despite(const CareRecord& care, const PainEntry& pain, const Exercise& exercise, Date day, int sets) {
    return {Severity::warns,
            "set_despite_pain",
            std::to_string(sets) + (sets == 1 ? " set of " : " sets of ") + exercise.name + " on " +
                day.text() + (sets == 1 ? " was" : " were") + " done although " + describe_pain(care, pain) +
                ", was open.",
            pain_rule,
            pain_source,
            refer_words,
            {},
            day};
}

} // namespace

std::vector<Finding> check_logged_sets(std::span<const SetDone> sets, const Athlete& athlete,
                                       std::span<const Exercise> catalogue, const CareRecord& care,
                                       Date today) {
    std::map<std::pair<Date, std::string>, int> done; // day, exercise -> sets
    for (const auto& set : sets)
        if (set.athlete == athlete.id && set.date <= today && today - set.date <= history_after_days)
            ++done[{set.date, set.exercise}];
    std::vector<Finding> findings;
    for (const auto& [what, count] : done) {
        const auto& [day, key] = what;
        const auto exercise =
            std::find_if(catalogue.begin(), catalogue.end(), [&](const auto& e) { return e.key == key; });
        if (exercise == catalogue.end())
            continue;
        for (const auto& pain : open_pains_of(care, athlete.id, day))
            if (pain_blocks_exercise(care, pain, *exercise))
                findings.push_back(despite(care, pain, *exercise, day, count));
    }
    return findings;
}

} // namespace amentum
