// Each refusal of a force trace on a trace made to earn it, and the near miss that must pass.
#include "../../../tests/closed_form/analytic_traces.h"
#include "force_traces/compare_trials.h"
#include "force_traces/measure_trace.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::analytic;

namespace {

Result<TraceMeasurement> measure(const ForceRecording& recording,
                                 TraceTest test = TraceTest::countermovement_jump,
                                 const std::map<std::string, double>& moved = {}) {
    return measure_trace(recording, {test, Legs::both, {}, {}, moved});
}

void check_refused(const Result<TraceMeasurement>& result, RefusalCode code, const std::string& words) {
    REQUIRE_FALSE(result);
    CAPTURE(result.refusal().sentence);
    CHECK(result.refusal().code == code);
    CHECK(result.refusal().sentence.find(words) != std::string::npos);
    CHECK_FALSE(result.refusal().field.empty());
    CHECK_FALSE(result.refusal().allowed.empty());
}

ForceRecording jump(double rate = 1000) {
    return sampled(Jump{}, 6.5, rate);
}

// The samples from one second to another.
ForceRecording cut(ForceRecording recording, double from_s, double to_s) {
    auto& force = recording.plates[0].vertical;
    const auto at = [&](double s) {
        return force.begin() + static_cast<std::ptrdiff_t>(s * recording.rate_hz + 0.5);
    };
    force = std::vector<float>(at(from_s), at(to_s));
    return recording;
}

template <class Change>
ForceRecording changed(ForceRecording recording, double from_s, double to_s, Change change) {
    auto& force = recording.plates[0].vertical;
    for (std::size_t i = 0; i < force.size(); ++i) {
        const double t = static_cast<double>(i) / recording.rate_hz;
        if (t >= from_s && t < to_s)
            force[i] = static_cast<float>(change(static_cast<double>(force[i]), t));
    }
    return recording;
}

double lobe(double size, double at, double length) {
    const double s = std::sin(std::numbers::pi * at / length);
    return at < 0 || at > length ? 0 : size * s * s;
}

} // namespace

TEST_CASE("601: half a second of standing, and a weighing moved to half a second") {
    check_refused(measure(cut(jump(), 1.0, 6.5)), RefusalCode::quiet_too_noisy,
                  "wanders"); // 1.33 s, 0.5 s of it still
    check_refused(measure(cut(jump(), 1.4, 6.5)), RefusalCode::quiet_too_short, "0.93 s");
    check_refused(measure(jump(), TraceTest::countermovement_jump, {{"quiet_from", 0.2}, {"quiet_to", 0.7}}),
                  RefusalCode::quiet_too_short, "0.50 s");
    CHECK(measure(cut(jump(), 0.45, 6.5)));
}

TEST_CASE("602: swaying by 30 N while weighed; 10 N pass") {
    const auto sway = [](double size) {
        return changed(jump(), 0, 1.5, [&](double f, double t) { return f + size * std::sin(40 * t); });
    };
    check_refused(measure(sway(30)), RefusalCode::quiet_too_noisy, "20.8 N (SD)"); // near 30 / sqrt(2)
    CHECK(measure(sway(10)));
}

TEST_CASE("603: nobody leaves the plate") {
    const auto grounded = changed(jump(), 2.2, 7, [](double, double) { return 784.5; });
    check_refused(measure(grounded), RefusalCode::no_flight, "lowest force");
    // Stepping off is not jumping off.
    const auto off = changed(jump(), 1.5, 7,
                             [](double, double t) { return std::max(0.0, 784.5 * (1 - (t - 1.5) / 0.4)); });
    check_refused(measure(off), RefusalCode::not_this_effort, "a step off");
}

TEST_CASE("604: a second hop before the landing is at rest; after it, the first jump is measured") {
    const auto hop = [](double at) {
        auto recording = sampled(Jump{1.5, 0, 8, 9}, 9, 1000);
        return changed(recording, at, at + 0.6, [&](double, double t) {
            return t < at + 0.3 ? 784.532 + lobe(1000, t - at, 0.3) : t < at + 0.5 ? 0 : 1200;
        });
    };
    check_refused(measure(hop(3.3)), RefusalCode::second_hop, "another take-off");
    CHECK(measure(hop(5)));
}

TEST_CASE("605: an empty plate that reads 80 N, or wanders by 7 N a second; 40 N and 3 N/s pass") {
    check_refused(measure(disturbed(jump(), 80, 0, 1)), RefusalCode::offset_too_large, "+80.");
    check_refused(measure(disturbed(jump(), -20, 7, 0)), RefusalCode::offset_too_large, "+7.00 N a second");
    CHECK(measure(disturbed(jump(), 40, 0, 1)));
    CHECK(measure(disturbed(jump(), -8, 3, 0)));
}

