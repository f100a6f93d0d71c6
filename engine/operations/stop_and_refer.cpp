#include "operations/stop_and_refer.h"

#include "operations/inside/inside.h"
#include "operations/inside/shown_pains.h"

#include <algorithm>

namespace amentum {

Result<StopAndReferAnswer> stop_and_refer(Workplace& workplace, const StopAndReferRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    StopAndReferAnswer answer{};
    for (const auto& sign : inside.tables.stop_signs)
        answer.signs.push_back({sign.key, sign.sentence, sign.urgent, sign.sources});
    std::stable_sort(answer.signs.begin(), answer.signs.end(),
                     [](const auto& a, const auto& b) { return a.today && !b.today; });
    answer.closing = inside.tables.stop_closing;
    for (const auto& block : inside.tables.pain_blocks)
        answer.regions.push_back({word(block.region), block.name, block.throwing});
    answer.words = {
        "Any of these: stop the session, and to a qualified clinician. Where it says today, today."};
    if (!request.athlete)
        return answer;
    const auto athlete = athlete_named(*view, *request.athlete);
    if (!athlete)
        return athlete.refusal();
    answer.athlete = (*athlete)->id.text;
    answer.name = (*athlete)->name;
    if (whole_years((*athlete)->birth_date, inside.today()) < 18)
        answer.guardian = (*athlete)->guardian;
    answer.pains = shown_pains(inside.tables, *view, (*athlete)->id, inside.today());
    return answer;
}

} // namespace amentum
