#include "operations/inside/moved_lines.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace amentum {
namespace {

using Place = std::pair<int, int>;                            // week, session
using Lines = std::map<Place, std::vector<const BlockLine*>>; // in order
using LineKey = std::tuple<int, int, std::string>;            // week, session, exercise

Lines by_session(const Block& block) {
    Lines lines;
    for (const auto& line : block.lines)
        lines[{line.week, line.session}].push_back(&line);
    return lines;
}

std::multimap<std::string, int> contents(const std::vector<const BlockLine*>& lines) {
    std::multimap<std::string, int> all;
    for (const auto* line : lines)
        all.emplace(line->exercise, line->sets);
    return all;
}

void add_session(Block& block, const std::vector<const BlockLine*>& before,
                 const std::vector<const BlockLine*>& planned) {
    const bool same = contents(before) == contents(planned);
    for (const auto* line : same ? before : planned) {
        BlockLine kept = *line;
        if (!same)
            for (const auto* old : before)
                if (old->exercise == line->exercise && old->sets == line->sets)
                    kept = *old;
        kept.order = line->order;
        kept.date = planned.front()->date;
        block.lines.push_back(std::move(kept));
    }
}

std::map<LineKey, int> sets_of(const Block& block) {
    std::map<LineKey, int> sets;
    for (const auto& line : block.lines)
        sets[{line.week, line.session, line.exercise}] += line.sets;
    return sets;
}

std::string counted(int sets) {
    return std::to_string(sets) + (sets == 1 ? " set" : " sets");
}

std::string listed(const std::vector<int>& weeks) {
    const bool run = weeks.size() > 2 && weeks.back() - weeks.front() + 1 == std::ssize(weeks);
    if (weeks.size() == 1)
        return "Week " + std::to_string(weeks.front()) + ". ";
    if (run)
        return "Weeks " + std::to_string(weeks.front()) + " to " + std::to_string(weeks.back()) + ". ";
    std::string text = "Weeks ";
    for (std::size_t i = 0; i < weeks.size(); ++i)
        text += (i == 0 ? "" : i + 1 == weeks.size() ? " and " : ", ") + std::to_string(weeks[i]);
    return text + ". ";
}

const std::string& purpose_in(const Block& block, const std::string& exercise) {
    static const std::string none;
    const auto found = std::find_if(block.lines.begin(), block.lines.end(),
                                    [&](const auto& line) { return line.exercise == exercise; });
    return found == block.lines.end() ? none : found->purpose;
}

class Reasons {
public:
    Reasons(const Block& before, const Block& after, const BlockChange& change, const ReferenceTables& tables)
        : before_(before), after_(after), change_(change), tables_(tables) {}

    std::string of(int session, const std::string& exercise) const {
        if (exercise == change_.exercise)
            return change_.step == OwnStep::hold ? "Your word: it stays."
                   : change_.step == OwnStep::leave_out
                       ? "Your word: it is left out."
                       : "Your word: it gives way to " + name(change_.with) + ".";
        if (!change_.with.empty() && exercise == change_.with)
            return "Your word: it takes the place of " + name(change_.exercise) + ".";
        const bool shares_session =
            (change_.session && *change_.session == session) ||
            std::find(change_.stood.begin(), change_.stood.end(), session) != change_.stood.end();
        if (shares_session)
            return "It shares the minutes and limits of this session with your change.";
        const std::string& serves = purpose(exercise);
        if (!serves.empty() && (serves == purpose(change_.exercise) || serves == purpose(change_.with)))
            return "It serves " + quality(serves) +
                   ", as what you changed does: those sets are shared out anew.";
        return "The best block found around your change has it so.";
    }

private:
    const std::string& purpose(const std::string& exercise) const {
        const auto& now = purpose_in(after_, exercise);
        return now.empty() ? purpose_in(before_, exercise) : now;
    }
    std::string name(const std::string& key) const {
        const Exercise* exercise = tables_.exercise(key);
        return exercise ? exercise->name : key;
    }
    std::string quality(const std::string& key) const {
        const Quality* found = tables_.quality(key);
        return found ? found->name : key;
    }

    const Block &before_, &after_;
    const BlockChange& change_;
    const ReferenceTables& tables_;
};

} // namespace

Block as_little_changed(const Block& before, Block planned, const std::set<int>& begun) {
    const Lines old = by_session(before), fresh = by_session(planned);
    Block block = planned;
    block.id = before.id; // a block kept for another gym keeps its name, too
    block.lines.clear();
    for (const auto& line : before.lines)
        if (begun.contains(line.week))
            block.lines.push_back(line);
    for (const auto& [place, lines] : fresh) {
        if (begun.contains(place.first))
            continue;
        const auto held = old.find(place);
        add_session(block, held == old.end() ? std::vector<const BlockLine*>{} : held->second, lines);
    }
    std::stable_sort(block.lines.begin(), block.lines.end(), [](const auto& a, const auto& b) {
        return std::tie(a.week, a.session, a.order) < std::tie(b.week, b.session, b.order);
    });
    return block;
}

std::vector<MovedLine> moved_lines(const Block& before, const Block& after, const BlockChange& change,
                                   MoveDirection direction, const ReferenceTables& tables) {
    const auto old = sets_of(before), fresh = sets_of(after);
    const Reasons reasons(before, after, change, tables);
    struct Found {
        MovedLine move;
        std::vector<int> weeks;
    };
    std::map<std::tuple<int, std::string, int>, Found> found; // session, exercise, kind
    const auto add = [&](const LineKey& key, int was, int is) {
        const auto& [week, session, exercise] = key;
        const int kind = was == 0 ? 0 : is == 0 ? 1 : is > was ? 2 : 3;
        auto& each = found[{session, exercise, kind}];
        each.weeks.push_back(week);
        if (each.weeks.size() > 1)
            return;
        const Exercise* known = tables.exercise(exercise);
        each.move = {week,
                     session,
                     exercise,
                     known ? known->name : exercise,
                     was == 0  ? "added"
                     : is == 0 ? "left out"
                               : counted(is) + ", not " + std::to_string(was),
                     direction == MoveDirection::undone ? "As it was before."
                                                        : reasons.of(session, exercise)};
    };
    std::set<LineKey> all;
    for (const auto* sets : {&old, &fresh})
        for (const auto& [key, count] : *sets)
            all.insert(key);
    for (const auto& key : all) {
        const auto was = old.find(key), is = fresh.find(key);
        const int before_sets = was == old.end() ? 0 : was->second,
                  after_sets = is == fresh.end() ? 0 : is->second;
        if (before_sets != after_sets)
            add(key, before_sets, after_sets);
    }
    std::vector<MovedLine> moves;
    for (auto& [key, each] : found) {
        each.move.why = listed(each.weeks) + each.move.why;
        moves.push_back(std::move(each.move));
    }
    std::stable_sort(moves.begin(), moves.end(), [](const auto& a, const auto& b) {
        return std::tie(a.week, a.session) < std::tie(b.week, b.session);
    });
    return moves;
}

} // namespace amentum
