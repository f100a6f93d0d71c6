#include "operations/record_day.h"

#include "operations/inside/entry_fields.h"
#include "operations/inside/planned_outings.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int longest_run = 400;
constexpr std::size_t longest_note = 500;

Result<CalendarEntry> day_from(const RecordDayRequest& request) {
    const auto kind = from_word<DayKind>(request.kind);
    if (!kind)
        return refuse_choice("kind", request.kind, all_words<DayKind>());
    const auto date = parse_date(request.date, "date");
    if (!date)
        return date.refusal();
    const auto last = parse_date(request.last_date.value_or(request.date), "last_date");
    if (!last)
        return last.refusal();
    if (*last < *date || *last - *date >= longest_run)
        return Refusal{RefusalCode::out_of_range, "From the first day to the last are 1 to 400 days.",
                       "last_date", last->text(), date->text() + " to " + (*date + longest_run - 1).text()};
    const std::string note = trimmed(request.note.value_or(""));
    if (note.size() > longest_note)
        return Refusal{RefusalCode::out_of_range, "Please keep it shorter.", "note",
                       std::to_string(note.size()) + " characters", "up to 500 characters"};
    return CalendarEntry{AthleteId{""}, *date, *last, *kind, note};
}

// The same athlete, first day and kind: held, and equal or not.
Result<bool> held_already(const FacilityView& view, const CalendarEntry& entry, const Athlete& athlete) {
    for (const auto& held : view.records.calendar) {
        if (held.athlete != entry.athlete || held.date != entry.date || held.kind != entry.kind)
            continue;
        if (held == entry)
            return true;
        return Refusal{RefusalCode::already_held,
                       athlete.name + " has such a day from " + held.date.text() + " to " +
                           held.last_date.text() + (held.note.empty() ? "" : " (" + held.note + ")") + ".",
                       "date", entry.date.text(), "another first day or kind, or the same"};
    }
    return false;
}

} // namespace

Result<RecordDayAnswer> record_day(Workplace& workplace, const RecordDayRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto day = day_from(request);
    if (!day)
        return day.refusal();
    if (request.athletes.empty())
        return refuse_missing("athletes", "whom the day concerns");
    RecordSet more;
    RecordDayAnswer answer{0, 0, {}};
    std::vector<const Athlete*> throwers;
    for (const auto& name : request.athletes) {
        const auto athlete = athlete_named(*before, name);
        if (!athlete)
            return athlete.refusal();
        CalendarEntry entry = *day;
        entry.athlete = (*athlete)->id;
        const auto held = held_already(*before, entry, **athlete);
        if (!held)
            return held.refusal();
        const bool twice = std::find(throwers.begin(), throwers.end(), *athlete) != throwers.end();
        answer.held_before += *held;
        throwers.push_back(*athlete);
        if (!*held && !twice)
            more.calendar.push_back(entry);
    }
    inside.store.save_records(more);
    answer.kept = static_cast<int>(more.calendar.size());
    answer.words = {
        std::to_string(answer.kept) + " kept, " + std::to_string(answer.held_before) +
        " were kept before. Blocks planned from now on keep to it; check_plan looks at those kept."};
    const auto after = inside.view();
    for (const auto* athlete : throwers)
        for (const auto& outing :
             planned_outings(arm_case(*after, inside.tables, *after->athlete(athlete->id.text)),
                             inside.tables, inside.today()))
            if (outing.date == day->date.text())
                answer.words.push_back(athlete->name + ": " + outing.words);
    return answer;
}

} // namespace amentum
