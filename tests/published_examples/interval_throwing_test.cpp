// Published steps back to throwing, as data, walked under their own criterion: pain-free during, no residual soreness next day.
// Adult: stages of 45 to 180 ft, odd steps 2 x 25 throws, even steps 3 x 25, every other day [Pmc10547089, introduction].
// Adolescent: the steps of [Axe1996] whose throws are printed as three sets (25 ft 15-15-20 at 50 %, 50 ft 15-20-20 at 70 %,
// 60.5 ft 20-20-25 at 75 %, 90 ft 15 x 3 at 50 %, 120 ft 20 x 3, mound 25-30-30).
#include "throwing_workload/step_progress.h"

#include <doctest/doctest.h>

namespace amentum {
namespace {

const Date monday = *parse_date("2026-03-02", "date");

ThrowSteps plan(std::vector<ThrowStep> steps) {
    return {AthleteId{"a"}, 1,     StepsOrigin::clinician, "Dr. Ada Fenwick", monday, 1, std::move(steps), "",
            "Kim Osei",     monday};
}

ThrowSteps adult() {
    std::vector<ThrowStep> steps;
    for (const double feet : {45, 60, 90, 120, 150, 180})
        for (const int sets : {2, 3})
            steps.push_back({25 * sets, Length::feet(feet), {}, "crow hop, on an arc"});
    return plan(std::move(steps));
}

ThrowSteps adolescent() {
    return plan({{15 + 15 + 20, Length::feet(25), 0.5, ""},
                 {15 + 20 + 20, Length::feet(50), 0.7, ""},
                 {20 + 20 + 25, Length::feet(60.5), 0.75, ""},
                 {3 * 15, Length::feet(90), 0.5, ""},
                 {3 * 20, Length::feet(120), 1, "as tolerated"},
                 {25 + 30 + 30, {}, 1, "mound"}});
}

ThrowEntry done(const ThrowStep& step, Date date, double next_day) {
    return {AthleteId{"a"},
            date,
            ThrowSetting::flat_ground,
            step.throws,
            step.effort,
            {},
            step.distance,
            {},
            {},
            {},
            next_day,
            ""};
}

} // namespace

TEST_CASE("every other day, pain-free and without soreness: one step a session, to the end") {
    for (const auto& steps : {adult(), adolescent()}) {
        std::vector<ThrowEntry> log;
        for (std::size_t i = 0; i < steps.steps.size(); ++i) {
            const Date date = monday + 2 * static_cast<int>(i);
            const auto before = measure_steps(steps, {log, {}, {}}, date);
            CHECK(before.step == i);
            CHECK(before.gate == StepGate::open);
            log.push_back(done(steps.steps[i], date, 0));
        }
        CHECK(measure_steps(steps, {log, {}, {}}, monday + 2 * static_cast<int>(steps.steps.size())).gate ==
              StepGate::through);
    }
    CHECK(adult().steps.size() == 12);
    CHECK(adult().steps[10].throws == 50);
    CHECK(adult().steps[11].throws == 75);
}

TEST_CASE("residual soreness the next day holds the step until it is done without") {
    const auto steps = adult();
    std::vector<ThrowEntry> log{done(steps.steps[0], monday, 0), done(steps.steps[1], monday + 2, 1)};
    CHECK(measure_steps(steps, {log, {}, {}}, monday + 4).step == 1);
    log.push_back(done(steps.steps[1], monday + 4, 2));
    CHECK(measure_steps(steps, {log, {}, {}}, monday + 6).step == 1);
    log.push_back(done(steps.steps[1], monday + 6, 0));
    CHECK(measure_steps(steps, {log, {}, {}}, monday + 8).step == 2);
}

TEST_CASE("a softer session than the step, or one the day after, moves nobody on") {
    const auto steps = adolescent();
    auto half = done(steps.steps[0], monday, 0);
    half.count = 30; // of 50
    CHECK(measure_steps(steps, {std::vector{half}, {}, {}}, monday + 3).step == 0);
    const std::vector<ThrowEntry> daily{done(steps.steps[0], monday, 0), done(steps.steps[1], monday + 1, 0)};
    CHECK(measure_steps(steps, {daily, {}, {}}, monday + 4).step == 1);
}

// [LittleLeagueInterval]: stop on pain until examined, resume one step back.
TEST_CASE("pain stops all steps until somebody cleared it, and it resumes one step back") {
    const auto steps = adult();
    const std::vector<ThrowEntry> log{done(steps.steps[0], monday, 0), done(steps.steps[1], monday + 2, 0),
                                      done(steps.steps[2], monday + 4, 0)};
    const std::vector<PainEntry> pain{{AthleteId{"a"}, 1, monday + 4, PainRegion::elbow, "", "", "Kim Osei"}};
    for (const int later : {4, 6, 60})
        CHECK(measure_steps(steps, {log, pain, {}}, monday + later).gate == StepGate::pain);
    const std::vector<PainClearance> clearance{
        {AthleteId{"a"}, 1, monday + 60, "Dr. Ada Fenwick", "Kim Osei", monday + 60, ""}};
    CHECK(measure_steps(steps, {log, pain, clearance}, monday + 61).step == 1);
}

} // namespace amentum
