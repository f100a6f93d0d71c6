#include "operations/calendar_feed.h"

#include "operations/inside/block_answer.h"
#include "operations/inside/kept_block.h"
#include "reports/calendar_text.h"
#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {
namespace {

std::string uid_of(const Facility& facility, const Block& block, const ShownSession& session) {
    return block.id.text + "-week-" + std::to_string(session.week) + "-session-" +
           std::to_string(session.session) + "@" + slug(facility.name);
}

std::string described(const ShownLine& line) {
    std::string text = line.name + ": " + line.dose;
    for (const auto& part : {line.load_words, line.intensity_words})
        text += part.empty() ? "" : ", " + part;
    return text + ", rest " + format_shortest(line.rest_minutes) + " min";
}

CalendarDay event_of(const Facility& facility, const std::string& name, const Block& block,
                     const ShownSession& session) {
    CalendarDay event{uid_of(facility, block, session), *parse_date(session.date, "date"),
                      name + ": week " + std::to_string(session.week) + ", session " +
                          std::to_string(session.session) + " (" + format_fixed(session.minutes, 0) + " min)",
                      ""};
    if (!session.week_words.empty())
        event.description = "Week of " + session.week_words + ".\n";
    for (const auto& line : session.lines)
        event.description += described(line) + "\n";
    event.description += describe_limits_of_tool();
    return event;
}

// The day from which a later block of the same thrower takes over.
std::optional<Date> taken_over_on(const std::vector<const Block*>& blocks, const Block& block) {
    std::optional<Date> day;
    for (const Block* other : blocks)
        if (other->start > block.start && (!day || other->start < *day))
            day = other->start;
    return day;
}

// A block kept for another gym, too, begins on the day of the first: the one that the athlete's name stands for is shown.
std::vector<const Block*> one_of_each_start(std::vector<const Block*> newest_first) {
    const auto same_start = [](const Block* a, const Block* b) { return a->start == b->start; };
    newest_first.erase(std::unique(newest_first.begin(), newest_first.end(), same_start), newest_first.end());
    return newest_first;
}

CalendarFeedAnswer feed_of(Workplace::Inside& inside, const FacilityView& view, const std::string& name,
                           const std::string& key, const std::vector<const Block*>& blocks) {
    const Facility facility = inside.facility();
    CalendarText calendar{name + ", training", inside.today(), {}};
    for (const Block* block : blocks) {
        const auto end = taken_over_on(blocks, *block);
        for (const auto& session : block_answer(inside, view, *block).sessions)
            if (!end || session.date < end->text())
                calendar.days.push_back(event_of(facility, name, *block, session));
    }
    std::stable_sort(calendar.days.begin(), calendar.days.end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
    const auto& days = calendar.days;
    const std::string count = std::to_string(days.size()) + (days.size() == 1 ? " session" : " sessions");
    return {calendar.name,
            "/calendar/" + key + ".ics",
            key + ".ics",
            static_cast<int>(days.size()),
            days.empty() ? name + " has no kept block, so the calendar is empty until there is one."
                         : count + " from " + days.front().day.text() + " to " + days.back().day.text() + ".",
            write_calendar(calendar)};
}

} // namespace

Result<CalendarFeedAnswer> calendar_feed(Workplace& workplace, const CalendarFeedRequest& request) {
    auto& inside = workplace.inside();
    if (request.athlete && request.block)
        return Refusal{RefusalCode::unknown_choice, "Give athlete or block, not both.", "block",
                       *request.block, "athlete alone, or block alone"};
    if (!request.athlete && !request.block)
        return refuse_missing("athlete", "whose sessions, or block for those of one block");
    const auto view = inside.view();
    if (request.athlete) {
        const auto athlete = athlete_named(*view, *request.athlete);
        if (!athlete)
            return athlete.refusal();
        return feed_of(inside, *view, (*athlete)->name, (*athlete)->id.text,
                       one_of_each_start(blocks_of(*view, (*athlete)->id)));
    }
    const auto block = kept_block(*view, *request.block, "block");
    if (!block)
        return block.refusal();
    return feed_of(inside, *view, view->athlete((*block)->athlete.text)->name, (*block)->id.text, {*block});
}

} // namespace amentum
