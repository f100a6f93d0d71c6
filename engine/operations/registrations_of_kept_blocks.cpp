// The operations around a kept block: its sessions as a calendar, a coach's own block from a file, what to lift next.
#include "operations/calendar_feed.h"
#include "operations/export_block.h"
#include "operations/import_block.h"
#include "operations/inside/terminal_text.h"
#include "operations/make_operation.h"
#include "operations/plan_next_session.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string calendar_words(const value& answer) {
    return said(answer.at("text"));
}

std::string next_session_words(const value& answer) {
    std::string text;
    for (const auto& note : answer.at("pain_notes").as_array())
        text += paragraph("A note of " + said(note.at("date")) + ", " + said(note.at("name")) + ": \"" +
                          said(note.at("note")) +
                          "\". Stop, and see the signs below. This tool does not read it further.");
    text += said(answer.at("name")) + ", " + said(answer.at("weekday")) + " " + said(answer.at("date")) +
            ". " + said(answer.at("words")) + "\n" + paragraph(said(answer.at("rule_words").at("sentence")));
    for (const auto& why : answer.at("ordered").as_array())
        text += paragraph(said(why.at("sentence")));
    for (const auto& line : answer.at("lines").as_array()) {
        text += "\n" + said(line.at("name")) + "\n  " + said(line.at("now")) + "\n";
        if (line.at("changed").as_bool())
            text += "  written: " + said(line.at("written")) + "\n";
        if (!said(line.at("last_time")).empty())
            text += "  last time, " + said(line.at("last_time")) + "\n";
        if (line.at("sets_done").to_number<int>() > 0)
            text += "  done today: " + number_said(line.at("sets_done"), 0) +
                    ", left: " + number_said(line.at("sets_left"), 0) + "\n";
        for (const auto& why : line.at("why").as_array())
            text += paragraph(said(why.at("sentence")), 6);
    }
    text += "\n";
    for (const auto& finding : answer.at("findings").as_array())
        text += paragraph("Check (" + said(finding.at("severity")) + "): " + said(finding.at("sentence")));
    return text + list_said(answer.at("stop_and_refer"), "- ");
}

std::string import_block_words(const value& answer) {
    std::string text;
    for (const auto& problem : answer.at("problems").as_array())
        text += paragraph(said(problem.at("field")) + ": " + said(problem.at("sentence")));
    text += paragraph(said(answer.at("words")));
    if (!answer.at("block").is_object())
        return text;
    for (const auto& session : answer.at("block").at("sessions").as_array()) {
        text += "\nWeek " + number_said(session.at("week"), 0) + ", " + said(session.at("weekday")) + " " +
                said(session.at("date")) + " (" + number_said(session.at("minutes"), 0) + " min)\n";
        for (const auto& line : session.at("lines").as_array())
            text += "  " + padded(said(line.at("name")), 50) + " " + padded(said(line.at("dose")), 15) + " " +
                    said(line.at("load_words")) + "\n";
    }
    text += "\n" + list_said(answer.at("block").at("notes"), "Note: ");
    for (const auto& finding : answer.at("block").at("findings").as_array())
        text += paragraph("Check (" + said(finding.at("severity")) + "): " + said(finding.at("sentence")));
    return text;
}

std::string export_block_words(const value& answer) {
    return said(answer.at("files").at(0).at("text"));
}

} // namespace

std::vector<Operation> kept_block_operations() {
    return {
        make_operation("plan_next_session",
                       "What to lift next: the next session of a block, changed by what was logged, and why.",
                       Effect::reads,
                       {{"athlete", "the thrower's name or id"}, {"block", "or the block's id"}},
                       &plan_next_session, &next_session_words),
        make_operation(
            "calendar_feed", "The sessions of kept blocks as a calendar a phone can follow.", Effect::reads,
            {{"athlete", "the thrower's name or id: all kept blocks"}, {"block", "or the id of one block"}},
            &calendar_feed, &calendar_words),
        make_operation(
            "import_block",
            "A block the coach already has, from a file: shown, checked, and kept when told to.",
            Effect::writes,
            {{"athlete", "the thrower's name or id"},
             {"text", "the file's content: one line an exercise of a session"},
             {"start", "first day, YYYY-MM-DD; left out: from the file's dates, or the next Monday"},
             {"minutes", "a session, 20 to 120; left out: 60"},
             {"kit", "the gym; left out: where the thrower trains"},
             {"keep", "keep it, unless a guard rail stops it; left out: no"}},
            &import_block, &import_block_words),
        make_operation("export_block", "A kept block as the file import_block reads.", Effect::reads,
                       {{"block", "its id, or a thrower's name for the newest"}}, &export_block,
                       &export_block_words),
    };
}

} // namespace amentum
