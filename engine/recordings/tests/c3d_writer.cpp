#include "c3d_writer.h"

#include <cmath>
#include <cstdint>
#include <cstring>

namespace amentum::tests {
namespace {

char low(unsigned word) {
    return static_cast<char>(word & 255U);
}

std::string write_word(int value, Mark mark) {
    const auto word = static_cast<unsigned>(value);
    return mark == Mark::mips ? std::string{low(word >> 8), low(word)}
                              : std::string{low(word), low(word >> 8)};
}

// The F format by its definition: value = +-0.1f (binary) x 2^(exponent - 128); two words, each low byte first.
std::string write_dec(double value) {
    if (value == 0)
        return std::string(4, '\0');
    int exponent = 0;
    const double fraction = std::frexp(std::abs(value), &exponent); // 0.5 <= fraction < 1
    const auto digits = static_cast<unsigned>(std::lround((fraction - 0.5) * 16777216.0));
    const unsigned first =
        (value < 0 ? 32768U : 0U) + static_cast<unsigned>(exponent + 128) * 128U + digits / 65536U;
    const unsigned second = digits % 65536U;
    return {low(first), low(first >> 8), low(second), low(second >> 8)};
}

class Section {
public:
    explicit Section(const WrittenFile& file) : file_(file) {}

    void group(int number, const std::string& name, const std::string& description = "") {
        add(file_.parameters_before_groups ? late_groups_ : records_, -number, name,
            std::string(1, low(static_cast<unsigned>(description.size()))) + description);
    }
    void reals(int number, const std::string& name, std::vector<int> dimensions,
               const std::vector<double>& values) {
        std::string bytes;
        for (const double value : values)
            bytes += write_real(value, file_.mark);
        parameter(number, name, 4, std::move(dimensions), bytes);
    }
    void words(int number, const std::string& name, std::vector<int> dimensions,
               const std::vector<int>& values) {
        std::string bytes;
        for (const int value : values)
            bytes += write_word(value, file_.mark);
        parameter(number, name, 2, std::move(dimensions), bytes);
    }
    void texts(int number, const std::string& name, const std::vector<std::string>& values,
               std::size_t length = 12) {
        std::string bytes;
        for (const auto& value : values)
            bytes += (value + std::string(length, ' ')).substr(0, length);
        parameter(number, name, -1, {static_cast<int>(length), static_cast<int>(values.size())}, bytes);
    }
    std::string finish() {
        std::string all = records_.bytes + late_groups_.bytes;
        const std::size_t last = late_groups_.bytes.empty()
                                     ? records_.last_distance
                                     : records_.bytes.size() + late_groups_.last_distance;
        all.replace(last, 2, 2, '\0');
        all = std::string{1, 80, 0, static_cast<char>(file_.mark)} + all;
        const std::size_t blocks = (all.size() + 511) / 512;
        all.resize(blocks * 512, '\0');
        all[2] = low(static_cast<unsigned>(blocks));
        return all;
    }

private:
    struct Records {
        std::string bytes;
        std::size_t last_distance = 0; // where the last record's distance stands
    };

    void parameter(int number, const std::string& name, int type, std::vector<int> dimensions,
                   const std::string& values) {
        std::string content{static_cast<char>(type), static_cast<char>(dimensions.size())};
        for (const int size : dimensions)
            content += low(static_cast<unsigned>(size));
        const std::string description = "about " + name;
        add(records_, number, name,
            content + values + std::string(1, low(static_cast<unsigned>(description.size()))) + description);
    }
    void add(Records& records, int number, const std::string& name, const std::string& content) {
        const int length = static_cast<int>(name.size());
        records.bytes += static_cast<char>(file_.locked ? -length : length);
        records.bytes += static_cast<char>(number);
        records.bytes += name;
        records.last_distance = records.bytes.size();
        records.bytes += write_word(static_cast<int>(content.size()) + 2, file_.mark) + content;
    }

