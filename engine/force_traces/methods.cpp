#include "force_traces/methods.h"

#include "force_traces/force_signal.h"
#include "force_traces/jump_power.h"
#include "force_traces/trace_errors.h"

#include <cmath>

namespace amentum::force_traces {
namespace {

constexpr double g = gravity_at_plate;

Result<MethodAnswer> run_weight_error(const MethodArguments& given) {
    const double weight = given.number("body_mass_kg") * g, v = given.number("take_off_speed_ms");
    const double t = given.number("seconds_from_start"), error = given.number("weight_error_n");
    const double each = height_per_newton(weight, v, t);
    return MethodAnswer{{{"height_per_newton", 1000 * each, "mm/N"},
                         {"height_error", 1000 * each * error, "mm"},
                         {"part_of_force", 1000 * v * t / (weight / g) / g, "mm/N"},
                         {"part_of_mass", 1000 * v * v / weight / g, "mm/N"}},
                        {"A weight read too high makes the jump too low."}};
}

Result<MethodAnswer> run_jump_power(const MethodArguments& given) {
    const auto equation = *from_word<PowerEquation>(given.word("equation"));
    const auto power = jump_power(equation, given.number("height_cm"), given.number("body_mass_kg"));
    if (!power)
        return power.refusal();
    MethodOutput output{"jump_power", *power, "W"};
    if (equation == PowerEquation::canavan_women)
        output.standard_error = 120.8;
    return MethodAnswer{{output},
                        {"Equations differ by hundreds of watts; never compare with a force plate's power."}};
}

Result<MethodAnswer> run_drop_height(const MethodArguments& given) {
    const double mass = given.number("body_mass_kg"), up = g * given.number("flight_time_s") / 2;
    const double down = given.number("net_impulse_ns") / mass - up;
    if (!(down > 0))
        return Refusal{
            RefusalCode::method_does_not_apply,
            "This impulse does not even reach the speed of the rebound: there was no drop, or the impulse "
            "still holds body weight.",
            "net_impulse_ns", "", "more than mass times take-off speed"};
    return MethodAnswer{{{"drop_height", down * down / (2 * g), "m"},
                         {"touch_down_speed", down, "m/s"},
                         {"take_off_speed", up, "m/s"}}};
}

Result<MethodAnswer> run_reactive_strength(const MethodArguments& given) {
    const double flight = given.number("flight_time_s"), contact = given.number("contact_time_s");
    return MethodAnswer{{{"reactive_strength_height", g * flight * flight / 8 / contact, "m/s"},
                         {"reactive_strength_flight", flight / contact, "1"}},
                        {"Two different numbers of one name in use; never compare one with the other."}};
}

} // namespace

std::vector<Method> methods() {
    return {
        {"body_weight_height_error",
         "How much does an error in the weighing move a jump's height?",
         {{"body_mass_kg", "of the athlete", 15, 250},
          {"take_off_speed_ms", "upward, at take-off", 0.4, 6},
          {"seconds_from_start", "from the start of the movement to take-off", 0.1, 5},
          {"weight_error_n", "of the weighing", 0, 100, {}, "1"}},
         {"Owen2014", "Linthorne2001"},
         run_weight_error},
        {"jump_power_equation",
         "What power does a jump's height stand for, when there is no plate?",
         {{"equation", "which fit", 0, 0, all_words<PowerEquation>(), {}},
          {"height_cm", "of the jump", 5, 110},
          {"body_mass_kg", "of the athlete", 30, 200}},
         {"Sayers1999", "Harman1991", "CanavanVescovi2004"},
         run_jump_power},
        {"drop_height_from_touch_down",
         "From how high did an athlete really drop, by one plate?",
         {{"body_mass_kg", "of the athlete", 15, 250},
          {"net_impulse_ns", "of force minus body weight over the contact", 1, 5000},
          {"flight_time_s", "after the contact", 0.08, 1.2}},
         {"McMahon2021"},
         run_drop_height},
        {"reactive_strength",
         "How much flight for how little contact?",
         {{"flight_time_s", "after the contact", 0.08, 1.2}, {"contact_time_s", "on the ground", 0.08, 1}},
         {"Pmc9750644"},
         run_reactive_strength},
    };
}

} // namespace amentum::force_traces
