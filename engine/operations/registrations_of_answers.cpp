// The operations that answer: roster, thrower, limiters, changes, test day.
#include "operations/athlete_record.h"
#include "operations/check_calibration.h"
#include "operations/explain_velocity.h"
#include "operations/find_limiters.h"
#include "operations/fit_roster.h"
#include "operations/inside/terminal_text.h"
#include "operations/json_text.h"
#include "operations/judge_change.h"
#include "operations/make_operation.h"
#include "operations/registrations.h"
#include "operations/roster.h"
#include "operations/test_day.h"

namespace amentum {
namespace {

using boost::json::value;

std::string roster_words(const value& answer) {
    std::string text = said(answer.at("facility")) + ", " + said(answer.at("today")) + "\n\n" +
                       padded("thrower", 24) + padded("velocity, 80 % interval", 30) +
                       padded("hard throw", 12) + "what holds it back\n";
    for (const auto& line : answer.at("throwers").as_array()) {
        const auto& days = line.at("days_since_hard_throw");
        text += padded(said(line.at("name")), 23) + " " + padded(estimate_said(line.at("velocity")), 29) +
                " " + padded(days.is_null() ? "-" : number_said(days, 0) + " d ago", 11) + " " +
                said(line.at("limiter_words")) + "\n";
    }
    return text;
}

std::string limiter_words(const value& answer) {
    std::string text = said(answer.at("name")) + ", " + said(answer.at("today")) +
                       ": what holds velocity back\n\n" + list_said(answer.at("words"), "") + "\n" +
                       padded("  quality", 34) + padded("goes with, 80 % interval", 32) + padded("best?", 8) +
                       "level, SD from usual\n";
    for (const auto& line : answer.at("limiters").as_array())
        text += "  " + padded(said(line.at("name")), 31) + " " + padded(estimate_said(line.at("gain")), 31) +
                " " +
                padded(number_said(value(100 * line.at("chance_best").to_number<double>()), 0) + " %", 7) +
                " " + (line.at("tested").as_bool() ? estimate_said(line.at("level")) : "not tested") + "\n";
    return text + "\n";
}

std::string record_words(const value& answer) {
    std::string text = said(answer.at("name")) + ", " + number_said(answer.at("age"), 0) + ", " +
                       said(answer.at("sport")) + " " + said(answer.at("role")) + "\n\n";
    for (const auto& line : answer.at("trajectories").as_array())
        text += padded("  " + said(line.at("test_name")), 50) + " " +
                padded(estimate_said(line.at("now")), 32) +
                number_said(value(line.at("tests").as_array().size()), 0) + " tests\n";
    text += "\n" + paragraph(said(answer.at("throwing_words"))) + "\n" + limiter_words(answer.at("limiters"));
    for (const auto& caution : answer.at("cautions").as_array())
        text += paragraph("Caution: " + said(caution.at("sentence")));
    return text + list_said(answer.at("stop_and_refer"), "- ");
}

std::string change_words(const value& answer) {
    return list_said(answer.at("words"), "");
}

std::string test_day_words(const value& answer) {
    std::string text = "Tests for " + said(answer.at("date")) + "\n";
    for (const auto& test : answer.at("tests").as_array()) {
        std::string fields;
        for (const auto& field : test.at("fields").as_array())
            fields += " " + said(field.at("name"));
        text += "  " + padded(said(test.at("test")), 34) + fields + "\n";
    }
    return text;
}

std::string velocity_words(const value& answer) {
    std::string text = "What goes with velocity here: " + number_said(answer.at("athletes"), 0) +
                       " throwers, " + number_said(answer.at("test_days"), 0) + " test days\n\n" +
                       list_said(answer.at("words"), "") + "\n" + padded("  quality", 30) +
                       padded("an athlete improves it", 30) + padded("one athlete has more", 30) +
                       "r, all pairs\n";
    for (const auto& line : answer.at("qualities").as_array()) {
        const auto& r = line.at("correlation");
        text += "  " + padded(said(line.at("name")), 28) + padded(estimate_said(line.at("within")), 30) +
                padded(estimate_said(line.at("between")), 30) + (r.is_null() ? "-" : number_said(r, 2)) +
                "\n";
    }
    text += "\n";
    for (const auto& line : answer.at("qualities").as_array())
        text += paragraph(said(line.at("name")) + ": " + said(line.at("words")));
    for (const auto& line : answer.at("left_out").as_array())
        text += paragraph("Left out, " + said(line.at("name")) + ": " + said(line.at("why")) + ".");
    return text + "\n" + list_said(answer.at("cautions"), "Note: ");
}

std::string coverage_said(const value& coverage) {
    return number_said(coverage.at("held"), 0) + " of " + number_said(coverage.at("all"), 0) +
           ", true rate " + number_said(value(100 * coverage.at("low").to_number<double>()), 0) + " to " +
           number_said(value(100 * coverage.at("high").to_number<double>()), 0) + " %";
}

std::string counts_said(const value& counts) {
    std::string text;
    for (const auto& count : counts.as_array())
        text += (text.empty() ? "" : " ") + number_said(count, 0);
    return text;
}

std::string calibration_words(const value& answer) {
    std::string text = list_said(answer.at("words"), "") + "\n";
    for (const auto& coverage : answer.at("coverage").as_array())
        text += padded("  " + number_said(value(100 * coverage.at("stated").to_number<double>()), 0) +
                           " % intervals",
                       44) +
                coverage_said(coverage) + "\n";
    text += "\n  80 % intervals by test\n";
    for (const auto& line : answer.at("tests").as_array())
        text += padded("  " + coverage_said(line.at("coverage")), 36) + padded(said(line.at("verdict")), 14) +
                said(line.at("name")) + "\n";
    text += "\nWithin their forecasts, ten equal parts: " + counts_said(answer.at("transform")) + "\n";
    if (!answer.at("ranks").is_null())
        text +=
            "Known slopes within the fits, ten equal parts: " + counts_said(answer.at("ranks").at("counts")) +
            "\n";
    return text + "\n" + list_said(answer.at("cautions"), "Note: ");
}

std::string fit_words(const value& answer) {
    std::string text = list_said(answer.at("words"), "");
    const auto& fit = answer.at("fit");
    if (fit.is_null())
        return text;
    text += "\n" + said(fit.at("version")) + ": " + number_said(fit.at("test_days"), 0) +
            " test days, largest gradient " + json_text(fit.at("gradient")) + ", smallest curvature " +
            number_said(fit.at("smallest_curvature"), 3) + "\n";
    if (fit.at("checked").as_bool())
        text +=
            "tail shape " +
            (fit.at("tail_shape").is_null() ? "not told" : number_said(fit.at("tail_shape"), 2)) +
            " (limit " + number_said(fit.at("shape_limit"), 2) + ")" +
            (fit.at("sampled").as_bool() ? ", worst R-hat " + number_said(fit.at("worst_r_hat"), 3) + ", " +
                                               number_said(fit.at("divergences"), 0) + " divergences"
                                         : "") +
            ", " + number_said(fit.at("least_worth"), 0) + " independent draws for the worst slope\n";
    return text;
}

} // namespace

std::vector<Operation> answer_operations() {
    return {
        make_operation("roster",
                       "Every thrower on one line: velocity, what seems to hold it back, what to do next.",
                       Effect::reads, {}, &roster, &roster_words),
        make_operation("athlete_record", "All that is known of one thrower.", Effect::reads,
                       {{"athlete", "the thrower's name or id"}}, &athlete_record, &record_words),
        make_operation(
            "find_limiters",
            "Which quality holds this thrower's velocity back, how sure that is, what to test next.",
            Effect::reads, {{"athlete", "the thrower's name or id"}}, &find_limiters, &limiter_words),
        make_operation(
            "explain_velocity",
            "What goes with velocity in this roster: within athletes and between them, errors allowed for.",
            Effect::reads, {}, &explain_velocity, &velocity_words),
        make_operation(
            "fit_roster",
            "Fit the roster's joint model now and keep it; thorough: with its intervals checked.",
            Effect::writes,
            {{"step", "begin, look or stop; left out: begin"},
             {"thorough", "yes or no: check the intervals, by sampling where needed; left out: no"},
             {"wait", "yes or no: answer when it has ended; left out: yes"}},
            &fit_roster, &fit_words),
        make_operation("check_calibration",
                       "How often were the 80 % intervals right here? Last test days held back and foretold.",
                       Effect::reads,
                       {{"ranks", "simulated rosters to fit beside it, 0 to 200; left out: none"}},
                       &check_calibration, &calibration_words),
        make_operation("judge_change",
                       "Did this really change between two test days, more than noise and growth?",
                       Effect::reads,
                       {{"athlete", "the thrower's name or id"},
                        {"test", "the test kind's key, such as throwing_velocity"},
                        {"from_date", "a test day, YYYY-MM-DD; left out: the first"},
                        {"to_date", "a later test day; left out: the last"}},
                       &judge_change, &change_words),
        make_operation("test_day",
                       "What a squad's test day needs: who, which fields for each test, what is expected.",
                       Effect::reads, {{"date", "YYYY-MM-DD; left out: today"}}, &test_day, &test_day_words),
    };
}

} // namespace amentum
