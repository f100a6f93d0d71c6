#include "planning/allowed_exercises.h"

#include "planning/exercise_classes.h"
#include "planning/short_list.h"
#include "values/letters.h"

#include <algorithm>
#include <map>

namespace amentum {
namespace {

const std::string holds_for_all = "every_thrower"; // of data/cautions.csv: holds without being entered
constexpr double alternative_factor = 1.25;

bool holds(const std::vector<std::string>& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

const Caution* caution_called(const BlockRequest& request, const std::string& key) {
    for (const auto& caution : request.cautions)
        if (caution.key == key)
            return &caution;
    return nullptr;
}

bool overridden_with_reason(const BlockRequest& request, const Exercise& exercise, const Caution& caution) {
    return caution.overridable &&
           std::any_of(request.overrides.begin(), request.overrides.end(), [&](const auto& o) {
               return o.athlete == request.athlete.id && o.exercise == exercise.key &&
                      o.caution == caution.key && letters_in(o.reason) >= shortest_reason;
           });
}

bool hits(const Athlete& athlete) {
    return athlete.role == Role::fielder || athlete.role == Role::catcher;
}

struct CautionAnswer {
    std::vector<std::string> standing;
    std::vector<std::string> overridden;
};

CautionAnswer cautions_against(const BlockRequest& request, const Exercise& exercise) {
    CautionAnswer answer;
    auto restrictions = request.athlete.restrictions;
    if (!holds(restrictions, holds_for_all))
        restrictions.push_back(holds_for_all);
    for (const auto& key : restrictions) {
        if (!holds(exercise.cautions, key))
            continue;
        const Caution* caution = caution_called(request, key);
        const bool lifted = caution && overridden_with_reason(request, exercise, *caution);
        (lifted ? answer.overridden : answer.standing).push_back(key);
    }
    return answer;
}

// 1 when the kit reaches the hardest load of the block, less in proportion when it does not; 0 when even its
// lightest load is above the easiest one.
double reach_of_kit(const BlockRequest& request, const KitLoads& loads, const Exercise& exercise) {
    const auto maximum = lower_maximum(request, exercise);
    const LoadTable* table = loads.table(exercise);
    if (!maximum || !table || moves_body_mass(exercise) || exercise.means == LoadMeans::ball)
        return 1;
    const auto wave = plan_wave(request.weeks, loading_of(request.athlete, request.start));
    const auto easiest = *maximum * fraction_for(exercise.part, wave.front().fraction);
    double most = 0;
    for (const auto& week : wave)
        most = std::max(most, week.fraction);
    const auto hardest = *maximum * fraction_for(exercise.part, most);
    const Mass wanted = exercise.heaviest ? std::min(hardest, *exercise.heaviest) : hardest;
    const auto first =
        table->choose(exercise.heaviest ? std::min(easiest, *exercise.heaviest) : easiest).not_above;
    if (!first || !KitLoads::suits(exercise, first->total))
        return 0;
    return std::min(1.0, table->total(table->size() - 1) / wanted);
}

// Strength work that body mass or a band alone loads stays below 60 % of the maximum of people who lift, and light loads
// bring the maximum less [Schoenfeld2017]; a lift whose maximum is known can be dosed. Both factors: proposals of this
// project, no source.
double factor_of_means(const BlockRequest& request, const Exercise& exercise) {
    const bool strength = exercise.part == Part::main_lift || exercise.part == Part::assistance;
    const bool light = exercise.means == LoadMeans::body || exercise.means == LoadMeans::band;
    if (strength && light && !moves_body_mass(exercise))
        return loading_of(request.athlete, request.start) == Loading::trained ? 0.5 : 0.8;
    return exercise.part == Part::main_lift && lower_maximum(request, exercise) ? 1.1 : 1;
}

std::string describe_restriction(const BlockRequest& request, const std::string& key,
                                 const std::vector<std::string>& taken) {
    const Caution* caution = caution_called(request, key);
    return "Left out for " + (caution ? caution->condition : key) + ": " + listed_shortly(taken) + "." +
           (caution ? " " + caution->sentence : "");
}

const PainBlock* pain_against(const BlockRequest& request, const Exercise& exercise) {
    const auto found = std::find_if(request.painful.begin(), request.painful.end(),
                                    [&](const PainBlock& row) { return blocks(row, exercise); });
    return found == request.painful.end() ? nullptr : &*found;
}

std::string describe_pain(const std::string& region, const std::vector<std::string>& taken) {
    return "Left out for open pain of the " + region +
           ", until a named adult records who cleared it: " + listed_shortly(taken) +
           ". Stop and refer to a qualified clinician.";
}

std::string alternative_to(const BlockRequest& request, const std::string& exercise,
                           const std::map<std::string, std::vector<std::string>>& taken) {
    for (const auto& [key, names] : taken) {
        const Caution* caution = caution_called(request, key);
        if (caution && key != holds_for_all && holds(caution->alternatives, exercise))
            return caution->condition;
    }
    return "";
}

} // namespace

std::optional<Mass> lower_maximum(const BlockRequest& request, const Exercise& exercise) {
    if (!exercise.load_test)
        return std::nullopt;
    const auto found = request.maxima.find(*exercise.load_test);
    if (found == request.maxima.end())
        return std::nullopt;
    const double lower = (found->second.value - found->second.standard_error) * exercise.load_share;
    return lower > 0 ? std::optional(Mass::kilograms(lower)) : std::nullopt;
}

bool moves_body_mass(const Exercise& exercise) {
    return exercise.load_test &&
           (exercise.means == LoadMeans::added_plate || exercise.means == LoadMeans::body);
}

AllowedExercises allowed_exercises(const BlockRequest& request, const KitLoads& loads,
                                   const QualityWorth& worth) {
    AllowedExercises allowed;
    const int age = whole_years(request.athlete.birth_date, request.start);
    std::map<std::string, std::vector<std::string>> taken;   // restriction -> names
    std::map<std::string, std::vector<std::string>> in_pain; // region -> names
    std::vector<std::string> too_heavy;
    for (const auto& exercise : request.catalogue) {
        if (!loads.has_all_for(exercise)) {
            ++allowed.missing_equipment;
            allowed.why_not[exercise.key] = "needs equipment that \"" + request.kit.name + "\" does not have";
            continue;
        }
        if (age < exercise.youngest) {
            ++allowed.too_young;
            allowed.why_not[exercise.key] =
                "is for throwers of " + std::to_string(exercise.youngest) + " years and more";
            continue;
        }
        if (hitters_pull(exercise) && !hits(request.athlete)) {
            allowed.why_not[exercise.key] = "is pulled from low to high, as hitters do";
            continue;
        }
        if (const auto* row = pain_against(request, exercise)) {
            in_pain[row->name].push_back(exercise.name);
            allowed.why_not[exercise.key] = "is blocked by open pain of the " + row->name;
            continue;
        }
        const auto cautions = cautions_against(request, exercise);
        for (const auto& key : cautions.standing)
            taken[key].push_back(exercise.name);
        if (!cautions.standing.empty()) {
            allowed.why_not[exercise.key] =
                "stands against the caution \"" + cautions.standing.front() + "\"";
            continue;
        }
        const double reach = reach_of_kit(request, loads, exercise);
        const double preference = reach * factor_of_means(request, exercise);
        if (reach <= 0) {
            too_heavy.push_back(exercise.name);
            allowed.why_not[exercise.key] = "has no load light enough in this kit";
            continue;
        }
        allowed.list.push_back({&exercise, preference * worth.worth(exercise), preference,
                                worth.purpose(exercise), cautions.overridden, ""});
    }
    for (auto& each : allowed.list) {
        each.instead_of = alternative_to(request, each.exercise->key, taken);
        if (!each.instead_of.empty()) {
            each.worth *= alternative_factor;
            each.preference *= alternative_factor;
        }
    }
    for (const auto& [region, names] : in_pain)
        allowed.notes.push_back(describe_pain(region, names));
    for (const auto& [key, names] : taken)
        allowed.notes.push_back(describe_restriction(request, key, names));
    if (!too_heavy.empty())
        allowed.notes.push_back(
            "Left out because the lightest load of this kit is above what the block asks for: " +
            listed_shortly(too_heavy) + ".");
    for (const auto& fault : loads.faults())
        allowed.notes.push_back(fault);
    return allowed;
}

} // namespace amentum
