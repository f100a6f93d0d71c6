#include "planning/plan_sets.h"

#include "equipment/load_words.h"
#include "planning/exercise_classes.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double coarse_step = 0.10;    // the largest usual step of load [ACSM2009]
constexpr int fewest_own_body_reps = 3; // below: assisted (proposal of this project, no source)

struct Case {
    const BlockRequest& request;
    const KitLoads& loads;
    const Exercise& exercise;
    const WeekOfWave& week;
    Loading loading;

    int reserve() const { return reserve_wanted(exercise.part, loading); }
    double fraction() const { return fraction_for(exercise.part, week.fraction); }
    Repetitions at(double share, int left) const {
        return repetitions_leaving(left, share, exercise.part, loading);
    }
};

std::string percent(double fraction) {
    return format_shortest(std::round(1000 * fraction) / 10) + " %";
}

constexpr int steps_of_a_carry = 20; // proposal of this project, no source

bool counted_in_steps(const Exercise& exercise) {
    return exercise.pattern == "carry";
}

// Without an estimate: usual repetitions, and the reserve does the work.
int usual_reps(const Case& c) {
    if (counted_in_steps(c.exercise))
        return steps_of_a_carry;
    const auto [fewest, most] = repetition_range(c.exercise.part, c.loading);
    switch (c.exercise.part) {
    case Part::main_lift:
        return std::clamp(c.loading == Loading::trained ? 6 : 8, fewest, most);
    case Part::speed:
        return c.exercise.means == LoadMeans::ball ? 5 : 4;
    case Part::assistance:
        return 8;
    case Part::shoulder:
        return 12;
    default:
        return 10;
    }
}

// Speed and mobility work never counts repetitions left: speed ends before it slows, mobility has no failure.
std::optional<double> counted_reserve(const Case& c, double reserve) {
    const bool counted = c.exercise.part != Part::speed && c.exercise.part != Part::mobility &&
                         c.exercise.means != LoadMeans::ball && !counted_in_steps(c.exercise);
    return counted ? std::optional(reserve) : std::nullopt;
}

LoadedSets throw_ball(const Case& c) {
    auto balls = c.loads.balls_for(c.exercise);
    const LoadTable* all = c.loads.table(c.exercise);
    std::string shaped;
    if (kneeling_overhead_throw(c.exercise)) {
        std::vector<MadeLoad> working;
        for (const auto& ball : balls)
            if (exact_mass(ball.total) >= exact_mass(Mass::pounds(4)) &&
                exact_mass(ball.total) <= exact_mass(Mass::pounds(6)))
                working.push_back(ball);
        if (!working.empty())
            balls = std::move(working);
    }
    const bool meant_heavier = !c.exercise.heaviest || *c.exercise.heaviest > linear_throw_most;
    const bool heavier_here = exact_mass(all->total(all->size() - 1)) > exact_mass(linear_throw_most);
    if (linear_throw(c.exercise) && meant_heavier && heavier_here)
        shaped = "never above 8 lb in a straight throw (common practice, no source)";
    const std::size_t which = c.loading == Loading::youth ? 0 : (balls.size() - 1) / 2;
    return {usual_reps(c), {}, {}, balls[which].total, balls[which].words, shaped};
}

LoadedSets find_load(const Case& c) {
    LoadedSets sets{
        usual_reps(c), {}, counted_reserve(c, c.reserve()), {}, "", "no test stands behind a load yet"};
    if (!sets.reserve) {
        sets.words = c.exercise.part == Part::speed ? "a load that does not slow the movement"
                                                    : "a load held without strain";
        return sets;
    }
    const std::string what = c.exercise.means == LoadMeans::column ? "stack setting" : "load";
    const std::string most =
        c.exercise.heaviest ? ", at most " + describe_mass(*c.exercise.heaviest, c.loads.kit().unit) : "";
    const std::string left = std::to_string(c.reserve()) + " in reserve" + most;
    sets.words = c.week.week == 1
                     ? "first week: find the " + what + " that leaves " + left
                     : "the " + what + " that left " + left + "; a small step more when it left more";
    return sets;
}

LoadedSets unloaded(const Case& c) {
    LoadedSets sets{usual_reps(c), {}, counted_reserve(c, c.reserve()), {}, "body mass", ""};
    if (c.exercise.means == LoadMeans::body) {
        if (c.exercise.pattern == "trunk_brace")
            sets.words += ", a slow breath counts as one";
        if (c.exercise.pattern == "vertical_pull")
            sets.words += ", helped by a band or the feet when that leaves too few";
        return sets;
    }
    std::string labels;
    const auto bands = c.loads.bands();
    for (std::size_t i = 0; i < bands.size(); ++i)
        labels += (i == 0 ? "" : i + 1 < bands.size() ? ", " : " or ") + bands[i];
    sets.words = bands.size() == 1 || !sets.reserve
                     ? bands.front()
                     : labels + ": the one that leaves " + std::to_string(c.reserve()) + " in reserve";
    return sets;
}

