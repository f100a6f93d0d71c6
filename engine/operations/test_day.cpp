#include "operations/test_day.h"

#include "measurement/measure_test.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"

#include <cmath>

namespace amentum {
namespace {

TestOffered offered(const ReferenceTables& tables, const TestKind& kind, const Facility& facility) {
    const Quality* quality = tables.quality(kind.quality);
    TestOffered test{
        kind.key, kind.name, quality ? quality->name : kind.quality, kind.protocol, word(kind.side_rule), {}};
    for (const auto& field : fields_needed(kind.measure))
        test.fields.push_back(entry_field(field, facility, true));
    if (kind.measure == Measure::taped_length)
        test.fields.front().name = "length"; // entered where heights are
    for (const auto& field : fields_optional(kind.measure))
        test.fields.push_back(entry_field(field, facility, false));
    return test;
}

SquadLine squad_line(const FacilityView& view, const Athlete& athlete, Date date, const Facility& facility) {
    SquadLine line{athlete.id.text, athlete.name, word(athlete.sport), word(athlete.throwing_hand), {}, {}};
    for (const auto& [key, series] : view.series) {
        if (key.first != athlete.id.text)
            continue;
        for (const auto& each : series.results)
            if (each.result.date == date && !each.from_logged_set) {
                line.done.push_back(key.second);
                break;
            }
        if (series.trajectory.empty() || series.trajectory.front().points.back().day > date.days_since_1970())
            continue;
        const auto& trajectory = series.trajectory.front();
        const double error = series.values.back().variance;
        const StateOnDay forecast{trajectory.state_on(date.days_since_1970()).mean,
                                  trajectory.forecast_variance(date.days_since_1970(), error)};
        line.expected.push_back({key.second, shown_state(*series.kind, forecast, facility, z99),
                                 Date::from_days(trajectory.points.back().day).text()});
    }
    return line;
}

} // namespace

Result<TestDayAnswer> test_day(Workplace& workplace, const TestDayRequest& request) {
    auto& inside = workplace.inside();
    const auto date = request.date ? parse_date(*request.date, "date") : Result<Date>(inside.today());
    if (!date)
        return date.refusal();
    const auto view = inside.view();
    const auto facility = inside.facility();
    TestDayAnswer answer{date->text(), {}, {}};
    for (const auto& kind : inside.tables.test_kinds)
        answer.tests.push_back(offered(inside.tables, kind, facility));
    for (const auto& athlete : view->records.athletes)
        answer.squad.push_back(squad_line(*view, athlete, *date, facility));
    return answer;
}

} // namespace amentum
