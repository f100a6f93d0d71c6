#include "guard_rails/block_rules.h"
#include "values/letters.h"

#include <algorithm>

namespace amentum {
namespace {

const std::string holds_for_all = "every_thrower"; // the key of data/cautions.csv that needs no entry

bool holds(const std::vector<std::string>& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

const Caution* caution_of(const BlockCase& whole, const std::string& key) {
    const auto found = std::find_if(whole.cautions.begin(), whole.cautions.end(),
                                    [&](const auto& c) { return c.key == key; });
    return found == whole.cautions.end() ? nullptr : &*found;
}

const Override* kept_override(const BlockCase& whole, const BlockLine& line, const std::string& caution) {
    for (const auto& each : whole.overrides)
        if (each.athlete == whole.athlete.id && each.exercise == line.exercise && each.caution == caution &&
            letters_in(each.reason) >= shortest_reason && each.date <= whole.today)
            return &each;
    return nullptr;
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const auto& word : words)
        text += (text.empty() ? "" : ", ") + word;
    return text;
}

const std::string rule = "Nothing is given against an athlete's restriction unless a coach's reason is kept.";

Finding stands(const BlockCase& whole, const BlockLine& line, const std::string& key,
               const Caution* caution) {
    const std::string condition = caution ? caution->condition : key;
    const bool never = caution && !caution->overridable;
    const std::string instead = caution && !caution->alternatives.empty()
                                    ? "Usually given instead: " + joined(caution->alternatives) + "."
                                    : "Choose another exercise.";
    return {Severity::stops,
            "caution_stands",
            whole.name(line) + " is against the restriction \"" + condition + "\"." +
                (never ? " This caution cannot be overridden here." : ""),
            rule,
            caution && !caution->sources.empty() ? joined(caution->sources) : own_proposal,
            instead,
            place_of(line)};
}

void check_restriction(const BlockCase& whole, const BlockLine& line, const std::string& key,
                       std::vector<Finding>& findings) {
    const auto* caution = caution_of(whole, key);
    const auto* kept = kept_override(whole, line, key);
    if (!kept || !caution || !caution->overridable) {
        findings.push_back(stands(whole, line, key, caution));
        return;
    }
    findings.push_back({Severity::notes, "caution_overridden",
                        whole.name(line) + " goes against \"" + caution->condition + "\"; " + kept->coach +
                            " kept a reason on " + kept->date.text() + ": " + kept->reason,
                        rule, joined(caution->sources), "Watch the first sets; stop at pain.",
                        place_of(line)});
}

// Expert opinion for every thrower: a reason to look, not to stop.
void check_usual(const BlockCase& whole, const BlockLine& line, std::vector<Finding>& findings) {
    const auto* caution = caution_of(whole, holds_for_all);
    if (!caution || kept_override(whole, line, holds_for_all))
        return;
    findings.push_back({Severity::warns, "usual_caution",
                        whole.name(line) + " is usually left out for throwers. " + caution->sentence, rule,
                        joined(caution->sources), "Take an alternative, or keep a reason.", place_of(line)});
}

} // namespace

std::vector<Finding> check_cautions(const BlockCase& whole) {
    std::vector<Finding> findings;
    for (const auto& line : whole.block.lines) {
        const auto* exercise = whole.exercise(line);
        if (!exercise)
            continue;
        for (const auto& key : whole.athlete.restrictions)
            if (key != holds_for_all && holds(exercise->cautions, key))
                check_restriction(whole, line, key, findings);
        if (holds(exercise->cautions, holds_for_all))
            check_usual(whole, line, findings);
        for (const auto& claimed : line.overridden)
            if (!kept_override(whole, line, claimed))
                findings.push_back(
                    {Severity::stops, "override_not_kept",
                     exercise->name + " is marked as overriding \"" + claimed + "\", but no reason is kept.",
                     rule, own_proposal,
                     "Keep a reason of at least ten characters, or choose another exercise.",
                     place_of(line)});
    }
    return findings;
}

} // namespace amentum
