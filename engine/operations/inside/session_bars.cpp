#include "operations/inside/session_bars.h"

#include "equipment/plates_of_kit.h"
#include "equipment/solve_load.h"
#include "equipment/warm_up.h"
#include "operations/inside/block_request.h"

#include <algorithm>

namespace amentum {
namespace {

std::vector<const BlockLine*> lines_of(const Block& block, int week, int session) {
    std::vector<const BlockLine*> lines;
    for (const auto& line : block.lines)
        if (line.week == week && line.session == session)
            lines.push_back(&line);
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto* a, const auto* b) { return a->order < b->order; });
    return lines;
}

bool on_a_bar(LoadMeans means) {
    return stacking_of(means).stacks == 2;
}

struct Added {
    NamedRack& rack;
    void set(LoadMeans means, const std::string& item, Mass load, NamedSet name) const {
        auto& bars = rack.wanted.bars;
        if (bars.empty() || bars.back().item != item) {
            bars.push_back({means, item, {}});
            rack.names.emplace_back();
        }
        bars.back().loads.push_back(load);
        rack.names.back().push_back(std::move(name));
    }
};

void add_line(NamedRack& rack, const Kit& kit, const BlockLine& line, const Exercise& exercise) {
    const auto made = solve_load(kit, exercise.means, *line.load, exercise.item);
    if (!made) {
        rack.notes.push_back(exercise.name + ": " + made.refusal().sentence);
        return;
    }
    const Added added{rack};
    const std::string& item = made->nearest.item;
    const bool first_on_bar = rack.wanted.bars.empty() || rack.wanted.bars.back().item != item;
    if (line.part == Part::main_lift && first_on_bar)
        if (const auto ramp = plan_warm_up(kit, exercise.means, made->nearest.total, item))
            for (const auto& step : ramp->steps)
                added.set(exercise.means, item, step.load.total,
                          {exercise.name + ", warm-up", "x " + std::to_string(step.reps)});
    added.set(exercise.means, item, *line.load,
              {exercise.name, std::to_string(line.sets) + " x " + std::to_string(line.reps) +
                                  (exercise.one_sided ? " a side" : "")});
}

} // namespace

Result<NamedRack> session_bars(const Workplace::Inside& inside, const FacilityView& view, const Kit& kit,
                               const Block& block, int week, int session) {
    if (week < 1 || week > block.weeks)
        return refuse_range("week", week, 1, block.weeks, "");
    const auto lines = lines_of(block, week, session);
    if (lines.empty())
        return refuse_range("session", session, 1, block.sessions_per_week, "");
    const Athlete* athlete = view.athlete(block.athlete.text);
    NamedRack rack{{athlete ? athlete->name : block.athlete.text, {}}, {}, {}};
    const auto painful =
        athlete ? painful_regions(view, inside.tables, *athlete, inside.today()) : std::vector<PainBlock>{};
    const auto left_out = [&](const BlockLine& line, const Exercise& exercise) {
        return line.date >= inside.today() &&
               std::any_of(painful.begin(), painful.end(),
                           [&](const PainBlock& row) { return blocks(row, exercise); });
    };
    for (const auto* line : lines) {
        const Exercise* exercise = inside.tables.exercise(line->exercise);
        if (!exercise || !on_a_bar(exercise->means))
            continue;
        if (left_out(*line, *exercise))
            rack.notes.push_back(exercise->name + " is left out: open pain blocks it. Stop and refer.");
        else if (line->load)
            add_line(rack, kit, *line, *exercise);
        else
            rack.notes.push_back(exercise->name + ": no load yet (" + line->load_words + ").");
    }
    if (rack.wanted.bars.empty())
        return Refusal{RefusalCode::too_few_data,
                       "Session " + std::to_string(session) + " of week " + std::to_string(week) + " of " +
                           rack.wanted.name + " has no bar with a load.",
                       "session", std::to_string(session), "a session with a loaded bar"};
    return rack;
}

} // namespace amentum
