// The operations that change blocks after they are planned: by a coach's hand, or a whole squad at once.
#include "operations/adjust_block.h"
#include "operations/inside/terminal_text.h"
#include "operations/make_operation.h"
#include "operations/plan_squad.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string adjust_words(const value& answer) {
    std::string text = paragraph(said(answer.at("words")));
    for (const auto& move : answer.at("moved").as_array())
        text += "  session " + number_said(move.at("session"), 0) + "  " + padded(said(move.at("name")), 48) +
                " " + said(move.at("what")) + "\n" + paragraph(said(move.at("why")), 13);
    const auto& block = answer.at("block");
    if (!block.at("own_words").as_array().empty())
        text += "\n" + list_said(block.at("own_words"), "Your word: ");
    for (const auto& finding : block.at("findings").as_array())
        text += paragraph("Check (" + said(finding.at("severity")) + "): " + said(finding.at("sentence")));
    return text;
}

std::string squad_words(const value& answer) {
    std::string text = paragraph(said(answer.at("words")));
    for (const auto& line : answer.at("lines").as_array()) {
        const auto& points = line.at("points");
        text += "  " + padded(said(line.at("name")), 24) + " " + padded(said(line.at("outcome")), 9) +
                (points.is_null() ? "" : padded(number_said(points, 0) + " points", 12)) +
                said(line.at("words")) + "\n";
    }
    return text;
}

} // namespace

std::vector<Operation> squad_operations() {
    return {
        make_operation(
            "adjust_block",
            "Hold, leave out or swap an exercise of a kept block: the rest is planned again around it.",
            Effect::writes,
            {{"block", "its id, or a thrower's name for the newest"},
             {"step", "hold, leave_out, swap, or undo: the last change is taken back"},
             {"exercise", "its key or name"},
             {"with", "swap: the exercise that takes its place"},
             {"session", "of the week, 1 ...; left out: all of them"},
             {"sets", "of what is held; left out: as many as fit"}},
            &adjust_block, &adjust_words),
        make_operation("plan_squad",
                       "A block for every thrower at once, each on its own; begun, looked at, stopped.",
                       Effect::writes,
                       {{"step", "begin, look or stop; left out: begin"},
                        {"start", "first day, YYYY-MM-DD; left out: the next Monday"},
                        {"weeks", "4 to 16; left out: 4"},
                        {"sessions_per_week", "1 to 5; left out: 3"},
                        {"minutes", "a session, 20 to 120; left out: 60"},
                        {"athletes", "names or ids, with commas; left out: everybody"},
                        {"effort", "brief (when left out), or thorough: looks longer for the best blocks"},
                        {"wait", "yes or no: answer when it has ended; left out: yes"}},
                       &plan_squad, &squad_words),
    };
}

} // namespace amentum
