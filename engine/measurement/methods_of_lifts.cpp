#include "measurement/allometry.h"
#include "measurement/body_mass_lifts.h"
#include "measurement/methods.h"
#include "measurement/one_rep_max.h"
#include "measurement/split_squat.h"

namespace amentum::measurement {
namespace {

const std::vector<std::string> sources_of_equations{"Epley1985",    "Brzycki1993", "Lander1985",
                                                    "Lombardi1989", "Mayhew1992",  "OConner1989",
                                                    "Wathen1994",   "LoadChart",   "Hackett2017"};

MethodInput equation_input() {
    return {"equation", "which published equation", 0, 0, all_words<OneRepMaxEquation>(), word(our_equation)};
}
MethodInput reps_input() {
    return {"reps", "clean repetitions done", 1, 60};
}
MethodInput reserve_input() {
    return {"reps_in_reserve", "repetitions that were left; 0 at failure", 0, 60, {}, "0"};
}
MethodInput body_mass_input() {
    return {"body_mass_kg", "the lifter's body mass", 15, 250};
}

OneRepMaxEquation equation_of(const MethodArguments& given) {
    return *from_word<OneRepMaxEquation>(given.word("equation"));
}

RepetitionSet set_of(const MethodArguments& given) {
    return {Mass::kilograms(given.number("load_kg")), given.number("reps"), given.number("reps_in_reserve")};
}

Result<MethodAnswer> run_one_rep_max(const MethodArguments& given) {
    const auto maximum = estimate_one_rep_max(equation_of(given), set_of(given));
    if (!maximum)
        return maximum.refusal();
    const double value = maximum->value.kilograms();
    return MethodAnswer{{{"one_rep_max", value, "kg", value * maximum->relative_error}}, maximum->warnings};
}

Result<MethodAnswer> run_load_for_repetitions(const MethodArguments& given) {
    const auto load =
        estimate_load_for_repetitions(equation_of(given), Mass::kilograms(given.number("one_rep_max_kg")),
                                      given.number("reps"), given.number("reps_in_reserve"));
    if (!load)
        return load.refusal();
    return MethodAnswer{{{"load", load->load.kilograms(), "kg"}, {"fraction", load->fraction, "1"}},
                        load->warnings};
}

Result<MethodAnswer> run_pull_up_max(const MethodArguments& given) {
    const auto maximum = estimate_pull_up_max(equation_of(given),
                                              Mass::kilograms(given.number("body_mass_kg")), set_of(given));
    if (!maximum)
        return maximum.refusal();
    const double error = maximum->system.kilograms() * maximum->relative_error;
    return MethodAnswer{{{"added_load", maximum->added.kilograms(), "kg", error},
                         {"system_mass", maximum->system.kilograms(), "kg", error}},
                        maximum->warnings};
}

Result<MethodAnswer> run_push_up_load(const MethodArguments& given) {
    const auto load = estimate_push_up_load(*from_word<PushUp>(given.word("push_up")),
                                            Mass::kilograms(given.number("body_mass_kg")));
    if (!load)
        return load.refusal();
    return MethodAnswer{{{"push_up_load", load->kilograms(), "kg"}}};
}

Result<MethodAnswer> run_lead_leg_load(const MethodArguments& given) {
    const auto load = estimate_lead_leg_load(
        *from_word<LeadLegModel>(given.word("model")), *from_word<Sex>(given.word("sex")),
        Mass::kilograms(given.number("body_mass_kg")), Mass::kilograms(given.number("load_kg")));
    if (!load)
        return load.refusal();
    return MethodAnswer{{{"lead_leg_load", load->value, "kg", load->standard_error}},
                        {"An estimate of the lead leg's share; the result to report is the external load."}};
}

Result<MethodAnswer> run_allometric_strength(const MethodArguments& given) {
    const auto scaled =
        allometric_strength(Mass::kilograms(given.number("load_kg")),
                            Mass::kilograms(given.number("body_mass_kg")), given.number("exponent"));
    if (!scaled)
        return scaled.refusal();
    return MethodAnswer{{{"allometric_strength", *scaled, "kg^(1-b)"}}};
}

} // namespace

std::vector<Method> methods_of_lifts() {
    return {
        {"one_rep_max",
         "How much could be lifted once, when a lighter load was lifted several times?",
         {equation_input(), {"load_kg", "the load lifted", 0.5, 600}, reps_input(), reserve_input()},
         sources_of_equations,
         run_one_rep_max},
        {"load_for_repetitions",
         "Which load can be lifted so often, with so many repetitions left?",
         {equation_input(), {"one_rep_max_kg", "the maximum", 0.5, 600}, reps_input(), reserve_input()},
         sources_of_equations,
         run_load_for_repetitions},
        {"pull_up_max",
         "How much could be added for one pull-up, body mass being part of the lift?",
         {equation_input(),
          body_mass_input(),
          {"load_kg", "load added; 0 for none, below 0 when helped", -150, 250},
          reps_input(),
          reserve_input()},
         {"Coyne2015", "Epley1985", "Hackett2017"},
         run_pull_up_max},
        {"push_up_load",
         "How much of body mass do the hands carry in a push-up?",
         {{"push_up", "which push-up", 0, 0, all_words<PushUp>(), "regular"}, body_mass_input()},
         {"Ebben2011"},
         run_push_up_load},
        {"lead_leg_load",
         "How much of a split squat does the lead leg carry?",
         {{"model", "which model", 0, 0, all_words<LeadLegModel>(), "model_a"},
          {"sex", "for the mass of the rear leg (model_b)", 0, 0, all_words<Sex>(), {}},
          body_mass_input(),
          {"load_kg", "the external load", 0, 600}},
         {"Helme2020", "DeLeva1996", "McCurdy2017"},
         run_lead_leg_load},
        {"allometric_strength",
         "How strong for the body's size?",
         {{"load_kg", "the load lifted once", 0.5, 600},
          body_mass_input(),
          {"exponent", "of body mass: 0.67 geometric similarity, 1 the plain ratio", 0, 1, {}, "0.67"}},
         {"Jaric2002", "Oba2014"},
         run_allometric_strength},
    };
}

} // namespace amentum::measurement
