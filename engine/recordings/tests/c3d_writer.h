// Writes C3D files for the tests, from the layout in [GuideC3D] and without any of the reader's code, so that reader and
// writer agree only if both follow the guide.
#pragma once

#include <array>
#include <functional>
#include <string>
#include <vector>

namespace amentum::tests {

enum class Mark : int { intel = 84, dec = 85, mips = 86 };

struct WrittenChannel {
    std::string label;
    std::string unit = "N";
    float scale = 1;
    int offset = 0;
};

struct WrittenPlate {
    int type = 2;
    std::vector<int> channels; // from 1
    std::array<float, 12> corners{};
    std::array<float, 36> matrix{}; // C(output, channel) at output + 6 x channel
};

struct WrittenFile {
    Mark mark = Mark::intel;
    bool reals = false;
    bool unsigned_values = false;
    int points = 0;
    int frames = 20;
    int samples_a_frame = 1;
    float frames_a_second = 1000;
    float general_scale = 1;
    std::vector<WrittenChannel> channels;
    std::vector<WrittenPlate> plates;
    std::array<int, 2> zero{};
    // The value of a channel as it is stored, by analog sample of the whole file (from 0) and channel (from 0).
    std::function<double(int sample, int channel)> raw;

    bool parameters_before_groups = false;
    bool locked = false;
    std::size_t labels_in_first = 255; // the rest goes to LABELS2, SCALE2, ...
    bool long_counts_in_point = false; // POINT:LONG_FRAMES
    bool long_counts_in_trial = false; // TRIAL:ACTUAL_START_FIELD, ACTUAL_END_FIELD
    bool data_first = false;           // the parameter section behind the data
};

// The four corners of a level plate whose z points down, its centre at (x, y), in the order of the guide.
std::array<float, 12> level_corners(float x, float y);

std::string write_c3d(const WrittenFile& file);
std::string write_real(double value, Mark mark); // its four bytes

} // namespace amentum::tests