// What is lifted is body mass and what hangs from it.
LoadedSets body_and_plates(const Case& c, Mass maximum) {
    const Mass body = Mass::kilograms(c.request.body_mass->value);
    const Mass added = maximum * c.fraction() - body;
    const LoadTable* table = c.loads.table(c.exercise);
    const auto made = table && added > Mass::kilograms(0) ? table->choose(added).not_above : std::nullopt;
    if (made) {
        const auto reps = c.at((body + made->total) / maximum, c.reserve());
        return {reps.done,    c.fraction(),
                reps.reserve, made->total,
                made->words,  "body mass counts as load, added plates not above " + percent(c.fraction())};
    }
    const int own = repetitions_possible(body / maximum) - c.reserve();
    if (own >= std::max(fewest_own_body_reps, c.loading == Loading::youth ? 6 : 0)) {
        const auto reps = c.at(body / maximum, c.reserve());
        return {reps.done,
                {},
                reps.reserve,
                {},
                "body mass alone",
                "body mass alone is already " + percent(body / maximum) + " of the estimated maximum"};
    }
    const Mass help = body - maximum * c.fraction();
    const MassUnit unit = c.loads.kit().unit;
    const double whole = std::max(1.0, std::round(unit == MassUnit::lb ? help.pounds() : help.kilograms()));
    const auto reps = c.at(c.fraction(), c.reserve());
    return {reps.done,
            c.fraction(),
            reps.reserve,
            {},
            std::string(c.loads.has(ItemKind::band) ? "assisted with a band" : "assisted with the feet") +
                ", taking about " + format_shortest(whole) + (unit == MassUnit::lb ? " lb" : " kg"),
            "body mass is more than this week's " + percent(c.fraction())};
}

LoadedSets lift_of(const Case& c, Mass maximum, const LoadTable& table) {
    const Mass wanted = maximum * c.fraction();
    const Mass target = c.exercise.heaviest ? std::min(wanted, *c.exercise.heaviest) : wanted;
    const LoadChoice choice = table.choose(target);
    if (!choice.not_above)
        return find_load(c);
    const MadeLoad& made = *choice.not_above;
    const double share = made.total / maximum;
    const std::string of_lower = percent(c.fraction()) + " of the lower side of the estimate";
    if (c.exercise.part == Part::speed)
        return {usual_reps(c), c.fraction(), {},
                made.total,    made.words,   "light enough to stay fast, " + of_lower};
    if (counted_in_steps(c.exercise))
        return {usual_reps(c), c.fraction(), {}, made.total, made.words, of_lower};
    const bool coarse = !choice.above || choice.above->total / made.total > 1 + coarse_step;
    if (!coarse && made.total > target * (1 - coarse_step) && target == wanted) {
        const auto reps = c.at(c.fraction(), c.reserve());
        return {reps.done, c.fraction(), reps.reserve, made.total, made.words, of_lower + ", made not above"};
    }
    const auto reps = c.at(share, c.reserve() + 2 - c.week.step);
    const std::string why = !choice.above ? "the heaviest of this kit, so repetitions instead of load"
                            : coarse      ? "repetitions before load, because the next load here is " +
                                           percent(choice.above->total / made.total - 1) + " heavier"
                                     : "this exercise is kept light, so repetitions instead of load";
    // The share of the load really made, not the one aimed at: on a coarse kit they are far apart.
    return {reps.done, share, reps.reserve, made.total, made.words, why};
}

} // namespace

LoadedSets plan_sets(const BlockRequest& request, const KitLoads& loads, const Exercise& exercise,
                     const WeekOfWave& week) {
    const Case c{request, loads, exercise, week, loading_of(request.athlete, request.start)};
    const auto maximum = lower_maximum(request, exercise);
    const LoadTable* table = loads.table(exercise);
    if (exercise.means == LoadMeans::ball)
        return throw_ball(c);
    if (maximum && moves_body_mass(exercise) && request.body_mass)
        return body_and_plates(c, *maximum);
    if (exercise.means == LoadMeans::band || exercise.means == LoadMeans::body)
        return unloaded(c);
    if (!maximum || moves_body_mass(exercise))
        return find_load(c);
    return lift_of(c, *maximum, *table);
}

// Above two minutes for trained people's heavy sets, one to two for new lifters [Grgic2018]; never longer
// than the time of a set leaves after half a minute of work.
double rest_minutes(const Exercise& exercise, Loading loading) {
    double wanted = 1;
    if (exercise.part == Part::main_lift)
        wanted = loading == Loading::trained ? 3 : 2;
    if (exercise.part == Part::assistance || exercise.part == Part::speed)
        wanted = 1.5;
    if (exercise.part == Part::mobility)
        wanted = 0.5;
    return std::max(0.25, std::min(wanted, exercise.set_minutes - 0.5));
}

} // namespace amentum
