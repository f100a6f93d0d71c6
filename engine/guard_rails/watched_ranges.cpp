#include "guard_rails/watched_ranges.h"

#include "measurement/joint_range.h"
#include "measurement/rotation_force.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double cut_off = 5;      // degrees [Wilk2011]
constexpr double outward_mdc = 9;  // degrees, 90 %, between raters [Kolber2011]
constexpr double inward_mdc = 8;   // likewise
constexpr double flexion_mdc = 8;  // likewise
constexpr int body_mass_days = 31; // proposal of this project, no source

using Results = std::vector<const TestResult*>;

Results of_test(const Athlete& athlete, std::span<const TestResult> results, const std::string& test,
                bool of_arm, Date today) {
    const Side arm = athlete.throwing_hand == Hand::left ? Side::left : Side::right;
    Results found;
    for (const auto& result : results)
        if (result.athlete == athlete.id && result.test == test && result.date <= today &&
            (!of_arm || result.side == arm))
            found.push_back(&result);
    std::stable_sort(found.begin(), found.end(),
                     [](const auto* a, const auto* b) { return a->date < b->date; });
    return found;
}

WatchedDay day_of(const TestResult& result, const Estimate& value) {
    return {result.date, value.value, value.standard_error, result.rater, result.device};
}

std::vector<WatchedDay> total_rotation(const Results& outward, const Results& inward) {
    std::vector<WatchedDay> days;
    for (const auto* out : outward)
        for (const auto* in : inward) {
            if (in->date != out->date)
                continue;
            if (const auto total = measure_total_rotation({*out, *in}))
                days.push_back(day_of(*out, *total));
        }
    return days;
}

std::vector<WatchedDay> as_measured(const Results& results) {
    std::vector<WatchedDay> days;
    for (const auto* result : results)
        days.push_back(day_of(*result, {result->value, result->standard_error}));
    return days;
}

const TestResult* nearest(const Results& results, Date day) {
    const auto away = [&](const TestResult* r) { return std::abs(r->date - day); };
    const auto near = std::min_element(results.begin(), results.end(),
                                       [&](const auto* a, const auto* b) { return away(a) < away(b); });
    return near == results.end() || away(*near) > body_mass_days ? nullptr : *near;
}

std::vector<WatchedDay> for_body_mass(const Results& forces, const Results& masses) {
    std::vector<WatchedDay> days;
    for (const auto* force : forces) {
        const auto* mass = nearest(masses, force->date);
        if (!mass)
            continue;
        if (const auto share = measure_force_for_body_mass(*force, {mass->value, mass->standard_error}))
            days.push_back(day_of(*force, *share));
    }
    return days;
}

} // namespace

std::vector<WatchedRange> watched_ranges(const Athlete& athlete, std::span<const TestResult> results,
                                         Date today) {
    const auto arm = [&](const std::string& test) { return of_test(athlete, results, test, true, today); };
    const auto masses = of_test(athlete, results, "body_mass", false, today);
    return {{"Total rotation of the throwing shoulder", "degrees", 0, cut_off,
             std::hypot(outward_mdc, inward_mdc),
             total_rotation(arm("shoulder_external_rotation"), arm("shoulder_internal_rotation"))},
            {"Flexion of the throwing shoulder", "degrees", 0, cut_off, flexion_mdc,
             as_measured(arm("shoulder_flexion"))},
            {"Outward-rotation force of the throwing arm for body mass",
             "N/kg",
             2,
             0,
             {},
             for_body_mass(arm("external_rotation_force"), masses)}};
}

} // namespace amentum
