#include "operations/answer_stop.h"

#include "operations/inside/inside.h"
#include "operations/inside/said_by.h"
#include "operations/inside/throwing_answer.h"

#include <algorithm>

namespace amentum {
namespace {

std::optional<Refusal> refuse_stop(const std::vector<ShownFinding>& findings,
                                   const AnswerStopRequest& request) {
    std::vector<std::string> known;
    for (const auto& finding : findings) {
        if (finding.severity != "stops")
            continue;
        if (finding.code != request.code) {
            known.push_back(finding.code);
            continue;
        }
        if (finding.may_answer == "coach")
            return std::nullopt;
        return Refusal{RefusalCode::blocked_by_guard_rail,
                       finding.sentence + " Nobody can answer for this stop here.", "code", request.code,
                       finding.what_to_do};
    }
    return refuse_unknown("code", request.code, known);
}

} // namespace

Result<AnswerStopAnswer> answer_stop(Workplace& workplace, const AnswerStopRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto athlete = athlete_named(*before, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto date = parse_date(request.date.value_or(inside.today().text()), "date");
    if (!date)
        return date.refusal();
    if (const auto refusal = refuse_stop(throwing_findings(inside, *before, **athlete, *date), request))
        return *refusal;
    const auto coach = person_given("coach", request.coach, "the coach who answers for it");
    if (!coach)
        return coach.refusal();
    const auto reason = reason_given("reason", request.reason);
    if (!reason)
        return reason.refusal();
    RecordSet more;
    more.stops_answered = {{(*athlete)->id, request.code, *date, *reason, *coach, inside.today()}};
    inside.store.save_records(more);
    const auto after = inside.view();
    return AnswerStopAnswer{*coach + " answers for it on " + date->text() + ": \"" + *reason +
                                "\". It is kept for good and stays beside the finding.",
                            throwing_findings(inside, *after, *after->athlete((*athlete)->id.text), *date)};
}

} // namespace amentum