TEST_CASE("606: a push cut off at 2200 N; a smooth peak, and a pull held steady, pass") {
    check_refused(measure(changed(jump(), 0, 7, [](double f, double) { return std::min(f, 2200.0); })),
                  RefusalCode::saturated_plate, "2200 N");
    CHECK(measure(jump()));
    const auto whole_newtons = changed(jump(), 0, 7, [](double f, double) { return std::round(f); });
    CHECK(measure(whole_newtons));
    CHECK(measure(sampled(Pull{2, 7}, 7.5, 1000),
                  TraceTest::isometric_pull)); // its plateau is one value for seconds
}

TEST_CASE("607: 100 samples a second; 200 pass with a warning, 1000 without") {
    check_refused(measure(jump(100)), RefusalCode::wrong_rate, "100 samples a second");
    check_refused(measure(sampled(Pull{}, 4.5, 100), TraceTest::isometric_pull), RefusalCode::wrong_rate,
                  "100");
    const auto slow = measure(jump(200)), fast = measure(jump());
    REQUIRE(slow);
    REQUIRE(fast);
    REQUIRE(slow->warnings.size() == 1);
    CHECK(slow->warnings[0].find("200 samples a second") != std::string::npos);
    CHECK(fast->warnings.empty());
}

TEST_CASE("608: a pull cut off while it rises; 610: no pull, and a dip of 300 N before it; 100 N are warned "
          "about") {
    const auto pull = sampled(Pull{}, 4.5, 1000);
    check_refused(measure(cut(pull, 0, 2.4), TraceTest::isometric_pull), RefusalCode::peak_at_end,
                  "still rising");
    check_refused(measure(changed(pull, 2, 4, [](double, double t) { return 784.5 + lobe(100, t - 2, 1); }),
                          TraceTest::isometric_pull),
                  RefusalCode::not_this_effort, "never rises a third");
    const auto dip = [&](double size) {
        return measure(
            changed(pull, 1.7, 2, [&](double f, double t) { return f - lobe(size, t - 1.7, 0.3); }),
            TraceTest::isometric_pull);
    };
    check_refused(dip(300), RefusalCode::not_this_effort, "falls 300 N");
    REQUIRE(dip(100));
    REQUIRE(dip(100)->warnings.size() == 1);
    CHECK(dip(100)->warnings[0].find("falls 100 N") != std::string::npos);
    REQUIRE(measure(pull, TraceTest::isometric_pull));
    CHECK(measure(pull, TraceTest::isometric_pull)->warnings.empty());
}

TEST_CASE("A pull let go after 0.1 s has no force at 250 ms, and keeps what it has") {
    const auto brief = measure(sampled(Pull{2, 2.1}, 2.22, 1000), TraceTest::isometric_pull);
    REQUIRE(brief);
    CHECK(brief->metric("net_force_50ms"));
    CHECK_FALSE(brief->metric("net_force_250ms"));
    CHECK_FALSE(brief->metric("impulse_250ms"));
}

TEST_CASE(
    "609: pulls 310 N apart disagree, 200 N apart agree; jumps by three day errors; other tests do not mix") {
    const auto pull = [](double peak) {
        auto one = measure(sampled(Pull{}, 4.5, 1000), TraceTest::isometric_pull);
        REQUIRE(one);
        one->metrics = {*one->metric("gross_peak_force")};
        one->metrics[0].value = peak;
        return *one;
    };
    const auto apart = compare_trials({pull(2400), pull(2450), pull(2710)});
    REQUIRE(apart);
    REQUIRE(apart->disagreements.size() == 1);
    CHECK(apart->disagreements[0].code == RefusalCode::trials_disagree);
    CHECK(apart->disagreements[0].given == "310 N");
    CHECK(apart->metrics[0].mean == doctest::Approx(2520));
    CHECK(apart->metrics[0].spread == doctest::Approx(166.43317)); // sqrt((120^2 + 70^2 + 190^2) / 2)
    CHECK(compare_trials({pull(2400), pull(2600)})->disagreements.empty());
    CHECK(compare_trials({pull(2400)}).refusal().code == RefusalCode::too_few_data);
    const auto jumped = measure(jump());
    REQUIRE(jumped);
    CHECK(compare_trials({pull(2400), *jumped}).refusal().code == RefusalCode::method_does_not_apply);
    auto higher = *jumped;
    higher.metrics[0].value *= 1.25; // 3 x 5.8 % of the mean is 19.6 % of the lower one
    CHECK(compare_trials({*jumped, higher})->disagreements.size() == 1);
    higher.metrics[0].value = jumped->metrics[0].value * 1.15;
    CHECK(compare_trials({*jumped, higher})->disagreements.empty());
}

