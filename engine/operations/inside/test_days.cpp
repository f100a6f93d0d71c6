#include "operations/inside/test_days.h"

#include "guard_rails/check_throwing.h"
#include "operations/inside/finding_answer.h"
#include "throwing_workload/pitch_tables_in_force.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int usual_weeks = 4; // (proposal of this project, no source)

bool is_thrown(const TestKind& kind) {
    return kind.measure == Measure::ball_speed || kind.measure == Measure::session_velocity;
}

bool is_at_rest(const TestKind& kind) { // nothing is done to the limit
    return kind.measure == Measure::joint_angle || kind.measure == Measure::body_mass ||
           kind.measure == Measure::stature || kind.measure == Measure::taped_length;
}

struct Calendar {
    const FacilityView& view;
    const Athlete& athlete;

    const CalendarEntry* entry(Date day, DayKind kind) const {
        const auto& all = view.records.calendar;
        const auto found = std::find_if(all.begin(), all.end(), [&](const CalendarEntry& e) {
            return e.athlete == athlete.id && e.kind == kind && e.date <= day && day <= e.last_date;
        });
        return found == all.end() ? nullptr : &*found;
    }

    std::string taken(Date day) const {
        if (entry(day, DayKind::start))
            return "a start";
        if (entry(day, DayKind::game))
            return "a game";
        if (entry(day, DayKind::off))
            return "a day off";
        return entry(day, DayKind::travel) ? "a day of travel" : "";
    }

    std::string near_start(Date day) const {
        for (int ahead = 1; ahead <= 2; ++ahead)
            if (entry(day + ahead, DayKind::start))
                return "less than 48 h before the start on " + (day + ahead).text();
        return entry(day - 1, DayKind::start) ? "the day after a start" : "";
    }
};

// Why a thrown test must wait on that day; empty when nothing recorded forbids it.
std::string arm_rests(const FacilityView& view, const ReferenceTables& tables, const Athlete& athlete,
                      Date day) {
    std::vector<ThrowEntry> entries;
    for (const auto& entry : view.records.throws)
        if (entry.athlete == athlete.id)
            entries.push_back(entry);
    const auto in_force = pitch_tables_in_force(tables.pitch_rules, view.records.pitch_tables);
    const CareRecord care = care_record(tables, view);
    for (const auto& finding : check_throwing({athlete, entries, in_force, view.records.teams, care, day}))
        if (finding.severity == Severity::stops)
            return finding.sentence;
    return "";
}

} // namespace

ChoiceDay usual_choice_day(const FacilityView& view, const Athlete& athlete, Date today) {
    const Block* next = nullptr;
    for (const auto& block : view.records.blocks)
        if (block.athlete == athlete.id && block.start > today && (!next || block.start < next->start))
            next = &block;
    if (next)
        return {next->start, "the next kept block starts on " + next->start.text()};
    const Date day = today + 7 * usual_weeks;
    return {day, "no block is kept to come, so four weeks from today: " + day.text()};
}

FreeDay last_free_day(const FacilityView& view, const ReferenceTables& tables, const Athlete& athlete,
                      const TestKind& kind, Date today, Date before) {
    const Calendar calendar{view, athlete};
    FreeDay free;
    for (Date day = before - 1; day >= today; day = day - 1) {
        std::string why = calendar.taken(day);
        if (why.empty() && !is_at_rest(kind))
            why = calendar.near_start(day);
        if (why.empty() && is_thrown(kind))
            why = arm_rests(view, tables, athlete, day);
        if (why.empty()) {
            free.day = day;
            return free;
        }
        free.passed_over.push_back({day.text(), why});
    }
    return free;
}

} // namespace amentum
