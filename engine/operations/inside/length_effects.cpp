#include "operations/inside/length_effects.h"

#include "body_mechanics/pose_band.h"
#include "operations/inside/setup_given.h"
#include "operations/inside/usual_setup.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

Setup usual_split_squat(const BodyGivenHere& given) {
    const Lift lift = Lift::rear_foot_raised_split_squat;
    Setup setup{lift, Hold::straight_bar, given.body.given.mass};
    for (const Setting setting : {Setting::stance, Setting::pad_height, Setting::trunk_lean})
        put_setting(setup, setting, usual_value(given.body, lift, setting, given.facility));
    setup.thigh = Angle::degrees(80); // short of level, so that every body can stand in it
    return setup;
}

std::string more_or_less(double change, int decimals, const std::string& unit) {
    return (change >= 0 ? "+" : "-") + format_fixed(std::abs(change), decimals) + " " + unit;
}

bool is_taped(const Body& body, std::string_view length) {
    return std::any_of(body.parts.begin(), body.parts.end(), [&](const BodyPart& part) {
        return part.segment && word(*part.segment) == length && part.taped;
    });
}

// Lengths still scaled by stature, the one whose error moves hip and knee most first.
std::vector<std::string> worth_taping(const Body& body, const PoseBand& band) {
    std::vector<PoseChange> lengths;
    for (const PoseChange& change : band.causes)
        if (change.cause == Cause::shank || change.cause == Cause::thigh || change.cause == Cause::trunk)
            if (!is_taped(body, word(change.cause)))
                lengths.push_back(change);
    std::sort(lengths.begin(), lengths.end(), [](const auto& a, const auto& b) {
        return std::hypot(a.knee, a.hip) > std::hypot(b.knee, b.hip);
    });
    std::vector<std::string> lines;
    for (const auto& change : lengths)
        lines.push_back(std::string(word(change.cause)) + ": its error is worth " +
                        format_fixed(std::abs(change.knee), 0) + " N m at the knee and " +
                        format_fixed(std::abs(change.hip), 0) + " at the hip.");
    return lines;
}

} // namespace

LengthEffects length_effects(const BodyGivenHere& given) {
    LengthEffects answer{};
    const Setup setup = usual_split_squat(given);
    const auto pose = solve_pose(given.body, setup);
    if (!pose) {
        answer.why_none =
            "What a little more of a length changes cannot be shown: in the usual split squat this body "
            "has no posture. " +
            pose.refusal().sentence;
        return answer;
    }
    const PoseBand band = estimate_pose_band(given.body, setup, *pose);
    const auto unit = shown_unit(TestUnit::metre, given.facility);
    const double centimetres = unit.unit == "in" ? 2.54 : 1; // of one unit
    answer.lift = "In a rear-foot-raised split squat with " + load_said(setup.load, given.facility) +
                  " on the back, stance " +
                  value_said(Setting::stance, setup.stance->metres(), given.facility) + ", pad " +
                  value_said(Setting::pad_height, setup.pad_height->metres(), given.facility) +
                  ", trunk leaning 20 degrees, thigh 10 short of level, one " +
                  (centimetres == 1 ? "centimetre" : "inch") + " more of:";
    for (const PoseChange& change : band.per_centimetre) {
        const double knee = change.knee * centimetres, hip = change.hip * centimetres;
        const auto share =
            change.hip_share ? std::optional(100 * centimetres * *change.hip_share) : std::nullopt;
        answer.effects.push_back({std::string(word(change.cause)), knee, hip, share,
                                  std::string(word(change.cause)) + ": knee " + more_or_less(knee, 0, "N m") +
                                      ", hip " + more_or_less(hip, 0, "N m") +
                                      (share ? ", hip share " + more_or_less(*share, 1, "%") : "")});
    }
    answer.tape_next = worth_taping(given.body, band);
    answer.sources = {"Helme2020", "CommonPractice", "ProjectProposal"};
    return answer;
}

} // namespace amentum
