#include "planning/block_so_far.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace amentum {
namespace {

SessionState state_of(const SessionSoFar& session, Date today) {
    if (session.sets_logged >= session.sets_written)
        return SessionState::held;
    if (session.date >= today)
        return SessionState::ahead;
    return session.sets_logged > 0 ? SessionState::cut_short : SessionState::missed;
}

void count_sets(SessionSoFar& session, const BlockSoFar& so_far) {
    for (const BlockLine* line : session.lines) {
        session.sets_written += line->sets;
        const auto done = so_far.done.find(line);
        if (done == so_far.done.end())
            continue;
        // More sets of one line do not stand for those of another.
        session.sets_logged += std::min(line->sets, static_cast<int>(done->second.size()));
        for (const SetDone* set : done->second)
            session.last_day = std::max(session.last_day.value_or(set->date), set->date);
    }
}

bool comes_before(const SetDone& a, const SetDone& b) {
    return std::tie(a.date, a.set_number, a.key) < std::tie(b.date, b.set_number, b.key);
}

const BlockLine* nearest_line(const Block& block, const SetDone& set) {
    if (set.athlete != block.athlete || (set.block && *set.block != block.id))
        return nullptr;
    const BlockLine* nearest = nullptr;
    const auto days_off = [&](const BlockLine& line) { return std::abs(line.date - set.date); };
    for (const auto& line : block.lines)
        if (line.exercise == set.exercise &&
            (!nearest || days_off(line) < days_off(*nearest) ||
             (days_off(line) == days_off(*nearest) && line.date < nearest->date)))
            nearest = &line;
    const bool meant = nearest && (set.block || days_off(*nearest) == 0);
    return meant ? nearest : nullptr;
}

const BlockLine* line_within_a_week(const Block& block, const SetDone& set) {
    const BlockLine* first = nullptr;
    for (const auto& line : block.lines)
        if (line.exercise == set.exercise && line.date > set.date && line.date - set.date <= 7 &&
            (!first || line.date < first->date))
            first = &line;
    return first;
}

} // namespace

std::vector<const BlockLine*> lines_of_sets(const Block& block, std::span<const SetDone> sets) {
    std::vector<std::size_t> in_order; // of this athlete: a hall has many others' sets
    for (std::size_t i = 0; i < sets.size(); ++i)
        if (sets[i].athlete == block.athlete)
            in_order.push_back(i);
    std::sort(in_order.begin(), in_order.end(),
              [&](std::size_t a, std::size_t b) { return comes_before(sets[a], sets[b]); });
    std::vector<const BlockLine*> lines(sets.size(), nullptr);
    std::map<const BlockLine*, int> done;
    for (const std::size_t i : in_order) {
        const SetDone& set = sets[i];
        const BlockLine* line = nearest_line(block, set);
        if (!line)
            continue;
        if (line->date < set.date && done[line] >= line->sets)
            if (const BlockLine* ahead = line_within_a_week(block, set))
                line = ahead;
        ++done[line];
        lines[i] = line;
    }
    return lines;
}

BlockSoFar block_so_far(const Block& block, std::span<const SetDone> sets, Date today) {
    BlockSoFar so_far;
    const auto lines = lines_of_sets(block, sets);
    for (std::size_t i = 0; i < sets.size(); ++i)
        if (lines[i] && sets[i].date <= today)
            so_far.done[lines[i]].push_back(&sets[i]);
    for (auto& [line, done] : so_far.done)
        std::sort(done.begin(), done.end(),
                  [](const SetDone* a, const SetDone* b) { return comes_before(*a, *b); });
    std::map<std::pair<int, int>, SessionSoFar> sessions;
    for (const auto& line : block.lines) {
        const auto [place, fresh] = sessions.try_emplace(
            {line.week, line.session},
            SessionSoFar{line.week, line.session, line.date, {}, SessionState::ahead, 0, 0, {}});
        place->second.lines.push_back(&line);
    }
    for (auto& [key, session] : sessions) {
        std::stable_sort(session.lines.begin(), session.lines.end(),
                         [](const BlockLine* a, const BlockLine* b) { return a->order < b->order; });
        count_sets(session, so_far);
        session.state = state_of(session, today);
        so_far.sessions.push_back(session);
    }
    std::stable_sort(so_far.sessions.begin(), so_far.sessions.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    return so_far;
}

} // namespace amentum
