#include "planning/retarget_block.h"

#include "planning/lift_swap.h"
#include "planning/notes_in_other_gym.h"
#include "planning/stand_ins.h"
#include "planning/worth_buying.h"

#include <algorithm>

namespace amentum {
namespace {

// Cautions, age and kit decide who may do what; loads out of reach are found line by line.
AllowedExercises allowed_there(const BlockRequest& to, const KitLoads& loads) {
    BlockRequest without_maxima = to;
    without_maxima.maxima.clear();
    without_maxima.priorities.clear();
    return allowed_exercises(without_maxima, loads, QualityWorth(without_maxima));
}

// The band of a load carried over from one lift to another costs far more than the load: only what is shown gets one.
void add_band(const OtherGym& gym, RetargetedLine& line, const Exercise& from, const Exercise& to) {
    if (!line.equal || line.equal->by != IntentBasis::lead_leg || from.key == to.key || !line.from.load)
        return;
    if (const auto banded = gym.legs.equal_with_band(from, *line.from.load, to))
        line.equal->standard_error = banded->standard_error;
}

void write_line(const OtherGym& gym, RetargetedLine& line, const Exercise& from, const AllowedExercise& what,
                Refit refit) {
    const Exercise& to = *what.exercise;
    const bool same = refit.change == Change::kept;
    line.change = refit.change;
    line.basis = refit.basis;
    line.reach = refit.reach;
    line.served = refit.served;
    line.kept = refit.kept();
    line.loads_compared = refit.loads_compared;
    line.equal = refit.equal;
    line.aimed = refit.aimed;
    line.limit = refit.limit;
    line.to = line.from;
    BlockLine& made = *line.to;
    made.load = refit.sets.load;
    made.load_words = std::move(refit.sets.words);
    if (same)
        return;
    made.exercise = to.key;
    made.part = to.part;
    made.reps = refit.sets.reps;
    made.intensity = refit.sets.intensity;
    made.reps_in_reserve = refit.sets.reserve;
    if (from.key != to.key) {
        made.rest_minutes = rest_minutes(to, gym.loading);
        made.overridden = what.overridden;
    }
}

std::vector<RetargetedLine> write_lines(const OtherGym& gym, const Block& block, StandIns chosen) {
    std::vector<RetargetedLine> lines;
    for (std::size_t i = 0; i < block.lines.size(); ++i) {
        RetargetedLine line{block.lines[i], {}};
        const Exercise* from = exercise_in(gym.request.catalogue, line.from.exercise);
        if (from && chosen.of_line[i])
            write_line(gym, line, *from, *chosen.of_line[i], *std::move(chosen.refits[i]));
        else if (!from)
            line.loss = "\"" + line.from.exercise + "\" is no longer in the catalogue.";
        lines.push_back(std::move(line));
    }
    return lines;
}

double minutes_of(const OtherGym& gym, const BlockLine& line) {
    const Exercise* exercise = exercise_in(gym.request.catalogue, line.exercise);
    return exercise ? exercise->setup_minutes + line.sets * exercise->set_minutes : 0;
}

// Sets leave the line that grew most, until the session fits; a line without sets is lost.
void fit_into_minutes(const OtherGym& gym, double minutes, const std::vector<RetargetedLine*>& session) {
    constexpr double rounding = 1e-6;
    const auto growth = [&](const RetargetedLine* line) {
        return line->to && line->to->exercise != line->from.exercise
                   ? minutes_of(gym, *line->to) - minutes_of(gym, line->from)
                   : -1e9;
    };
    const auto needed = [&] {
        double sum = 0;
        for (const auto* line : session)
            sum += line->to ? minutes_of(gym, *line->to) : 0;
        return sum;
    };
    double written = 0;
    for (const auto* line : session)
        written += minutes_of(gym, line->from);
    const double most = std::max(minutes, written);
    while (needed() > most + rounding) {
        auto* grown = *std::max_element(session.begin(), session.end(),
                                        [&](auto* a, auto* b) { return growth(a) < growth(b); });
        if (growth(grown) < -1e8)
            return;
        grown->kept *= (grown->to->sets - 1.0) / grown->to->sets;
        if (--grown->to->sets > 0)
            continue;
        grown->to.reset();
        grown->change = Change::lost;
        grown->loss = "The minutes of the session leave no room for what would stand in for it.";
    }
}

void fit_sessions(const OtherGym& gym, const Block& block, std::vector<RetargetedLine>& lines) {
    std::map<std::pair<int, int>, std::vector<RetargetedLine*>> sessions;
    for (auto& line : lines)
        sessions[{line.from.week, line.from.session}].push_back(&line);
    for (const auto& [key, session] : sessions) {
        fit_into_minutes(gym, block.minutes, session);
        int order = 0;
        for (auto* line : session)
            if (line->to)
                line->to->order = ++order;
    }
}

double kept_of(const OtherGym& gym, const RetargetedLine& line, const std::string& quality) {
    if (!line.to)
        return 0;
    const Exercise* from = exercise_in(gym.request.catalogue, line.from.exercise);
    const Exercise* to = exercise_in(gym.request.catalogue, line.to->exercise);
    const bool by_leg = line.basis == IntentBasis::lead_leg && quality == line.from.purpose;
    const double served = by_leg || from == to ? 1 : share_served_of(quality, *from, *to);
    return served * line.reach * line.to->sets / line.from.sets;
}

std::vector<QualityKept> qualities_of(const OtherGym& gym, const std::vector<RetargetedLine>& lines) {
    std::map<std::string, std::pair<double, double>> sums; // sets, kept
    for (const auto& line : lines) {
        const Exercise* from = exercise_in(gym.request.catalogue, line.from.exercise);
        if (!from)
            continue;
        for (const auto& [quality, share] : from->qualities) {
            auto& [sets, kept] = sums[quality];
            sets += line.from.sets * share;
            kept += line.from.sets * share * kept_of(gym, line, quality);
        }
    }
    std::vector<QualityKept> qualities;
    for (const auto& [quality, sum] : sums)
        if (sum.first > 0)
            qualities.push_back({quality, sum.first, std::min(1.0, sum.second / sum.first)});
    std::stable_sort(qualities.begin(), qualities.end(),
                     [](const auto& a, const auto& b) { return a.sets > b.sets; });
    return qualities;
}

double kept_of_all(const std::vector<RetargetedLine>& lines) {
    double sets = 0, kept = 0;
    for (const auto& line : lines) {
        sets += line.from.sets;
        kept += line.from.sets * line.kept;
    }
    return sets > 0 ? std::min(1.0, kept / sets) : 1;
}

// Everything but the words: what worth_buying asks again and again.
std::vector<RetargetedLine> lines_there(const RetargetRequest& request, const LegDemand& legs, const Kit& kit,
                                        const std::vector<WeekOfWave>& wave, Loading loading) {
    BlockRequest to = request.to;
    to.kit = kit;
    const KitLoads loads(to.kit);
    const OtherGym gym{to, loads, legs, wave, loading, request.first_kit};
    auto lines =
        write_lines(gym, request.block, choose_stand_ins(gym, request.block, allowed_there(to, loads)));
    fit_sessions(gym, request.block, lines);
    return lines;
}

Block block_of(const RetargetRequest& request, const std::vector<RetargetedLine>& lines) {
    Block made = request.block;
    made.kit = request.to.kit.id;
    made.lines.clear();
    for (const auto& line : lines)
        if (line.to)
            made.lines.push_back(*line.to);
    return made;
}

} // namespace

BlockId id_in_other_gym(const Block& block, const KitId& kit) {
    return BlockId{block.athlete.text + "-" + block.start.text() + "-" + kit.text};
}

RetargetedBlock retarget_block(const RetargetRequest& request) {
    const LegDemand legs(request.body, request.setups_first, request.setups_to);
    const Loading loading = loading_of(request.to.athlete, request.block.start);
    const auto wave = plan_wave(request.block.weeks, loading);
    const KitLoads loads(request.to.kit);
    const OtherGym gym{request.to, loads, legs, wave, loading, request.first_kit};
    RetargetedBlock made{request.block, lines_there(request, legs, request.to.kit, wave, loading), {}, 1, {}};
    for (auto& line : made.lines) {
        const Exercise* from = exercise_in(request.to.catalogue, line.from.exercise);
        const Exercise* to = line.to ? exercise_in(request.to.catalogue, line.to->exercise) : nullptr;
        if (!from)
            continue;
        if (to)
            add_band(gym, line, *from, *to);
        describe_loss(gym, line, *from, to);
        if (to && line.change != Change::kept)
            line.to->reason = reason_in_other_gym(gym, line, *from, *to);
    }
    made.qualities = qualities_of(gym, made.lines);
    made.kept = kept_of_all(made.lines);
    if (gym.same_kit() && std::all_of(made.lines.begin(), made.lines.end(),
                                      [](const auto& line) { return line.change == Change::kept; }))
        return made;
    made.block = block_of(request, made.lines);
    made.block.id = id_in_other_gym(request.block, request.to.kit.id);
    made.block.notes = notes_in_other_gym(request, made);
    made.block.model = request.block.model + "; retargeted 1";
    made.purchases = worth_buying(request.to.kit, made, request.to.catalogue, [&](const Kit& kit) {
        return kept_of_all(lines_there(request, legs, kit, wave, loading));
    });
    return made;
}

} // namespace amentum
