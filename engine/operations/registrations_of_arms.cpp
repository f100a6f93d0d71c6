// The operations on an arm: what it has thrown, whether it may pitch, its steps back, and everything planned checked anew.
#include "operations/answer_stop.h"
#include "operations/check_arm.h"
#include "operations/check_plan.h"
#include "operations/check_staff.h"
#include "operations/growth.h"
#include "operations/inside/terminal_text.h"
#include "operations/make_operation.h"
#include "operations/plan_ramp.h"
#include "operations/record_practice.h"
#include "operations/record_return_plan.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string finding_words(const value& findings) {
    std::string text;
    for (const auto& finding : findings.as_array()) {
        text += paragraph("Check (" + said(finding.at("severity")) + ", " + said(finding.at("code")) +
                          "): " + said(finding.at("sentence")) + " " + said(finding.at("what_to_do")));
    }
    return text;
}

std::string steps_words(const value& steps) {
    std::string text;
    for (const auto& each : steps.as_array())
        text += paragraph(said(each.at("words")));
    return text;
}

std::string day_line(const value& day) {
    const auto& soreness = day.at("soreness");
    const std::string known = said(day.at("known"));
    const std::string throws = known == "unknown" ? "unknown" : number_said(day.at("throws"), 0);
    return "  " + said(day.at("date")) + "  " + padded(throws, 9) +
           padded(known == "unknown" ? "" : number_said(day.at("hard"), 0) + " hard", 10) +
           padded(soreness.is_null() ? "" : "sore " + number_said(soreness, 0), 9) + said(day.at("planned")) +
           "\n";
}

std::string arm_words(const value& answer) {
    std::string text = said(answer.at("name")) + ", " + number_said(answer.at("age"), 0) + ", " +
                       said(answer.at("sport")) + " " + said(answer.at("role")) + "\n" +
                       list_said(answer.at("teams"), "") + "\n" + paragraph(said(answer.at("short_answer")));
    for (const auto& limit : answer.at("limits").as_array())
        text += paragraph("- " + said(limit.at("words")) + " [" + said(limit.at("source")) + "]", 2);
    text += paragraph(said(answer.at("may_catch"))) + steps_words(answer.at("steps")) +
            finding_words(answer.at("findings")) + "\n" + list_said(answer.at("account"), "");
    const auto& ledger = answer.at("ledger").as_array();
    for (std::size_t i = ledger.size() > 14 ? ledger.size() - 14 : 0; i < ledger.size(); ++i)
        text += day_line(ledger[i]);
    for (const auto& outing : answer.at("planned").as_array())
        text += paragraph(said(outing.at("words")));
    return text + list_said(answer.at("ranges"), "") + list_said(answer.at("growth"), "") +
           paragraph(said(answer.at("why_no_ratio"))) + list_said(answer.at("stop_and_refer"), "- ");
}

std::string staff_words(const value& answer) {
    std::string text = said(answer.at("facility")) + ": who may pitch on " + said(answer.at("day")) + "\n\n";
    for (const auto& line : answer.at("lines").as_array()) {
        if (said(line.at("role")) != "pitcher")
            continue;
        const auto& most = line.at("most");
        text +=
            padded(said(line.at("name")), 22) + " " +
            padded(said(line.at("may_pitch")) == "cannot_tell" ? "cannot tell" : said(line.at("may_pitch")),
                   12) +
            padded(most.is_null() ? "-" : number_said(most, 0), 5) + padded(said(line.at("next_day")), 12) +
            said(line.at("last_outing")) + "\n";
    }
    return text + "\n" + list_said(answer.at("words"), "");
}

std::string practice_words(const value& answer) {
    std::string text;
    for (const auto& line : answer.at("lines").as_array()) {
        text += padded(said(line.at("name")), 24) + said(line.at("words")) + "\n";
        text += list_said(line.at("stops"), "  Stops: ");
    }
    return text + list_said(answer.at("words"), "");
}

std::string ramp_words(const value& answer) {
    std::string text = said(answer.at("name")) + ": a ramp in throws\n\n";
    const auto& steps = answer.at("steps").as_array();
    for (const auto& step : steps)
        text += "  " + padded(step.at("date").is_null() ? "" : said(step.at("date")), 12) +
                number_said(step.at("throws"), 0) + " throws\n";
    return text + (steps.empty() ? "" : "\n") + list_said(answer.at("notes"), "Note: ") +
           list_said(answer.at("words"), "") + steps_words(answer.at("in_force"));
}

std::string return_words(const value& answer) {
    return list_said(answer.at("words"), "") + steps_words(answer.at("in_force")) +
           list_said(answer.at("stop_and_refer"), "- ");
}

std::string plan_words(const value& answer) {
    std::string text;
    for (const auto& plan : answer.at("plans").as_array())
        text += said(plan.at("name")) + "\n" + list_said(plan.at("checked"), "  checked: ") +
                finding_words(plan.at("findings"));
    return text + list_said(answer.at("words"), "");
}

