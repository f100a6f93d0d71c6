#include "operations/judge_change.h"

#include "operations/inside/change_answer.h"

namespace amentum {
namespace {

Refusal too_few(const Athlete& athlete, const TestKind& kind, std::size_t days) {
    return {RefusalCode::too_few_data,
            athlete.name + " has " + std::to_string(days) + " test day(s) of " + kind.name +
                "; a change needs two.",
            "test", kind.key, "a test done on two days or more"};
}

// The first test on or after a day, or the last on or before it.
Result<std::size_t> point_at(const Trajectory& trajectory, const std::optional<std::string>& text,
                             std::string field, std::size_t otherwise) {
    if (!text)
        return otherwise;
    const auto date = parse_date(*text, field);
    if (!date)
        return date.refusal();
    for (std::size_t i = 0; i < trajectory.points.size(); ++i)
        if (trajectory.points[i].day == date->days_since_1970())
            return i;
    std::string days;
    for (const auto& point : trajectory.points)
        days += (days.empty() ? "" : ", ") + Date::from_days(point.day).text();
    return Refusal{RefusalCode::unknown_name, "There was no such test on " + *text + ".", field, *text, days};
}

} // namespace

Result<JudgeChangeAnswer> judge_change(Workplace& workplace, const JudgeChangeRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto kind = test_named(inside.tables, request.test);
    if (!kind)
        return kind.refusal();
    const Series* series = view->one_series((*athlete)->id.text, (*kind)->key);
    if (!series || series->values.size() < 2)
        return too_few(**athlete, **kind, series ? series->values.size() : 0);
    const auto& trajectory = series->trajectory.front();
    const auto from = point_at(trajectory, request.from_date, "from_date", 0);
    if (!from)
        return from.refusal();
    const auto to = point_at(trajectory, request.to_date, "to_date", trajectory.points.size() - 1);
    if (!to)
        return to.refusal();
    if (*from >= *to)
        return Refusal{RefusalCode::impossible_date, "to_date must be a later test day than from_date.",
                       "to_date", request.to_date.value_or(""),
                       "after " + Date::from_days(trajectory.points[*from].day).text()};
    return change_answer(inside, *view, *inside.roster_model(), **athlete, *series, *from, *to);
}

} // namespace amentum
