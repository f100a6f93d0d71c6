#include "guard_rails/block_rules.h"

#include "equipment/load_words.h"
#include "equipment/solve_load.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr Mass linear_throw_most = Mass::pounds(8); // common practice, no source
constexpr double a_gram = 0.001;                    // kg

bool in_kit(const Kit& kit, ItemKind kind) {
    return std::any_of(kit.items.begin(), kit.items.end(),
                       [&](const auto& i) { return i.kind == kind && i.count > 0; });
}

std::string spoken(std::string word) {
    std::replace(word.begin(), word.end(), '_', ' ');
    return word;
}

// Ours, where no standard exists: a ball thrown along a straight line, unlike rotational and scoop throws and
// slams.
bool straight_line_throw(const Exercise& exercise) {
    return exercise.means == LoadMeans::ball && !exercise.pattern.starts_with("rotational") &&
           !exercise.pattern.starts_with("scoop") && !exercise.pattern.starts_with("slam");
}

void check_needs(const BlockCase& whole, const BlockLine& line, const Exercise& exercise,
                 std::vector<Finding>& findings) {
    auto needs = exercise.needs;
    if (exercise.means == LoadMeans::band)
        needs.push_back(ItemKind::band);
    for (const ItemKind need : needs)
        if (!in_kit(whole.kit, need))
            findings.push_back({Severity::stops, "equipment_missing",
                                exercise.name + " needs a " + spoken(word(need)) + ", and the kit \"" +
                                    whole.kit.name + "\" has none.",
                                "Everything an exercise needs stands in the kit it is planned for.",
                                own_proposal, "Choose another exercise, or add the item to the kit.",
                                place_of(line)});
}

void check_makeable(const BlockCase& whole, const BlockLine& line, const Exercise& exercise,
                    std::vector<Finding>& findings) {
    const bool unloaded = exercise.means == LoadMeans::band || exercise.means == LoadMeans::body;
    if (unloaded && !line.load)
        return;
    if (!line.load && exercise.means == LoadMeans::added_plate)
        return; // with body mass alone
    const std::string rule = "Every load written down is one the kit can make, to the gram.";
    if (unloaded) {
        findings.push_back({Severity::warns, "load_without_means",
                            exercise.name + " has a load, but nothing carries it.", rule, own_proposal,
                            "Take the load off the line.", place_of(line)});
        return;
    }
    const auto table = LoadTable::of(whole.kit, exercise.means, exercise.item);
    if (!table) {
        findings.push_back({Severity::stops, "equipment_missing",
                            exercise.name + ": " + table.refusal().sentence, rule, own_proposal,
                            "Choose another exercise, or add the item to the kit.", place_of(line)});
        return;
    }
    if (!line.load) {
        if (exercise.means == LoadMeans::ball)
            findings.push_back({Severity::warns, "ball_missing", exercise.name + " does not say which ball.",
                                "A throw names its ball.", own_proposal, "Write the ball on the line.",
                                place_of(line)});
        return;
    }
    const MadeLoad nearest = table->choose(*line.load).nearest;
    if (std::abs((nearest.total - *line.load).kilograms()) < a_gram)
        return;
    findings.push_back({Severity::stops, "load_not_makeable",
                        exercise.name + " asks for " + describe_mass(*line.load, whole.kit.unit) +
                            ", which this kit cannot make; the nearest is " +
                            describe_mass(nearest.total, whole.kit.unit) + " (" + nearest.words + ").",
                        rule, own_proposal, "Take the nearest load.", place_of(line)});
}

void check_bounds(const BlockCase& whole, const BlockLine& line, const Exercise& exercise,
                  std::vector<Finding>& findings) {
    if (!line.load)
        return;
    const std::string load = describe_mass(*line.load, whole.kit.unit);
    const Mass slack = Mass::kilograms(a_gram);
    if (straight_line_throw(exercise) && *line.load > linear_throw_most + slack)
        findings.push_back({Severity::stops, "linear_throw_too_heavy",
                            exercise.name + " asks for a ball of " + load +
                                "; straight-line throws stay at 8 lb (3.63 kg) or less.",
                            "Balls thrown overhead or passed from the chest weigh at most 8 lb.",
                            common_practice, "Take a lighter ball.", place_of(line)});
    if (exercise.heaviest && *line.load > *exercise.heaviest + slack)
        findings.push_back({Severity::warns, "load_above_exercise",
                            exercise.name + " asks for " + load + "; it is meant for at most " +
                                describe_mass(*exercise.heaviest, whole.kit.unit) + ".",
                            "A load stays inside what the exercise is for.", own_proposal,
                            "Take a lighter load or another exercise.", place_of(line)});
    if (exercise.lightest && *line.load < *exercise.lightest - slack)
        findings.push_back({Severity::warns, "load_below_exercise",
                            exercise.name + " asks for " + load + "; it is meant for at least " +
                                describe_mass(*exercise.lightest, whole.kit.unit) + ".",
                            "A load stays inside what the exercise is for.", own_proposal,
                            "Take a heavier load or another exercise.", place_of(line)});
}

} // namespace

std::vector<Finding> check_loads(const BlockCase& whole) {
    std::vector<Finding> findings;
    for (const auto& line : whole.block.lines) {
        const auto* exercise = whole.exercise(line);
        if (!exercise) {
            findings.push_back(
                {Severity::stops, "unknown_exercise",
                 "\"" + line.exercise + "\" is not in the catalogue, so nothing about it can be checked.",
                 "Every exercise of a block is in the catalogue.", own_proposal,
                 "Choose an exercise of the catalogue.", place_of(line)});
            continue;
        }
        check_needs(whole, line, *exercise, findings);
        check_makeable(whole, line, *exercise, findings);
        check_bounds(whole, line, *exercise, findings);
    }
    return findings;
}

} // namespace amentum
