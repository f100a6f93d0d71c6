#include "planning/refit_line.h"

#include "planning/exercise_classes.h"
#include "planning/lift_swap.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double enough_load = 0.90; // the planner's own step of load [ACSM2009]
constexpr double a_gram = 0.001;     // kg
constexpr double hardly_short = 0.98;
const std::string steps_here = "the gap between the loads here", balls_here = "the balls here";

struct Swap {
    const OtherGym& gym;
    const BlockLine& line;
    const Exercise& from;
    const Exercise& to;
    double served;

    const BlockRequest& request() const { return gym.request; }
    const WeekOfWave& week() const {
        const auto last = gym.wave.size() - 1;
        return gym.wave[std::min(last, static_cast<std::size_t>(std::max(1, line.week) - 1))];
    }
    Change change() const {
        return from.key == to.key             ? Change::other_load
               : gym.legs.same_lift(from, to) ? Change::held_otherwise
                                              : Change::other_exercise;
    }
    Refit kept_as_it_is(std::string words, std::optional<Mass> load) const {
        return {{line.reps, line.intensity, line.reps_in_reserve, load, std::move(words), ""},
                Change::kept,
                line.load ? IntentBasis::load : IntentBasis::served,
                1,
                1,
                true,
                {},
                {},
                ""};
    }
};

bool counted_in_repetitions(const Swap& s) {
    return s.to.part != Part::speed && s.to.part != Part::mobility && s.to.pattern != "carry";
}

// Repetitions at `share` of the load that would ask the same.
LoadedSets sets_at(const Swap& s, double share, std::optional<Mass> load, std::string words) {
    LoadedSets sets{s.line.reps, s.line.intensity, s.line.reps_in_reserve, load, std::move(words), ""};
    if (sets.intensity)
        sets.intensity = *sets.intensity * share;
    if (share >= enough_load || !counted_in_repetitions(s) || !s.line.reps_in_reserve)
        return sets;
    const double reserve = *s.line.reps_in_reserve;
    const double written = s.line.intensity.value_or(1 / (1 + (s.line.reps + reserve) / 30));
    const int possible = repetitions_possible(written * share);
    const int most = std::max(s.line.reps, repetition_range(s.to.part, s.gym.loading).most);
    sets.reps = std::clamp(possible - static_cast<int>(std::ceil(reserve)), s.line.reps, most);
    sets.reserve = std::clamp(static_cast<double>(possible - sets.reps), reserve, 5.0);
    return sets;
}

// Loads that cannot be compared: the planner's own sets for the exercise in that week.
Refit not_compared(const Swap& s) {
    LoadedSets sets = plan_sets(s.request(), s.gym.loads, s.to, s.week());
    const bool nothing_to_compare = s.from.means == LoadMeans::body && s.to.means == LoadMeans::body;
    return {std::move(sets), s.change(), IntentBasis::served, 1, s.served, nothing_to_compare, {}, {}, ""};
}

std::optional<Refit> other_ball(const Swap& s) {
    const auto balls = s.gym.loads.balls_for(s.to);
    if (balls.empty())
        return std::nullopt;
    const MadeLoad* chosen = &balls.front();
    for (const auto& ball : balls)
        if (exact_mass(ball.total) <= exact_mass(*s.line.load))
            chosen = &ball;
    if (s.from.key == s.to.key && std::abs((chosen->total - *s.line.load).kilograms()) < a_gram)
        return s.kept_as_it_is(chosen->words, chosen->total);
    const bool same_ball = std::abs((chosen->total - *s.line.load).kilograms()) < a_gram;
    return Refit{{s.line.reps, {}, s.line.reps_in_reserve, chosen->total, chosen->words, ""},
                 s.change(),
                 IntentBasis::served,
                 1,
                 s.served,
                 same_ball,
                 {},
                 {},
                 same_ball ? "" : balls_here};
}

std::string words_of_unloaded(const Swap& s) {
    const std::string& words = s.line.load_words;
    if (s.gym.same_kit())
        return words;
    if (s.to.means == LoadMeans::band)
        return plan_sets(s.request(), s.gym.loads, s.to, s.week()).words;
    const std::string with_band = "assisted with a band";
    if (words.starts_with(with_band) && !s.gym.loads.has(ItemKind::band))
        return "assisted with the feet" + words.substr(with_band.size());
    return words;
}

struct Aim {
    Mass load; // as the exercise counts it; below 0: less than body mass
    EqualLoad equal;
    std::optional<EqualLoad> usual; // in moved mass
    std::string limit;              // what holds it below the lead leg's own
};

std::optional<Mass> counted(const Swap& s, Mass moved) {
    const auto body = moved_mass(s.request(), s.to, Mass::kilograms(0));
    return body ? std::optional(moved - *body) : std::nullopt;
}

std::string what_gives_out(const Exercise& exercise) {
    std::string first = exercise.limiting.empty() ? "the lift itself" : exercise.limiting.front();
    std::replace(first.begin(), first.end(), '_', ' ');
    return first;
}

std::optional<Aim> aim_of(const Swap& s, Mass load) {
    if (s.from.key == s.to.key)
        return Aim{load,
                   {load, 0, IntentBasis::load},
                   EqualLoad{moved_mass(s.request(), s.from, load).value_or(load), 0, IntentBasis::load},
                   ""};
    const auto leg = s.gym.legs.equal_load(s.from, load, s.to);
    const auto usual = usual_equal(s.request(), s.from, load, s.to);
    const auto by_usual = usual ? counted(s, usual->load) : std::nullopt;
    if (leg) {
        Aim aim{*leg, {*leg, 0, IntentBasis::lead_leg}, usual, ""};
        if (by_usual && *by_usual < *leg * hardly_short) {
            aim.load = *by_usual;
            aim.limit = what_gives_out(s.to);
        }
        return aim;
    }
    if (!by_usual)
        return std::nullopt;
    return Aim{*by_usual, {*by_usual, usual->standard_error, IntentBasis::load}, usual, ""};
}

