// Force curves with exact answers (closed form; the numbers below are the integrals of analytic_traces.h evaluated by
// hand): a jump of 80 kg, a pull, a drop jump, and the jump again with offset, drift and noise.
#include "analytic_traces.h"
#include "force_traces/measure_trace.h"

#include <doctest/doctest.h>

namespace amentum {
namespace {

using namespace analytic;

TraceMeasurement measured(const ForceRecording& recording, TraceTest test) {
    auto result = measure_trace(recording, {test, Legs::both, {}, {}, {}});
    if (!result)
        FAIL(result.refusal().sentence);
    return *result;
}

double value(const TraceMeasurement& trace, const char* key) {
    const auto* metric = trace.metric(key);
    if (!metric)
        FAIL("no metric " << key);
    return metric->value;
}

bool near(double a, double b, double tolerance) {
    const bool holds = std::abs(a - b) <= tolerance;
    if (!holds)
        MESSAGE(a << " against " << b << ", tolerance " << tolerance);
    return holds;
}

double event_s(const TraceMeasurement& trace, const std::string& key) {
    for (const auto& event : trace.events)
        if (event.key == key)
            return event.used_s;
    FAIL("no event " << key);
    return 0;
}

void check_the_jump(const TraceMeasurement& jump) {
    CHECK(near(jump.body_weight_n, 784.532, 0.2));
    CHECK(near(value(jump, "take_off_speed"), 2.85290025, 1e-3));
    CHECK(near(value(jump, "jump_height_impulse"), 0.41497554, 1e-3));
    CHECK(near(value(jump, "peak_power"), 4501.4131, 0.002 * 4501.4131));
    CHECK(near(value(jump, "take_off_rise"), 0.18852900, 2e-3));
    CHECK(near(value(jump, "countermovement_depth"), 0.3919708, 1e-3));
    CHECK(near(value(jump, "net_impulse"), 228.23202, 0.1));
    CHECK(near(value(jump, "braking_impulse"), 100, 0.2));
    CHECK(near(value(jump, "peak_force"), 2484.532, 6));
}

} // namespace

TEST_CASE("The closed-form jump at 1000, 500 and 200 Hz") {
    for (const double rate : {1000.0, 500.0, 200.0}) {
        CAPTURE(rate);
        const auto jump = measured(sampled(Jump{}, 6.5, rate), TraceTest::countermovement_jump);
        check_the_jump(jump);
        CHECK(near(event_s(jump, "take_off"), 2.33, 1.01 / rate));
        CHECK(near(event_s(jump, "lowest_speed"), 1.90, 1.01 / rate));
        CHECK(near(event_s(jump, "lowest"), 2.0572533, 1.01 / rate));
        CHECK(near(event_s(jump, "landing"), 2.33 + 0.58182973, 1.01 / rate));
        // Two instants a sample off at most: dh = g t / 4 dt.
        CHECK(near(value(jump, "jump_height_flight"), 0.41497554, 9.80665 * 0.582 / 4 / rate));
        CHECK(near(value(jump, "mean_power"), 2863.397, 0.012 * 2863.397));
        CHECK(near(value(jump, "reactive_strength_modified"), 0.49997,
                   0.04)); // the start is set up to 30 ms early
        CHECK(jump.warnings.size() == (rate < 500 ? 1 : 0));
    }
}

TEST_CASE("Fewer samples a second read lower by half a sample of fall: -0.1 to -0.2 cm at 500 Hz, -0.5 to "
          "-0.6 at 200") {
    // v d / 2 for every d of sampling, averaged over where the grid falls; the centimetres are those of 60 jumps
    // sampled down from 1000 Hz [SamplingPoster2010].
    const auto mean_height = [](double rate) {
        double sum = 0;
        for (int i = 0; i < 25; ++i)
            sum +=
                value(measured(sampled(Jump{}, 6.5, rate, (i + 0.5) / 25), TraceTest::countermovement_jump),
                      "jump_height_impulse");
        return sum / 25;
    };
    const double at_1000 = mean_height(1000);
    const double lost_500 = 100 * (mean_height(500) - at_1000), lost_200 = 100 * (mean_height(200) - at_1000);
    MESSAGE("500 Hz " << lost_500 << " cm, 200 Hz " << lost_200 << " cm");
    CHECK(lost_500 < -0.1);
    CHECK(lost_500 > -0.2);
    CHECK(lost_200 < -0.5);
    CHECK(lost_200 > -0.6);
}

TEST_CASE("Alternating noise of 2 N moves the start to 1.487 s and little else") {
    ForceRecording noisy = sampled(Jump{}, 6.5, 1000);
    for (std::size_t i = 0; i < noisy.plates[0].vertical.size(); ++i)
        noisy.plates[0].vertical[i] += i % 2 ? 2.0F : -2.0F;
    const auto jump = measured(noisy, TraceTest::countermovement_jump);
    check_the_jump(jump);
    CHECK(near(event_s(jump, "onset"), 1.487, 0.003));
    CHECK(near(jump.body_weight_n / 9.80665, 80.000, 0.001));
    CHECK(near(value(jump, "jump_height_impulse"), 0.41498, 2e-4));
    CHECK(near(value(jump, "peak_power"), 4505.9, 1));
    // Alternating noise leaves a mean of 0 in every tenth of a second, so nothing but its SD is claimed.
    CHECK(near(jump.body_weight_error_n, 2 / std::sqrt(1000.0), 1e-3));
}

TEST_CASE("Seeded noise of 2 N: each number within three of its standard errors") {
    const auto jump =
        measured(disturbed(sampled(Jump{}, 6.5, 1000), 0, 0, 2), TraceTest::countermovement_jump);
    const auto covers = [&](const char* key, double truth) {
        const auto* metric = jump.metric(key);
        REQUIRE(metric);
        REQUIRE(metric->trace_error);
        CAPTURE(key);
        CHECK(near(metric->value, truth, 3 * *metric->trace_error));
        CHECK(*metric->trace_error < 0.02 * std::abs(truth));
    };
    covers("jump_height_impulse", 0.41497554);
    covers("jump_height_flight", 0.41497554);
    covers("take_off_speed", 2.85290025);
    covers("take_off_rise", 0.18852900);
    covers("countermovement_depth", 0.3919708);
    covers("net_impulse", 228.23202);
    covers("braking_impulse", 100);
    covers("mean_power", 2863.397);
}

TEST_CASE("Offset and drift of the plate are seen, taken off and told") {
    const auto recording = sampled(Jump{}, 6.5, 1000);
    SUBCASE("20 N of offset, noise free") {
        const auto jump = measured(disturbed(recording, 20, 0, 0), TraceTest::countermovement_jump);
        check_the_jump(jump);
        REQUIRE_FALSE(jump.corrections.empty());
        CHECK(jump.corrections[0].find("+20.0 N") != std::string::npos);
        CHECK(near(event_s(jump, "take_off"), 2.33, 0.001));
        CHECK(near(event_s(jump, "landing"), 2.912, 0.001));
    }
    SUBCASE("a line through the flight and the empty plate at the end") {
        const auto jump = measured(disturbed(recording, -8, 1.5, 0), TraceTest::countermovement_jump);
        check_the_jump(jump);
        CHECK(near(value(jump, "jump_height_impulse"), 0.41497554, 2e-4));
        CHECK(jump.corrections[0].find("+1.50 N a second") != std::string::npos);
    }
    SUBCASE("offset, drift and noise") {
        check_the_jump(measured(disturbed(recording, 12, -1, 2, 5), TraceTest::countermovement_jump));
    }
}

} // namespace amentum
