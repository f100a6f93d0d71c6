// Force plates of types 1 to 4, how they lie, which way is up, and what is refused. Expected forces are worked out by
// hand beside each check, from the formulas of the guide [GuideC3D, "Force platforms"].
#include "c3d_reading.h"
#include "c3d_writer.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

namespace amentum {
namespace {

using namespace tests;

// A file whose channels hold the same values in every sample.
WrittenFile steady(std::vector<double> values, WrittenPlate plate) {
    WrittenFile file;
    file.reals = true;
    for (std::size_t i = 0; i < values.size(); ++i)
        file.channels.push_back({"c" + std::to_string(i + 1)});
    file.raw = [values](int, int channel) { return values[static_cast<std::size_t>(channel)]; };
    file.plates = {std::move(plate)};
    return file;
}

double first(const Result<ForceRecording>& read) {
    REQUIRE_MESSAGE(read, (read ? "" : read.refusal().sentence));
    return static_cast<double>(read->plates[0].vertical[0]);
}

std::string sentence(const Result<ForceRecording>& read) {
    REQUIRE_FALSE(read);
    return read.refusal().sentence;
}

bool says(const Result<ForceRecording>& read, std::string_view part) {
    return sentence(read).find(part) != std::string::npos;
}

} // namespace

TEST_CASE("Types 1 and 2: the third channel, through CHANNEL, offset, scale and general scale") {
    for (const int type : {1, 2}) {
        WrittenFile file =
            steady({1, 2, 3, 4, 5, -410, 7, 8}, {type, {1, 2, 6, 3, 4, 5}, level_corners(0, 0), {}});
        file.channels[5].scale = 0.5F;
        file.channels[5].offset = -10;
        file.general_scale = 4;
        CHECK(first(read_c3d(write_c3d(file))) == 800); // -((-410 + 10) x 0.5 x 4)
    }
}

TEST_CASE("Type 3: four vertical sensors are added") {
    const WrittenFile file = steady({10, 20, 30, 40, -100, -200, -150, -50},
                                    {3, {1, 2, 3, 4, 5, 6, 7, 8}, level_corners(0, 0), {}});
    const auto read = read_c3d(write_c3d(file), {.lateral = {"x"}});
    CHECK(first(read) == 500);                  // 100 + 200 + 150 + 50
    CHECK(read->plates[0].lateral[0] == 30.0F); // Fx12 + Fx34, plate x along lab x
    const auto across = read_c3d(write_c3d(file), {.lateral = {"y"}});
    CHECK(across->plates[0].lateral[0] == -70.0F); // -(Fy14 + Fy23), plate y against lab y
}

TEST_CASE("Type 4: F = C V, the output runs fastest in CAL_MATRIX") {
    WrittenPlate plate{4, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}};
    // Row 3 (Fz): 0.5 0 -200 0 1 3; row 1 (Fx): 100 2 0 0 0 0. Element (i, j) stands at i + 6 j, both from 0.
    plate.matrix[2] = 0.5F;
    plate.matrix[2 + 6 * 2] = -200;
    plate.matrix[2 + 6 * 4] = 1;
    plate.matrix[2 + 6 * 5] = 3;
    plate.matrix[0] = 100;
    plate.matrix[6] = 2;
    WrittenFile file = steady({0.2, -0.3, 4, 9, 10, -2}, plate);
    for (auto& channel : file.channels)
        channel.unit = "V"; // the matrix makes newtons, so volts are no question here
    const auto read = read_c3d(write_c3d(file), {.lateral = {"x"}});
    CHECK(first(read) ==
          doctest::Approx(795.9)); // -(0.5 x 0.2 - 200 x 4 + 1 x 10 + 3 x -2) = -(0.1 - 800 + 10 - 6)
    CHECK(static_cast<double>(read->plates[0].lateral[0]) == doctest::Approx(19.4)); // 100 x 0.2 + 2 x -0.3
}

