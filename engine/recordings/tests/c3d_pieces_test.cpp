// A C3D file comes in pieces: however they are cut, and however rows lie between points, the recording is the same.
// Files are made by c3d_writer, which shares no code with the reader; the forces expected are those that went into them.
#include "c3d_reading.h"
#include "c3d_writer.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

using namespace tests;

// Newtons on a plate, upward: somebody of 800 N sways; plate 2 carries less.
double upward(int sample, int plate) {
    return (plate == 0 ? 800 : 300) + 100 * std::sin(0.05 * sample) + plate;
}

constexpr float newtons_a_step = 0.25F;

// Twelve channels: Fx, Fy, Fz, Mx, My, Mz of two plates whose z points down, so that Fz is minus the upward force.
WrittenFile two_plates() {
    WrittenFile file;
    file.frames = 60;
    file.samples_a_frame = 5;
    file.frames_a_second = 200;
    file.points = 3;
    for (int plate = 0; plate < 2; ++plate)
        for (const char* name : {"Fx", "Fy", "Fz", "Mx", "My", "Mz"})
            file.channels.push_back({name + std::to_string(plate + 1), "N", newtons_a_step, 7});
    file.plates = {{2, {1, 2, 3, 4, 5, 6}, level_corners(0, 0), {}},
                   {2, {7, 8, 9, 10, 11, 12}, level_corners(600, 0), {}}};
    file.raw = [](int sample, int channel) {
        if (channel % 6 != 2)
            return 11.0 * channel;
        return std::round(-upward(sample, channel / 6) / static_cast<double>(newtons_a_step)) + 7;
    };
    return file;
}

void check_two_plates(const Result<ForceRecording>& read) {
    REQUIRE_MESSAGE(read, (read ? "" : read.refusal().sentence));
    CHECK(read->rate_hz == doctest::Approx(1000));
    REQUIRE(read->plates.size() == 2);
    REQUIRE(read->samples() == 300);
    double worst = 0;
    for (int plate = 0; plate < 2; ++plate)
        for (int i = 0; i < 300; ++i)
            worst = std::max(worst, std::abs(static_cast<double>(read->plates[static_cast<std::size_t>(plate)]
                                                                     .vertical[static_cast<std::size_t>(i)]) -
                                             upward(i, plate)));
    CHECK(worst <= static_cast<double>(newtons_a_step) / 2 + 1e-3); // half a step of the whole numbers
}

} // namespace

TEST_CASE("However the file is cut into pieces, the recording is the same") {
    for (const bool data_first : {false, true})
        for (const int points : {0, 3}) {
            WrittenFile file = two_plates();
            file.data_first = data_first;
            file.points = points;
            file.frames = 60;
            const std::string bytes = write_c3d(file);
            const auto whole = read_c3d(bytes);
            check_two_plates(whole);
            int differ = 0;
            const auto compare = [&](const Result<ForceRecording>& read) {
                differ += !read || read->plates[0].vertical != whole->plates[0].vertical ||
                          read->plates[1].vertical != whole->plates[1].vertical ||
                          read->notes != whole->notes;
            };
            for (const std::size_t piece : {1U, 2U, 3U, 7U, 23U, 24U, 25U, 511U, 512U, 513U, 1000U})
                compare(read_c3d(bytes, {}, piece));
            for (std::size_t block = 512; block < bytes.size(); block += 512)
                for (std::size_t cut = block - 4; cut <= std::min(block + 4, bytes.size()); ++cut) {
                    C3dForceReader reader({});
                    CHECK(reader.take(std::string_view(bytes).substr(0, cut)));
                    CHECK(reader.take(std::string_view(bytes).substr(cut)));
                    compare(reader.finish());
                }
            CHECK(differ == 0);
        }
}

TEST_CASE("Reals with many points between rows, one row a frame or many, in small and large pieces") {
    for (const int rows : {1, 2, 20, 300}) {
        WrittenFile file;
        file.points = 40;
        file.reals = true;
        file.samples_a_frame = rows;
        file.frames = 6000 / rows;
        file.frames_a_second = 1000.0F / static_cast<float>(rows);
        file.channels = {{"a"}, {"Fz"}, {"b"}};
        file.raw = [](int sample, int channel) { return channel == 1 ? sample + 0.5 : -9e5; };
        const std::string bytes = write_c3d(file);
        for (const std::size_t piece : {std::size_t{0}, std::size_t{977}, std::size_t{65536}}) {
            const auto read = read_c3d(bytes, {.vertical = {"2"}}, piece);
            REQUIRE_MESSAGE(read, (read ? "" : read.refusal().sentence));
            int wrong = 0;
            for (std::size_t i = 0; i < 6000; ++i)
                wrong += read->plates[0].vertical[i] != static_cast<float>(i) + 0.5F;
            CHECK(wrong == 0);
        }
    }
}

TEST_CASE("300 channels: labels, scales and offsets go on beyond 255") {
    WrittenFile file;
    file.frames = 50;
    for (int i = 0; i < 300; ++i)
        file.channels.push_back({"channel " + std::to_string(i + 1), "N", i < 270 ? 1.0F : 0.5F, i});
    file.raw = [](int sample, int channel) { return channel == 279 ? 1000 + 2 * sample + 279 : 0; };
    const auto read = read_c3d(write_c3d(file), {.vertical = {"Channel 280"}});
    REQUIRE_MESSAGE(read, (read ? "" : read.refusal().sentence));
    CHECK(read->plates[0].name == "channel 280");
    CHECK(read->plates[0].vertical[0] == 500.0F); // (1000 + 279 - 279) x 0.5
    CHECK(read->plates[0].vertical[49] == 549.0F);
}

TEST_CASE("More frames than 16 bits hold, and no long count: 65,535 are read") {
    WrittenFile file;
    file.frames = 70000;
    file.channels = {{"Fz"}};
    file.raw = [](int sample, int) { return sample % 1000; };
    CHECK(read_c3d(write_c3d(file), {.vertical = {"Fz"}})->samples() == 65535);
}

} // namespace amentum
