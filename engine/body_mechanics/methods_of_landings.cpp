#include "body_mechanics/ball_throw.h"
#include "body_mechanics/inside/method_inputs.h"
#include "body_mechanics/lead_leg.h"
#include "body_mechanics/methods.h"

#include <numbers>
#include <tuple>

namespace amentum::body_mechanics {
namespace {

constexpr double degree = std::numbers::pi / 180;

std::vector<MethodInput> lead_leg_inputs() {
    auto inputs = with(body_inputs(), {{"force_x_n", "forward; braking is negative", -7500, 7500},
                                       {"force_y_n", "upward", 0, 12500},
                                       {"pressure_m", "centre of pressure ahead of the ankle", -0.1, 0.3},
                                       {"shin_lean_deg", "from upright, forward positive", -60, 80},
                                       {"thigh_deg", "from upright, hip behind the knee positive", -45, 120},
                                       {"angle_error_deg", "of each of the two angles", 0, 20, {}, "3"}});
    for (const std::string part : {"foot", "shank", "thigh"}) {
        inputs.push_back(
            {part + "_ax_ms2", "of its mass centre, forward; all nine or none", -2000, 2000, {}, ""});
        inputs.push_back({part + "_ay_ms2", "upward", -2000, 2000, {}, ""});
        inputs.push_back({part + "_turning_degs2", "from forward to up positive", -60000, 60000, {}, ""});
    }
    return inputs;
}

// Three numbers of one part: all, or none.
Result<std::optional<SegmentAcceleration>> acceleration_of(const std::string& part,
                                                           const MethodArguments& given) {
    const std::array names{part + "_ax_ms2", part + "_ay_ms2", part + "_turning_degs2"};
    const std::string* missing = nullptr;
    int known = 0;
    for (const auto& name : names)
        if (given.has(name))
            ++known;
        else if (!missing)
            missing = &name;
    if (known == 0)
        return std::optional<SegmentAcceleration>{};
    if (missing)
        return refuse_missing(*missing, "an acceleration has all three numbers of its part");
    return std::optional(SegmentAcceleration{{given.number(names[0]), given.number(names[1])},
                                             given.number(names[2]) * degree});
}

Result<MethodAnswer> run_lead_leg_moments(const SegmentTables& tables, const MethodArguments& given) {
    const auto body = body_of(tables, given);
    if (!body)
        return body.refusal();
    LandingInstant instant{Force::newtons(given.number("force_x_n")),
                           Force::newtons(given.number("force_y_n")),
                           Length::metres(given.number("pressure_m")),
                           Angle::degrees(given.number("shin_lean_deg")),
                           Angle::degrees(given.number("thigh_deg")),
                           {},
                           {},
                           {},
                           Angle::degrees(given.number("angle_error_deg"))};
    const auto foot = acceleration_of("foot", given), shank = acceleration_of("shank", given),
               thigh = acceleration_of("thigh", given);
    for (const auto* each : {&foot, &shank, &thigh})
        if (!*each)
            return each->refusal();
    instant.foot = *foot;
    instant.shank = *shank;
    instant.thigh_acceleration = *thigh;
    const auto loads = measure_lead_leg(*body, instant);
    if (!loads)
        return loads.refusal();
    const auto moment = [](const char* name, const Estimate& joint) {
        return MethodOutput{name, joint.value, "N m", joint.standard_error};
    };
    return MethodAnswer{{moment("ankle_moment", loads->ankle),
                         moment("knee_moment", loads->knee),
                         moment("hip_moment", loads->hip),
                         {"knee", loads->knee_flexion.degrees(), "degrees"}},
                        loads->warnings};
}

constexpr std::array thrown_links{"shank", "thigh", "trunk", "upper_arm", "forearm"};

std::vector<MethodInput> ball_throw_inputs() {
    auto inputs =
        with(body_inputs(), {{"stance", "what the throw turns about", 0, 0, all_words<ThrowStance>()},
                             {"ball_kg", "mass of the ball", 0.05, 10}});
    for (const std::string link : thrown_links) {
        const auto needed = link == "shank" ? std::optional<std::string>("") : std::nullopt;
        inputs.push_back({link + "_deg", "0 is forward level, 90 up", -180, 360, {}, needed});
        inputs.push_back({link + "_rate_degs", "forward is negative", -2000, 2000, {}, "0"});
        inputs.push_back({link + "_acceleration_degs2", "forward is negative", -60000, 60000, {}, "0"});
    }
    return inputs;
}

LinkMotion motion_of(const std::string& link, const MethodArguments& given) {
    return {Angle::degrees(given.number(link + "_deg")), given.number(link + "_rate_degs"),
            given.number(link + "_acceleration_degs2")};
}

Result<MethodAnswer> run_ball_throw_moments(const SegmentTables& tables, const MethodArguments& given) {
    const auto body = body_of(tables, given);
    if (!body)
        return body.refusal();
    const bool shank = given.has("shank_deg");
    const auto loads = measure_ball_throw(
        *body, {*from_word<ThrowStance>(given.word("stance")), Mass::kilograms(given.number("ball_kg")),
                shank ? std::optional(motion_of("shank", given)) : std::nullopt, motion_of("thigh", given),
                motion_of("trunk", given), motion_of("upper_arm", given), motion_of("forearm", given)});
    if (!loads)
        return loads.refusal();
    const auto& [moving, error] = std::tie(loads->moving, loads->moving_error);
    MethodAnswer answer{{{"elbow_moment", moving.elbow, "N m", error.elbow},
                         {"shoulder_moment", moving.shoulder, "N m", error.shoulder},
                         {"hip_moment", moving.hip, "N m", error.hip},
                         {"knee_moment", moving.knee, "N m", error.knee}},
                        loads->warnings};
    if (moving.ankle)
        answer.outputs.push_back({"ankle_moment", *moving.ankle, "N m", error.ankle});
    answer.outputs.push_back({"ball_speed", length(loads->ball_velocity), "m/s"});
    answer.notes.push_back("Both sides together; positive throws.");
    return answer;
}

} // namespace

std::vector<Method> landing_methods(const SegmentTables& tables) {
    return {
        {"lead_leg_moments",
         "What do the joints of the lead leg do under this ground force?",
         lead_leg_inputs(),
         {"DeLeva1996", "Winter2009", "DuarteWatanabe", "ProjectProposal"},
         [&tables](const MethodArguments& given) { return run_lead_leg_moments(tables, given); }},
        {"ball_throw_moments",
         "Which joint moments does an overhead throw take, at this motion?",
         ball_throw_inputs(),
         {"DeLeva1996", "Winter2009", "DuarteWatanabe", "ProjectProposal"},
         [&tables](const MethodArguments& given) { return run_ball_throw_moments(tables, given); }},
    };
}

} // namespace amentum::body_mechanics
