#include "operations/inside/sides_of_day.h"

#include "measurement/measure_test.h"

#include <algorithm>

namespace amentum {
namespace {

MeasuredSide measured(const TestResult& result, std::vector<Reading> readings) {
    std::stable_sort(readings.begin(), readings.end(),
                     [](const auto& a, const auto& b) { return a.trial < b.trial; });
    MeasuredSide side{result, {}};
    for (const auto& reading : readings)
        if (reading.angle)
            side.trials.push_back(reading.angle->degrees());
    return side;
}

} // namespace

std::vector<SidesOfDay> sides_by_day(const FacilityView& view, const TestKind& kind, const Athlete& athlete) {
    const Side main = wanted_side(kind, athlete);
    std::map<Date, std::map<Side, std::vector<Reading>>> days;
    for (const auto& reading : view.records.readings)
        if (reading.athlete == athlete.id && reading.test == kind.key && reading.side != Side::none)
            days[reading.date][reading.side].push_back(reading);
    std::vector<SidesOfDay> all;
    for (const auto& [date, sides] : days) {
        SidesOfDay day{date, {}, {}, {}};
        for (const auto& [side, readings] : sides) {
            const auto result = measure_test(kind, readings);
            if (!result)
                day.refusals.push_back(kind.name + ", " + word(side) + ": " + result.refusal().sentence);
            else
                (side == main ? day.main : day.other) = measured(*result, readings);
        }
        all.push_back(std::move(day));
    }
    return all;
}

std::string main_side_words(const TestKind& kind) {
    return kind.side_rule == SideRule::lead_leg ? "lead leg" : "throwing side";
}

std::string other_side_words(const TestKind& kind) {
    return kind.side_rule == SideRule::lead_leg ? "other leg" : "other side";
}

} // namespace amentum
