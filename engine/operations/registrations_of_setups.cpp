// The operations that look at posture: the body, a lift as it is set up, the same demand held otherwise.
#include "operations/describe_body.h"
#include "operations/inside/body_meanings.h"
#include "operations/inside/terminal_text.h"
#include "operations/make_operation.h"
#include "operations/registrations.h"
#include "operations/solve_equivalent.h"
#include "operations/solve_setup.h"

namespace amentum {
namespace {

using boost::json::value;

const Meanings setup_meanings{
    {"lift", "such as rear_foot_raised_split_squat, step_up, back_squat, hex_bar_deadlift, pull_up"},
    {"hold", "where the load is held, such as safety_bar; left out: the lift's usual one"},
    {"load_kg", "bar and plates, or both dumbbells; not needed when nothing is held"},
    {"load_lb", "the same in pounds"},
    {"stance_cm", "level distance from the lead ankle to where the rear foot rests"},
    {"stance_in", "the same in inches"},
    {"pad_cm", "height of the rear foot's pad, its top"},
    {"pad_in", "the same in inches"},
    {"box_cm", "height of the box under the lead foot"},
    {"box_in", "the same in inches"},
    {"handle_cm", "height of the grip over the floor at the start of a pull"},
    {"handle_in", "the same in inches"},
    {"clearance_cm", "of the rear knee over the floor: depth, in place of thigh_deg"},
    {"clearance_in", "the same in inches"},
    {"trunk_lean_deg",
     "forward from upright; one of trunk_lean_deg and shin_lean_deg, balance gives the other"},
    {"shin_lean_deg", "forward from upright, in place of trunk_lean_deg"},
    {"thigh_deg", "of the lead thigh from upright: 90 is level"},
    {"knee_deg",
     "bend of the knee, 0 straight: squats in place of thigh_deg, pulls in place of shin_lean_deg"},
    {"elbow_deg", "bend of the elbows in a pull-up, 0 straight"},
    {"load_ahead_cm", "of the load, square to the trunk's line; left out: the hold's usual place"},
    {"load_ahead_in", "the same in inches"},
    {"pressure_share",
     "centre of pressure ahead of the ankle, of the foot's length, -0.25 to 0.75; left out: 0.20"},
    {"rear_share",
     "of the vertical force under the rear foot, 0 to 0.6; left out: the lift's published share"},
    {"rear_force_n", "forward force under the rear foot, -500 to 500 N; left out: 0"}};

std::string body_words(const value& answer) {
    const value& body = answer.at("body");
    const std::string length = said(body.at("length_unit")), mass = said(body.at("mass_unit"));
    std::string text = said(body.at("name")) + ", " + number_said(body.at("stature"), 1) + " " + length +
                       " (" + said(body.at("stature_from")) + "), " + number_said(body.at("mass"), 1) + " " +
                       mass + " (" + said(body.at("mass_from")) + ")\n\n" +
                       list_said(answer.at("words"), "") + "\n" + padded("  part", 24) +
                       padded("length", 11) + padded("mass", 11) + padded("centre", 11) + "from\n";
    for (const auto& part : answer.at("parts").as_array())
        text += "  " + padded(said(part.at("name")), 22) +
                padded(number_said(part.at("length"), 2) + " " + length, 11) +
                padded(number_said(part.at("mass"), 2) + " " + mass, 11) +
                padded(number_said(part.at("centre"), 2) + " " + length, 11) + said(part.at("from")) + "\n";
    const auto& effects = answer.at("per_centimetre").as_array();
    if (!effects.empty())
        text += "\n" + paragraph(said(answer.at("effect_of")));
    for (const auto& effect : effects)
        text += paragraph(said(effect.at("words")), 2);
    return text + "\n" + list_said(answer.at("cautions"), "Note: ") +
           list_said(answer.at("tape_next"), "Tape next: ");
}

std::string settings_words(const value& settings) {
    std::string text;
    for (const auto& setting : settings.as_array()) {
        const int decimals = static_cast<int>(setting.at("decimals").as_int64());
        const double error = setting.at("error").to_number<double>();
        const std::string how = said(setting.at("how"));
        text +=
            "  " + padded(said(setting.at("name")), 56) +
            padded(number_said(setting.at("value"), decimals) + " " + said(setting.at("unit")), 14) + how +
            (how == "solved" && error > 0 ? ", give or take " + number_said(setting.at("error"), 1) : "") +
            "\n";
    }
    return text;
}

std::string joints_words(const value& joints) {
    std::string text;
    for (const auto& joint : joints.as_array()) {
        const auto& angle = joint.at("angle");
        text += "  " + padded(said(joint.at("name")), 22) +
                padded(angle.is_null() ? "-" : number_said(angle, 0) + " deg", 9) +
                padded(estimate_said(joint.at("moment")), 26) + said(joint.at("words")) + "\n";
    }
    return text;
}

std::string setup_words(const value& answer) {
    std::string text = said(answer.at("body").at("name")) + ", " + said(answer.at("lift_name")) + "\n\n";
    const auto& search = answer.at("search");
    if (!search.is_null())
        text += paragraph(said(search.at("words"))) + "\n";
    text += settings_words(answer.at("settings")) + "\n  " + padded("joint", 22) + padded("bend", 9) +
            "moment, 80 %\n" + joints_words(answer.at("joints")) + "\n" +
            paragraph(said(answer.at("share_words"))) + list_said(answer.at("words"), "") +
            "\nAt the rack:\n";
    for (const auto& line : answer.at("card").as_array())
        text += "  " + said(line) + "\n";
    return text + "\n" + list_said(answer.at("cautions"), "Note: ") +
           paragraph(said(answer.at("cannot_tell")));
}

std::string equivalent_words(const value& answer) {
    std::string text = said(answer.at("body").at("name")) + ", " + said(answer.at("lift_name")) + ", " +
                       number_said(answer.at("load"), 1) + " " + said(answer.at("load_unit")) + ", " +
                       said(answer.at("hold_name")) + "\n\n" +
                       paragraph("Asks of the lead leg (" + said(answer.at("demand_of")) +
                                 "): " + estimate_said(answer.at("demand")) + ".") +
                       list_said(answer.at("words"), "") + "\n";
    for (const auto& each : answer.at("equivalents").as_array()) {
        if (each.at("load").is_null()) {
            text += paragraph(said(each.at("hold_name")) + ": " + said(each.at("why_not")));
            continue;
        }
        const std::string made = said(each.at("made_of"));
        text += paragraph(said(each.at("hold_name")) + ": " + estimate_said(each.at("load")) +
                          ". Here: " + made + (made.ends_with('.') ? " " : ". ") + said(each.at("words")));
    }
    return text + "\n" + list_said(answer.at("cautions"), "Note: ");
}

} // namespace

std::vector<Operation> setup_operations() {
    return {
        make_operation(
            "describe_body",
            "This body as a chain of links: every length, mass and centre, and where it came from.",
            Effect::reads, body_meanings(), &describe_body, &body_words),
        make_operation(
            "solve_setup",
            "The posture that balances a lift as it is set up, what hip and knee do in it, and the set-up "
            "that "
            "gives what is wanted.",
            Effect::reads,
            joined(
                {body_meanings(),
                 setup_meanings,
                 {{"want", "what to search for: knee_angle, hip_angle, shin_angle, trunk_angle, hip_share, "
                           "knee_moment, hip_moment or start_angle"},
                  {"wanted", "degrees, per cent, or N m of one lead leg; not with start_angle"},
                  {"vary", "the setting that is searched: stance, pad_height, box_height, handle_height, "
                           "trunk_lean, shin_lean or load"}}}),
            &solve_setup, &setup_words),
        make_operation(
            "solve_equivalent", "The load of other ways to hold a lift that asks the same of the lead leg.",
            Effect::reads,
            joined({body_meanings(),
                    setup_meanings,
                    {{"to_holds", "the holds asked about; left out: every other one of the lift"},
                     {"demand",
                      "what must be the same: leg (hip and knee together, when left out), hip or knee"}}}),
            &solve_equivalent, &equivalent_words),
    };
}

} // namespace amentum
