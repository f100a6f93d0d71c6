#include "operations/inside/finding_answer.h"

#include "guard_rails/check_block.h"

namespace amentum {

namespace {

std::string answered_words(const Finding& finding) {
    if (!finding.answer)
        return "";
    return "Answered for by " + finding.answer->coach + " on " + finding.answer->recorded.text() + ": " +
           finding.answer->reason;
}

} // namespace

std::vector<ShownFinding> shown_findings(const std::vector<Finding>& findings) {
    std::vector<ShownFinding> shown;
    for (const auto& f : findings)
        shown.push_back({word(f.severity), f.sentence, f.rule, f.source, f.what_to_do,
                         f.place.week.value_or(0), f.place.session.value_or(0), f.place.order.value_or(0),
                         f.code, word(f.may_answer), answered_words(f)});
    return shown;
}

CareRecord care_record(const ReferenceTables& tables, const FacilityView& view) {
    return {tables.pain_blocks, view.records.pains, view.records.clearances, view.records.stops_answered};
}

std::vector<ShownFinding> block_findings(const Workplace::Inside& inside, const FacilityView& view,
                                         const Block& block, const Athlete& athlete, const Kit& kit) {
    std::vector<CalendarEntry> calendar;
    std::vector<Override> overrides;
    for (const auto& entry : view.records.calendar)
        if (entry.athlete == athlete.id)
            calendar.push_back(entry);
    for (const auto& override_kept : view.records.overrides)
        if (override_kept.athlete == athlete.id)
            overrides.push_back(override_kept);
    return shown_findings(check_block(block, athlete, kit, inside.tables.exercises, inside.tables.cautions,
                                      calendar, overrides, inside.today(), care_record(inside.tables, view)));
}

} // namespace amentum