TEST_CASE("610: a jump with a dip is no squat jump, and a jump without one no countermovement jump") {
    check_refused(measure(jump(), TraceTest::squat_jump), RefusalCode::not_this_effort, "sinks by 39.2 cm");
    struct FromSquat { // the push of the jump alone: (1700 0.4 / 2m) - g 0.03 / 2 = 4.10 m/s
        double force(double t) const {
            if (t < 1.5)
                return Jump::weight;
            if (t < 1.9)
                return Jump::weight + lobe(1700, t - 1.5, 0.4);
            if (t < 1.93)
                return Jump::weight * (1 - (t - 1.9) / 0.03);
            const double landed = t - 1.93 - 2 * 4.10290025 / g;
            return landed < 0 ? 0 : Jump::weight + lobe(2 * 80 * 4.10290025 / 0.3, landed, 0.3);
        }
    };
    const auto squat = sampled(FromSquat{}, 6, 1000);
    check_refused(measure(squat), RefusalCode::not_this_effort, "no dip");
    const auto measured = measure(squat, TraceTest::squat_jump);
    REQUIRE(measured);
    CHECK(std::abs(measured->metric("take_off_speed")->value - 4.10290025) < 2e-3);
    check_refused(measure(sampled(Drop{}, 4, 1000)), RefusalCode::quiet_too_short, "0.20 s");
    check_refused(measure(jump(), TraceTest::drop_jump), RefusalCode::not_this_effort, "no contact");
    check_refused(measure(jump(), TraceTest::repeated_hops), RefusalCode::too_few_data, "three");
}

TEST_CASE("Events moved out of the trace, out of their order, or unknown to the test") {
    const auto moved = [](const std::string& key, double s) {
        return measure(jump(), TraceTest::countermovement_jump, {{key, s}});
    };
    check_refused(moved("take_off", 9), RefusalCode::out_of_range, "outside the trace");
    check_refused(moved("take_off", 3.1), RefusalCode::out_of_range, "no longer in its order");
    check_refused(moved("landing", 2.0), RefusalCode::out_of_range, "between its neighbours");
    check_refused(moved("lowest", 1.6), RefusalCode::out_of_range, "between its neighbours");
    check_refused(moved("pull_onset", 2.0), RefusalCode::unknown_name, "pull_onset");
    CHECK(moved("landing", 2.0).refusal().field == "moved_events.landing");
    CHECK(moved("take_off", 3.1).refusal().field == "moved_events.take_off");
}

TEST_CASE("A spike in the air and one while standing fool nobody") {
    const auto spiked = changed(changed(jump(), 2.6, 2.602, [](double, double) { return 400.0; }), 1.45,
                                1.452, [](double f, double) { return f + 4; });
    const auto clean = measure(jump()), with = measure(spiked);
    REQUIRE(clean);
    REQUIRE(with);
    CHECK(std::abs(with->metric("jump_height_impulse")->value - clean->metric("jump_height_impulse")->value) <
          5e-4);
    CHECK(with->metric("flight_time")->value == doctest::Approx(clean->metric("flight_time")->value));
}

TEST_CASE("Warned: a scale that disagrees, a rise before the dip, a drifted weighing, bent legs, no rest") {
    const auto words = [](const Result<TraceMeasurement>& result) {
        REQUIRE(result);
        std::string all;
        for (const auto& warning : result->warnings)
            all += warning;
        return all;
    };
    CHECK(words(measure_trace(jump(), {TraceTest::countermovement_jump, Legs::both, 77.0, {}, {}}))
              .find("77.0 kg") != std::string::npos);
    CHECK(words(measure_trace(jump(), {TraceTest::countermovement_jump, Legs::both, 79.0, {}, {}})).empty());
    const auto rise =
        changed(jump(), 1.3, 1.5, [](double f, double t) { return f + lobe(60, t - 1.3, 0.2); });
    CHECK(words(measure(rise)).find("rise before the dip") != std::string::npos);
    const auto heavier = changed(jump(), 3.2, 5.5, [](double f, double) { return f + 30; });
    CHECK(words(measure(heavier)).find("weighs 3.8 % more") != std::string::npos);
    struct Bent { // lands 0.1 s later than it should
        double force(double t) const { return Jump{}.force(t < 2.6 ? t : std::max(2.6, t - 0.1)); }
    };
    CHECK(words(measure(sampled(Bent{}, 6.5, 1000))).find("Flight time says") != std::string::npos);
    CHECK(words(measure(cut(jump(), 0, 3.4))).find("did not come to rest") != std::string::npos);
    CHECK(words(measure(cut(jump(), 0, 2.7))).find("landing is not in the trace") != std::string::npos);
}
