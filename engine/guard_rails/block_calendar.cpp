#include "guard_rails/answered_stops.h"
#include "guard_rails/block_rules.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

std::string spoken(DayKind kind) {
    switch (kind) {
    case DayKind::game:
        return "a game";
    case DayKind::start:
        return "a start";
    case DayKind::practice:
        return "a practice";
    case DayKind::travel:
        return "a day of travel";
    case DayKind::off:
        return "a day off";
    }
    return "";
}

// One finding a session and day, not one a line.
void check_taken_days(const BlockCase& whole, std::vector<Finding>& findings) {
    std::set<std::pair<std::pair<int, int>, Date>> sessions;
    for (const auto& line : whole.block.lines)
        sessions.insert({{line.week, line.session}, line.date});
    for (const auto& [session, date] : sessions)
        for (const auto& entry : whole.calendar) {
            if (entry.athlete != whole.athlete.id || date < entry.date || entry.last_date < date ||
                date < whole.today)
                continue;
            if (entry.kind == DayKind::practice)
                continue;
            const bool never = entry.kind == DayKind::off || entry.kind == DayKind::start;
            findings.push_back(
                {never ? Severity::stops : Severity::warns,
                 never ? "session_on_taken_day" : "session_on_busy_day",
                 "The session of " + date.text() + " falls on " + spoken(entry.kind) + ".",
                 "No session on days off and starts; on days of games and travel only for want of another.",
                 common_practice,
                 "Move the session or leave it out.",
                 {session.first, session.second, {}},
                 date,
                 never ? who_answers_for_rest(whole.athlete, date) : MayAnswer::nobody});
        }
}

// Overhead by its movement, or cautioned against on these days by the catalogue.
bool hard_on_tired_arm(const Exercise& exercise) {
    if (std::find(exercise.cautions.begin(), exercise.cautions.end(), "day_after_pitching") !=
        exercise.cautions.end())
        return true;
    const bool pattern = exercise.pattern.starts_with("overhead") || exercise.pattern == "vertical_press";
    return pattern && exercise.part != Part::mobility && exercise.part != Part::trunk;
}

void check_around_starts(const BlockCase& whole, std::vector<Finding>& findings) {
    const auto starts = whole.starts();
    for (const auto& line : whole.block.lines) {
        const auto* exercise = whole.exercise(line);
        if (!exercise || line.date < whole.today)
            continue;
        if (whole.heavy_for_legs(line) && whole.close_before_a_start(line.date))
            findings.push_back({Severity::stops, "heavy_legs_before_start",
                                exercise->name + " on " + line.date.text() +
                                    " is heavy for the legs within 48 h before a start.",
                                "Nothing heavy for the legs on the day of a start and the two days before.",
                                common_practice,
                                "Move it to the day after the start, or leave it out that week.",
                                place_of(line), line.date, MayAnswer::coach});
        const bool tired = std::any_of(starts.begin(), starts.end(), [&](Date start) {
            return line.date - start == 0 || line.date - start == 1;
        });
        if (hard_on_tired_arm(*exercise) && tired)
            findings.push_back({Severity::warns, "overhead_after_start",
                                exercise->name + " on " + line.date.text() +
                                    " is hard on the arm on the day of a start or the day after.",
                                "Nothing hard on the arm on the day of pitching and the day after.",
                                common_practice, "Move it by a day, or pull instead.", place_of(line),
                                line.date});
    }
}

} // namespace

std::vector<Finding> check_calendar(const BlockCase& whole) {
    std::vector<Finding> findings;
    check_taken_days(whole, findings);
    check_around_starts(whole, findings);
    return findings;
}

} // namespace amentum
