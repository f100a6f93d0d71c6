#include "operations/inside/prescribed_loads.h"

#include "inference/test_scale.h"
#include "planning/allowed_exercises.h"
#include "planning/kit_loads.h"
#include "planning/wave.h"

#include <algorithm>

namespace amentum {
namespace {

struct Level {
    double mean, lower; // lower: one standard error below
};

std::optional<Level> level_on(const FacilityView& view, const AthleteId& athlete, const std::string& test,
                              Date day) {
    const Series* series = view.one_series(athlete.text, test);
    if (!series)
        return std::nullopt;
    const auto back =
        back_on_unit(series->kind->scale, series->trajectory.front().state_on(day.days_since_1970()), 1.0);
    return Level{back.value, back.band.low};
}

std::optional<Mass> aimed_at(const FacilityView& view, const Athlete& athlete, const Block& block,
                             const BlockLine& line, const Exercise& exercise) {
    if (!exercise.load_test)
        return std::nullopt;
    const auto maximum = level_on(view, athlete.id, *exercise.load_test, block.start);
    const auto wave = plan_wave(block.weeks, loading_of(athlete, block.start));
    if (!maximum || line.week > static_cast<int>(wave.size()))
        return std::nullopt;
    const double fraction = fraction_for(line.part, wave[static_cast<std::size_t>(line.week) - 1].fraction);
    Mass target = Mass::kilograms(maximum->lower * exercise.load_share * fraction);
    if (moves_body_mass(exercise)) {
        const auto body = level_on(view, athlete.id, "body_mass", block.start);
        if (!body)
            return std::nullopt;
        target = target - Mass::kilograms(body->mean);
    }
    return exercise.heaviest ? std::min(target, *exercise.heaviest) : target;
}

// The target, as long as the line is still what this kit makes of it.
Mass target_of(const std::optional<Mass>& aimed, Mass load, const LoadTable& table, MassUnit unit) {
    if (!aimed || *aimed <= Mass::kilograms(0))
        return load;
    const auto made = table.choose(*aimed).not_above;
    const bool still = made && exact_mass(made->total) - exact_mass(load) < exact_mass(small_step(unit)) &&
                       exact_mass(load) - exact_mass(made->total) < exact_mass(small_step(unit));
    return still ? *aimed : load;
}

} // namespace

PrescribedLoads prescribed_loads(const Workplace::Inside& inside, const FacilityView& view, const Kit& kit) {
    PrescribedLoads found;
    const KitLoads loads(kit);
    for (const auto& block : view.records.blocks) {
        const Athlete* athlete = view.athlete(block.athlete.text);
        if (!athlete || block.kit != kit.id || athlete->kit != kit.id)
            continue;
        found.blocks.push_back(athlete->name + ", from " + block.start.text());
        for (const auto& line : block.lines) {
            const Exercise* exercise = inside.tables.exercise(line.exercise);
            const LoadTable* table = exercise && line.load ? loads.table(*exercise) : nullptr;
            if (!table)
                continue;
            const auto aimed = aimed_at(view, *athlete, block, line, *exercise);
            found.loads.push_back(
                {exercise->means, exercise->item, target_of(aimed, *line.load, *table, kit.unit), line.sets});
        }
    }
    return found;
}

} // namespace amentum
