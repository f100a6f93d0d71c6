#include "planning/state_problem.h"

#include "planning/calendar_days.h"
#include "planning/exercise_classes.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int most_youth_sessions = 3; // [Faigenbaum2009] (from memory)
constexpr double change_cost = 0.3;    // points a line changed: proposal of this project, no source

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

bool legs_session(int session, int sessions) {
    return session % 2 == 0 || sessions == 2;
}

// Two sets must fit the shortest session that may be asked for.
bool fits_shortest_session(const Exercise& e) {
    return e.setup_minutes + 2 * e.set_minutes <= shortest_session_minutes;
}

Choice choice_of(const AllowedExercise& each, const BlockProblem& problem, Loading loading, int sessions) {
    const Exercise& e = *each.exercise;
    Choice choice{};
    choice.exercise = e.key;
    choice.name = e.name;
    choice.pattern = e.pattern;
    choice.part = e.part;
    choice.region = e.region;
    choice.set_minutes = e.set_minutes;
    choice.setup_minutes = e.setup_minutes;
    choice.most_sets = most_sets(e.part, loading);
    choice.fewest_sets = std::min(2, choice.most_sets);
    for (const auto& quality : problem.qualities) {
        const auto share = e.qualities.find(quality);
        choice.serves.push_back(share == e.qualities.end() ? 0 : share->second * each.preference);
    }
    choice.hard = e.part == Part::main_lift || e.part == Part::assistance || e.part == Part::speed;
    choice.main_lift = e.part == Part::main_lift;
    choice.heavy_legs = heavy_for_legs(e);
    choice.hard_on_arm = hard_on_tired_arm(e);
    choice.ready = ready_group(e);
    for (int d = 0; d < sessions; ++d)
        choice.sessions.push_back(fits_shortest_session(e) &&
                                  (!choice.heavy_legs || legs_session(d, sessions)));
    return choice;
}

std::vector<Meso> mesos_of(const StatedProblem& stated, const BlockRequest& request) {
    const CalendarDays calendar(request);
    std::vector<Meso> mesos;
    for (std::size_t w = 0; w < stated.wave.size(); ++w) {
        const WeekOfWave& week = stated.wave[w];
        if (week.meso == std::ssize(mesos))
            mesos.push_back({week.week, week.week, {}});
        mesos.back().last_week = week.week;
        if (week.reduced)
            continue;
        const std::vector<bool> none(at(stated.sessions), false);
        FullWeek full{week.week, none, none, none, false};
        for (const auto& session : stated.placed[w].sessions) {
            full.held[session.of_week] = true;
            full.legs_spared[session.of_week] = !session.spare_legs.empty();
            full.arm_spared[session.of_week] = !session.spare_arm.empty();
        }
        for (int day = 0; day < 7; ++day)
            full.start_week |=
                calendar.start_within_48_h(request.start + 7 * (week.week - 1) + day).has_value();
        mesos.back().full_weeks.push_back(std::move(full));
    }
    return mesos;
}

// Pairs of sessions that fall on two days running somewhere, in a week or from one week to the next.
std::vector<std::pair<int, int>> neighbours_of(const std::vector<PlacedWeek>& placed) {
    std::vector<std::pair<int, int>> pairs;
    const PlacedSession* before = nullptr;
    for (const auto& week : placed)
        for (const auto& session : week.sessions) {
            if (before && session.date - before->date == 1 && session.of_week != before->of_week) {
                const std::pair pair{static_cast<int>(std::min(before->of_week, session.of_week)),
                                     static_cast<int>(std::max(before->of_week, session.of_week))};
                if (std::find(pairs.begin(), pairs.end(), pair) == pairs.end())
                    pairs.push_back(pair);
            }
            before = &session;
        }
    return pairs;
}

int choice_called(const BlockProblem& problem, const std::string& exercise) {
    for (std::size_t c = 0; c < problem.choices.size(); ++c)
        if (problem.choices[c].exercise == exercise)
            return static_cast<int>(c);
    return -1;
}

// Where a held line without a session goes: a legs session for what is heavy for the legs, else the one with fewest pins.
int session_for(const StatedProblem& stated, const Choice& choice) {
    int best = 0, fewest = 1000;
    for (int d = 0; d < stated.sessions; ++d) {
        const auto& pinned = stated.problem.pinned;
        int pins = static_cast<int>(
            std::count_if(pinned.begin(), pinned.end(), [d](const Pinned& pin) { return pin.session == d; }));
        pins += choice.sessions[at(d)] ? 0 : 100;
        if (pins < fewest) {
            fewest = pins;
            best = d;
        }
    }
    return best;
}