TEST_CASE("A tilted plate: the lab vertical takes its share of Fx") {
    // Turned about lab y by 10 degrees from level: plate x = (cos, 0, sin), plate y = (0, -1, 0),
    // z = x cross y = (sin, 0, -cos). A force (Fx, Fy, Fz) of the plate lifts by Fx sin - Fz cos.
    const double a = 10 * std::numbers::pi / 180;
    WrittenPlate plate{2, {1, 2, 3, 4, 5, 6}, {}, {}};
    const std::array<std::array<double, 2>, 4> quadrants{{{1, 1}, {-1, 1}, {-1, -1}, {1, -1}}};
    for (std::size_t c = 0; c < 4; ++c) {
        plate.corners[3 * c] = static_cast<float>(250 * quadrants[c][0] * std::cos(a));
        plate.corners[3 * c + 1] = static_cast<float>(-200 * quadrants[c][1]);
        plate.corners[3 * c + 2] = static_cast<float>(250 * quadrants[c][0] * std::sin(a));
    }
    const auto read = read_c3d(write_c3d(steady({100, 50, -700, 0, 0, 0}, plate)), {.lateral = {"x"}});
    CHECK(first(read) == doctest::Approx(100 * std::sin(a) + 700 * std::cos(a)).epsilon(1e-6));
    CHECK(static_cast<double>(read->plates[0].lateral[0]) ==
          doctest::Approx(100 * std::cos(a) - 700 * std::sin(a)).epsilon(1e-6));
    CHECK(has_note(*read, "leans by 10.00 degrees"));
}

TEST_CASE("A lab whose y is up") {
    WrittenPlate plate{2, {1, 2, 3, 4, 5, 6}, {}, {}};
    // Plate x along lab x, plate y along lab z, so z = x cross z = -y: down.
    plate.corners = {250, 0, 200, -250, 0, 200, -250, 0, -200, 250, 0, -200};
    const auto bytes = write_c3d(steady({30, 40, -700, 0, 0, 0}, plate));
    const auto read = read_c3d(bytes, {.lateral = {"z"}});
    CHECK(first(read) == 700);
    CHECK(read->plates[0].lateral[0] == 40.0F);
    CHECK(has_note(*read, "lab axis y is the vertical"));
    CHECK(read_c3d(bytes, {.lateral = {"y"}}).refusal().field == "lateral");
}

TEST_CASE("A file that gives the force on the plate is turned upward, with its lateral force") {
    const auto bytes =
        write_c3d(steady({30, 40, 700, 0, 0, 0}, {2, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}}));
    const auto read = read_c3d(bytes, {.lateral = {"x"}});
    CHECK(first(read) == 700);
    CHECK(read->plates[0].lateral[0] == -30.0F);
    CHECK(has_note(*read, "turned upward"));
}

TEST_CASE("A jump on a plate with an offset the other way is still upward, and an unused plate follows the "
          "used one") {
    WrittenFile file =
        steady({0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}, {2, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}});
    file.plates.push_back({2, {7, 8, 9, 10, 11, 12}, level_corners(600, 0), {}});
    file.frames = 4000;
    // Force on the plate: 900 N down for a tenth of the time, else 120 N the wrong way; the other plate only -3 N.
    file.raw = [](int sample, int channel) {
        return channel == 2 ? (sample < 400 ? 900 : -120) : channel == 8 ? -3 : 0;
    };
    const auto read = read_c3d(write_c3d(file));
    CHECK(first(read) == 900);
    CHECK(read->plates[0].vertical[3999] == -120.0F);
    CHECK(read->plates[1].vertical[0] == -3.0F);
}

