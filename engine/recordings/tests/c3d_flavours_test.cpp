// One recording in all six flavours of C3D, on platforms of types 1 to 4: each must be read alike, and as it was written.
//
// The files come from c3d_writer.h, which follows [GuideC3D] without any of the reader's code. The forces are whole
// newtons, so that 16-bit files hold them exactly: plate 1 carries 400 + 3 n, plate 2 carries 350 + 2 n upward in sample n.
#include "c3d_writer.h"
#include "recordings/c3d_forces.h"
#include "recordings/c3d_layout.h"
#include "recordings/c3d_summary.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::tests;

namespace {

double upward(int plate, int sample) {
    return plate == 0 ? 400 + 3 * sample : 350 + 2 * sample;
}

// Channels of one plate of a type, whose forces are those of a body of `force` newtons, in plate axes (z down).
std::vector<double> channels_of(int type, double force) {
    switch (type) {
    case 1: // Fx Fy Fz Px Py Mz: the centre of pressure stands in the channels
        return {7, -4, force, 12, -8, 3};
    case 2: // Fx Fy Fz Mx My Mz
        return {7, -4, force, 90, 60, 3};
    case 3: // Fx12 Fx34 Fy14 Fy23 Fz1 Fz2 Fz3 Fz4
        return {4, 3, -1, -3, 100, force - 150, 30, 20};
    default: // six voltages; the matrix below makes Fz = 2 V3 + V4
        return {1, 2, (force - 40) / 2, 40, 5, 6};
    }
}

std::array<float, 36> matrix_of_type_4() {
    std::array<float, 36> c{}; // output + 6 x channel
    c[0 + 6 * 0] = 3;          // Fx = 3 V1
    c[1 + 6 * 1] = 5;          // Fy = 5 V2
    c[2 + 6 * 2] = 2;          // Fz = 2 V3 + V4
    c[2 + 6 * 3] = 1;
    c[5 + 6 * 5] = 1;
    return c;
}

WrittenFile two_plates(int type, Mark mark, bool reals) {
    WrittenFile file;
    file.mark = mark;
    file.reals = reals;
    file.general_scale = 2;
    const int each = type == 3 ? 8 : 6;
    for (int plate = 0; plate < 2; ++plate) {
        WrittenPlate written{type, {}, level_corners(plate == 0 ? 0.0f : 600.0f, 0), {}};
        if (type == 4)
            written.matrix = matrix_of_type_4();
        for (int i = 0; i < each; ++i) {
            file.channels.push_back(
                {"P" + std::to_string(plate + 1) + "C" + std::to_string(i + 1), "N", 0.25f, 5});
            written.channels.push_back(static_cast<int>(file.channels.size()));
        }
        file.plates.push_back(written);
    }
    file.raw = [type, each](int sample, int channel) {
        // value = (raw - 5) x 0.25 x 2
        return channels_of(type, upward(channel / each, sample))[static_cast<std::size_t>(channel % each)] /
                   0.5 +
               5;
    };
    return file;
}

Result<ForceRecording> read(const std::string& bytes, std::size_t piece = 1 << 20,
                            RecordingGiven given = {}) {
    C3dForceReader reader(std::move(given));
    for (std::size_t at = 0; at < bytes.size(); at += piece)
        if (const auto taken = reader.take(std::string_view(bytes).substr(at, piece)); !taken)
            return taken.refusal();
    return reader.finish();
}

void check_forces(const Result<ForceRecording>& recording, int samples) {
    REQUIRE_MESSAGE(recording, recording.refusal().sentence);
    REQUIRE(recording->plates.size() == 2);
    for (int plate = 0; plate < 2; ++plate) {
        const auto& vertical = recording->plates[static_cast<std::size_t>(plate)].vertical;
        REQUIRE(vertical.size() == static_cast<std::size_t>(samples));
        for (int sample = 0; sample < samples; ++sample)
            CHECK(vertical[static_cast<std::size_t>(sample)] == static_cast<float>(upward(plate, sample)));
    }
}

constexpr Mark marks[] = {Mark::intel, Mark::dec, Mark::mips};

} // namespace

TEST_CASE("six flavours and platforms of types 1 to 4 are read alike, and as they were written") {
    for (int type = 1; type <= 4; ++type)
        for (const Mark mark : marks)
            for (const bool reals : {false, true}) {
                CAPTURE(type);
                CAPTURE(static_cast<int>(mark));
                CAPTURE(reals);
                const auto recording = read(write_c3d(two_plates(type, mark, reals)));
                check_forces(recording, 20);
                CHECK(recording->rate_hz == 1000);
            }
}

TEST_CASE("the guide's own number: the DEC bytes 80 40 00 00 are one") {
    const char bytes[] = {static_cast<char>(0x80), 0x40, 0, 0};
    CHECK(c3d_real(bytes, C3dProcessor::dec) == 1.0f);
    CHECK(c3d_real("\0\0\0\0", C3dProcessor::dec) == 0.0f);
    CHECK(write_real(1, Mark::dec) == std::string(bytes, 4)); // the writer agrees
}

TEST_CASE("every liberty the format gives is taken and changes nothing") {
    for (const Mark mark : marks)
        for (const bool reals : {false, true})
            for (int liberty = 0; liberty < 9; ++liberty) {
                CAPTURE(static_cast<int>(mark));
                CAPTURE(reals);
                CAPTURE(liberty);
                WrittenFile file = two_plates(2, mark, reals);
                int samples = file.frames;
                switch (liberty) {
                case 0:
                    file.parameters_before_groups = true;
                    break;
                case 1:
                    file.locked = true;
                    break;
                case 2:
                    file.labels_in_first = 5; // LABELS2, SCALE2, OFFSET2, LABELS3
                    break;
                case 3:
                    file.points = 7; // markers before the analog samples of each frame
                    break;
                case 4:
                    file.samples_a_frame = 4;
                    file.frames_a_second = 250;
                    samples *= 4;
                    break;
                case 5:
                    file.long_counts_in_point = true;
                    break;
                case 6:
                    file.long_counts_in_trial = true;
                    break;
                case 7:
                    file.data_first = true;
                    break;
                case 8:
                    file.zero = {1, 5};
                    break;
                }
                const auto recording = read(write_c3d(file));
                check_forces(recording, samples);
                CHECK(recording->rate_hz == 1000);
            }
}

