#include "planning/next_session.h"

#include "planning/pain_words.h"

#include <algorithm>
#include <tuple>

namespace amentum {
namespace {

constexpr int days_kept = 7, days_of_long_gap = 14; // (proposal of this project, no source)
constexpr int missed_without_a_step = 1;
constexpr int weeks_in_a_wave = 4;
constexpr int days_of_notes = 7;
const std::string own_proposal = "proposal of this project, no source";

const Exercise* exercise_of(const BlockRequest& request, const std::string& key) {
    const auto found = std::find_if(request.catalogue.begin(), request.catalogue.end(),
                                    [&](const Exercise& each) { return each.key == key; });
    return found == request.catalogue.end() ? nullptr : &*found;
}

const SessionSoFar* next_of(const BlockSoFar& so_far, Date day) {
    for (const auto& session : so_far.sessions)
        if (session.date >= day && session.state == SessionState::ahead)
            return &session;
    return nullptr;
}

// Of the sessions before the next one.
struct Past {
    const SessionSoFar* last_held = nullptr; // or cut short
    int missed = 0;                          // after it
    std::optional<int> days_off;
};

Past past_of(const BlockSoFar& so_far, const SessionSoFar& next) {
    Past past;
    for (const auto& session : so_far.sessions) {
        if (&session == &next)
            break;
        if (session.state == SessionState::missed)
            ++past.missed;
        else if (session.sets_logged > 0) {
            past.missed = 0;
            past.last_held = &session;
        }
    }
    if (past.last_held)
        past.days_off = next.date - *past.last_held->last_day;
    return past;
}

struct RuleOfSession {
    SessionRule rule;
    int level_week;
    WhyLine words;
};

std::string sessions_missed(int count) {
    return count == 1 ? "One session was missed" : std::to_string(count) + " sessions were missed";
}

RuleOfSession first_week_again(int week, const std::string& because) {
    const int first = (week - 1) / weeks_in_a_wave * weeks_in_a_wave + 1;
    return {
        SessionRule::first_week_again,
        first,
        {because + ": the intensity of week " + std::to_string(first) + ", where this run of weeks began.",
         own_proposal}};
}

RuleOfSession rule_for(const SessionSoFar& next, const Past& past) {
    if (past.missed == 0 && !past.last_held)
        return {SessionRule::as_written, next.week, {"This is the first session of the block.", ""}};
    if (!past.last_held && past.missed > missed_without_a_step)
        return first_week_again(next.week, "No set of this block is logged, so it counts as not done");
    if (past.days_off.value_or(0) >= days_of_long_gap)
        return first_week_again(next.week,
                                std::to_string(*past.days_off) + " days since the last logged set");
    const bool a_week = past.missed > 0 && past.days_off.value_or(0) > days_kept;
    if (past.missed > missed_without_a_step || a_week) {
        const int held = std::min(past.last_held->week, next.week);
        return {SessionRule::week_again,
                held,
                {sessions_missed(past.missed) + ": the intensity of week " + std::to_string(held) +
                     ", the last one held, once more.",
                 "Coleman2024 that a week's stop costs strength; how far to go back: " + own_proposal}};
    }
    if (past.missed > 0)
        return {
            SessionRule::one_missed,
            next.week,
            {"One session was missed: the plan goes on as written, and nothing is made up.", own_proposal}};
    return {SessionRule::as_written, next.week, {"No session was missed: the plan goes on.", ""}};
}

LineHistory history_of(const BlockSoFar& so_far, const SessionSoFar& next, const BlockLine& written) {
    LineHistory history;
    std::vector<std::pair<const SetDone*, const BlockLine*>> earlier;
    for (const auto& [line, sets] : so_far.done)
        for (const SetDone* set : sets) {
            if (line->exercise != written.exercise)
                continue;
            if (line->week == next.week && line->session == next.session)
                history.today.push_back(set);
            else
                earlier.emplace_back(set, line);
        }
    std::stable_sort(earlier.begin(), earlier.end(), [](const auto& a, const auto& b) {
        return std::tie(a.first->date, a.first->set_number) < std::tie(b.first->date, b.first->set_number);
    });
    for (const auto& [set, line] : earlier) {
        if (set->date == earlier.back().first->date) {
            history.last.push_back(set);
            history.last_written = line;
        } else
            history.before.push_back(set);
    }
    return history;
}

// Was the last begun session that had this main lift left before its sets were done?
std::optional<std::string> unfinished(const BlockSoFar& so_far, const SessionSoFar& next,
                                      const BlockLine& written) {
    std::optional<std::string> said;
    if (written.part != Part::main_lift)
        return said;
    for (const auto& session : so_far.sessions) {
        if (&session == &next)
            break;
        if (session.sets_logged == 0)
            continue;
        for (const BlockLine* line : session.lines) {
            if (line->exercise != written.exercise)
                continue;
            const auto done = so_far.done.find(line);
            const int sets = done == so_far.done.end() ? 0 : static_cast<int>(done->second.size());
            said.reset();
            if (sets < line->sets)
                said = std::to_string(sets) + " of " + std::to_string(line->sets) + " sets were done on " +
                       session.date.text();
        }
    }
    return said;
}

// Unfinished main lifts come first; the others keep their order behind them.
void order_lines(NextSession& planned, const BlockSoFar& so_far, const SessionSoFar& next,
                 const BlockRequest& request) {
    std::vector<const BlockLine*> first;
    for (const auto& line : planned.lines)
        if (const auto said = unfinished(so_far, next, line.written)) {
            const Exercise* exercise = exercise_of(request, line.written.exercise);
            planned.ordered.push_back(
                {exercise->name + " comes first: " + *said + ". The missing sets are not added to today's.",
                 own_proposal});
            for (const BlockLine* written : next.lines)
                if (written->order == line.written.order)
                    first.push_back(written);
        }
    std::stable_partition(planned.lines.begin(), planned.lines.end(), [&](const NextLine& line) {
        return std::any_of(first.begin(), first.end(),
                           [&](const BlockLine* each) { return each->order == line.written.order; });
    });
    int order = 1;
    for (auto& line : planned.lines)
        line.now.order = order++;
}

std::optional<WhyLine> left_out_for_pain(const BlockRequest& request, const Exercise& exercise) {
    for (const auto& row : request.painful)
        if (blocks(row, exercise))
            return WhyLine{exercise.name + " is left out: pain of the " + row.name +
                               " is open. Stop and refer to a qualified clinician.",
                           "common practice in sports medicine, from memory"};
    return std::nullopt;
}

std::vector<PainNote> pain_notes(const NextSessionRequest& request) {
    std::vector<PainNote> notes;
    for (const auto& set : request.sets)
        if (set.athlete == request.block.athlete && set.date <= request.day &&
            set.date >= request.day - days_of_notes && speaks_of_pain(set.note))
            notes.push_back({set.date, set.exercise, set.note});
    return notes;
}

Refusal refuse_ended(const Block& block, Date day) {
    const Date last = block.start + (7 * block.weeks - 1);
    return {RefusalCode::too_few_data,
            "The block from " + block.start.text() + " has no session left: it ended on " + last.text() +
                ". Plan the next one.",
            "block", day.text(), "a block with sessions ahead"};
}

} // namespace

Block NextSession::adjusted(const Block& block) const {
    Block changed = block;
    std::erase_if(changed.lines,
                  [&](const BlockLine& line) { return line.week == week && line.session == session; });
    for (const auto& line : lines)
        changed.lines.push_back(line.now);
    return changed;
}

Result<NextSession> plan_next_session(const NextSessionRequest& request) {
    const BlockSoFar so_far = block_so_far(request.block, request.sets, request.day);
    const SessionSoFar* next = next_of(so_far, request.day);
    if (!next)
        return refuse_ended(request.block, request.day);
    const Past past = past_of(so_far, *next);
    const RuleOfSession rule = rule_for(*next, past);
    NextSession planned{next->week,  next->session, next->date, rule.rule, rule.words, rule.level_week,
                        past.missed, past.days_off, {},         {},        {},         pain_notes(request)};
    const KitLoads loads(request.today.kit);
    const bool after_missed =
        rule.rule == SessionRule::week_again || rule.rule == SessionRule::first_week_again;
    const LevelOfSession level{rule.level_week, rule.words, after_missed};
    for (const BlockLine* written : next->lines)
        if (const Exercise* exercise = exercise_of(request.today, written->exercise)) {
            if (auto why = left_out_for_pain(request.today, *exercise)) {
                planned.left_out.push_back(*std::move(why));
                continue;
            }
            planned.lines.push_back(next_line({request.today, loads, request.block, *written, *exercise,
                                               level, history_of(so_far, *next, *written)}));
        }
    order_lines(planned, so_far, *next, request.today);
    return planned;
}

} // namespace amentum
