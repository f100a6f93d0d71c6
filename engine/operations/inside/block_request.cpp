#include "operations/inside/block_request.h"

#include "inference/test_scale.h"
#include "reports/sentences.h"
#include "throwing_workload/open_pains.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

Estimate level_today(const Series& series, Date today) {
    const auto state = series.trajectory.front().state_on(today.days_since_1970());
    const auto back = back_on_unit(series.kind->scale, state, 1.0);
    return {back.value, back.value - back.band.low};
}

std::map<std::string, Estimate> maxima_of(const FacilityView& view, const ReferenceTables& tables,
                                          const Athlete& athlete, Date today) {
    std::map<std::string, Estimate> maxima;
    for (const auto& kind : tables.test_kinds)
        if (kind.unit == TestUnit::kilogram && kind.measure != Measure::body_mass)
            if (const Series* series = view.one_series(athlete.id.text, kind.key))
                maxima.emplace(kind.key, level_today(*series, today));
    return maxima;
}

std::vector<Priority> priorities_of(const LimiterWork& work, const ShownUnit& speed) {
    double sum = 0;
    for (const auto& gain : work.answer.gains)
        sum += std::max(0.0, gain.expected);
    std::vector<Priority> priorities;
    for (const auto& gain : work.answer.gains)
        priorities.push_back({gain.quality, sum > 0 ? std::max(0.0, gain.expected) / sum : 0,
                              "goes with " + describe_difference(gain.expected, gain.central_80, speed)});
    return priorities;
}

template <class Entry>
std::vector<Entry> of_athlete(const std::vector<Entry>& entries, const AthleteId& athlete) {
    std::vector<Entry> own;
    std::copy_if(entries.begin(), entries.end(), std::back_inserter(own),
                 [&](const auto& e) { return e.athlete == athlete; });
    return own;
}

} // namespace

std::vector<PainBlock> painful_regions(const FacilityView& view, const ReferenceTables& tables,
                                       const Athlete& athlete, Date day) {
    std::vector<PainBlock> rows;
    const auto open = open_pains(view.records.pains, view.records.clearances, day);
    for (const auto& row : tables.pain_blocks)
        if (std::any_of(open.begin(), open.end(), [&](const PainEntry& pain) {
                return pain.athlete == athlete.id && pain.region == row.region;
            }))
            rows.push_back(row);
    return rows;
}

BlockAsked asked_of(const Block& block) {
    std::set<int> used;
    for (const auto& line : block.lines)
        used.insert(line.date.iso_weekday());
    BlockAsked asked{block.start, block.weeks, block.sessions_per_week, block.minutes};
    if (static_cast<int>(used.size()) >= block.sessions_per_week)
        asked.weekdays.assign(used.begin(), used.end());
    return asked;
}

Result<Date> first_day(const std::optional<std::string>& given, Date today) {
    if (!given)
        return today + (8 - today.iso_weekday());
    const auto start = parse_date(*given, "start");
    if (!start || *start >= today)
        return start;
    return Refusal{RefusalCode::impossible_date, "start is " + start->text() + ", before today.", "start",
                   start->text(), "from " + today.text()};
}

Result<Effort> effort_named(const std::optional<std::string>& effort) {
    if (!effort)
        return Effort::brief;
    if (const auto known = from_word<Effort>(*effort))
        return *known;
    return refuse_choice("effort", *effort, std::vector<std::string>{"brief", "thorough"});
}

BlockRequest block_request(const Workplace::Inside& inside, const FacilityView& view, const Athlete& athlete,
                           const Kit& kit, const BlockAsked& asked, const LimiterWork& work) {
    const Date today = inside.today();
    BlockRequest request{athlete,
                         kit,
                         asked.start,
                         asked.weeks,
                         asked.sessions_per_week,
                         asked.minutes,
                         asked.weekdays,
                         inside.tables.qualities,
                         inside.tables.exercises,
                         inside.tables.cautions};
    request.overrides = of_athlete(view.records.overrides, athlete.id);
    request.calendar = of_athlete(view.records.calendar, athlete.id);
    request.painful = painful_regions(view, inside.tables, athlete, today);
    request.priorities =
        priorities_of(work, shown_unit(TestUnit::metre_per_second,
                                       view.records.facility.value_or(Facility{"This facility"})));
    request.maxima = maxima_of(view, inside.tables, athlete, today);
    if (const Series* mass = view.one_series(athlete.id.text, "body_mass"))
        request.body_mass = level_today(*mass, today);
    request.model = "block planner 2; " + work.model;
    return request;
}

} // namespace amentum