    const WrittenFile& file_;
    Records records_, late_groups_;
};

void write_points(Section& section, const WrittenFile& file, int data_block) {
    section.group(1, "POINT", "where the markers were");
    section.words(1, "USED", {}, {file.points});
    section.reals(1, "RATE", {}, {static_cast<double>(file.frames_a_second)});
    section.reals(1, "SCALE", {}, {file.reals ? -0.1 : 0.1});
    section.words(1, "FRAMES", {}, {std::min(file.frames, 65535)});
    section.words(1, "DATA_START", {}, {data_block});
    section.texts(1, "UNITS", {"mm"}, 2);
    if (file.long_counts_in_point)
        section.reals(1, "LONG_FRAMES", {}, {static_cast<double>(file.frames)});
    if (file.long_counts_in_trial) {
        section.group(4, "TRIAL");
        section.words(4, "ACTUAL_START_FIELD", {2}, {1, 0});
        section.words(4, "ACTUAL_END_FIELD", {2}, {file.frames % 65536, file.frames / 65536});
    }
}

void write_channels(Section& section, const WrittenFile& file) {
    section.group(2, "ANALOG");
    section.words(2, "USED", {}, {static_cast<int>(file.channels.size())});
    section.reals(2, "RATE", {}, {static_cast<double>(file.frames_a_second) * file.samples_a_frame});
    section.reals(2, "GEN_SCALE", {}, {static_cast<double>(file.general_scale)});
    if (file.unsigned_values)
        section.texts(2, "FORMAT", {"UNSIGNED"}, 8);
    for (std::size_t from = 0, part = 1; from < file.channels.size(); ++part) {
        const std::size_t end = std::min(file.channels.size(), from + file.labels_in_first);
        const std::string more = part == 1 ? "" : std::to_string(part);
        std::vector<std::string> labels, units;
        std::vector<double> scales;
        std::vector<int> offsets;
        for (; from < end; ++from) {
            labels.push_back(file.channels[from].label);
            units.push_back(file.channels[from].unit);
            scales.push_back(static_cast<double>(file.channels[from].scale));
            offsets.push_back(file.channels[from].offset);
        }
        const int count = static_cast<int>(labels.size());
        section.texts(2, "LABELS" + more, labels);
        section.texts(2, "UNITS" + more, units, 4);
        section.reals(2, "SCALE" + more, {count}, scales);
        section.words(2, "OFFSET" + more, {count}, offsets);
    }
}

void write_plates(Section& section, const WrittenFile& file) {
    if (file.plates.empty())
        return;
    const int count = static_cast<int>(file.plates.size());
    std::vector<int> types, channels;
    std::vector<double> corners, matrices;
    std::size_t rows = 0;
    bool matrix = false;
    for (const auto& plate : file.plates) {
        rows = std::max(rows, plate.channels.size());
        matrix = matrix || plate.type == 4;
    }
    for (const auto& plate : file.plates) {
        types.push_back(plate.type);
        for (std::size_t row = 0; row < rows; ++row)
            channels.push_back(row < plate.channels.size() ? plate.channels[row] : 0);
        corners.insert(corners.end(), plate.corners.begin(), plate.corners.end());
        matrices.insert(matrices.end(), plate.matrix.begin(), plate.matrix.end());
    }
    section.group(3, "FORCE_PLATFORM");
    section.words(3, "USED", {}, {count});
    section.words(3, "TYPE", {count}, types);
    section.words(3, "CHANNEL", {static_cast<int>(rows), count}, channels);
    section.reals(3, "CORNERS", {3, 4, count}, corners);
    section.words(3, "ZERO", {2}, {file.zero[0], file.zero[1]});
    if (matrix)
        section.reals(3, "CAL_MATRIX", {6, 6, count}, matrices);
}

std::string write_parameters(const WrittenFile& file, int data_block) {
    Section section(file);
    write_points(section, file, data_block);
    write_channels(section, file);
    write_plates(section, file);
    return section.finish();
}

std::string write_header(const WrittenFile& file, int parameter_block, int data_block) {
    const int channels = static_cast<int>(file.channels.size());
    std::string header{low(static_cast<unsigned>(parameter_block)), 80};
    for (const int word : {file.points, channels * file.samples_a_frame, 1, std::min(file.frames, 65535), 10})
        header += write_word(word, file.mark);
    header += write_real(file.reals ? -0.1 : 0.1, file.mark);
    header += write_word(data_block, file.mark) + write_word(file.samples_a_frame, file.mark);
    header += write_real(static_cast<double>(file.frames_a_second), file.mark);
    header.resize(512, '\0');
    return header;
}

std::string write_data(const WrittenFile& file) {
    std::string data;
    const auto add = [&](double value) {
        data += file.reals ? write_real(value, file.mark)
                           : write_word(static_cast<int>(std::lround(value)), file.mark);
    };
    for (int frame = 0; frame < file.frames; ++frame) {
        for (int value = 0; value < 4 * file.points; ++value)
            add(1000 + value); // a marker, which no force may be mixed up with
        for (int sample = 0; sample < file.samples_a_frame; ++sample)
            for (int channel = 0; channel < static_cast<int>(file.channels.size()); ++channel)
                add(file.raw(frame * file.samples_a_frame + sample, channel));
    }
    data.resize((data.size() + 511) / 512 * 512, '\0');
    return data;
}

} // namespace

std::string write_real(double value, Mark mark) {
    if (mark == Mark::dec)
        return write_dec(value);
    const float narrow = static_cast<float>(value);
    std::uint32_t bits = 0;
    std::memcpy(&bits, &narrow, 4);
    if (mark == Mark::mips)
        return {low(bits >> 24), low(bits >> 16), low(bits >> 8), low(bits)};
    return {low(bits), low(bits >> 8), low(bits >> 16), low(bits >> 24)};
}

std::array<float, 12> level_corners(float x, float y) {
    // z down: seen from above, +x is forward and +y to the right of it.
    return {x + 250, y - 200, 0, x - 250, y - 200, 0, x - 250, y + 200, 0, x + 250, y + 200, 0};
}

std::string write_c3d(const WrittenFile& file) {
    const std::string data = write_data(file);
    const int data_blocks = static_cast<int>(data.size() / 512);
    if (file.data_first)
        return write_header(file, 2 + data_blocks, 2) + data + write_parameters(file, 2);
    const int data_block = 2 + static_cast<int>(write_parameters(file, 2).size() / 512);
    return write_header(file, 2, data_block) + write_parameters(file, data_block) + data;
}

} // namespace amentum::tests
