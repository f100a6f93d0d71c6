#include "throwing_workload/arm_tables.h"

#include "throwing_workload/pitch_rule.h"

#include <algorithm>

namespace amentum {
namespace {

bool holds_on(const TeamPlace& place, Date day) {
    return place.date <= day && (!place.last_date || day <= *place.last_date);
}

std::vector<PitchRule> rows_of(std::span<const PitchRule> in_force, const std::string& organisation,
                               Sport sport) {
    std::vector<PitchRule> rows;
    std::copy_if(in_force.begin(), in_force.end(), std::back_inserter(rows),
                 [&](const auto& each) { return each.organisation == organisation && each.sport == sport; });
    return rows;
}

} // namespace

std::vector<ArmTable> tables_of_arm(std::span<const PitchRule> in_force, std::span<const TeamPlace> places,
                                    const Athlete& athlete, Date day) {
    std::vector<ArmTable> tables;
    for (const auto& place : places) {
        if (place.athlete != athlete.id || place.organisation.empty() || !holds_on(place, day))
            continue;
        const auto held = std::find_if(tables.begin(), tables.end(), [&](const auto& each) {
            return each.organisation == place.organisation;
        });
        if (held != tables.end()) {
            held->teams.push_back(place.team);
            continue;
        }
        auto rows = rows_of(in_force, place.organisation, athlete.sport);
        if (!rows.empty())
            tables.push_back({place.organisation, std::move(rows), {place.team}});
    }
    if (!tables.empty())
        return tables;
    const auto organisations = organisations_for(in_force, athlete.sport);
    if (organisations.empty())
        return {};
    return {{organisations.front(), rows_of(in_force, organisations.front(), athlete.sport), {}}};
}

} // namespace amentum