std::string growth_said(const value& answer) {
    std::string text;
    for (const auto& each : answer.at("throwers").as_array()) {
        text += padded(said(each.at("name")), 24) + padded(number_said(each.at("age"), 0), 4) +
                padded(estimate_said(each.at("rate")), 36) + said(each.at("offset_words")) + "\n";
        text += list_said(each.at("words"), "  ");
    }
    return text + list_said(answer.at("words"), "");
}

std::string stop_words(const value& answer) {
    return paragraph(said(answer.at("words"))) + finding_words(answer.at("findings"));
}

const std::string steps_meaning =
    "each with throws, and distance_ft or distance_m, effort_percent and words if there are any";

const Meanings ramp_meanings{{"athlete", "the thrower's name or id"},
                             {"target_week", "throws of a week at the end, 10 to 1000"},
                             {"week_before", "throws of the week before; left out: the last seven days"},
                             {"start", "YYYY-MM-DD; left out: tomorrow"},
                             {"rise_percent", "of the target, each week, 10 to 20; left out: 15"},
                             {"sessions_per_week", "1 to 6; left out: 3"},
                             {"steps", "edited steps, " + steps_meaning},
                             {"end", "yes: the ramp in force ends"},
                             {"recorded_by", "who keeps it; left out: only look"}};

const Meanings return_meanings{
    {"athlete", "the thrower's name or id"},
    {"clinician", "who wrote it, by name and trade"},
    {"start", "YYYY-MM-DD; left out: today"},
    {"days_between", "days without throwing between two steps, 0 to 6; left out: 1"},
    {"steps", "as written, " + steps_meaning + "; none: the plan in force ends"},
    {"note", "what else it says"},
    {"recorded_by", "the adult who enters it, by name"}};

const Meanings practice_meanings{{"date", "YYYY-MM-DD; left out: today"},
                                 {"setting", "catch_play, flat_ground, bullpen ...: of everybody"},
                                 {"count", "throws of everybody, 0 to 400"},
                                 {"effort_percent", "intended effort, 10 to 100"},
                                 {"distance_ft", "in feet"},
                                 {"distance_m", "or in metres"},
                                 {"ball_mass_lb", "of the ball, in lb"},
                                 {"ball_mass_kg", "or in kg"},
                                 {"team", "for whom"},
                                 {"device", "that measured speeds"},
                                 {"lines",
                                  "the throwers, each with what differs: athlete, setting, count, "
                                  "effort_percent, speed_mph, soreness_before, soreness_after, note"}};

} // namespace

std::vector<Operation> arm_operations() {
    return {
        make_operation("check_arm",
                       "May this thrower pitch on a day, how many, when next; and what the arm has done.",
                       Effect::reads,
                       {{"athlete", "the thrower's name or id"},
                        {"date", "YYYY-MM-DD, the day asked about; left out: today"},
                        {"organisation", "one table alone; left out: those of the thrower's teams"},
                        {"days", "of the ledger, 7 to 400; left out: 84"}},
                       &check_arm, &arm_words),
        make_operation("check_staff", "Who may pitch on a day: every thrower in a line.", Effect::reads,
                       {{"date", "YYYY-MM-DD; left out: today"}, {"team", "its throwers alone"}},
                       &check_staff, &staff_words),
        make_operation("record_practice", "Keep the throws of a whole group after practice, in one go.",
                       Effect::writes, practice_meanings, &record_practice, &practice_words),
        make_operation("plan_ramp", "Back to a week's throws after time off, in absolute throws.",
                       Effect::writes, ramp_meanings, &plan_ramp, &ramp_words),
        make_operation("record_return_plan",
                       "Keep the steps back to throwing that a clinician wrote; they gate throwing.",
                       Effect::writes, return_meanings, &record_return_plan, &return_words),
        make_operation("check_plan", "Everything planned for a thrower, checked anew by the guard rails.",
                       Effect::reads, {{"athlete", "the thrower's name or id; left out: everybody"}},
                       &check_plan, &plan_words),
        make_operation("answer_stop", "A coach answers for a stop on one day, with a reason that is kept.",
                       Effect::writes,
                       {{"athlete", "the thrower's name or id"},
                        {"code", "of the finding, such as rest_not_over"},
                        {"date", "YYYY-MM-DD, the day it holds for; left out: today"},
                        {"coach", "who answers, by name"},
                        {"reason", "why, at least 10 letters"}},
                       &answer_stop, &stop_words),
        make_operation("growth",
                       "Heights of young throwers month by month, how fast, and whom to measure next.",
                       Effect::reads, {{"athlete", "the thrower's name or id; left out: everybody under 18"}},
                       &growth, &growth_said),
    };
}

} // namespace amentum
