#include "operations/record_clearance.h"

#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"
#include "operations/inside/said_by.h"
#include "operations/inside/shown_pains.h"

#include <algorithm>

namespace amentum {
namespace {

Result<PainEntry> open_entry(const FacilityView& view, const Athlete& athlete, int number, Date today) {
    const auto open = open_pains_of(view, athlete.id, today);
    std::string numbers;
    for (const auto& pain : open) {
        if (pain.number == number)
            return pain;
        numbers += (numbers.empty() ? "" : ", ") + std::to_string(pain.number);
    }
    return Refusal{RefusalCode::unknown_name, athlete.name + " has no open pain entry of that number.",
                   "number", std::to_string(number), open.empty() ? "none is open" : "one of " + numbers};
}

Result<Date> day_of_clearance(const RecordClearanceRequest& request, const PainEntry& pain, Date today) {
    const auto date = day_up_to_today(request.date.value_or(today.text()), "clearance", today);
    if (date && *date < pain.date)
        return Refusal{RefusalCode::out_of_range, "Nothing is cleared before it was felt.", "date",
                       date->text(), pain.date.text() + " to " + today.text()};
    return date;
}

bool same_name(const std::string& a, const std::string& b) {
    return slug(a) == slug(b);
}

} // namespace

Result<RecordClearanceAnswer> record_clearance(Workplace& workplace, const RecordClearanceRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto athlete = athlete_named(*before, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto pain = open_entry(*before, **athlete, request.number, inside.today());
    if (!pain)
        return pain.refusal();
    const auto clinician =
        person_given("cleared_by", request.cleared_by, "the clinician who cleared it, with the trade");
    if (!clinician)
        return clinician.refusal();
    if (same_name(*clinician, (*athlete)->name))
        return Refusal{RefusalCode::blocked_by_guard_rail, "Nobody clears their own pain here.", "cleared_by",
                       *clinician, "a qualified clinician, by name"};
    const auto date = day_of_clearance(request, *pain, inside.today());
    if (!date)
        return date.refusal();
    const auto recorded_by = person_given("recorded_by", request.recorded_by, "the adult who enters it");
    if (!recorded_by)
        return recorded_by.refusal();
    if (same_name(*recorded_by, (*athlete)->name) && whole_years((*athlete)->birth_date, inside.today()) < 18)
        return Refusal{RefusalCode::blocked_by_guard_rail, "An adult has to enter this.", "recorded_by",
                       *recorded_by, "a named adult"};
    RecordSet more;
    more.clearances = {{pain->athlete, pain->number, *date, *clinician, *recorded_by, inside.today(),
                        trimmed(request.words.value_or(""))}};
    inside.store.save_records(more);
    RecordClearanceAnswer answer{};
    for (const auto& shown : shown_pains(inside.tables, *inside.view(), pain->athlete, inside.today()))
        if (shown.number == pain->number)
            answer.pain = shown;
    answer.words = {
        "Kept: " + answer.pain.clearance,
        "The tool clears nobody; it keeps whose decision this is. What was left out is "
        "prescribed again from now on, by the limits that were said. Pain that comes back is a new entry."};
    return answer;
}

} // namespace amentum
