// Reading the vertical forces of a C3D file, as megabytes a second, against copying the file's bytes in memory.
//
//   copying      std::memcpy of the same bytes into a buffer that was touched before, in the same run
//   copied anew  the same into new memory, which the system must first give; reading too keeps its floats in new memory
// Two platforms of type 2 (twelve analog channels), 1,000 and 2,000 analog samples a second, reals and 16-bit whole
// numbers, with and without 40 markers. Reading finds the layout, scales, turns the sign where needed and keeps floats.
// What copying shows: a file of 64 MB comes from memory, and reading it keeps up with copying. One megabyte is copied
// within the processor's cache, several times faster than from memory; two numbers out of each row of 24 or 48 bytes
// cannot be found and scaled at that pace, and the share of copying is low there.
// Run it by `./dev bench`, or: ninja recording_c3d_bench && ./bench/recording_c3d_bench
// Each time is the median of nine repeats after one warm-up.
#include "../engine/recordings/tests/c3d_writer.h"
#include "recordings/c3d_forces.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>

using namespace amentum;
using namespace amentum::tests;

namespace {

std::string jump_file(bool reals, int points, int samples_a_frame, std::size_t about_bytes) {
    WrittenFile file;
    file.reals = reals;
    file.points = points;
    file.samples_a_frame = samples_a_frame;
    file.frames_a_second = 200;
    for (int plate = 0; plate < 2; ++plate) {
        WrittenPlate written{2, {}, level_corners(plate == 0 ? 0.0f : 600.0f, 0), {}};
        for (int i = 0; i < 6; ++i) {
            file.channels.push_back({"C" + std::to_string(6 * plate + i), "N", 0.5f, 3});
            written.channels.push_back(static_cast<int>(file.channels.size()));
        }
        file.plates.push_back(written);
    }
    const std::size_t frame_bytes =
        static_cast<std::size_t>(4 * points + 12 * samples_a_frame) * (reals ? 4 : 2);
    file.frames = static_cast<int>(about_bytes / frame_bytes);
    file.long_counts_in_point = file.frames > 65535;
    file.raw = [](int sample, int channel) {
        return channel % 6 == 2 ? 900 + (sample * 7919) % 600 : sample % 50;
    };
    return write_c3d(file);
}

template <class Work>
double seconds_of(Work work) {
    std::vector<double> times;
    for (int i = 0; i < 10; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        if (i > 0)
            times.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    std::nth_element(times.begin(), times.begin() + 4, times.end());
    return times[4];
}

void compare(const char* name, const std::string& bytes) {
    std::string copy(bytes.size(), 'x');
    const double copying = seconds_of([&] {
        std::memcpy(copy.data(), bytes.data(), bytes.size());
        if (copy.back() == 'y') // never: keeps the copy from being left out
            std::puts("");
    });
    const double copying_anew = seconds_of([&] {
        const std::string fresh(bytes);
        if (fresh.back() == 'y')
            std::puts("");
    });
    double sum = 0;
    const double reading = seconds_of([&] {
        C3dForceReader reader({});
        const bool taken = static_cast<bool>(reader.take(bytes));
        const auto recording = reader.finish();
        if (!taken || !recording)
            std::printf("%s was refused: %s\n", name, recording.refusal().sentence.c_str()), std::exit(1);
        sum += static_cast<double>(recording->plates[1].vertical.back());
    });
    const double mb = static_cast<double>(bytes.size()) / 1e6;
    std::printf("%-38s %5.1f MB %7.0f MB/s  copying %7.0f, %3.0f %%  copied anew %7.0f, %3.0f %%\n", name, mb,
                mb / reading, mb / copying, 100 * copying / reading, mb / copying_anew,
                100 * copying_anew / reading);
}

} // namespace

int main() {
    for (const std::size_t size : {std::size_t{1'000'000}, std::size_t{64'000'000}})
        for (const bool reals : {true, false})
            for (const int points : {0, 40})
                for (const int samples_a_frame : {5, 10}) {
                    char name[80];
                    std::snprintf(name, sizeof name, "%s, %d Hz, %d markers",
                                  reals ? "reals" : "16-bit whole numbers", 200 * samples_a_frame, points);
                    compare(name, jump_file(reals, points, samples_a_frame, size));
                }
}
