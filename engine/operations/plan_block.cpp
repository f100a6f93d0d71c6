#include "operations/plan_block.h"

#include "inference/test_scale.h"
#include "operations/inside/block_answer.h"
#include "operations/inside/limiter_work.h"
#include "planning/plan_block.h"
#include "reports/sentences.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr const char* undecided = "The records cannot tell which quality is best to train: the sets follow "
                                  "each one's expected gain, and these lie close together.";

Date next_monday(Date today) {
    return today + (8 - today.iso_weekday());
}

Result<std::vector<int>> weekdays_of(const std::vector<std::string>& names) {
    static const std::vector<std::string> known{"monday", "tuesday",  "wednesday", "thursday",
                                                "friday", "saturday", "sunday"};
    std::vector<int> days;
    for (const auto& name : names) {
        const auto found = std::find(known.begin(), known.end(), name);
        if (found == known.end())
            return refuse_choice("training_days", name, known);
        days.push_back(static_cast<int>(found - known.begin()) + 1);
    }
    return days;
}

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

Result<BlockRequest> request_for(const Workplace::Inside& inside, const FacilityView& view,
                                 const PlanBlockRequest& asked, const Athlete& athlete, const Kit& kit,
                                 const LimiterWork& work) {
    const Date today = inside.today();
    const auto start = asked.start ? parse_date(*asked.start, "start") : Result<Date>(next_monday(today));
    if (!start)
        return start.refusal();
    if (*start < today)
        return Refusal{RefusalCode::impossible_date, "start is " + start->text() + ", before today.", "start",
                       start->text(), "from " + today.text()};
    const auto weekdays = weekdays_of(asked.training_days);
    if (!weekdays)
        return weekdays.refusal();
    const auto speed =
        shown_unit(TestUnit::metre_per_second, view.records.facility.value_or(Facility{"This facility"}));
    BlockRequest request{athlete,
                         kit,
                         *start,
                         asked.weeks.value_or(4),
                         asked.sessions_per_week.value_or(3),
                         asked.minutes.value_or(60),
                         *weekdays,
                         inside.tables.qualities,
                         inside.tables.exercises,
                         inside.tables.cautions};
    request.overrides = of_athlete(view.records.overrides, athlete.id);
    request.calendar = of_athlete(view.records.calendar, athlete.id);
    request.priorities = priorities_of(work, speed);
    request.maxima = maxima_of(view, inside.tables, athlete, today);
    if (const Series* mass = view.one_series(athlete.id.text, "body_mass"))
        request.body_mass = level_today(*mass, today);
    request.model = "block planner 1; " + work.model;
    return request;
}

Result<Done> check_not_begun(const FacilityView& view, const Block& block) {
    for (const auto& set : view.records.sets)
        if (set.block && *set.block == block.id)
            return Refusal{
                RefusalCode::already_held,
                "Sets of the block from " + block.start.text() +
                    " are already logged, so it is not replaced; start the new one on another day.",
                "start", block.start.text(), "another first day"};
    return Done{};
}

} // namespace

Result<BlockAnswer> plan_block(Workplace& workplace, const PlanBlockRequest& asked) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, asked.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto kit = kit_named(*view, asked.kit.value_or((*athlete)->kit.text));
    if (!kit)
        return kit.refusal();
    const auto work = limiter_work(*view, inside.tables, **athlete, inside.today());
    const auto request = request_for(inside, *view, asked, **athlete, **kit, work);
    if (!request)
        return request.refusal();
    auto block = plan_block(*request);
    if (!block)
        return block.refusal();
    if (!work.answer.can_tell)
        block->notes.insert(block->notes.begin(), undecided);
    if (const auto begun = check_not_begun(*view, *block); !begun)
        return begun.refusal();
    inside.store.save_block(*block);
    return block_answer(inside, *inside.view(), *block);
}

} // namespace amentum