TEST_CASE("unsigned 16-bit values above 32,767 are read as such") {
    for (const Mark mark : marks) {
        WrittenFile file = two_plates(2, mark, false);
        file.unsigned_values = true;
        for (auto& channel : file.channels)
            channel.offset = 32400; // so that the values, but not the offset, lie above 32,767
        file.raw = [](int sample, int channel) {
            return channels_of(2, upward(channel / 6, sample))[static_cast<std::size_t>(channel % 6)] / 0.5 +
                   32400;
        };
        check_forces(read(write_c3d(file)), 20);
    }
}

TEST_CASE("more than 65,535 frames, counted in POINT:LONG_FRAMES or TRIAL:ACTUAL_END_FIELD") {
    for (const bool in_trial : {false, true}) {
        WrittenFile file = two_plates(2, Mark::intel, true);
        file.frames = 70000;
        (in_trial ? file.long_counts_in_trial : file.long_counts_in_point) = true;
        file.raw = [](int sample, int channel) {
            return channels_of(2, 500 + sample % 7)[static_cast<std::size_t>(channel % 6)] / 0.5 + 5;
        };
        const auto recording = read(write_c3d(file));
        REQUIRE_MESSAGE(recording, recording.refusal().sentence);
        REQUIRE(recording->samples() == 70000);
        CHECK(recording->plates[0].vertical[69999] == 500 + 69999 % 7);
    }
}

TEST_CASE("pieces of any size give the same recording") {
    const std::string bytes = write_c3d(two_plates(3, Mark::mips, true));
    for (const std::size_t piece : {1u, 3u, 7u, 127u, 511u, 512u, 513u, 1000u})
        check_forces(read(bytes, piece), 20);
    for (std::size_t at = 500; at < 530; ++at) { // cut once, around the end of the first block
        C3dForceReader reader({});
        REQUIRE(reader.take(std::string_view(bytes).substr(0, at)));
        REQUIRE(reader.take(std::string_view(bytes).substr(at)));
        check_forces(reader.finish(), 20);
    }
}

TEST_CASE("a force written as that on the athlete, and one on the plate, both come out upward") {
    for (const double sign : {1.0, -1.0}) {
        WrittenFile file = two_plates(2, Mark::intel, true);
        file.raw = [sign](int sample, int channel) {
            return sign * channels_of(2, upward(channel / 6, sample))[static_cast<std::size_t>(channel % 6)] /
                       0.5 +
                   5;
        };
        check_forces(read(write_c3d(file)), 20);
    }
}

TEST_CASE(
    "a plate of an unknown type, and more plates than two, are refused in words or chosen by a person") {
    WrittenFile file = two_plates(2, Mark::intel, false);
    file.plates[1].type = 7;
    const auto unknown = read(write_c3d(file));
    REQUIRE_FALSE(unknown);
    CHECK(unknown.refusal().code == RefusalCode::unreadable_file);
    CHECK(unknown.refusal().sentence.find("7") != std::string::npos);

    WrittenFile three = two_plates(2, Mark::intel, false);
    three.plates.push_back(three.plates[0]);
    const auto too_many = read(write_c3d(three));
    REQUIRE_FALSE(too_many);
    CHECK(too_many.refusal().code == RefusalCode::missing_field);
    RecordingGiven given;
    given.vertical = {"2"};
    const auto chosen = read(write_c3d(three), 1 << 20, given);
    REQUIRE_MESSAGE(chosen, chosen.refusal().sentence);
    REQUIRE(chosen->plates.size() == 1);
    CHECK(chosen->plates[0].vertical[4] == static_cast<float>(upward(1, 4)));
}

TEST_CASE("a file with analog channels alone is read by their labels") {
    WrittenFile file;
    file.channels = {{"Fz left", "N", 1, 0}, {"Fz right", "N", 1, 0}, {"trigger", "V", 1, 0}};
    file.raw = [](int sample, int channel) { return channel == 2 ? 5.0 : upward(channel, sample); };
    RecordingGiven given;
    given.vertical = {"Fz left", "Fz right"};
    check_forces(read(write_c3d(file), 1 << 20, given), 20);
    CHECK_FALSE(read(write_c3d(file)));
}

TEST_CASE("the summary says what was written") {
    C3dInspector inspector;
    WrittenFile file = two_plates(4, Mark::dec, true);
    file.points = 3;
    REQUIRE(inspector.take(write_c3d(file)));
    const auto summary = inspector.finish();
    REQUIRE_MESSAGE(summary, summary.refusal().sentence);
    CHECK(summary->processor == "DEC");
    CHECK(summary->storage == "reals of 32 bits");
    CHECK(summary->frames == 20);
    CHECK(summary->points_used == 3);
    CHECK(summary->analog_rate_hz == 1000);
    REQUIRE(summary->plates.size() == 2);
    CHECK(summary->plates[1].type == 4);
    CHECK(summary->plates[1].channels == std::vector<int>{7, 8, 9, 10, 11, 12});
    REQUIRE(summary->channels.size() == 12);
    CHECK(summary->channels[11].label == "P2C6");
    CHECK(summary->channels[11].scale == 0.25);
    CHECK(summary->channels[11].offset == 5);
}
