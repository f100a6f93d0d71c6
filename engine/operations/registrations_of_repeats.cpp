// The operations about repeats: a test's own error, joint ranges, the two sides.
#include "operations/estimate_error.h"
#include "operations/inside/terminal_text.h"
#include "operations/joint_ranges.h"
#include "operations/make_operation.h"
#include "operations/registrations.h"
#include "operations/sides.h"

namespace amentum {
namespace {

using boost::json::value;

std::string number_with_unit(const value& line, const char* part) {
    const int decimals = static_cast<int>(line.at("decimals").to_number<double>());
    return number_said(line.at(part).at("published"), decimals) + " " + said(line.at("unit"));
}

std::string error_words(const value& answer) {
    std::string text;
    const auto& tests = answer.at("tests").as_array();
    if (tests.size() > 1)
        text = padded("test", 28) + padded("trial: publ.", 13) + padded("pooled, 80 %", 25) +
               padded("day: publ.", 11) + "pooled, 80 %\n";
    for (const auto& line : tests) {
        if (tests.size() == 1)
            text += paragraph(said(line.at("name")) + ":");
        else
            text += padded(said(line.at("test")), 27) + " " + padded(number_with_unit(line, "trial"), 12) +
                    " " + padded(estimate_said(line.at("trial").at("pooled")), 24) + " " +
                    padded(number_with_unit(line, "day"), 10) + " " +
                    estimate_said(line.at("day").at("pooled")) + "\n";
    }
    if (tests.size() == 1) {
        const auto& line = tests.front();
        for (const char* part : {"trial", "day"})
            text += paragraph(std::string(part) + ": published " + number_with_unit(line, part) +
                                  ", pooled " + estimate_said(line.at(part).at("pooled")),
                              2);
        text += list_said(line.at("words"), "");
    }
    return text + "\n" + list_said(answer.at("words"), "");
}

std::string day_words(const value& day) {
    std::string text = said(day.at("date")) + "\n";
    for (const auto& angle : day.at("angles").as_array()) {
        text += "  " + padded(said(angle.at("name")), 45) + " " + padded(said(angle.at("side")), 21) + " " +
                estimate_said(angle.at("mean")) + "\n";
        if (!said(angle.at("words")).empty())
            text += paragraph(said(angle.at("words")), 4);
    }
    for (const auto& total : day.at("totals").as_array())
        text += "  " + padded("Total rotation, " + said(total.at("joint")), 45) + " " +
                padded(said(total.at("side")), 21) + " " + estimate_said(total.at("total")) + "\n";
    for (const auto& difference : day.at("differences").as_array())
        text += paragraph(said(difference.at("words")), 2);
    for (const auto& missing : day.at("missing").as_array())
        text += paragraph("Not compared. " + said(missing), 2);
    return text + "\n";
}

std::string range_words(const value& answer) {
    std::string text =
        said(answer.at("name")) + ", " + said(answer.at("today")) + ": ranges of the joints\n\n";
    for (const auto& day : answer.at("days").as_array())
        text += day_words(day);
    return text + list_said(answer.at("words"), "") + "\n" + list_said(answer.at("stop_and_refer"), "- ");
}

std::string side_words(const value& answer) {
    std::string text = said(answer.at("name")) + ", " + said(answer.at("today")) + ": the two sides\n\n";
    for (const auto& line : answer.at("tests").as_array()) {
        text += said(line.at("name")) + ", " + said(line.at("date")) + "\n";
        text += "  " + padded(said(line.at("main_side")), 24) + estimate_said(line.at("main")) + "\n";
        text += "  " + padded(said(line.at("other_side")), 24) + estimate_said(line.at("other")) + "\n";
        if (line.at("over_total").is_object())
            text += "  " + padded("over the total", 24) + estimate_said(line.at("over_total")) + "\n";
        text += paragraph(said(line.at("words")), 2);
    }
    for (const auto& line : answer.at("not_compared").as_array())
        text += paragraph("Not compared. " + said(line));
    return text + "\n" + list_said(answer.at("words"), "") + "\n" +
           list_said(answer.at("stop_and_refer"), "- ");
}

} // namespace

std::vector<Operation> repeat_operations() {
    return {
        make_operation("estimate_error", "How large is each test's error here, by your own repeats?",
                       Effect::reads, {{"test", "a test kind's key; left out: all of them"}}, &estimate_error,
                       &error_words),
        make_operation(
            "joint_ranges", "The joint angles held, how sure they are, what to measure again.", Effect::reads,
            {{"athlete", "the thrower's name or id"}, {"date", "a day, YYYY-MM-DD; left out: every day"}},
            &joint_ranges, &range_words),
        make_operation("sides",
                       "How the two sides differ, in every test, and whether by more than the error.",
                       Effect::reads, {{"athlete", "the thrower's name or id"}}, &sides, &side_words),
    };
}

} // namespace amentum