TEST_CASE("ZERO: what the empty plate reads is said, nothing is subtracted") {
    WrittenFile file = steady({0, 0, 0, 0, 0, 0}, {2, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}});
    file.samples_a_frame = 2;
    file.zero = {2, 3}; // samples 3 to 6, counted from 1
    file.raw = [](int sample, int channel) {
        return channel == 2 ? (sample < 6 ? -(10.0 + sample) : -800.0) : 0;
    };
    const auto read = read_c3d(write_c3d(file));
    CHECK(read->plates[0].vertical[2] == 12.0F);
    CHECK(has_note(*read, "frames 2 to 3"));
    CHECK(has_note(*read, "plate 1 13.50 N. Nothing was subtracted")); // (12 + 13 + 14 + 15) / 4
    file.zero = {15, 25};                                              // the file has 20
    CHECK(has_note(*read_c3d(write_c3d(file)), "which the file does not have"));
}

TEST_CASE("Without corners the plate is taken as level, and lateral is refused") {
    const auto bytes = write_c3d(steady({5, 6, -700, 0, 0, 0}, {2, {1, 2, 3, 4, 5, 6}, {}, {}}));
    const auto read = read_c3d(bytes);
    CHECK(first(read) == 700);
    CHECK(has_note(*read, "taken as level"));
    CHECK(says(read_c3d(bytes, {.lateral = {"x"}}), "FORCE_PLATFORM:CORNERS"));
    WrittenPlate flat{2, {1, 2, 3, 4, 5, 6}, {1, 0, 0, 2, 0, 0, 3, 0, 0, 4, 0, 0}, {}};
    CHECK(says(read_c3d(write_c3d(steady({5, 6, -700, 0, 0, 0}, flat))), "do not make a rectangle"));
}

TEST_CASE("Which plates: one or two as they are, more by number, feet in the order named") {
    WrittenFile file = steady(std::vector<double>(18, 0.0), {2, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}});
    file.plates.push_back({2, {7, 8, 9, 10, 11, 12}, level_corners(600, 0), {}});
    file.raw = [](int, int channel) { return channel % 6 == 2 ? -100.0 * (1 + channel / 6) : 0; };
    const auto two = read_c3d(write_c3d(file));
    CHECK(two->plates[0].side == Side::left);
    CHECK(two->plates[1].side == Side::right);
    CHECK(has_note(*two, "left_foot_on_second"));
    CHECK(read_c3d(write_c3d(file), {.left_foot_on_second = true})->plates[0].side == Side::right);
    CHECK(read_c3d(write_c3d(file), {.vertical = {"2"}})->plates[0].side == Side::none);

    file.channels[2].label = "Right Fz";
    file.channels[8].label = "Left Fz";
    CHECK(read_c3d(write_c3d(file))->plates[0].side == Side::right);

    file.plates.push_back({2, {13, 14, 15, 16, 17, 18}, level_corners(1200, 0), {}});
    const auto bytes = write_c3d(file);
    CHECK(says(read_c3d(bytes), "has 3 force plates"));
    CHECK(read_c3d(bytes).refusal().allowed == "one or two of 1, 2, 3");
    const auto chosen = read_c3d(bytes, {.vertical = {"3", "1"}});
    REQUIRE(chosen);
    CHECK(chosen->plates[0].name == "plate 3");
    CHECK(chosen->plates[0].side == Side::left);
    CHECK(chosen->plates[0].vertical[0] == 300.0F);
    CHECK(chosen->plates[1].vertical[0] == 100.0F);
    CHECK(says(read_c3d(bytes, {.vertical = {"4"}}), "There is no force plate or analog channel \"4\""));
    CHECK(says(read_c3d(bytes, {.vertical = {"1", "1"}}), "different plates"));
}

TEST_CASE("Types from 5 on are refused by number, unless another plate is asked for") {
    WrittenFile file = steady({0, 0, -50, 0, 0, 0}, {5, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}});
    CHECK(says(read_c3d(write_c3d(file)), "FORCE_PLATFORM:TYPE of plate 1 is 5; plates of types 1 to 4"));
    file.plates.push_back({2, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}});
    CHECK(read_c3d(write_c3d(file), {.vertical = {"2"}}));
}

