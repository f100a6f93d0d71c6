// Force curves with exact answers (closed form; the numbers below are the integrals of analytic_traces.h evaluated by
// hand): a jump of 80 kg, a pull, a drop jump, and the jump again with offset, drift and noise.
#include "analytic_traces.h"
#include "force_traces/measure_trace.h"

#include <doctest/doctest.h>

#include <array>

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

TEST_CASE(
    "The closed-form pull: force, impulse and rate at 50 to 250 ms, with the start where it truly was") {
    const auto recording = sampled(Pull{}, 4.5, 1000);
    auto result =
        measure_trace(recording, {TraceTest::isometric_pull, Legs::both, {}, {}, {{"pull_onset", 2.0}}});
    REQUIRE(result);
    const std::array<const char*, 5> at{"50ms", "100ms", "150ms", "200ms", "250ms"};
    const std::array<double, 5> force{566.937, 973.166, 1264.241, 1472.806, 1622.249};
    const std::array<double, 5> rate{11338.75, 9731.66, 8428.27, 7364.03, 6488.99};
    const std::array<double, 5> impulse{14.9594, 54.0251, 110.3638, 179.0791, 256.6627};
    for (std::size_t i = 0; i < at.size(); ++i) {
        const std::string t = at[i];
        CAPTURE(t);
        CHECK(near(value(*result, ("net_force_" + t).c_str()), force[i], 1e-3 * force[i]));
        CHECK(near(value(*result, ("gross_force_" + t).c_str()), force[i] + 784.532, 1e-3 * force[i]));
        CHECK(near(value(*result, ("rate_0_" + t).c_str()), rate[i], 1e-3 * rate[i]));
        CHECK(near(value(*result, ("impulse_" + t).c_str()), impulse[i], 1e-3 * impulse[i]));
    }
    CHECK(near(value(*result, "peak_rate_20ms"), 12482.67, 12.5));
    CHECK(near(value(*result, "net_peak_force"), 2000, 0.1));
}

TEST_CASE("A pull's start comes late by -tau ln(1 - threshold / force)") {
    // Noise of 4 N: 5 SD is 20 N, and the closed form gives 1.508 ms. The noise moves a single crossing by its SD over
    // the slope, 4 N / 13 N a ms; the mean of 40 trials is known to 0.05 ms.
    double late = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const auto pull =
            measured(disturbed(sampled(Pull{}, 4.5, 1000), 0, 0, 4, seed), TraceTest::isometric_pull);
        late += event_s(pull, "pull_onset") - 2.0;
    }
    CHECK(near(1000 * late / 40, 1.508, 0.25));
}

TEST_CASE("The closed-form drop jump at 1000 and 500 Hz") {
    for (const double rate : {1000.0, 500.0}) {
        CAPTURE(rate);
        const auto drop = measured(sampled(Drop{}, 4, rate), TraceTest::drop_jump);
        // A sample at each end: 2 d of 0.2 s of contact, 2 d of 0.489 s of flight.
        CHECK(near(value(drop, "contact_time"), 0.20, 2.01 / rate));
        CHECK(near(value(drop, "flight_time"), 0.48946378, 2.01 / rate));
        CHECK(near(value(drop, "jump_height_flight"), 0.29367827, 2.5 / rate));
        CHECK(near(value(drop, "reactive_strength_height"), 1.4683913, 0.02 * 1000 / rate));
        CHECK(near(value(drop, "reactive_strength_flight"), 2.4473189, 0.02 * 1000 / rate));
        CHECK(near(value(drop, "touch_down_speed"), 2.4256937, 10.0 / rate));
        CHECK(near(value(drop, "drop_height"), 0.30, 2.5 / rate));
        CHECK(near(value(drop, "depth"), 0.16829101, 2.9 / rate)); // seen a sample late at 2.4 m/s
        CHECK(near(value(drop, "peak_force"), 3997.887, 1));
        CHECK(near(event_s(drop, "lowest"), 1.10029534, 1.01 / rate));
        CHECK(drop.warnings.empty());
    }
}

