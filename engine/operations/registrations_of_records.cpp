// The operations that keep records: files in and out, tests, throws, sets, the demo facility.
#include "operations/demo.h"
#include "operations/export_records.h"
#include "operations/import_records.h"
#include "operations/inside/terminal_text.h"
#include "operations/log_set.h"
#include "operations/make_operation.h"
#include "operations/record_test.h"
#include "operations/record_throws.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string import_words(const value& answer) {
    std::string text;
    for (const auto& line : answer.at("lines").as_array()) {
        const std::string start = "line " + number_said(line.at("line"), 0) + ": ";
        const auto& refusal = line.at("refusal");
        text += paragraph(start + (refusal.is_object() ? "REFUSED. " + said(refusal.at("sentence"))
                                                       : said(line.at("words"))));
    }
    return text + paragraph(said(answer.at("words")));
}

std::string export_words(const value& answer) {
    std::string text;
    for (const auto& file : answer.at("files").as_array())
        text += padded(said(file.at("name")), 24) +
                number_said(value(file.at("text").as_string().size()), 0) + " bytes\n";
    return text + "Give --folder to write them.\n";
}

std::string test_words(const value& answer) {
    if (!said(answer.at("question")).empty())
        return paragraph(said(answer.at("question")) + " Send it again with --keep yes to keep it.");
    return list_said(answer.at("words"), "") + list_said(answer.at("warnings"), "Note: ");
}

std::string throws_words(const value& answer) {
    std::string text = list_said(answer.at("words"), "");
    for (const auto& each : answer.at("reopened").as_array())
        text += "  " + said(each.at("date")) + ": before " + said(each.at("before")) + ", now " +
                said(each.at("now")) + "\n";
    for (const auto& finding : answer.at("findings").as_array())
        text += paragraph("Check (" + said(finding.at("severity")) + "): " + said(finding.at("sentence")));
    return text + list_said(answer.at("stop_and_refer"), "- ");
}

std::string plain_words(const value& answer) {
    return paragraph(said(answer.at("words")));
}

const Meanings throw_meanings{
    {"athlete", "the thrower's name or id"},
    {"date", "YYYY-MM-DD"},
    {"setting", "catch_play, flat_ground, mound, bullpen, game, long_toss, ball_drill, javelin, fielding "
                "or none"},
    {"count", "throws, 1 to 400; of a game the pitches to batters; 0 with none"},
    {"effort_percent", "intended effort, 10 to 100"},
    {"speed_mph", "mean speed, in mph"},
    {"speed_ms", "or in m/s"},
    {"distance_ft", "in feet"},
    {"distance_m", "or in metres"},
    {"ball_mass_lb", "of the ball, in lb"},
    {"ball_mass_kg", "or in kg"},
    {"soreness_before", "0 none to 10 worst imaginable"},
    {"soreness_after", "0 to 10"},
    {"soreness_next_day", "0 to 10"},
    {"note", "anything worth keeping"},
    {"occasion", "the second bullpen or game of the day: 2; left out: 1"},
    {"team", "for whom"},
    {"game", "its name; a suspended game keeps it on the day it goes on"},
    {"innings", "pitched, as scorers write them: 4.1 is four and a third"},
    {"before_last_batter", "pitches thrown before the last batter's first"},
    {"innings_caught", "behind the plate"},
    {"accuracy", "how well they went where they should, in words"},
    {"device", "that measured the speed"},
    {"time_zone", "of the place, on travel: Asia/Tokyo"},
    {"corrected_by", "who corrects an entry that is held, by name"},
    {"reason", "of the correction, at least 10 letters"}};

const Meanings set_meanings{
    {"key", "made on the device, 8 to 64 letters, digits or '-'; the same key is the same set"},
    {"athlete", "the thrower's name or id"},
    {"date", "YYYY-MM-DD"},
    {"exercise", "the exercise's key"},
    {"set_number", "1 to 40"},
    {"load_kg", "total load in kg; pull-ups: added load"},
    {"load_lb", "or in lb"},
    {"reps", "repetitions done"},
    {"reps_in_reserve", "how many more would have gone, 0 to 20"},
    {"speed_ms", "of the ball, in m/s"},
    {"speed_mph", "or in mph"},
    {"block", "the block's id"},
    {"note", "anything worth keeping"}};

} // namespace

std::vector<Operation> record_operations() {
    return {
        make_operation("record_test",
                       "Keep one test of one thrower and day; asks first when it is far from expected.",
                       Effect::writes,
                       {{"athlete", "the thrower's name or id"},
                        {"date", "YYYY-MM-DD"},
                        {"test", "the test kind's key"},
                        {"side", "left or right, where the test has sides"},
                        {"trials", "the readings as JSON text, [{\"load_lb\": 185, \"reps\": 5}]"},
                        {"device", "which radar, mat or scale"},
                        {"rater", "who measured"},
                        {"place_measured", "out_of_hand, at_plate or unknown, for ball speeds"},
                        {"note", "anything worth keeping"},
                        {"keep", "yes: keep it although it is far from expected"}},
                       &record_test, &test_words),
        make_operation("record_throws", "Keep the throws of one thrower, day and setting, with soreness.",
                       Effect::writes, throw_meanings, &record_throws, &throws_words),
        make_operation("log_set", "Keep one set as it was done; it moves that quality's trajectory.",
                       Effect::writes, set_meanings, &log_set, &plain_words),
        make_operation("import_records", "Show line by line what a file would add; with take, take it whole.",
                       Effect::writes,
                       {{"kind", "facility, kit, athletes, test_results, throws, calendar, sets, blocks, "
                                 "block_lines, overrides, prior_edits"},
                        {"text", "the file's content"},
                        {"take", "yes: keep the records; left out: only show"}},
                       &import_records, &import_words),
        make_operation("export_records", "Write everything kept as files that import_records reads.",
                       Effect::reads, {{"traces", "yes: the force traces too, each as a file of its own"}},
                       &export_records, &export_words),
        make_operation("demo", "Fill an empty store with the invented facility whose truth is known.",
                       Effect::writes, {{"seed", "whole number; left out: 1"}}, &demo, &plain_words),
    };
}

} // namespace amentum
