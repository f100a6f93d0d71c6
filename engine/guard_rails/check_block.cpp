#include "guard_rails/check_block.h"

#include "guard_rails/answered_stops.h"
#include "guard_rails/block_rules.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace amentum {

const Exercise* BlockCase::exercise(const BlockLine& line) const {
    const auto found = std::find_if(catalogue.begin(), catalogue.end(),
                                    [&](const auto& e) { return e.key == line.exercise; });
    return found == catalogue.end() ? nullptr : &*found;
}

std::string BlockCase::name(const BlockLine& line) const {
    const auto* known = exercise(line);
    return known ? known->name : line.exercise;
}

std::vector<Date> BlockCase::starts() const {
    std::vector<Date> days;
    for (const auto& entry : calendar)
        if (entry.athlete == athlete.id && entry.kind == DayKind::start)
            for (Date day = entry.date; day <= entry.last_date; day = day + 1)
                days.push_back(day);
    return days;
}

// Ours, where no standard exists: main lifts and assistance of the legs or the whole body that carry a load.
bool BlockCase::heavy_for_legs(const BlockLine& line) const {
    const auto* known = exercise(line);
    if (!known || known->means == LoadMeans::band || known->means == LoadMeans::body)
        return false;
    const bool strength = known->part == Part::main_lift || known->part == Part::assistance;
    return strength && (known->region == Region::legs || known->region == Region::whole_body);
}

bool BlockCase::close_before_a_start(Date day) const {
    const auto days = starts();
    return std::any_of(days.begin(), days.end(),
                       [&](Date start) { return start - day >= 0 && start - day <= 2; });
}

PlaceInBlock place_of(const BlockLine& line) {
    return {line.week, line.session, line.order};
}

std::vector<Finding> check_block(const Block& block, const Athlete& athlete, const Kit& kit,
                                 std::span<const Exercise> catalogue, std::span<const Caution> cautions,
                                 std::span<const CalendarEntry> calendar, std::span<const Override> overrides,
                                 Date today, const CareRecord& care) {
    const BlockCase whole{block, athlete, kit, catalogue, cautions, calendar, overrides, today, care};
    std::vector<Finding> findings;
    for (const auto rule :
         {check_loads, check_cautions, check_calendar, check_youth, check_structure, check_pain}) {
        auto found = rule(whole);
        std::move(found.begin(), found.end(), std::back_inserter(findings));
    }
    const auto key = [](const Finding& f) {
        constexpr int last = std::numeric_limits<int>::max();
        return std::tuple(f.place.week.value_or(last), f.place.session.value_or(last),
                          f.place.order.value_or(last));
    };
    std::stable_sort(findings.begin(), findings.end(),
                     [&](const auto& a, const auto& b) { return key(a) < key(b); });
    return with_answers(std::move(findings), athlete.id, care.stops_answered, today);
}

} // namespace amentum
