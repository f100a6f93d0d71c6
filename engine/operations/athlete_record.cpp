#include "operations/athlete_record.h"

#include "operations/inside/inside.h"
#include "operations/inside/limiter_answer.h"
#include "operations/inside/throwing_answer.h"
#include "operations/inside/trajectory_answer.h"

#include <algorithm>

namespace amentum {
namespace {

std::vector<ShownTrajectory> trajectories_of(const Workplace::Inside& inside, const FacilityView& view,
                                             const RosterModel& model, const Athlete& athlete) {
    std::vector<ShownTrajectory> all;
    for (const auto& kind : inside.tables.test_kinds)
        if (const Series* series = view.one_series(athlete.id.text, kind.key))
            all.push_back(trajectory_answer(inside, view, model, athlete, *series));
    std::stable_partition(all.begin(), all.end(),
                          [](const auto& each) { return each.quality == "throwing_velocity"; });
    return all;
}

std::vector<ShownCaution> cautions_of(const ReferenceTables& tables, const Athlete& athlete) {
    std::vector<ShownCaution> cautions;
    for (const auto& restriction : athlete.restrictions)
        if (const Caution* caution = tables.caution(restriction))
            cautions.push_back({restriction, caution->condition, caution->sentence});
    return cautions;
}

} // namespace

Result<AthleteRecordAnswer> athlete_record(Workplace& workplace, const AthleteRecordRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto named = athlete_named(*view, request.athlete);
    if (!named)
        return named.refusal();
    const Athlete& athlete = **named;
    const Date today = inside.today();
    AthleteRecordAnswer answer{athlete.id.text,
                               athlete.name,
                               today.text(),
                               athlete.birth_date.text(),
                               whole_years(athlete.birth_date, today),
                               word(athlete.sport),
                               word(athlete.role),
                               word(athlete.level),
                               word(athlete.throwing_hand),
                               athlete.kit.text,
                               athlete.guardian,
                               trajectories_of(inside, *view, *inside.roster_model(), athlete),
                               limiter_answer(inside, *view, *inside.roster_model(), athlete),
                               cautions_of(inside.tables, athlete),
                               throwing_findings(inside, *view, athlete, today),
                               throwing_words(throws_of(*view, athlete, today)),
                               {},
                               stop_and_refer_words(inside.tables)};
    for (const auto& block : view->records.blocks)
        if (block.athlete == athlete.id)
            answer.blocks.insert(answer.blocks.begin(), block.id.text);
    return answer;
}

} // namespace amentum
