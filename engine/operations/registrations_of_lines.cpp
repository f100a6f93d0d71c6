// The operations that lay a line: ball speed over ball masses, bar speed over loads.
#include "operations/ball_mass_line.h"
#include "operations/inside/terminal_text.h"
#include "operations/load_velocity.h"
#include "operations/make_operation.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string ball_words(const value& answer) {
    std::string text = said(answer.at("name")) + ", " + said(answer.at("family_name")) + ", " +
                       said(answer.at("date")) + "\n\n" + list_said(answer.at("words"), "") + "\n" +
                       padded("  ball", 12) + padded("throws", 9) + padded("mean speed, 80 %", 28) +
                       padded("on the line", 28) + "energy, momentum\n";
    for (const auto& ball : answer.at("balls").as_array())
        text += "  " + padded(number_said(ball.at("mass"), 1) + " " + said(answer.at("mass_unit")), 10) +
                padded(number_said(ball.at("throws"), 0), 9) + padded(estimate_said(ball.at("speed")), 28) +
                padded(estimate_said(ball.at("on_line")), 28) +
                number_said(ball.at("energy").at("value"), 0) + " J, " +
                number_said(ball.at("momentum").at("value"), 1) + " N s\n";
    return text + "\n" + list_said(answer.at("cautions"), "Note: ") +
           list_said(answer.at("throw_next"), "Next: ");
}

std::string load_velocity_words(const value& answer) {
    const std::string date = said(answer.at("date"));
    std::string text = said(answer.at("name")) + ", " + said(answer.at("test_name")) + " (" +
                       said(answer.at("taken")) + (date.empty() ? "" : ", " + date) + ")\n\n" +
                       list_said(answer.at("words"), "") + "\n" + padded("  load", 14) + padded("speed", 12) +
                       "on the line\n";
    for (const auto& line : answer.at("loads").as_array())
        text += "  " + padded(number_said(line.at("load"), 1) + " " + said(answer.at("load_unit")), 12) +
                padded(number_said(line.at("speed"), 2) + " m/s", 12) + number_said(line.at("on_line"), 2) +
                " m/s" + (line.at("used").as_bool() ? "" : "  out of line, left out") + "\n";
    return text + "\n" + list_said(answer.at("cautions"), "Note: ");
}

} // namespace

std::vector<Operation> line_operations() {
    return {
        make_operation(
            "ball_mass_line",
            "How fast a thrower sends balls of several masses, and how steeply speed falls with mass.",
            Effect::reads,
            {{"athlete", "the thrower's name or id"},
             {"family", "the throw, such as kneeling_overhead_throw; left out: the one with the latest line"},
             {"date", "a test day, YYYY-MM-DD; left out: the latest with three balls"}},
            &ball_mass_line, &ball_words),
        make_operation(
            "load_velocity",
            "A lifter's own line of bar speed on load, and the maximum it leads to; nothing is kept.",
            Effect::reads,
            {{"athlete", "the lifter's name or id"},
             {"test", "a lift's test key, such as hex_bar_high_max"},
             {"loads", "load_kg or load_lb (pull-ups: added) with speed_ms, each as fast as possible; left "
                       "out: the held readings with both"},
             {"date", "a test day of held readings, YYYY-MM-DD; left out: the last with two loads"},
             {"body_mass_kg", "for pull-ups; left out: the last one held"},
             {"body_mass_lb", "the same in pounds"}},
            &load_velocity, &load_velocity_words),
    };
}

} // namespace amentum
