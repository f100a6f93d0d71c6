#include "planning/stand_ins.h"

#include "planning/exercise_classes.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

constexpr double least_score = 0.20, not_compared_factor = 0.9;

struct Choice {
    const AllowedExercise* what;
    double score;
    std::vector<std::optional<Refit>> refits; // beside the group's lines
};

struct Group {
    const Exercise* from;
    std::vector<std::size_t> lines;
    std::set<Date> days;
    int sets = 0;
    std::vector<Choice> choices; // best first
};

// face_pull_column -> face_pull_band, pulldown_column_neutral -> pulldown_band
bool band_for_column(const Exercise& from, const Exercise& to) {
    const auto at = from.key.find("column");
    return from.means == LoadMeans::column && at != std::string::npos && to.means == LoadMeans::band &&
           to.key.starts_with(from.key.substr(0, at) + "band");
}

double nearness(const OtherGym& gym, const Exercise& from, const Exercise& to) {
    if (from.key == to.key || band_for_column(from, to))
        return 1;
    return gym.legs.same_lift(from, to) ? 0.95 : from.pattern == to.pattern ? 0.80 : 0.60;
}

// As easy on the legs and the arm as the one it stands in for.
bool spares_as_much(const Exercise& from, const Exercise& to) {
    return heavy_for_legs(to) <= heavy_for_legs(from) && hard_on_tired_arm(to) <= hard_on_tired_arm(from);
}

std::optional<Choice> choice_of(const OtherGym& gym, const Block& block, const Group& group,
                                const AllowedExercise& what) {
    const Exercise &from = *group.from, &to = *what.exercise;
    if (from.key != to.key && !spares_as_much(from, to))
        return std::nullopt;
    Choice choice{&what, 0, {}};
    for (const std::size_t i : group.lines) {
        auto refit = refit_line(gym, block.lines[i], from, to);
        if (refit)
            choice.score += block.lines[i].sets * refit->kept() *
                            (refit->basis == IntentBasis::lead_leg ? refit->served : 1) *
                            (refit->loads_compared ? 1 : not_compared_factor);
        choice.refits.push_back(std::move(refit));
    }
    choice.score *= nearness(gym, from, to) / group.sets;
    return choice.score >= least_score ? std::optional(std::move(choice)) : std::nullopt;
}

std::vector<Group> groups_of(const OtherGym& gym, const Block& block, const AllowedExercises& allowed) {
    std::map<std::pair<std::string, std::string>, std::size_t> place;
    std::vector<Group> groups;
    for (std::size_t i = 0; i < block.lines.size(); ++i) {
        const auto& line = block.lines[i];
        const Exercise* from = exercise_in(gym.request.catalogue, line.exercise);
        if (!from)
            continue;
        const auto [at, fresh] = place.try_emplace({line.exercise, line.purpose}, groups.size());
        if (fresh)
            groups.push_back({from, {}, {}, 0, {}});
        Group& group = groups[at->second];
        group.lines.push_back(i);
        group.days.insert(line.date);
        group.sets += line.sets;
    }
    for (auto& group : groups) {
        for (const auto& what : allowed.list)
            if (auto choice = choice_of(gym, block, group, what))
                group.choices.push_back(*std::move(choice));
        std::stable_sort(group.choices.begin(), group.choices.end(),
                         [](const Choice& a, const Choice& b) { return a.score > b.score; });
    }
    return groups;
}

bool stays(const Group& group) {
    return !group.choices.empty() && group.choices.front().what->exercise == group.from;
}

} // namespace

const Exercise* exercise_in(std::span<const Exercise> catalogue, const std::string& key) {
    const auto found = std::find_if(catalogue.begin(), catalogue.end(),
                                    [&](const Exercise& each) { return each.key == key; });
    return found == catalogue.end() ? nullptr : &*found;
}

StandIns choose_stand_ins(const OtherGym& gym, const Block& block, const AllowedExercises& allowed) {
    auto groups = groups_of(gym, block, allowed);
    std::stable_sort(groups.begin(), groups.end(), [](const Group& a, const Group& b) {
        return std::pair(stays(a), a.sets) > std::pair(stays(b), b.sets);
    });
    StandIns chosen{std::vector<const AllowedExercise*>(block.lines.size(), nullptr),
                    std::vector<std::optional<Refit>>(block.lines.size())};
    std::map<const Exercise*, std::set<Date>> taken;
    for (auto& group : groups) {
        const auto free = std::find_if(group.choices.begin(), group.choices.end(), [&](const Choice& choice) {
            const auto& days = taken[choice.what->exercise];
            return choice.what->exercise == group.from ||
                   std::none_of(group.days.begin(), group.days.end(),
                                [&](Date day) { return days.contains(day); });
        });
        if (free == group.choices.end())
            continue;
        taken[free->what->exercise].insert(group.days.begin(), group.days.end());
        for (std::size_t n = 0; n < group.lines.size(); ++n) {
            const std::size_t i = group.lines[n];
            chosen.refits[i] = std::move(free->refits[n]);
            if (chosen.refits[i])
                chosen.of_line[i] = free->what;
        }
    }
    return chosen;
}

} // namespace amentum
