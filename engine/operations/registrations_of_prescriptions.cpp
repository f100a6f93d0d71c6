// The operations that prescribe or explain: blocks, loads, cautions, catalogue, methods.
#include "operations/block.h"
#include "operations/catalogue.h"
#include "operations/compare_blocks.h"
#include "operations/inside/terminal_text.h"
#include "operations/load_bar.h"
#include "operations/make_operation.h"
#include "operations/method.h"
#include "operations/override_caution.h"
#include "operations/plan_block.h"
#include "operations/registrations.h"
#include "operations/retarget_block.h"

namespace amentum {
namespace {

using boost::json::value;

std::string block_words(const value& answer) {
    std::string text = said(answer.at("name")) + ": block from " + said(answer.at("start")) + ", " +
                       number_said(answer.at("weeks"), 0) + " weeks, " + said(answer.at("kit")) + "\n";
    for (const auto& session : answer.at("sessions").as_array()) {
        const std::string week_words = said(session.at("week_words"));
        text += "\nWeek " + number_said(session.at("week"), 0) + ", " + said(session.at("weekday")) + " " +
                said(session.at("date")) + (week_words.empty() ? "" : ", " + week_words) + " (" +
                number_said(session.at("minutes"), 0) + " min)\n";
        for (const auto& line : session.at("lines").as_array()) {
            text += "  " + padded(said(line.at("name")), 50) + " " + padded(said(line.at("dose")), 15) + " " +
                    said(line.at("load_words")) + "\n" + paragraph(said(line.at("reason")), 6);
        }
    }
    text += "\n";
    if (!answer.at("reach").is_null())
        text += paragraph(said(answer.at("reach").at("words"))) + "\n";
    text += list_said(answer.at("notes"), "Note: ");
    for (const auto& finding : answer.at("findings").as_array())
        text += paragraph("Check (" + said(finding.at("severity")) + "): " + said(finding.at("sentence")));
    return text + "\n" + list_said(answer.at("stop_and_refer"), "- ");
}

std::string compared_words(const value& answer) {
    std::string text = paragraph(said(answer.at("name")) + ": " + said(answer.at("first").at("block")) +
                                 " and " + said(answer.at("second").at("block"))) +
                       "\n" + paragraph(said(answer.at("words"))) + "\n  " + padded("sets a week", 50) +
                       " first  second\n";
    for (const auto& line : answer.at("lines").as_array())
        text += "  " + padded(said(line.at("name")), 50) + " " +
                padded(number_said(line.at("sets_a_week"), 1), 6) + " " +
                number_said(line.at("sets_a_week_with"), 1) + "\n";
    return text;
}

std::string side_words(const value& side) {
    return said(side.at("name")) + ", " + said(side.at("dose")) + ", " + said(side.at("load_words"));
}

std::string other_gym_line(const value& line) {
    const std::string change = said(line.at("change"));
    std::string text = "  " + side_words(line.at("from")) + "\n";
    if (change == "kept" && said(line.at("loss")).empty())
        return text + paragraph("as written: " + said(line.at("to").at("load_words")), 6);
    const std::string kept = std::string(line.at("compared").as_bool() ? "" : "at most ") +
                             number_said(line.at("kept").at("value"), 0) + " %";
    text += paragraph(line.at("to").is_null() ? std::string("lost")
                                              : "-> " + side_words(line.at("to")) + " (" +
                                                    said(line.at("change_words")) + ", keeps " + kept + ")",
                      6);
    if (!line.at("equal").is_null())
        text += paragraph(
            estimate_said(line.at("equal")) + " " + said(line.at("equal_words")) +
                (said(line.at("limit")).empty() ? "" : "; limited by " + said(line.at("limit"))) + ".",
            9);
    for (const char* field : {"loss", "to_do", "set_up"})
        if (!said(line.at(field)).empty())
            text += paragraph(said(line.at(field)), 9);
    return text;
}

std::string other_gym_words(const value& answer) {
    std::string text = said(answer.at("name")) + ": block from " + said(answer.at("start")) + ", " +
                       said(answer.at("from_kit")) + " -> " + said(answer.at("kit_name")) + "\n" +
                       paragraph(said(answer.at("kept_words")));
    for (const auto& quality : answer.at("qualities").as_array())
        text += "  " + padded(said(quality.at("name")), 30) + number_said(quality.at("kept"), 0) + " %\n";
    for (const auto& session : answer.at("sessions").as_array()) {
        text += "\nWeek " + number_said(session.at("week"), 0) + ", " + said(session.at("weekday")) + " " +
                said(session.at("date")) + " (" + number_said(session.at("minutes"), 0) + " min)\n";
        for (const auto& line : session.at("lines").as_array())
            text += other_gym_line(line);
    }
    text += "\n";
    for (const auto& purchase : answer.at("purchases").as_array())
        text += paragraph(said(purchase.at("words")));
    text += list_said(answer.at("notes"), "Note: ") + list_said(answer.at("cautions"), "Note: ");
    for (const auto& finding : answer.at("findings").as_array())
        text += paragraph("Check (" + said(finding.at("severity")) + "): " + said(finding.at("sentence")));
    text += list_said(answer.at("cannot_tell"), "Cannot tell: ");
    if (!said(answer.at("kept_block")).empty())
        text += "Kept as " + said(answer.at("kept_block")) + ".\n";
    return text + "\n" + list_said(answer.at("stop_and_refer"), "- ");
}

std::string load_words(const value& load) {
    return number_said(load.at("total"), 2) + " " + said(load.at("unit")) + ": " + said(load.at("words"));
}

std::string load_bar_words(const value& answer) {
    std::string text = "Nearest: " + load_words(answer.at("nearest")) + "\n";
    if (answer.at("not_above").is_object())
        text += "Not above: " + load_words(answer.at("not_above")) + "\n";
    if (answer.at("above").is_object())
        text += "Next above: " + load_words(answer.at("above")) + "\n";
    for (const auto& line : answer.at("warm_up").as_array())
        text += "  warm-up " +
                padded(number_said(line.at("percent"), 0) + " % x " + number_said(line.at("reps"), 0), 12) +
                load_words(line.at("load")) + "\n";
    return text + list_said(answer.at("to_add"), "To come nearer: ");
}

std::string override_words(const value& answer) {
    return paragraph(said(answer.at("words")));
}

std::string catalogue_words(const value& answer) {
    std::string text;
    for (const auto& exercise : answer.at("exercises").as_array())
        text += padded(said(exercise.at("exercise")), 44) + " " + said(exercise.at("name")) + "\n";
    return text;
}

std::string method_words(const value& answer) {
    std::string text;
    if (answer.as_object().contains("methods")) {
        for (const auto& method : answer.at("methods").as_array())
            text += padded(said(method.at("name")), 32) + " " + said(method.at("question")) + "\n";
        return text;
    }
    for (const auto& output : answer.at("outputs").as_object()) {
        text += std::string(output.key()) + " = " + number_said(output.value().at("value"), 6) + " " +
                said(output.value().at("unit"));
        const auto& error = output.value().at("standard_error");
        text += (error.is_null() ? "" : ", standard error " + number_said(error, 6)) + "\n";
    }
    return text + list_said(answer.at("notes"), "Note: ");
}

// Two documents, so not a described struct: the list, or one run in the form every scientist is promised.
Result<value> method_answer(Workplace&, const value& given) {
    const auto request = read_json<MethodRequest>(given, "");
    if (!request)
        return request.refusal();
    if (!request->name) {
        const auto list = method_list();
        if (!list)
            return list.refusal();
        return value(boost::json::object{{"methods", written(*list)}});
    }
    const auto run = run_method(*request->name, request->inputs);
    if (!run)
        return run.refusal();
    return value(boost::json::object{{"method", run->method},
                                     {"inputs", written(run->inputs)},
                                     {"outputs", written(run->outputs)},
                                     {"notes", written(run->notes)},
                                     {"source", written(run->source)}});
}

Operation method_operation() {
    const auto schema = without_lists_needed(schema_of<MethodRequest>());
    const boost::json::object answer{{"type", "object"},
                                     {"properties",
                                      {{"methods", schema_of<std::vector<ShownMethod>>()},
                                       {"method", schema_of<std::string>()},
                                       {"inputs", schema_of<std::map<std::string, std::string>>()},
                                       {"outputs", schema_of<std::map<std::string, ShownOutput>>()},
                                       {"notes", schema_of<std::vector<std::string>>()},
                                       {"source", schema_of<std::vector<std::string>>()}}},
                                     {"required", boost::json::array{}}};
    return {"method",
            "Any published method the tool uses, by itself; without a name, the list of them.",
            Effect::reads,
            described_fields(schema, {{"name", "the method's name; left out: the list of all"},
                                      {"inputs", "the method's inputs as JSON text, {\"reps\": \"5\"}"}}),
            schema,
            answer,
            &method_answer,
            &method_words};
}

} // namespace

std::vector<Operation> prescription_operations() {
    return {
        make_operation(
            "plan_block",
            "Write a block of 4 to 16 weeks in loads this gym can make, with a reason on each line.",
            Effect::writes,
            {{"athlete", "the thrower's name or id"},
             {"start", "first day, YYYY-MM-DD; left out: the next Monday"},
             {"weeks", "4 to 16; left out: 4"},
             {"sessions_per_week", "1 to 5; left out: 3"},
             {"minutes", "a session, 20 to 120; left out: 60"},
             {"kit", "the gym; left out: where the thrower trains"},
             {"training_days", "monday ... sunday, with commas; left out: any free day"},
             {"effort", "brief (when left out), or thorough: looks longer for the best block"}},
            &plan_block, &block_words),
        make_operation("block", "A kept block, with what has been logged against it.", Effect::reads,
                       {{"block", "its id, or a thrower's name for the newest"},
                        {"week", "only this week; left out: all"}},
                       &block, &block_words),
        make_operation("compare_blocks",
                       "Two kept blocks of one thrower side by side: what each gives, where they differ.",
                       Effect::reads,
                       {{"block", "its id, or a thrower's name for the newest"},
                        {"with", "the other block of the same thrower, by its id"}},
                       &compare_blocks, &compared_words),
        make_operation(
            "retarget_block",
            "What another gym makes of a kept block, line by line, and what is lost of its intent.",
            Effect::writes,
            {{"block", "its id, or a thrower's name for the newest"},
             {"kit", "the other gym"},
             {"keep", "store it as a block of its own; left out: only show"}},
            &retarget_block, &other_gym_words),
        make_operation(
            "load_bar",
            "Which plates make this load in this gym, what is nearest, and the warm-up on the way.",
            Effect::reads,
            {{"kit", "the gym; left out: the first"},
             {"means", "straight_bar, hex_bar, dumbbell_pair, column ...; left out: straight_bar"},
             {"item", "one bar or column by its label"},
             {"target_lb", "the load wanted, in lb"},
             {"target_kg", "or in kg"}},
            &load_bar, &load_bar_words),
        make_operation("override_caution",
                       "Take an exercise a caution speaks against, for a reason that is kept for good.",
                       Effect::writes,
                       {{"athlete", "the thrower's name or id"},
                        {"exercise", "the exercise's key"},
                        {"caution", "the caution's key"},
                        {"reason", "why, at least 10 letters"},
                        {"coach", "who takes the decision"}},
                       &override_caution, &override_words),
        make_operation("catalogue", "The exercises, tests, kits and cautions there are.", Effect::reads, {},
                       &catalogue, &catalogue_words),
        method_operation(),
    };
}

} // namespace amentum