TEST_CASE("Analog-only files: a channel by its label, in its unit or in the one given") {
    WrittenFile file = steady({20, -3}, {});
    file.plates.clear();
    file.channels[0] = {"Ground Fz", "kg", 1, 0};
    file.channels[1] = {"Ground Fx", "V", 1, 0};
    const auto bytes = write_c3d(file);
    CHECK(says(read_c3d(bytes), "no force plate"));
    CHECK(says(read_c3d(bytes), "Ground Fz, Ground Fx"));
    CHECK(first(read_c3d(bytes, {.vertical = {"ground fz"}})) == doctest::Approx(196.133)); // 20 x 9.80665
    CHECK(first(read_c3d(bytes, {.unit = ForceUnit::newton, .vertical = {"1"}})) == 20);
    CHECK(says(read_c3d(bytes, {.vertical = {"Ground Fz"}, .lateral = {"Ground Fx"}}), "is \"V\""));
    CHECK(read_c3d(bytes, {.unit = ForceUnit::volt, .vertical = {"1"}}).refusal().field ==
          "newtons_per_volt");
    const auto volts = read_c3d(bytes, {.unit = ForceUnit::volt,
                                        .newtons_per_volt = 50,
                                        .vertical = {"Ground Fz"},
                                        .lateral = {"Ground Fx"}});
    CHECK(first(volts) == 1000);
    CHECK(volts->plates[0].lateral[0] == -150.0F);
    CHECK(says(read_c3d(bytes, {.vertical = {"Ground Fy"}}), "Did you mean"));
}

TEST_CASE("Counts, rates and values that cannot be are refused by name") {
    const WrittenPlate plate{2, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}};
    WrittenFile file = steady({0, 0, -700, 0, 0, 0}, plate);
    file.frames_a_second = 20;
    CHECK(read_c3d(write_c3d(file)).refusal().code == RefusalCode::wrong_rate);
    file.frames_a_second = 15000;
    file.samples_a_frame = 2;
    CHECK(read_c3d(write_c3d(file)).refusal().field == "ANALOG:RATE");
    file = steady({0, 0, -700, 0, 0, 0}, plate);
    CHECK(read_c3d(write_c3d(file), {.rate_hz = 1200}).refusal().code == RefusalCode::wrong_rate);
    CHECK(read_c3d(write_c3d(file), {.rate_hz = 1000}));
    file.channels[2].scale = 0;
    CHECK(read_c3d(write_c3d(file)).refusal().field == "ANALOG:SCALE");
    file = steady({0, 0, -700, 0, 0, 0}, {2, {1, 2, 9, 4, 5, 6}, level_corners(0, 0), {}});
    CHECK(
        says(read_c3d(write_c3d(file)), "FORCE_PLATFORM:CHANNEL names analog channel 9, but the file has 6"));
    file = steady({0, 0, -700, 0, 0, 0}, plate);
    file.raw = [](int sample, int channel) {
        return channel == 2 && sample == 13 ? std::numeric_limits<double>::quiet_NaN() : -1.0;
    };
    CHECK(read_c3d(write_c3d(file)).refusal().field == "sample 14");
    file.raw = [](int sample, int channel) { return channel == 2 && sample == 3 ? -2e6 : -1.0; };
    CHECK(says(read_c3d(write_c3d(file)), "1,000,000 N"));
    file = steady({0, 0, -700, 0, 0, 0}, plate);
    const std::string bytes = write_c3d(file);
    const auto cut =
        read_c3d(std::string_view(bytes).substr(0, bytes.size() - 512)); // the last block holds data
    CHECK(says(cut, "of the 20 that POINT:FRAMES promises"));
    CHECK(says(read_c3d(std::string_view(bytes).substr(0, 700)), "within its header or parameter section"));
    CHECK(says(read_c3d("Time,Fz\n0,800\n" + std::string(600, ' ')), "not a C3D file"));
    CHECK_FALSE(read_c3d(""));
}

} // namespace amentum
