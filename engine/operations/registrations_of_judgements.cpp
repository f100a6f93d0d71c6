// The operations that judge what was done and say what to test next.
#include "operations/inside/terminal_text.h"
#include "operations/judge_block.h"
#include "operations/make_operation.h"
#include "operations/next_test.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string block_words(const value& answer) {
    const std::string block = said(answer.at("block"));
    std::string text = said(answer.at("name")) + ", " + (block.empty() ? "" : "block " + block + ", ") +
                       said(answer.at("from_date")) + " to " + said(answer.at("to_date")) + "\n\n" +
                       list_said(answer.at("words"), "") + "\n" + padded("  quality", 28) +
                       padded("without the block", 32) + padded("test", 10) + "test less forecast\n";
    for (const auto& line : answer.at("qualities").as_array())
        text +=
            padded("  " + said(line.at("name")), 27) + " " + padded(estimate_said(line.at("forecast")), 31) +
            " " +
            padded(number_said(line.at("observed"), static_cast<int>(line.at("decimals").as_int64())), 9) +
            " " + estimate_said(line.at("excess")) + "\n";
    text += "\nNot taken out:\n" + list_said(answer.at("not_taken_out"), "- ");
    for (const auto& each : answer.at("not_judged").as_array())
        text += paragraph("Not judged, " + said(each.at("name")) + ": " + said(each.at("why")) + ".");
    return text;
}

std::string test_words(const value& answer) {
    std::string text = said(answer.at("name")) + ", " + said(answer.at("today")) + ": what to test next\n\n" +
                       list_said(answer.at("words"), "") + "\n" + padded("  test", 44) + padded("day", 12) +
                       padded("worth, " + said(answer.at("unit")), 14) + "doubt of the level, SD\n";
    for (const auto& line : answer.at("tests").as_array()) {
        const std::string day = said(line.at("date"));
        text += padded("  " + said(line.at("test_name")), 43) + " " +
                padded(day.empty() ? "none free" : day, 12) + padded(number_said(line.at("value"), 3), 14) +
                number_said(line.at("doubt_without"), 2) + " to " + number_said(line.at("doubt_with"), 2) +
                "\n";
    }
    return text + "\n" + list_said(answer.at("cautions"), "Note: ");
}

} // namespace

std::vector<Operation> judgement_operations() {
    return {
        make_operation("judge_block",
                       "Did the block do more than the records before it foretold, in velocity and in what "
                       "it emphasised?",
                       Effect::reads,
                       {{"athlete", "the thrower's name or id"},
                        {"block", "a kept block's id; left out: the last one that has begun"},
                        {"from_date", "instead of a kept block: its first day, YYYY-MM-DD"},
                        {"to_date", "its last day"}},
                       &judge_block, &block_words),
        make_operation(
            "next_test", "Which test, on which day, would shrink the doubt about what to train most?",
            Effect::reads,
            {{"athlete", "the thrower's name or id"},
             {"before",
              "the day of the choice; left out: the next kept block's start, or four weeks from today"}},
            &next_test, &test_words),
    };
}

} // namespace amentum