TEST_CASE("Drop jump at 20,000 Hz: what is left is the threshold of 10 N, in closed form too") {
    // The half-sine passes 10 N by T / pi asin(10 / Fp) = 0.159 ms after its start and before its end, so the contact
    // reads 0.19968 s and the flight 0.48962 s, and the body has sunk 0.39 mm before the contact is seen.
    const auto drop = measured(sampled(Drop{}, 4, 20000), TraceTest::drop_jump);
    CHECK(near(value(drop, "contact_time"), 0.1996816, 1.01e-4));
    CHECK(near(value(drop, "flight_time"), 0.4896230, 1.01e-4));
    CHECK(near(value(drop, "reactive_strength_height") / 1.47169, 1, 1e-3));
    CHECK(near(value(drop, "reactive_strength_flight") / 2.45202, 1, 1e-3));
    CHECK(near(value(drop, "touch_down_speed") / 2.4280, 1, 1e-3));
    CHECK(near(value(drop, "depth"), 0.16829101 - 0.00039, 2e-4));
}

TEST_CASE("A drop jump without standing still needs the scale, and gives the same with it") {
    const auto recording = sampled(Drop{}, 2.3, 1000);
    const auto refused = measure_trace(recording, {TraceTest::drop_jump, Legs::both, {}, {}, {}});
    REQUIRE_FALSE(refused);
    CHECK(refused.refusal().code == RefusalCode::quiet_too_short);
    CHECK(refused.refusal().field == "body_mass_kg");
    const auto weighed = measure_trace(recording, {TraceTest::drop_jump, Legs::both, 75.0, 0.45, {}});
    REQUIRE(weighed);
    CHECK(near(value(*weighed, "drop_height"), 0.30, 0.003));
    REQUIRE(weighed->warnings.size() == 1); // 30 cm from a box of 45 cm
    CHECK(weighed->warnings[0].find("30 cm") != std::string::npos);
}

TEST_CASE("Hops of the drop's contact and flight, six in a row") {
    // Every contact of 0.2 s that meets 2.4 m/s downward and sends it up again: F = pi m (2 v + g T) / 2T sin(pi t / T).
    struct Hops {
        double force(double t) const {
            const double contact = 0.2, flight = 2 * 2.4 / g, period = contact + flight;
            const double top = std::numbers::pi * 75 * (4.8 + g * contact) / (2 * contact);
            if (t < 0.5 || t > 0.5 + 7 * period - flight)
                return 0;
            const double within = std::fmod(t - 0.5, period);
            return within < contact ? top * std::sin(std::numbers::pi * within / contact) : 0;
        }
    };
    const auto hops = measured(sampled(Hops{}, 6, 1000), TraceTest::repeated_hops);
    CHECK(value(hops, "hop_count") == 6);
    CHECK(near(value(hops, "contact_time"), 0.2, 0.001));
    CHECK(near(value(hops, "flight_time"), 0.48946378, 0.001));
    CHECK(near(value(hops, "reactive_strength_height"), 1.4683913, 0.015));
    CHECK(near(value(hops, "reactive_strength_flight"), 2.4473189, 0.015));
    CHECK(value(hops, "contact_time_spread") < 0.001);
    CHECK(near(hops.body_weight_n, 75 * 9.80665, 0.01 * 735.5)); // the mean force of whole hops
    REQUIRE(hops.warnings.size() == 1);
    CHECK(hops.warnings[0].find("mean force of the hops") != std::string::npos);
}

TEST_CASE("A side bound: the jump's vertical force with a sideways lobe of 400 N over 0.4 s is 1.0 m/s") {
    auto recording = sampled(Jump{}, 6.5, 1000);
    for (std::size_t i = 0; i < recording.plates[0].vertical.size(); ++i) {
        const double t = static_cast<double>(i) / 1000 - 1.9, s = std::sin(std::numbers::pi * t / 0.4);
        recording.plates[0].lateral.push_back(static_cast<float>(7 + (t > 0 && t < 0.4 ? -400 * s * s : 0)));
    }
    const auto result = measure_trace(recording, {TraceTest::lateral_bound, Legs::left, {}, {}, {}});
    REQUIRE(result);
    CHECK(near(value(*result, "take_off_speed_sideways"), 1.0, 1e-3)); // 400 0.4 / 2 / 80
    CHECK(near(value(*result, "take_off_speed"), 2.85290025, 1e-3));
    CHECK(near(value(*result, "take_off_speed_together"), 3.02308, 1e-3)); // sqrt(1 + 2.8529^2)
    CHECK(near(value(*result, "take_off_angle"), 70.683, 0.03));           // atan 2.8529
    CHECK(near(value(*result, "peak_force_sideways"), 400, 0.1));
}

} // namespace amentum