// Demand or load reached over wanted, at most 1; `load` as the exercise counts it.
double reach_of(const Swap& s, const Aim& aim, Mass written, Mass load, IntentBasis& basis) {
    if (s.gym.legs.compares(s.from, s.to)) {
        const auto wanted = s.gym.legs.demand(Gym::first, s.from, written);
        const auto reached = s.gym.legs.demand(Gym::other, s.to, load);
        if (wanted && reached && *wanted > 0) {
            basis = IntentBasis::lead_leg;
            return std::min(1.0, *reached / *wanted);
        }
    }
    basis = IntentBasis::load;
    const Mass wanted = aim.usual ? aim.usual->load : aim.equal.load;
    return std::min(1.0, moved_mass(s.request(), s.to, load).value_or(load) / wanted);
}

// Share of the load that would ask the same of the whole lift: by usual maxima where they are known.
double share_of_equal(const Swap& s, const Aim& aim, Mass load, double reach) {
    return aim.usual ? std::min(1.0, moved_mass(s.request(), s.to, load).value_or(load) / aim.usual->load)
                     : reach;
}

std::optional<Refit> unloaded_swap(const Swap& s, Mass written) {
    const Mass nothing = Mass::kilograms(0);
    const auto wanted = s.gym.legs.demand(Gym::first, s.from, written);
    const auto reached = s.gym.legs.demand(Gym::other, s.to, nothing);
    if (s.to.means == LoadMeans::body && s.gym.legs.compares(s.from, s.to) && wanted && reached &&
        *wanted > 0) {
        const double reach = std::min(1.0, *reached / *wanted);
        auto sets = sets_at(s, reach, {}, "body mass");
        sets.intensity.reset();
        return Refit{std::move(sets),  s.change(), IntentBasis::lead_leg, reach, s.served, true, {}, {},
                     "body mass alone"};
    }
    const bool pull_up = moves_body_mass(s.from) && s.from.pattern == s.to.pattern;
    if (s.to.means == LoadMeans::body && pull_up && s.request().body_mass) {
        const Mass body = Mass::kilograms(s.request().body_mass->value);
        const double reach = std::min(1.0, body / (body + written));
        auto sets = sets_at(s, reach, {}, "body mass");
        sets.intensity.reset();
        return Refit{std::move(sets),  s.change(), IntentBasis::load, reach, s.served, true, {}, {},
                     "body mass alone"};
    }
    return not_compared(s);
}

std::optional<Refit> loaded_swap(const Swap& s, Mass written) {
    const auto aim = aim_of(s, written);
    if (!aim)
        return not_compared(s);
    const Mass target = s.to.heaviest ? std::min(aim->load, *s.to.heaviest) : aim->load;
    const LoadTable* table = s.gym.loads.table(s.to);
    const auto choice = target > Mass::kilograms(0) ? std::optional(table->choose(target)) : std::nullopt;
    if (!choice || !choice->not_above || !KitLoads::suits(s.to, choice->not_above->total))
        return std::nullopt;
    const MadeLoad& made = *choice->not_above;
    Refit refit{{}, s.change(), IntentBasis::load, 1, s.served, true, aim->equal, target, aim->limit};
    refit.reach = reach_of(s, *aim, written, made.total, refit.basis);
    if (made.total < target * hardly_short)
        refit.limit += (refit.limit.empty() ? "" : ", then ") + (choice->above ? steps_here : heaviest_here);
    else if (s.to.heaviest && *s.to.heaviest < aim->load * hardly_short)
        refit.limit = "kept light by its nature";
    refit.sets = sets_at(s, share_of_equal(s, *aim, made.total, refit.reach), made.total, made.words);
    return refit;
}

std::optional<Refit> same_exercise(const Swap& s) {
    if (!s.line.load)
        return s.kept_as_it_is(words_of_unloaded(s), {});
    const LoadTable* table = s.gym.loads.table(s.to);
    if (!table)
        return std::nullopt;
    const MadeLoad nearest = table->choose(*s.line.load).nearest;
    if (std::abs((nearest.total - *s.line.load).kilograms()) < a_gram)
        return s.kept_as_it_is(s.gym.same_kit() ? s.line.load_words : nearest.words, nearest.total);
    if (s.to.means == LoadMeans::ball)
        return other_ball(s);
    return loaded_swap(s, *s.line.load);
}

} // namespace

std::optional<Refit> refit_line(const OtherGym& gym, const BlockLine& line, const Exercise& from,
                                const Exercise& to) {
    const Swap s{gym, line, from, to, share_served(line.purpose, from, to)};
    if (s.served <= 0)
        return std::nullopt;
    if (from.key == to.key)
        return same_exercise(s);
    if (from.means == LoadMeans::ball && to.means == LoadMeans::ball && line.load)
        return other_ball(s);
    const bool written = line.load || from.means == LoadMeans::body;
    if (!written || to.means == LoadMeans::ball)
        return not_compared(s);
    const Mass load = line.load.value_or(Mass::kilograms(0));
    if (to.means == LoadMeans::body || to.means == LoadMeans::band)
        return unloaded_swap(s, load);
    if (!line.load)
        return not_compared(s);
    return loaded_swap(s, load);
}

} // namespace amentum
