#include "planning/inside/loosened_model.h"

#include <algorithm>

namespace amentum {
namespace {

void ask_only_whether(LinearModel& model) {
    for (auto& column : model.columns)
        column.points = 0;
    model.constant = 0;
}

void couple_loosely(LinearModel& model) {
    for (std::size_t m = 0; m < model.used.size(); ++m)
        for (std::size_t d = 0; d < model.used[m].size(); ++d)
            for (std::size_t c = 0; c < model.used[m][d].size(); ++c) {
                const int used = model.used[m][d][c], sets = model.sets[m][d][c];
                if (used < 0)
                    continue;
                model.columns[static_cast<std::size_t>(sets)].upper = loosest_sets;
                model.rows.push_back({"one", 0, unlimited, {{sets, 1}, {used, -1}}, {}});
                model.rows.push_back({"loosest", -unlimited, 0, {{sets, 1}, {used, -loosest_sets}}, {}});
            }
}

} // namespace

LinearModel loosened(LinearModel model, const Groups& given_up) {
    ask_only_whether(model);
    model.rows.erase(std::remove_if(model.rows.begin(), model.rows.end(),
                                    [&](const LinearRow& row) {
                                        return row.group && given_up[static_cast<std::size_t>(*row.group)];
                                    }),
                     model.rows.end());
    if (given_up[static_cast<std::size_t>(LimitGroup::sets_of_line)])
        couple_loosely(model);
    return model;
}

YieldingModel yielding(LinearModel model, LimitGroup group) {
    ask_only_whether(model);
    YieldingModel out{std::move(model), {}};
    const bool whole_lines = group == LimitGroup::own_lines; // a line is given up or not
    std::vector<LinearRow> other_sides;
    int own = 0;
    for (auto& row : out.model.rows) {
        if (row.group != group)
            continue;
        const auto [place, is_new] = out.columns.try_emplace(row.number ? *row.number : --own, 0);
        if (is_new) {
            place->second = static_cast<int>(out.model.columns.size());
            out.model.columns.push_back(
                {"give_" + row.name, 0, whole_lines ? 1 : unlimited, -1, whole_lines});
        }
        const LinearRow hard = row;
        row.entries.push_back({place->second, row.upper < unlimited ? -row.give : row.give});
        if (hard.upper < unlimited && hard.lower > -unlimited) { // gives way on either side
            row.lower = -unlimited;
            LinearRow other = hard;
            other.upper = unlimited;
            other.entries.push_back({place->second, hard.give});
            other_sides.push_back(std::move(other));
        }
    }
    out.model.rows.insert(out.model.rows.end(), other_sides.begin(), other_sides.end());
    if (group == LimitGroup::sets_of_line)
        couple_loosely(out.model);
    return out;
}

} // namespace amentum
