#include "operations/record_practice.h"

#include "guard_rails/finding.h"
#include "operations/inside/given_throws.h"
#include "operations/inside/throwing_answer.h"
#include "records/check_throws.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

constexpr std::size_t most_lines = 400;

struct PracticeEntry {
    const Athlete* athlete;
    ThrowEntry entry;
    bool held;
};

std::string mark_of(std::size_t line) {
    return "lines[" + std::to_string(line) + "].";
}

// A line as record_throws would be asked it: what it leaves out is the practice's.
RecordThrowsRequest request_of(const RecordPracticeRequest& practice, const PracticeLine& line,
                               const std::string& date) {
    RecordThrowsRequest request{};
    const int count = line.count.value_or(practice.count);
    request.athlete = line.athlete;
    request.date = date;
    request.setting = line.setting.value_or(count == 0 ? word(ThrowSetting::none) : practice.setting);
    request.count = count;
    request.soreness_before = line.soreness_before;
    request.soreness_after = line.soreness_after;
    request.note = line.note;
    if (request.setting == word(ThrowSetting::none))
        return request;
    request.effort_percent = line.effort_percent ? line.effort_percent : practice.effort_percent;
    request.speed_mph = line.speed_mph;
    request.distance_ft = practice.distance_ft;
    request.distance_m = practice.distance_m;
    request.ball_mass_lb = practice.ball_mass_lb;
    request.ball_mass_kg = practice.ball_mass_kg;
    request.team = practice.team;
    request.device = practice.device;
    return request;
}

Result<PracticeEntry> entry_of_line(const FacilityView& view, const RecordPracticeRequest& practice,
                                    std::size_t place, const std::string& date, Date today) {
    const auto mark = mark_of(place);
    const auto athlete = athlete_named(view, practice.lines[place].athlete);
    if (!athlete) {
        Refusal refusal = athlete.refusal();
        refusal.field = mark + refusal.field;
        return refusal;
    }
    const auto entry =
        throw_entry_from(request_of(practice, practice.lines[place], date), (*athlete)->id, today, mark);
    if (!entry)
        return entry.refusal();
    if (const auto alone = check_day_of_throws(*entry, of_day(view.records.throws, *entry)); !alone) {
        Refusal refusal = alone.refusal();
        refusal.field = mark + refusal.field;
        return refusal;
    }
    const auto* held = held_entry(view.records.throws, *entry);
    if (held && !(with_later_soreness(*entry, *held) == *held))
        return Refusal{RefusalCode::already_held,
                       (*athlete)->name + " has other throws of that day and setting: " +
                           std::to_string(held->count) + ". Nothing of this practice was kept.",
                       mark + "count", std::to_string(entry->count),
                       "the same numbers, or record_throws with a correction or a second occasion"};
    return PracticeEntry{*athlete, *entry, held != nullptr};
}

Result<std::vector<PracticeEntry>> entries_of(const FacilityView& view, const RecordPracticeRequest& practice,
                                              Date today) {
    if (practice.lines.empty() || practice.lines.size() > most_lines)
        return refuse_range("lines", static_cast<double>(practice.lines.size()), 1, most_lines, "throwers");
    const std::string date = practice.date.value_or(today.text());
    std::vector<PracticeEntry> entries;
    std::set<std::string> seen;
    for (std::size_t place = 0; place < practice.lines.size(); ++place) {
        const auto entry = entry_of_line(view, practice, place, date, today);
        if (!entry)
            return entry.refusal();
        if (!seen.insert(entry->athlete->id.text).second)
            return Refusal{RefusalCode::already_held, entry->athlete->name + " stands here twice.",
                           mark_of(place) + "athlete", practice.lines[place].athlete, "each thrower once"};
        entries.push_back(*entry);
    }
    return entries;
}

std::string line_words(const PracticeEntry& kept) {
    const std::string what =
        kept.entry.setting == ThrowSetting::none
            ? "No throws"
            : std::to_string(kept.entry.count) + " throws, " + setting_words(kept.entry.setting);
    return what + (kept.held ? "; already kept." : "; kept.");
}

std::vector<std::string> stops_among(const std::vector<ShownFinding>& findings) {
    std::vector<std::string> stops;
    for (const auto& finding : findings)
        if (finding.severity == word(Severity::stops) &&
            std::find(stops.begin(), stops.end(), finding.sentence) == stops.end())
            stops.push_back(finding.sentence);
    return stops;
}

} // namespace

Result<RecordPracticeAnswer> record_practice(Workplace& workplace, const RecordPracticeRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto entries = entries_of(*before, request, inside.today());
    if (!entries)
        return entries.refusal();
    RecordSet more;
    for (const auto& each : *entries)
        if (!each.held)
            more.throws.push_back(each.entry);
    inside.store.save_records(more);
    const auto after = inside.view();
    RecordPracticeAnswer answer{};
    answer.kept = static_cast<int>(more.throws.size());
    answer.held_before = static_cast<int>(entries->size() - more.throws.size());
    for (const auto& each : *entries)
        answer.lines.push_back(
            {each.athlete->id.text, each.athlete->name, line_words(each),
             stops_among(
                 throwing_findings(inside, *after, *after->athlete(each.athlete->id.text), inside.today()))});
    answer.words = {std::to_string(answer.kept) + " kept, " + std::to_string(answer.held_before) +
                    " were kept before."};
    answer.stop_and_refer = stop_and_refer_words(inside.tables);
    return answer;
}

} // namespace amentum
