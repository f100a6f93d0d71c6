#include "body_mechanics/methods.h"

#include "body_mechanics/equivalent_load.h"
#include "body_mechanics/holds.h"
#include "body_mechanics/inside/method_inputs.h"
#include "body_mechanics/lift_settings.h"
#include "body_mechanics/rear_share.h"
#include "body_mechanics/search_setup.h"

#include <numbers>

namespace amentum::body_mechanics {
namespace {

constexpr double degree = std::numbers::pi / 180;

struct SettingInput {
    const char* name;
    Setting setting;
    const char* meaning;
};
constexpr std::array<SettingInput, 10> setting_inputs{
    {{"stance_m", Setting::stance, "lead ankle to where the rear foot rests"},
     {"pad_height_m", Setting::pad_height, "top of the pad over the floor"},
     {"box_height_m", Setting::box_height, "under the lead foot"},
     {"handle_height_m", Setting::handle_height, "grip over the floor at the start"},
     {"trunk_lean_deg", Setting::trunk_lean, "from upright"},
     {"shin_lean_deg", Setting::shin_lean, "from upright"},
     {"thigh_deg", Setting::thigh, "from upright; 90 is level"},
     {"knee_deg", Setting::knee, "bend of the knee"},
     {"elbow_deg", Setting::elbow, "bend of the elbow"},
     {"clearance_m", Setting::clearance, "of the rear knee over the floor"}}};

std::vector<MethodInput> setup_inputs() {
    std::vector<MethodInput> inputs = body_inputs();
    inputs.push_back({"lift", "which lift", 0, 0, all_words<Lift>()});
    inputs.push_back(
        {"hold", "where the load is; left out, the lift's usual one", 0, 0, all_words<Hold>(), ""});
    inputs.push_back({"load_kg", "of bar and plates, dumbbells or belt", 0, 500, {}, "0"});
    for (const auto& [name, setting, meaning] : setting_inputs) {
        const auto [low, high, unit] = limits_of(setting);
        inputs.push_back({name, meaning, low, high, {}, ""});
    }
    inputs.push_back({"rear_share", "of the vertical force; left out, the lift's own", 0, 0.6, {}, ""});
    inputs.push_back(
        {"pressure_share", "centre of pressure ahead of the ankle, of the foot", -0.25, 0.75, {}, "0.2"});
    return inputs;
}

Setup setup_of(const MethodArguments& given) {
    const Lift lift = *from_word<Lift>(given.word("lift"));
    Setup setup{lift, given.has("hold") ? *from_word<Hold>(given.word("hold")) : holds_of(lift).front(),
                Mass::kilograms(given.number("load_kg"))};
    for (const auto& [name, setting, meaning] : setting_inputs)
        if (given.has(name))
            put_setting(setup, setting, given.number(name));
    if (given.has("rear_share"))
        setup.rear_share = given.number("rear_share");
    setup.pressure_share = given.number("pressure_share");
    return setup;
}

Result<MethodAnswer> run_body_segment(const SegmentTables& tables, const MethodArguments& given) {
    const auto body = body_of(tables, given);
    if (!body)
        return body.refusal();
    const auto& part = body->parts.at(static_cast<std::size_t>(*from_word<Segment>(given.word("segment"))));
    const double mass = part.mass.kilograms(), radius = part.radius.metres();
    return MethodAnswer{
        {{"length", part.length.metres(), "m"},
         {"mass", mass, "kg"},
         {"centre", part.centre.metres(), "m"},
         {"inertia", mass * radius * radius, "kg m2"}},
        {"Row " + part.row + ", " + part.ends + "; the centre counts from the first-named end.",
         "Tables are averages of adults."}};
}

MethodAnswer hanging_answer(const Pose& pose) {
    return {{{"elbow_moment", pose.elbow, "N m"},
             {"shoulder_moment", pose.shoulder, "N m"},
             {"forearm_lean", pose.forearm / degree, "degrees"}},
            {"Both arms together. Grips cannot be told apart: they load the arms sideways."}};
}

Result<MethodAnswer> run_lift_moments(const SegmentTables& tables, const MethodArguments& given) {
    const auto body = body_of(tables, given);
    if (!body)
        return body.refusal();
    const Setup setup = setup_of(given);
    const auto pose = solve_pose(*body, setup);
    if (!pose)
        return pose.refusal();
    if (!pose->lead)
        return hanging_answer(*pose);
    const PoseBand band = estimate_pose_band(*body, setup, *pose);
    const double legs = pose->legs;
    const auto moment = [&](const char* name, const Estimate& both) {
        return MethodOutput{name, both.value / legs, "N m", both.standard_error / legs};
    };
    MethodAnswer answer{{{"shin_lean", pose->shin / degree, "degrees"},
                         {"knee", pose->knee() / degree, "degrees"},
                         {"hip", pose->hip() / degree, "degrees"},
                         {"trunk_lean", pose->trunk / degree, "degrees"},
                         moment("ankle_moment", band.ankle),
                         moment("knee_moment", band.knee),
                         moment("hip_moment", band.hip)}};
    if (band.hip_share)
        answer.outputs.push_back({"hip_share", band.hip_share->value, "1", band.hip_share->standard_error});
    answer.notes = {"Of one leg; extending moments are positive.",
                    "Never compared with a laboratory's moments."};
    return answer;
}

Result<MethodAnswer> run_rear_share(const MethodArguments& given) {
    const auto share = rear_share_of(*from_word<Lift>(given.word("lift")));
    if (!share)
        return Refusal{RefusalCode::method_does_not_apply, "This lift has no rear foot.", "lift",
                       given.word("lift"), "a lift with one foot behind the other"};
    return MethodAnswer{{{"rear_share", share->share, "1", share->sd}}};
}

Result<MethodAnswer> run_hip_share(const MethodArguments& given) {
    const double hip = given.number("hip_moment_nm"), knee = given.number("knee_moment_nm");
    if (!(hip + knee > 0))
        return Refusal{RefusalCode::method_does_not_apply, "Hip and knee together do not extend here.",
                       "hip_moment_nm", "", "a sum with knee_moment_nm above 0"};
    return MethodAnswer{
        {{"hip_share", hip / (hip + knee), "1"}},
        {"A bare ratio of hip to knee has no bound where the knee moment passes through zero."}};
}

Result<MethodAnswer> run_handle_height(const SegmentTables& tables, const MethodArguments& given) {
    const auto body = body_of(tables, given);
    if (!body)
        return body.refusal();
    Setup setup{Lift::hex_bar_deadlift, Hold::hex_bar, Mass::kilograms(given.number("load_kg"))};
    setup.handle_height = Length::metres(0.3);
    setup.shin_lean = Angle::degrees(given.number("shin_lean_deg"));
    const auto found = search_setup(
        *body, setup, {}, {Target::knee_angle, given.number("knee_deg"), Varied::handle_height, 0.1, 0.8});
    if (!found)
        return found.refusal();
    MethodAnswer answer{{{"handle_height", found->setting, "m"}, {"knee", found->value, "degrees"}}};
    if (!found->reached)
        answer.notes.push_back(found->stopped_by);
    return answer;
}

Result<MethodAnswer> run_equivalent_load(const SegmentTables& tables, const MethodArguments& given) {
    const auto body = body_of(tables, given);
    if (!body)
        return body.refusal();
    const Setup from = setup_of(given);
    Setup to = from;
    to.hold = *from_word<Hold>(given.word("to_hold"));
    const auto same = solve_equivalent_load(*body, from, to, *from_word<Demand>(given.word("demand")));
    if (!same)
        return same.refusal();
    return MethodAnswer{{{"equivalent_load", same->load.kilograms(), "kg", same->standard_error},
                         {"demand", same->demand, "N m"}},
                        {"Of one lead leg; grip and balance may end a set before the leg does."}};
}

} // namespace

std::vector<Method> methods(const SegmentTables& tables) {
    const auto on_tables = [&tables](auto run) {
        return [&tables, run](const MethodArguments& given) { return run(tables, given); };
    };
    std::vector<Method> all{
        {"body_segment",
         "How long and heavy is a part of this body, and where is its centre?",
         with(body_inputs(), {{"segment", "which part", 0, 0, all_words<Segment>()}}),
         {"DeLeva1996", "Winter2009", "DrillisContini1966"},
         on_tables(run_body_segment)},
        {"lift_moments",
         "Which posture balances this set-up, and what do ankle, knee and hip do in it?",
         setup_inputs(),
         {"DeLeva1996", "Winter2009", "DuarteWatanabe", "Helme2020", "McCurdy2017", "ProjectProposal"},
         on_tables(run_lift_moments)},
        {"rear_share",
         "How much of the vertical force does the rear foot of a split lift carry?",
         {{"lift", "which lift", 0, 0, all_words<Lift>()}},
         {"Helme2020", "McCurdy2017", "ProjectProposal"},
         run_rear_share},
        {"hip_share",
         "How much of the leg's extending moment is the hip's?",
         {{"hip_moment_nm", "extending", -5000, 5000}, {"knee_moment_nm", "extending", -5000, 5000}},
         {"Barrack2021"},
         run_hip_share},
        {"start_handle_height",
         "How high must the handles be for the pull to start at this knee angle?",
         with(body_inputs(), {{"load_kg", "of the hex bar", 0, 500},
                              {"shin_lean_deg", "from upright", -20, 60},
                              {"knee_deg", "bend of the knee at the start", 5, 160}}),
         {"DeLeva1996", "ProjectProposal"},
         on_tables(run_handle_height)},
        {"equivalent_load",
         "Which load held another way asks the same of the lead leg?",
         with(setup_inputs(), {{"to_hold", "the other way to hold it", 0, 0, all_words<Hold>()},
                               {"demand", "what must be the same", 0, 0, all_words<Demand>(), "leg"}}),
         {"DeLeva1996", "Helme2020", "ProjectProposal"},
         on_tables(run_equivalent_load)},
    };
    const auto landings = landing_methods(tables);
    all.insert(all.end(), landings.begin(), landings.end());
    return all;
}

} // namespace amentum::body_mechanics
