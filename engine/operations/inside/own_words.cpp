#include "operations/inside/own_words.h"

#include <algorithm>
#include <iterator>

namespace amentum {
namespace {

using Word = OwnLine::Word;

bool overlaps(const std::optional<int>& a, const std::optional<int>& b) {
    return !a || !b || *a == *b;
}

// Earlier words that the new one contradicts go; an exercise left out everywhere stays out of the sessions not spoken of.
void add_own_line(std::vector<OwnLine>& lines, const OwnLine& added, int sessions) {
    std::vector<OwnLine> kept;
    for (const auto& earlier : lines) {
        const bool gives_way = earlier.exercise == added.exercise && overlaps(earlier.session, added.session);
        if (!gives_way) {
            kept.push_back(earlier);
            continue;
        }
        if (earlier.word == Word::leave_out && !earlier.session && added.session)
            for (int session = 1; session <= sessions; ++session)
                if (session != *added.session)
                    kept.push_back({Word::leave_out, earlier.exercise, session});
    }
    kept.push_back(added);
    lines = std::move(kept);
}

void add_held(std::vector<OwnLine>& lines, const std::string& exercise, const BlockChange& change,
              int sessions) {
    if (change.session || change.stood.empty()) {
        add_own_line(lines, {Word::hold, exercise, change.session, change.sets}, sessions);
        return;
    }
    for (const int session : change.stood)
        add_own_line(lines, {Word::hold, exercise, session, change.sets}, sessions);
}

std::string name_of(const std::string& key, const ReferenceTables& tables) {
    const Exercise* exercise = tables.exercise(key);
    return exercise ? exercise->name : key;
}

std::string listed(const std::vector<int>& sessions) {
    std::string text = sessions.size() == 1 ? "session " : "sessions ";
    for (std::size_t i = 0; i < sessions.size(); ++i)
        text += (i == 0 ? "" : i + 1 == sessions.size() ? " and " : ", ") + std::to_string(sessions[i]);
    return text;
}

std::string with_sets(const std::optional<int>& sets) {
    return sets ? " with " + std::to_string(*sets) + (*sets == 1 ? " set" : " sets") : "";
}

} // namespace

std::vector<BlockChange> changes_in_force(const std::vector<BlockChange>& all, const BlockId& block) {
    std::vector<BlockChange> in_force;
    for (const auto& change : all) {
        if (change.block != block || change.undone)
            continue;
        if (change.step == OwnStep::planned)
            in_force.clear();
        else
            in_force.push_back(change);
    }
    return in_force;
}

const BlockChange* last_change(const std::vector<BlockChange>& all, const BlockId& block) {
    const auto found = std::find_if(all.rbegin(), all.rend(),
                                    [&](const auto& each) { return each.block == block && !each.undone; });
    return found == all.rend() ? nullptr : &*found;
}

int next_change_number(const std::vector<BlockChange>& all, const BlockId& block) {
    int last = 0;
    for (const auto& change : all)
        if (change.block == block)
            last = std::max(last, change.number);
    return last + 1;
}

std::vector<OwnLine> own_lines(const std::vector<BlockChange>& in_force, int sessions) {
    std::vector<OwnLine> lines;
    for (const auto& change : in_force) {
        if (change.step == OwnStep::hold)
            add_held(lines, change.exercise, change, sessions);
        else
            add_own_line(lines, {Word::leave_out, change.exercise, change.session}, sessions);
        if (change.step == OwnStep::swap)
            add_held(lines, change.with, change, sessions);
    }
    return lines;
}

std::string change_words(const BlockChange& change, const ReferenceTables& tables) {
    const std::string name = name_of(change.exercise, tables);
    const std::string where = change.session         ? " session " + std::to_string(*change.session)
                              : change.stood.empty() ? ""
                                                     : " " + listed(change.stood);
    const std::string in = where.empty() ? "" : " in" + where;
    switch (change.step) {
    case OwnStep::hold:
        return name + " stays" + (in.empty() ? " in the week" : in) + with_sets(change.sets) + ".";
    case OwnStep::leave_out:
        return name + " is left out" + (change.session ? " of" + where : "") + ".";
    case OwnStep::swap:
        return name + " gives way to " + name_of(change.with, tables) + in + with_sets(change.sets) + ".";
    case OwnStep::planned:
        return "Planned anew.";
    }
    return "";
}

std::vector<int> sessions_with(const Block& block, const std::string& exercise) {
    std::map<int, std::set<int>> weeks; // by session
    for (const auto& line : block.lines)
        if (line.exercise == exercise)
            weeks[line.session].insert(line.week);
    std::vector<int> often;
    std::optional<int> most;
    for (const auto& [session, held] : weeks) {
        if (2 * std::ssize(held) >= block.weeks)
            often.push_back(session);
        if (!most || held.size() > weeks[*most].size())
            most = session;
    }
    if (often.empty() && most)
        often.push_back(*most);
    return often;
}

} // namespace amentum
