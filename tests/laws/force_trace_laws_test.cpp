// What must hold for every force trace, whatever its numbers (no expected values; the sampling noise is seeded).
#include "../closed_form/analytic_traces.h"
#include "force_traces/compare_trials.h"
#include "force_traces/measure_trace.h"

#include <doctest/doctest.h>

#include <set>

namespace amentum {
namespace {

using namespace analytic;

TraceMeasurement measured(const ForceRecording& recording, TraceTest test = TraceTest::countermovement_jump,
                          const std::map<std::string, double>& moved = {}) {
    auto result = measure_trace(recording, {test, Legs::both, {}, {}, moved});
    if (!result)
        FAIL(result.refusal().sentence);
    return *result;
}

double value(const TraceMeasurement& trace, const std::string& key) {
    const auto* metric = trace.metric(key);
    if (!metric)
        FAIL("no metric " << key);
    return metric->value;
}

double event_s(const TraceMeasurement& trace, const std::string& key) {
    for (const auto& event : trace.events)
        if (event.key == key)
            return event.used_s;
    FAIL("no event " << key);
    return 0;
}

ForceRecording noisy_jump(std::uint64_t seed = 3, double shift = 0) {
    return disturbed(sampled(Jump{}, 6.5, 1000, shift), 0, 0, 2, seed);
}

struct MeanAndSd {
    double mean, sd;
};
MeanAndSd spread(const std::vector<double>& values) {
    double sum = 0, squares = 0;
    const double n = static_cast<double>(values.size());
    for (const double each : values)
        sum += each;
    for (const double each : values)
        squares += (each - sum / n) * (each - sum / n);
    return {sum / n, std::sqrt(squares / (n - 1))};
}

} // namespace

TEST_CASE("Twice the force: twice the newtons and watts, the same heights, speeds and times") {
    const auto jump = noisy_jump();
    auto doubled = jump;
    for (float& force : doubled.plates[0].vertical)
        force *= 2;
    const auto one = measured(jump), two = measured(doubled);
    const std::set<std::string> of_force{"N", "W", "N s"};
    CHECK(one.metrics.size() >= 14);
    for (const auto& metric : one.metrics) {
        CAPTURE(metric.key);
        const double factor = of_force.contains(metric.unit) ? 2 : 1;
        CHECK(value(two, metric.key) == doctest::Approx(factor * metric.value).epsilon(1e-9));
        REQUIRE(metric.trace_error);
        CHECK(*two.metric(metric.key)->trace_error ==
              doctest::Approx(factor * *metric.trace_error).epsilon(1e-6));
    }
}

TEST_CASE("A later start of the recording changes no number") {
    auto later = noisy_jump();
    auto& force = later.plates[0].vertical;
    const std::vector<float> standing(force.begin(), force.begin() + 400);
    force.insert(force.begin(), standing.begin(), standing.end());
    const std::map<std::string, double> quiet{{"quiet_from", 0.3}, {"quiet_to", 1.3}};
    const std::map<std::string, double> quiet_later{{"quiet_from", 0.7}, {"quiet_to", 1.7}};
    const auto one = measured(noisy_jump(), TraceTest::countermovement_jump, quiet);
    const auto two = measured(later, TraceTest::countermovement_jump, quiet_later);
    for (const auto& metric : one.metrics) {
        CAPTURE(metric.key);
        CHECK(value(two, metric.key) == doctest::Approx(metric.value).epsilon(1e-9));
    }
    CHECK(event_s(two, "take_off") == doctest::Approx(event_s(one, "take_off") + 0.4));
}

TEST_CASE("Feet changed over: every share of the legs changes its sign, nothing else changes") {
    const auto left_heavy = on_two_plates(noisy_jump(), 0.55);
    auto changed = left_heavy;
    std::swap(changed.plates[0].side, changed.plates[1].side);
    const auto one = measured(left_heavy), two = measured(changed);
    int shares = 0;
    for (const auto& metric : one.metrics) {
        CAPTURE(metric.key);
        const bool share = metric.key.rfind("left_share_", 0) == 0;
        shares += share;
        CHECK(value(two, metric.key) == doctest::Approx(share ? -metric.value : metric.value).epsilon(1e-9));
        if (share) // 0.55 - 0.45 of the force
            CHECK(std::abs(metric.value - 10) < 0.2);
    }
    CHECK(shares == 4);
}

TEST_CASE("A moved event changes what follows from it, keeps the automatic time, and leaves the rest alone") {
    const auto jump = noisy_jump();
    const auto before = measured(jump);
    const auto same = [&](const TraceMeasurement& after, const std::string& key) {
        return value(after, key) == value(before, key);
    };
    SUBCASE("the landing: flight time, not take-off speed") {
        const auto after = measured(jump, TraceTest::countermovement_jump, {{"landing", 2.95}});
        CHECK_FALSE(same(after, "jump_height_flight"));
        CHECK_FALSE(same(after, "flight_time"));
        for (const char* key : {"jump_height_impulse", "peak_power", "braking_impulse", "time_to_take_off"})
            CHECK(same(after, key));
        for (const auto& event : after.events)
            if (event.key == "landing") {
                CHECK(event.used_s == doctest::Approx(2.95));
                CHECK(event.automatic_s == doctest::Approx(event_s(before, "landing")));
            }
    }
    SUBCASE("the lowest point: depth and the phases beside it, not the heights") {
        const auto after = measured(jump, TraceTest::countermovement_jump, {{"lowest", 2.10}});
        CHECK_FALSE(same(after, "countermovement_depth"));
        CHECK_FALSE(same(after, "propulsion_impulse"));
        for (const char* key : {"jump_height_impulse", "jump_height_flight", "net_impulse", "peak_power"})
            CHECK(same(after, key));
    }
    SUBCASE("the weighing: nearly everything, but no flight time") {
        const auto after =
            measured(jump, TraceTest::countermovement_jump, {{"quiet_from", 0.1}, {"quiet_to", 1.15}});
        CHECK_FALSE(same(after, "jump_height_impulse"));
        CHECK(same(after, "flight_time"));
    }
    SUBCASE("an event said to be where it already is changes nothing") {
        const auto after =
            measured(jump, TraceTest::countermovement_jump, {{"take_off", event_s(before, "take_off")}});
        for (const auto& metric : before.metrics)
            CHECK(same(after, metric.key));
    }
}

TEST_CASE(
    "The claimed standard errors cover: 500 seeded traces of one jump, wherever the sample grid falls") {
    std::vector<double> height, flight, depth, impulse;
    double height_error = 0, flight_error = 0, depth_error = 0, impulse_error = 0;
    Noise grid(99);
    const int traces = 500;
    for (int i = 0; i < traces; ++i) {
        const auto jump = measured(noisy_jump(1000 + static_cast<std::uint64_t>(i), grid.uniform()));
        const auto take = [&](const char* key, std::vector<double>& values, double& error) {
            values.push_back(value(jump, key));
            error += *jump.metric(key)->trace_error / traces;
        };
        take("jump_height_impulse", height, height_error);
        take("jump_height_flight", flight, flight_error);
        take("countermovement_depth", depth, depth_error);
        take("net_impulse", impulse, impulse_error);
    }
    const auto covers = [&](const std::string& name, const std::vector<double>& values, double claimed) {
        const double sd = spread(values).sd;
        MESSAGE(name << ": scatter " << sd << ", claimed " << claimed);
        CHECK(sd / claimed > 0.8);
        CHECK(sd / claimed < 1.2);
    };
    covers("height from take-off speed, m", height, height_error);
    covers("height from flight time, m", flight, flight_error);
    covers("depth, m", depth, depth_error);
    covers("net impulse, N s", impulse, impulse_error);
}

TEST_CASE("Noise of 9 N instead of 2 doubles the scatter, and the claimed error grows with it") {
    std::vector<double> height;
    double claimed = 0;
    for (std::uint64_t i = 0; i < 300; ++i) {
        const auto jump = measured(disturbed(sampled(Jump{}, 6.5, 1000), 0, 0, 9, 5000 + i));
        height.push_back(value(jump, "jump_height_impulse"));
        claimed += *jump.metric("jump_height_impulse")->trace_error / 300;
    }
    MESSAGE("scatter " << spread(height).sd << ", claimed " << claimed);
    CHECK(spread(height).sd / claimed > 0.8);
    CHECK(spread(height).sd / claimed < 1.2);
}

TEST_CASE("Trials in another order: the same means and the same judgement") {
    const auto a = measured(noisy_jump(1)), b = measured(noisy_jump(2)), c = measured(noisy_jump(3));
    const auto one = compare_trials({a, b, c}), two = compare_trials({c, a, b});
    REQUIRE(one);
    REQUIRE(two);
    REQUIRE(one->metrics.size() == two->metrics.size());
    CHECK(one->disagreements.empty());
    for (std::size_t i = 0; i < one->metrics.size(); ++i) {
        CHECK(one->metrics[i].mean == doctest::Approx(two->metrics[i].mean));
        CHECK(one->metrics[i].spread == doctest::Approx(two->metrics[i].spread));
    }
}

} // namespace amentum
