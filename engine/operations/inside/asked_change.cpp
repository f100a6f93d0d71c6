#include "operations/inside/asked_change.h"

#include "planning/wave.h"

#include <algorithm>

namespace amentum {
namespace {

bool speaks_of(const BlockChange& change, const std::string& exercise) {
    return change.exercise == exercise || change.with == exercise;
}

Result<std::string> exercise_named(const ReferenceTables& tables, const std::optional<std::string>& given,
                                   const std::string& field, const std::string& what) {
    if (!given || given->empty())
        return refuse_missing(field, what);
    std::vector<std::string> keys;
    for (const auto& each : tables.exercises) {
        if (each.key == *given || each.name == *given)
            return each.key;
        keys.push_back(each.key);
    }
    return refuse_unknown(field, *given, keys);
}

} // namespace

Result<BlockChange> change_asked(const Workplace::Inside& inside, const FacilityView& view,
                                 const Block& block, const AdjustBlockRequest& asked) {
    const auto step = from_word<OwnStep>(asked.step);
    if (!step || *step == OwnStep::planned)
        return refuse_choice("step", asked.step,
                             std::vector<std::string>{"hold", "leave_out", "swap", "undo"});
    const auto exercise =
        exercise_named(inside.tables, asked.exercise, "exercise", "the exercise that is meant");
    if (!exercise)
        return exercise.refusal();
    if (asked.session && (*asked.session < 1 || *asked.session > block.sessions_per_week))
        return refuse_range("session", *asked.session, 1, block.sessions_per_week, "");
    BlockChange change{block.id,
                       next_change_number(view.block_changes, block.id),
                       *step,
                       *exercise,
                       "",
                       asked.session,
                       sessions_with(block, *exercise),
                       asked.sets,
                       inside.today(),
                       {}};
    if (*step != OwnStep::swap)
        return change;
    const auto with = exercise_named(inside.tables, asked.with, "with", "the exercise that takes its place");
    if (!with)
        return with.refusal();
    if (*with == *exercise)
        return Refusal{RefusalCode::unknown_choice, "An exercise cannot give way to itself.", "with", *with,
                       "another exercise"};
    change.with = *with;
    return change;
}

bool holds_already(const std::vector<BlockChange>& in_force, const BlockChange& asked) {
    for (auto held = in_force.rbegin(); held != in_force.rend(); ++held) {
        if (held->step == asked.step && held->exercise == asked.exercise && held->with == asked.with &&
            held->session == asked.session && held->sets == asked.sets)
            return true;
        if (speaks_of(*held, asked.exercise) || (!asked.with.empty() && speaks_of(*held, asked.with)))
            return false;
    }
    return false;
}

Result<Done> check_stands(const BlockChange& change, const Block& block, const ReferenceTables& tables) {
    if (change.step != OwnStep::swap)
        return Done{};
    const bool stands = std::any_of(block.lines.begin(), block.lines.end(), [&](const auto& line) {
        return line.exercise == change.exercise && (!change.session || line.session == *change.session);
    });
    if (stands)
        return Done{};
    const std::string where = change.session ? "session " + std::to_string(*change.session) : "this block";
    return Refusal{RefusalCode::unknown_name,
                   tables.exercise(change.exercise)->name + " does not stand in " + where +
                       ", so nothing can take its place there.",
                   "exercise", change.exercise, "an exercise of that session"};
}

bool block_has_it(const BlockChange& change, const Block& block, const std::set<int>& begun,
                  const Athlete& athlete) {
    if (change.step == OwnStep::swap)
        return false;
    const auto lines_in = [&](int week, std::optional<int> session) {
        std::vector<const BlockLine*> found;
        for (const auto& line : block.lines)
            if (line.week == week && line.exercise == change.exercise &&
                (!session || line.session == *session))
                found.push_back(&line);
        return found;
    };
    const auto wanted = change.session ? std::vector<int>{*change.session} : change.stood;
    for (const auto& week : plan_wave(block.weeks, loading_of(athlete, block.start))) {
        if (begun.contains(week.week))
            continue;
        if (change.step == OwnStep::leave_out && !lines_in(week.week, change.session).empty())
            return false;
        if (change.step == OwnStep::hold && wanted.empty())
            return false;
        for (const int session : change.step == OwnStep::hold ? wanted : std::vector<int>{}) {
            const auto found = lines_in(week.week, session);
            if (found.empty() || (change.sets && !week.reduced && found.front()->sets != *change.sets))
                return false;
        }
    }
    return true;
}

} // namespace amentum