std::optional<Refusal> add_own_line(StatedProblem& stated, const AllowedExercises& allowed,
                                    const OwnLine& own) {
    const int choice = choice_called(stated.problem, own.exercise);
    if (own.session && (*own.session < 1 || *own.session > stated.sessions))
        return Refusal{RefusalCode::out_of_range,
                       "The week has " + std::to_string(stated.sessions) + " sessions, and session " +
                           std::to_string(*own.session) + " is not one of them.",
                       "session", std::to_string(*own.session), "1 to " + std::to_string(stated.sessions)};
    const auto session = own.session ? std::optional(*own.session - 1) : std::nullopt;
    if (own.word == OwnLine::Word::leave_out) {
        if (choice >= 0)
            stated.problem.barred.push_back({choice, session});
        return {};
    }
    if (choice < 0) {
        const auto why = allowed.why_not.find(own.exercise);
        return Refusal{RefusalCode::no_block_fits,
                       "\"" + own.exercise + "\" cannot be held in the block: it " +
                           (why == allowed.why_not.end() ? "is not in the catalogue" : why->second) + ".",
                       "exercise", own.exercise, "an exercise this athlete may do in this gym"};
    }
    Choice& what = stated.problem.choices[at(choice)];
    if (own.sets && (*own.sets < 1 || *own.sets > what.most_sets))
        return Refusal{RefusalCode::out_of_range,
                       "\"" + own.exercise + "\" takes 1 to " + std::to_string(what.most_sets) +
                           " sets in a session for this athlete.",
                       "sets", std::to_string(*own.sets), "1 to " + std::to_string(what.most_sets)};
    if (own.sets)
        what.fewest_sets = std::min(what.fewest_sets, *own.sets);
    const int where = session.value_or(session_for(stated, what));
    what.sessions[at(where)] = true;
    stated.problem.pinned.push_back({choice, where, own.sets});
    return {};
}

std::optional<Refusal> add_least_sets(BlockProblem& problem, const LeastSets& least) {
    const auto found = std::find(problem.qualities.begin(), problem.qualities.end(), least.quality);
    if (found == problem.qualities.end())
        return refuse_choice("quality", least.quality, problem.qualities);
    problem.least.push_back({static_cast<int>(found - problem.qualities.begin()), least.weekly_sets});
    return {};
}

} // namespace

std::optional<int> ready_group(const Exercise& e) {
    if (e.part == Part::shoulder || e.region == Region::upper_pull)
        return 0;
    if (e.part == Part::trunk)
        return 1;
    if (e.part != Part::mobility)
        return std::nullopt;
    return e.region == Region::legs || e.region == Region::whole_body ? 2 : 3;
}

const char* ready_group_name(int group) {
    constexpr std::array names{"pulling or shoulder work", "trunk work", "hip mobility",
                               "mobility for length overhead"};
    return names[at(group)];
}

Result<StatedProblem> state_problem(const BlockRequest& request, const AllowedExercises& allowed,
                                    const QualityWorth& worth) {
    const Loading loading = loading_of(request.athlete, request.start);
    const bool youth = loading == Loading::youth;
    StatedProblem stated{};
    stated.sessions =
        youth ? std::min(request.sessions_per_week, most_youth_sessions) : request.sessions_per_week;
    stated.wave = plan_wave(request.weeks, loading);
    BlockProblem& problem = stated.problem;
    problem.sessions = stated.sessions;
    problem.curve = usual_dose_curve();
    problem.limits = weekly_limits(loading, request.minutes);
    for (const auto& quality : request.qualities)
        if (worth.trainable(quality.key)) {
            problem.qualities.push_back(quality.key);
            problem.weights.push_back(worth.weight(quality.key));
        }
    for (const auto& each : allowed.list)
        problem.choices.push_back(choice_of(each, problem, loading, stated.sessions));
    for (const auto& own : request.own_lines)
        if (const auto refusal = add_own_line(stated, allowed, own))
            return *refusal;
    for (const auto& least : request.least_sets)
        if (const auto refusal = add_least_sets(problem, least))
            return *refusal;

    std::vector<SessionNeeds> needs;
    for (int d = 0; d < stated.sessions; ++d) {
        const bool pinned_legs =
            std::any_of(problem.pinned.begin(), problem.pinned.end(), [&](const Pinned& pin) {
                return pin.session == d && problem.choices[at(pin.choice)].heavy_legs;
            });
        needs.push_back({legs_session(d, stated.sessions) || pinned_legs, false});
    }
    stated.placed =
        place_sessions(request, std::vector<std::vector<SessionNeeds>>(stated.wave.size(), needs), youth);
    problem.mesos = mesos_of(stated, request);
    problem.limits.neighbours = neighbours_of(stated.placed);
    if (request.previous) {
        problem.previous = plan_of(stated, *request.previous);
        problem.costs.change = change_cost;
    }
    return stated;
}

PlanSets plan_of(const StatedProblem& stated, const Block& block) {
    PlanSets plan = empty_plan(stated.problem);
    for (const auto& line : block.lines) {
        const int choice = choice_called(stated.problem, line.exercise);
        const auto week = static_cast<std::size_t>(line.week - 1);
        if (choice < 0 || week >= stated.wave.size() || stated.wave[week].reduced || line.session < 1 ||
            line.session > stated.sessions)
            continue;
        int& sets = plan[at(stated.wave[week].meso)][at(line.session - 1)][at(choice)];
        sets = std::max(sets, line.sets);
    }
    return plan;
}

} // namespace amentum
