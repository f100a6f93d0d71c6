#include "measurement/growth.h"
#include "measurement/joint_range.h"
#include "measurement/jump_height.h"
#include "measurement/methods.h"

namespace amentum::measurement {
namespace {

Result<MethodAnswer> run_jump_height_flight(const MethodArguments& given) {
    const auto height = jump_height_from_flight_time(Duration::seconds(given.number("flight_time_s")));
    if (!height)
        return height.refusal();
    return MethodAnswer{{{"jump_height", height->metres(), "m"}}};
}

Result<MethodAnswer> run_jump_height_velocity(const MethodArguments& given) {
    const auto height =
        jump_height_from_take_off_velocity(Speed::metres_per_second(given.number("velocity_ms")));
    if (!height)
        return height.refusal();
    return MethodAnswer{{{"jump_height", height->metres(), "m"}}};
}

Result<MethodAnswer> run_growth_velocity(const MethodArguments& given) {
    const Speed gain =
        growth_velocity(given.number("years"), Length::centimetres(given.number("stature_gained_cm")));
    return MethodAnswer{{{"growth_velocity", gain.metres_per_second(), "m/s"}},
                        {"From a cross-section of 420 pitchers; no standard error was published."}};
}

Result<MethodAnswer> run_maturity_offset(const MethodArguments& given) {
    Growing athlete{*from_word<Sex>(given.word("sex")), given.number("age_years"),
                    Length::centimetres(given.number("stature_cm")), std::nullopt, std::nullopt};
    if (given.has("sitting_height_cm"))
        athlete.sitting_height = Length::centimetres(given.number("sitting_height_cm"));
    if (given.has("body_mass_kg"))
        athlete.body_mass = Mass::kilograms(given.number("body_mass_kg"));
    const auto offset = estimate_maturity_offset(*from_word<OffsetEquation>(given.word("equation")), athlete);
    if (!offset)
        return offset.refusal();
    return MethodAnswer{{{"maturity_offset", offset->value, "years", offset->standard_error}},
                        {"Band: " + word(growth_band(offset->value)) + " the growth spurt.",
                         "Early maturers come out about 1.15 years too early; never use it for selection."}};
}

Result<MethodAnswer> run_rotation_deficit(const MethodArguments& given) {
    const auto angle = [&](const std::string& name, Side side) {
        return TestResult{AthleteId{},
                          Date::from_days(0),
                          name.substr(0, 8),
                          side,
                          given.number(name),
                          given.number("error_deg"),
                          1,
                          "",
                          {},
                          {},
                          "",
                          "",
                          PlaceMeasured::unknown};
    };
    const auto deficit = measure_rotation_deficit(
        {angle("external_throwing_deg", Side::right), angle("internal_throwing_deg", Side::right)},
        {angle("external_other_deg", Side::left), angle("internal_other_deg", Side::left)});
    if (!deficit)
        return deficit.refusal();
    return MethodAnswer{{{"rotation_deficit", deficit->value, "deg", deficit->standard_error}}};
}

Result<MethodAnswer> run_rotation_false_flag(const MethodArguments& given) {
    return MethodAnswer{{{"chance_of_false_flag",
                          chance_of_false_flag(given.number("true_deficit_deg"),
                                               given.number("threshold_deg"), given.number("error_deg")),
                          "1"}}};
}

std::vector<Method> methods_of_growth() {
    return {
        {"growth_velocity",
         "How much throwing velocity comes from growth alone?",
         {{"years", "of age gained", 0, 10}, {"stature_gained_cm", "grown in that time", 0, 60}},
         {"Sgroi2015"},
         run_growth_velocity},
        {"maturity_offset",
         "How many years before or after the growth spurt is the athlete?",
         {{"equation", "which equation", 0, 0, all_words<OffsetEquation>(), "mirwald"},
          {"sex", "which fit", 0, 0, all_words<Sex>(), {}},
          {"age_years", "decimal age", 8, 18},
          {"stature_cm", "standing height", 100, 210},
          {"sitting_height_cm", "needed by mirwald", 50, 115, {}, ""},
          {"body_mass_kg", "needed by mirwald", 15, 150, {}, ""}},
         {"Mirwald2002", "Moore2015", "KozielMalina2018"},
         run_maturity_offset},
    };
}

} // namespace

std::vector<Method> methods_of_bodies() {
    const MethodInput error{"error_deg", "standard error of one angle", 0.1, 20};
    std::vector<Method> all{
        {"jump_height_flight",
         "How high was the jump, by its time in the air?",
         {{"flight_time_s", "from take-off to landing", 0.1, 1.2}},
         {"Baumgart2017"},
         run_jump_height_flight},
        {"jump_height_velocity",
         "How high was the jump, by its take-off velocity?",
         {{"velocity_ms", "at take-off, from a force plate's impulse", 0.4, 6}},
         {"Baumgart2017"},
         run_jump_height_velocity},
        {"rotation_deficit",
         "How much less does the throwing shoulder rotate in all, and with what error?",
         {{"external_throwing_deg", "external rotation, throwing arm", 0, 180},
          {"internal_throwing_deg", "internal rotation, throwing arm", 0, 120},
          {"external_other_deg", "external rotation, other arm", 0, 180},
          {"internal_other_deg", "internal rotation, other arm", 0, 120},
          error},
         {"Wilk2012", "Weir2005"},
         run_rotation_deficit},
        {"rotation_false_flag",
         "How often does a rotation deficit show that is not there?",
         {{"true_deficit_deg", "the deficit there is", -30, 60, {}, "0"},
          {"threshold_deg", "above which a deficit is shown", 0, 60, {}, "5"},
          error},
         {"Weir2005"},
         run_rotation_false_flag},
    };
    for (auto& method : methods_of_growth())
        all.push_back(method);
    return all;
}

} // namespace amentum::measurement
