#include "measurement/correlation.h"
#include "measurement/measurement_error.h"
#include "measurement/methods.h"
#include "measurement/session_velocity.h"
#include "values/interval.h"

#include <cmath>

namespace amentum::measurement {
namespace {

MethodInput confidence_input() {
    return {"confidence", "in per cent", 0, 0, {"90", "95"}, "95"};
}
double z_of(const MethodArguments& given) {
    return given.word("confidence") == "90" ? z90 : z95;
}

MethodInput between_throws_input() {
    return {"between_throws_ms", "standard deviation between throws of a session", 0, 10, {}, "0.45"};
}
MethodInput between_sessions_input() {
    return {"between_sessions_ms", "standard deviation between sessions", 0, 10, {}, "0.36"};
}
VelocityErrors errors_of(const MethodArguments& given) {
    return {given.number("between_throws_ms"), given.number("between_sessions_ms")};
}

Result<MethodAnswer> run_session_velocity(const MethodArguments& given) {
    const auto velocity = measure_session_velocity(given.list("speeds_ms"), errors_of(given));
    if (!velocity)
        return velocity.refusal();
    return MethodAnswer{{{"session_velocity", velocity->value, "m/s", velocity->standard_error}},
                        {"Compare only with sessions of the same radar, place, ball and ground."}};
}

Result<MethodAnswer> run_smallest_session_change(const MethodArguments& given) {
    const double n = given.number("throws");
    if (n != std::floor(n))
        return refuse_range("throws", n, 1, 60, "", "A whole number.");
    const auto change = smallest_session_change(static_cast<int>(n), errors_of(given), z_of(given));
    if (!change)
        return change.refusal();
    return MethodAnswer{{{"smallest_session_change", *change, "m/s"}}};
}

Result<MethodAnswer> run_smallest_detectable_change(const MethodArguments& given) {
    double error = 0;
    if (given.has("sem")) {
        error = given.number("sem");
    } else {
        if (!given.has("sd"))
            return refuse_missing("sem", "the error of measurement, or sd and icc");
        if (!given.has("icc"))
            return refuse_missing("icc", "the intraclass correlation that goes with sd");
        const auto computed = standard_error_of_measurement(given.number("sd"), given.number("icc"));
        if (!computed)
            return computed.refusal();
        error = *computed;
    }
    return MethodAnswer{
        {{"standard_error_of_measurement", error, "test unit"},
         {"smallest_detectable_change", smallest_detectable_change(error, z_of(given)), "test unit"}}};
}

Result<MethodAnswer> run_typical_error(const MethodArguments& given) {
    const auto error = typical_error(given.list("first"), given.list("second"));
    if (!error)
        return error.refusal();
    return MethodAnswer{{{"typical_error", *error, "test unit"}}};
}

Result<MethodAnswer> run_expected_maximum(const MethodArguments& given) {
    const double n = given.number("readings");
    if (n != std::floor(n))
        return refuse_range("readings", n, 1, 60, "", "A whole number.");
    return MethodAnswer{{{"expected_maximum", expected_maximum(static_cast<int>(n)), "SD"}}};
}

Result<MethodAnswer> run_fisher_z(const MethodArguments& given) {
    const auto z = fisher_z(given.number("r"), given.number("n"));
    if (!z)
        return z.refusal();
    return MethodAnswer{{{"fisher_z", z->z.value, "1", z->z.standard_error},
                         {"r_low", z->limits_of_r.low, "1"},
                         {"r_high", z->limits_of_r.high, "1"}}};
}

Result<MethodAnswer> run_tau_to_r(const MethodArguments& given) {
    const auto r = correlation_from_tau(given.number("tau"));
    if (!r)
        return r.refusal();
    return MethodAnswer{{{"r", *r, "1"}}};
}

std::vector<Method> methods_of_correlation() {
    return {
        {"fisher_z",
         "How sure is a published correlation?",
         {{"r", "the correlation", -0.9999, 0.9999}, {"n", "athletes", 4, 1e6}},
         {"Fisher1921"},
         run_fisher_z},
        {"tau_to_r",
         "Which correlation goes with this Kendall's tau?",
         {{"tau", "Kendall's rank correlation", -1, 1}},
         {"Greiner1909"},
         run_tau_to_r},
    };
}

} // namespace

std::vector<Method> methods_of_errors() {
    std::vector<Method> all{
        {"session_velocity",
         "How fast does this athlete throw, by one session's throws?",
         {{"speeds_ms", "of each throw", 1, 60, {}, {}, true},
          between_throws_input(),
          between_sessions_input()},
         {"Weir2005"},
         run_session_velocity},
        {"smallest_session_change",
         "Which change between two sessions is larger than their error?",
         {{"throws", "in each session", 1, 60},
          between_throws_input(),
          between_sessions_input(),
          confidence_input()},
         {"Weir2005"},
         run_smallest_session_change},
        {"smallest_detectable_change",
         "Which change between two tests is larger than their error?",
         {{"sem", "standard error of measurement, in the test's unit", 0, 1e6, {}, ""},
          {"sd", "standard deviation between athletes", 0, 1e6, {}, ""},
          {"icc", "intraclass correlation of a retest", 0, 1, {}, ""},
          confidence_input()},
         {"Weir2005"},
         run_smallest_detectable_change},
        {"typical_error",
         "How large is a test's error, when athletes were tested twice?",
         {{"first", "first value of each athlete", -1e6, 1e6, {}, {}, true},
          {"second", "second value of each athlete", -1e6, 1e6, {}, {}, true}},
         {"Hopkins2000"},
         run_typical_error},
        {"expected_maximum",
         "How far above the mean is the best of several readings, by chance alone?",
         {{"readings", "how many", 1, 60}},
         {"Teichroew1956"},
         run_expected_maximum},
    };
    for (auto& method : methods_of_correlation())
        all.push_back(method);
    return all;
}

} // namespace amentum::measurement
