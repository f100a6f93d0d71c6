#include "operations/check_staff.h"

#include "guard_rails/finding.h"
#include "operations/inside/may_pitch.h"
#include "operations/inside/planned_outings.h"
#include "operations/inside/throwing_answer.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

constexpr int soreness_days = 7;

std::string last_outing_words(const ArmCase& arm, Date today) {
    for (auto day = arm.days.rbegin(); day != arm.days.rend(); ++day)
        if (day->pitches > 0 && day->date <= today)
            return std::to_string(day->pitches) + (day->pitches == 1 ? " pitch on " : " pitches on ") +
                   day->date.text();
    return "";
}

std::optional<double> latest_soreness(const ThrowAccount& account, Date today) {
    for (auto day = account.days.rbegin(); day != account.days.rend(); ++day) {
        if (today - day->date >= soreness_days)
            break;
        for (const auto& each : {day->soreness.next_day, day->soreness.after, day->soreness.before})
            if (each)
                return each;
    }
    return std::nullopt;
}

// What a table stops stands in the answer itself.
bool of_the_tables(const std::string& code) {
    constexpr std::array<std::string_view, 8> codes{
        "rest_not_over",  "days_running_today", "third_day_maximum", "second_game",
        "innings_a_year", "daily_maximum",      "game_maximum",      "caught_today"};
    return std::find(codes.begin(), codes.end(), code) != codes.end();
}

StaffLine line_of(const Workplace::Inside& inside, const FacilityView& view, const ArmCase& arm, Date day,
                  Date today) {
    const Athlete& athlete = *arm.athlete;
    const auto may = may_pitch(arm, inside.tables, day, today);
    const auto account = measure_throws(arm.entries, today);
    StaffLine line;
    line.athlete = athlete.id.text;
    line.name = athlete.name;
    line.sport = word(athlete.sport);
    line.role = word(athlete.role);
    line.age = whole_years(athlete.birth_date, day);
    line.teams = team_words(arm, day);
    line.may_pitch = may.word;
    line.most = may.most;
    line.next_day = may.next_day ? may.next_day->text() : "";
    line.words = may.short_answer;
    line.days_since_hard = account.days_since_hard;
    line.throws_7 = account.last_7_days;
    line.unknown_7 = account.unknown_last_7;
    line.last_outing = last_outing_words(arm, today);
    line.soreness = latest_soreness(account, today);
    for (const auto& finding : throwing_findings(inside, view, athlete, today))
        if (finding.severity == word(Severity::stops) && !of_the_tables(finding.code) &&
            std::find(line.stops.begin(), line.stops.end(), finding.sentence) == line.stops.end())
            line.stops.push_back(finding.sentence);
    line.planned = planned_on(arm, day);
    return line;
}

bool pitches(const StaffLine& line) {
    return line.role == word(Role::pitcher);
}

int place_of(const StaffLine& line) {
    if (!pitches(line))
        return 3;
    return line.may_pitch == "yes" ? 0 : line.may_pitch == "no" ? 1 : 2;
}

bool before(const StaffLine& a, const StaffLine& b) {
    if (place_of(a) != place_of(b))
        return place_of(a) < place_of(b);
    if (place_of(a) == 0 && a.most != b.most)
        return *a.most > *b.most;
    const std::string last = "9999";
    const auto& next_a = a.next_day.empty() ? last : a.next_day;
    const auto& next_b = b.next_day.empty() ? last : b.next_day;
    return std::tie(next_a, a.name) < std::tie(next_b, b.name);
}

bool of_team(const ArmCase& arm, const std::string& team, Date day) {
    return std::any_of(arm.places.begin(), arm.places.end(), [&](const auto& place) {
        return place.team == team && place.date <= day && (!place.last_date || day <= *place.last_date);
    });
}

} // namespace

Result<CheckStaffAnswer> check_staff(Workplace& workplace, const CheckStaffRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const Date today = inside.today();
    const auto day = request.date ? parse_date(*request.date, "date") : Result<Date>(today);
    if (!day)
        return day.refusal();
    CheckStaffAnswer answer{};
    answer.facility = view->records.facility.value_or(Facility{"This facility"}).name;
    answer.today = today.text();
    answer.day = day->text();
    for (const auto& place : view->records.teams)
        if (std::find(answer.teams.begin(), answer.teams.end(), place.team) == answer.teams.end())
            answer.teams.push_back(place.team);
    std::sort(answer.teams.begin(), answer.teams.end());
    if (request.team &&
        std::find(answer.teams.begin(), answer.teams.end(), *request.team) == answer.teams.end())
        return refuse_unknown("team", *request.team, answer.teams);
    for (const auto& [id, arm] : arm_cases(*view, inside.tables))
        if (!request.team || of_team(arm, *request.team, *day))
            answer.lines.push_back(line_of(inside, *view, arm, *day, today));
    std::sort(answer.lines.begin(), answer.lines.end(), before);
    answer.words = {
        "By the tables of each thrower's teams, all pitches together, as they are written down. A yes is the "
        "rule's word and no sign of health."};
    answer.stop_and_refer = stop_and_refer_words(inside.tables);
    return answer;
}

} // namespace amentum
