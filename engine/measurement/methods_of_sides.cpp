#include "measurement/joint_range.h"
#include "measurement/joint_trials.h"
#include "measurement/methods.h"
#include "measurement/rotation_force.h"
#include "measurement/side_comparison.h"

#include <cmath>

namespace amentum::measurement {
namespace {

TestResult result_of(const std::string& test, Side side, double value, double error) {
    return {AthleteId{}, Date::from_days(0),    test, side, value, error, 1, "", {}, {}, "",
            "",          PlaceMeasured::unknown};
}

std::string sentence_of(SideVerdict verdict) {
    switch (verdict) {
    case SideVerdict::larger_than_error:
        return "The difference is larger than its error.";
    case SideVerdict::cannot_tell:
        return "Cannot tell: outside the 80 % interval of no difference, inside the 95 %. Measure again.";
    case SideVerdict::within_error:
        return "The difference lies within the error of measuring it.";
    }
    return {};
}

std::string sentence_of(RangeFinding finding) {
    switch (finding) {
    case RangeFinding::show_clinician:
        return "Worth showing to a clinician; it is no sign of injury by itself.";
    case RangeFinding::measure_again:
        return "Worth measuring again on another day: the cut-off lies inside the error of one measurement.";
    case RangeFinding::none_seen:
        return "No deficit above the cut-off was seen.";
    }
    return {};
}

Result<MethodAnswer> run_side_difference(const MethodArguments& given) {
    const auto sides = compare_sides({given.number("other"), given.number("other_error")},
                                     {given.number("throwing"), given.number("throwing_error")},
                                     *from_word<SidesTested>(given.word("tested")));
    if (!sides)
        return sides.refusal();
    const auto band = sides->over_total.central();
    return MethodAnswer{{{"over_total", sides->over_total.value, "%", sides->over_total.standard_error},
                         {"low", band.low, "%"},
                         {"high", band.high, "%"},
                         {"of_larger", sides->rivals.of_larger, "%"},
                         {"smaller_share", sides->rivals.smaller_share, "%"},
                         {"over_mean", sides->rivals.over_mean, "%"},
                         {"symmetry_angle", sides->rivals.symmetry_angle, "%"}},
                        {sentence_of(sides->verdict)}};
}

TestResult angle_result(const MethodArguments& given, const std::string& name, const std::string& test,
                        Side side) {
    return result_of(test, side, given.number(name), given.number("error_deg"));
}

ShoulderRotation rotation_of(const MethodArguments& given, const std::string& arm, Side side) {
    return {angle_result(given, "outward_" + arm + "_deg", "outward", side),
            angle_result(given, "inward_" + arm + "_deg", "inward", side)};
}

Result<MethodAnswer> run_rotation_total_difference(const MethodArguments& given) {
    const auto throwing = rotation_of(given, "throwing", Side::right),
               other = rotation_of(given, "other", Side::left);
    const auto deficit = measure_rotation_deficit(throwing, other);
    if (!deficit)
        return deficit.refusal();
    const double days = given.number("days_found");
    if (days != std::floor(days))
        return refuse_range("days_found", days, 0, 1000, "days", "A whole number.");
    const auto finding = judge_range_deficit(*deficit, given.number("cut_off_deg"), static_cast<int>(days));
    if (!finding)
        return finding.refusal();
    const auto of_throwing = measure_total_rotation(throwing), of_other = measure_total_rotation(other);
    const auto band = deficit->central();
    return MethodAnswer{{{"total_throwing", of_throwing->value, "deg", of_throwing->standard_error},
                         {"total_other", of_other->value, "deg", of_other->standard_error},
                         {"deficit", deficit->value, "deg", deficit->standard_error},
                         {"low", band.low, "deg"},
                         {"high", band.high, "deg"}},
                        {sentence_of(*finding)}};
}

Result<MethodAnswer> run_angle_trials(const MethodArguments& given) {
    const auto trials = measure_angle_trials(given.list("angles_deg"), given.number("trial_error_deg"),
                                             given.number("day_error_deg"));
    if (!trials)
        return trials.refusal();
    MethodAnswer answer{{{"mean", trials->mean.value, "deg", trials->mean.standard_error},
                         {"spread", trials->spread, "deg"},
                         {"spread_allowed", trials->spread_allowed, "deg"}}};
    if (trials->one_more)
        answer.notes.push_back(
            given.list("angles_deg").size() == 1
                ? "One reading cannot show a misreading: take a second."
                : "The readings lie further apart than their error allows: take one more.");
    return answer;
}

RotatorForce force_from(const MethodArguments& given, const std::string& way) {
    const auto result = result_of(way, Side::right, given.number(way + "_n"), given.number(way + "_error_n"));
    return {result, given.word(way + "_position"), *from_word<ForceBy>(given.word("by"))};
}

Result<MethodAnswer> run_rotator_force_ratio(const MethodArguments& given) {
    const auto outward = force_from(given, "outward"), inward = force_from(given, "inward");
    const auto ratio = measure_rotator_ratio(outward, inward);
    if (!ratio)
        return ratio.refusal();
    MethodAnswer answer{{{"ratio", ratio->value, "1", ratio->standard_error}}};
    if (given.has("machine_speed")) {
        const auto published =
            published_rotator_ratio(outward.by, given.word("machine_speed") == "180" ? 180 : 300);
        if (!published)
            return published.refusal();
        answer.outputs.push_back({"published_ratio", *published, "1"});
    }
    return answer;
}

MethodInput angle_input(const std::string& name, const std::string& meaning, double high) {
    return {name, meaning, 0, high};
}
MethodInput position_input(const std::string& name) {
    return {name,
            "how the athlete lay or sat",
            0,
            0,
            {"face_down_arm_90", "sitting_arm_at_side"},
            "face_down_arm_90"};
}

Method rotation_total_difference() {
    return {"rotation_total_difference",
            "Does the throwing side rotate less in all than the other, beyond the error?",
            {angle_input("outward_throwing_deg", "outward rotation, throwing side", 200),
             angle_input("inward_throwing_deg", "inward rotation, throwing side", 130),
             angle_input("outward_other_deg", "outward rotation, other side", 200),
             angle_input("inward_other_deg", "inward rotation, other side", 130),
             {"error_deg", "standard error of one angle", 0.1, 20},
             {"cut_off_deg", "a deficit above it is looked at again", 0, 60, {}, "5"},
             {"days_found", "days on which it was above the cut-off, this one counted", 0, 1000, {}, "1"}},
            {"Wilk2011", "Wilk2012", "Keller2018", "Bullock2018"},
            run_rotation_total_difference};
}

Method rotator_force_ratio() {
    return {"rotator_force_ratio",
            "How strong is outward rotation of the shoulder for inward rotation?",
            {{"outward_n", "outward force", 1, 5000},
             {"outward_error_n", "its standard error", 0.001, 5000},
             {"inward_n", "inward force", 1, 5000},
             {"inward_error_n", "its standard error", 0.001, 5000},
             position_input("outward_position"),
             position_input("inward_position"),
             {"by", "held by hand or by a machine", 0, 0, all_words<ForceBy>(), "hand_held"},
             {"machine_speed", "degrees a second, to see the published ratio", 0, 0, {"180", "300"}, ""}},
            {"Wilk1993"},
            run_rotator_force_ratio};
}

} // namespace

std::vector<Method> methods_of_sides() {
    return {
        {"side_difference",
         "Do two sides differ by more than the error of measuring them?",
         {{"other", "value of the other side", 1e-6, 1e6},
          {"other_error", "its standard error", 1e-9, 1e6},
          {"throwing", "value of the throwing side", 1e-6, 1e6},
          {"throwing_error", "its standard error", 1e-9, 1e6},
          {"tested", "one side at a time or both at once", 0, 0, all_words<SidesTested>(), "one_at_a_time"}},
         {"Bishop2016", "Bishop2018", "Exell2012", "Robinson1987", "Zifchock2008"},
         run_side_difference},
        rotation_total_difference(),
        {"angle_trials",
         "Do the readings of one angle agree, and what is their mean worth?",
         {{"angles_deg", "readings of one angle", -30, 220, {}, {}, true},
          {"trial_error_deg", "error between readings of one day", 0.1, 20, {}, "1.5"},
          {"day_error_deg", "error between days", 0, 20, {}, "1.9"}},
         {"Harter1960", "Weir2005"},
         run_angle_trials},
        rotator_force_ratio(),
    };
}

} // namespace amentum::measurement
