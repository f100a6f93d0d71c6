// Two jumps recorded on force plates by M. Duarte (BMClab, "Notes on scientific computing for biomechanics and motor
// control", data folder, CC BY 4.0): jump1.txt, 450 Hz, and GRFZjump.txt, 600 Hz. The values for jump1 were computed
// apart from this program (trapezoid rule, quietest second, 10 N); for GRFZjump the notebook itself prints take-off
// 0.907 s and landing 1.323 s by its own rules. The files are no part of the product: the test looks for them beside
// the repository and says loudly when they are absent.
#include "force_traces/measure_trace.h"

#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <iostream>
#include <sstream>

namespace amentum {
namespace {

// The last column of a text file, after its header line if there is one.
std::optional<ForceRecording> read(const std::string& name, double rate_hz) {
    std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/../shared/open_data/" + name);
    if (!file) {
        std::cout << "SKIPPED open jump trial " << name << ": ../shared/open_data is absent\n";
        return std::nullopt;
    }
    ForceRecording recording{rate_hz, {{name, Side::none, {}, {}}}, {}};
    for (std::string line; std::getline(file, line);) {
        std::istringstream words(line);
        double last = 0;
        bool any = false;
        for (double each; words >> each; any = true)
            last = each;
        if (any)
            recording.plates[0].vertical.push_back(static_cast<float>(last));
    }
    return recording;
}

TraceMeasurement measured(const ForceRecording& recording) {
    auto result = measure_trace(recording, {TraceTest::countermovement_jump, Legs::both, {}, {}, {}});
    if (!result)
        FAIL(result.refusal().sentence);
    return *result;
}

void check_near(double value, double expected, double tolerance) {
    CAPTURE(value);
    CAPTURE(expected);
    CHECK(std::abs(value - expected) <= tolerance);
}

double event_s(const TraceMeasurement& trace, const std::string& key) {
    for (const auto& event : trace.events)
        if (event.key == key)
            return event.used_s;
    FAIL("no event " << key);
    return 0;
}

} // namespace

TEST_CASE("jump1: weight, times, heights and power") {
    const auto recording = read("jump1.txt", 450);
    if (!recording)
        return;
    REQUIRE(recording->samples() == 4500);
    const auto jump = measured(*recording);
    const auto value = [&](const char* key) { return jump.metric(key)->value; };
    check_near(jump.body_weight_n, 692.60, 0.5);
    check_near(event_s(jump, "quiet_from"), 3.160, 0.005);
    check_near(event_s(jump, "onset"), 4.1444, 0.01);
    check_near(event_s(jump, "take_off"), 5.0911, 0.0023);
    check_near(value("flight_time"), 0.5511, 0.0023);
    check_near(value("take_off_speed"), 2.6417, 0.006);
    check_near(value("jump_height_impulse"), 0.3558, 0.002);
    check_near(value("jump_height_flight"), 0.3723, 0.002);
    check_near(value("countermovement_depth"), 0.3269, 0.002);
    check_near(value("take_off_rise"), 0.1363, 0.003);
    check_near(value("peak_force"), 1492.25, 0.1);
    check_near(value("peak_power"), 3595.2, 36);
    // The plate was set to zero by its device: the program must say that an offset cannot be seen.
    REQUIRE_FALSE(jump.corrections.empty());
    CHECK(jump.corrections[0].find("set to zero") != std::string::npos);
}

TEST_CASE("GRFZjump: 0.15 s of quiet standing are refused, and the offset of +5.84 N is told") {
    const auto recording = read("GRFZjump.txt", 600);
    if (!recording)
        return;
    REQUIRE(recording->samples() == 1200);
    const auto result = measure_trace(*recording, {TraceTest::countermovement_jump, Legs::both, {}, {}, {}});
    REQUIRE_FALSE(result);
    CHECK(result.refusal().code == RefusalCode::quiet_too_short);
    CAPTURE(result.refusal().sentence);
    CHECK(result.refusal().sentence.find("0.9") != std::string::npos); // take-off at 0.907 s
    // +5.84 N over the whole flight; the standard error of that mean is 0.4 N, and where the flight is cut moves it.
    const auto at = result.refusal().sentence.find("read +");
    REQUIRE(at != std::string::npos);
    check_near(std::stod(result.refusal().sentence.substr(at + 6)), 5.84, 0.2);
}

} // namespace amentum
