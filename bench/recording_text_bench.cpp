// Reading a force trace from delimited text, as megabytes a second, against four rivals over the same bytes in one run:
//   line ends     memchr for every line end: a plain scan that reads no number
//   cell ends     memchr for every cell end: the scan that a reader of single cells needs
//   from_chars    the cells cut by memchr, those wanted read by std::from_chars into the same floats
//   strtod        likewise by strtod, the usual way in C
// The scans look at every byte and keep nothing; the other rivals know the layout beforehand, refuse nothing, and do not
// check the times. Ours finds the layout, checks every line and every time, and keeps the floats.
// Run it by `./dev bench`, or: ninja recording_text_bench && ./bench/recording_text_bench
// Each number is the median of nine repeats after one warm-up; in a repeat all five run one after the other, and the
// ratios are taken within it. The first lines stream more than most_samples through
// take() and show the memory: it is refused at that line, and the peak does not grow with the bytes beyond.
#include "recordings/delimited_text.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <functional>
#include <random>
#include <string>
#include <utility>

using namespace amentum;

namespace {

struct Shape {
    const char* name;
    char separator;
    std::size_t columns;
    std::vector<std::size_t> wanted; // columns, the time first when there is one
    RecordingGiven given;
    std::string text;
};

constexpr std::size_t about_bytes = 24'000'000;

// An invented athlete: weight, sway and noise; never the same cell twice in a row.
double newtons(std::size_t i, std::mt19937& random) {
    const double noise = static_cast<double>(random() % 4001) / 1000 - 2;
    return 400 + 250 * std::sin(static_cast<double>(i) * 0.003) + noise;
}

template <class Line>
std::string written(std::string header, Line line) {
    std::mt19937 random(11);
    char room[400];
    for (std::size_t i = 0; header.size() < about_bytes; ++i)
        header.append(room, static_cast<std::size_t>(line(room, sizeof room, i, random)));
    return header;
}

std::vector<Shape> shapes() {
    RecordingGiven plain;
    RecordingGiven one;
    one.rate_hz = 1000;
    one.unit = ForceUnit::newton;
    const auto seconds = [](std::size_t i) { return static_cast<double>(i) / 1000; };
    std::vector<Shape> all;
    all.push_back({"time and two plates",
                   '\t',
                   3,
                   {0, 1, 2},
                   plain,
                   written("Time [s]\tLeft Fz [N]\tRight Fz [N]\n",
                           [&](char* room, std::size_t size, auto i, auto& random) {
                               return std::snprintf(room, size, "%.3f\t%.2f\t%.2f\n", seconds(i),
                                                    newtons(i, random), newtons(i + 9, random));
                           })});
    all.push_back({"one plate, no time",
                   '\n',
                   1,
                   {0},
                   one,
                   written("", [&](char* room, std::size_t size, auto i, auto& random) {
                       return std::snprintf(room, size, "%.2f\n", newtons(i, random));
                   })});
    all.push_back({"time and 17 digits",
                   ',',
                   2,
                   {0, 1},
                   plain,
                   written("Time [s],Fz [N]\n", [&](char* room, std::size_t size, auto i, auto& random) {
                       return std::snprintf(room, size, "%.17g,%.17g\n", seconds(i), newtons(i, random) / 3);
                   })});
    RecordingGiven two_of_many;
    two_of_many.vertical = {"3", "9"};
    all.push_back({"time, two of twelve",
                   ';',
                   13,
                   {0, 2, 8},
                   two_of_many,
                   written("t[s];a[N];b[N];c[N];d[N];e[N];f[N];g[N];h[N];i[N];j[N];k[N];l[N]\n",
                           [&](char* room, std::size_t size, auto i, auto& random) {
                               int at = std::snprintf(room, size, "%.3f", seconds(i));
                               for (std::size_t c = 0; c < 12; ++c)
                                   at += std::snprintf(room + at, size - static_cast<std::size_t>(at),
                                                       ";%.3f", newtons(i + 70 * c, random));
                               room[at++] = '\n';
                               return at;
                           })});
    return all;
}

double median(std::vector<double> of) {
    std::nth_element(of.begin(), of.begin() + static_cast<std::ptrdiff_t>(of.size() / 2), of.end());
    return of[of.size() / 2];
}

// Nanoseconds of each work, in every repeat one after the other, so that what else the machine does hits them alike.
std::vector<std::vector<double>> nanoseconds(const std::vector<std::function<void()>>& works) {
    using clock = std::chrono::steady_clock;
    std::vector<std::vector<double>> took(works.size());
    for (int repeat = 0; repeat < 10; ++repeat)
        for (std::size_t w = 0; w < works.size(); ++w) {
            const auto start = clock::now();
            works[w]();
            if (repeat > 0) // the first warms up
                took[w].push_back(std::chrono::duration<double, std::nano>(clock::now() - start).count());
        }
    return took;
}

// How many times as fast as the rival: the median over the repeats of their ratio in one repeat.
double ratio(const std::vector<double>& rival, const std::vector<double>& ours) {
    std::vector<double> ratios;
    for (std::size_t i = 0; i < ours.size(); ++i)
        ratios.push_back(rival[i] / ours[i]);
    return median(ratios);
}

volatile std::size_t sink; // keeps the compiler from dropping the answers

const char* next(const char* from, const char* stop, char wanted) {
    const void* found = std::memchr(from, wanted, static_cast<std::size_t>(stop - from));
    return found ? static_cast<const char*>(found) : stop;
}

std::size_t count_line_ends(const std::string& text) {
    std::size_t lines = 0;
    const char* stop = text.data() + text.size();
    for (const char* at = text.data(); (at = next(at, stop, '\n')) != stop; ++at)
        ++lines;
    return lines;
}

// Calls each(column, begin, end) for every cell below the line of names.
template <class Each>
void each_cell(const Shape& shape, Each each) {
    const char* stop = shape.text.data() + shape.text.size();
    const char* at = shape.text.data();
    if (shape.separator != '\n')
        at = next(at, stop, '\n') + 1;
    while (at < stop)
        for (std::size_t c = 0; c < shape.columns; ++c) {
            const char* end = next(at, stop, c + 1 == shape.columns ? '\n' : shape.separator);
            each(c, at, end);
            at = end + 1;
        }
}

template <class Read>
std::size_t read_cells(const Shape& shape, Read read) {
    std::vector<std::vector<float>> series(shape.columns);
    std::vector<bool> wanted(shape.columns);
    for (const std::size_t c : shape.wanted)
        wanted[c] = true;
    each_cell(shape, [&](std::size_t c, const char* begin, const char* end) {
        if (wanted[c])
            series[c].push_back(read(begin, end));
    });
    return series[shape.wanted.back()].size();
}

float by_from_chars(const char* begin, const char* end) {
    float value = 0;
    std::from_chars(begin, end, value);
    return value;
}

float by_strtod(const char* begin, const char*) {
    return static_cast<float>(std::strtod(begin, nullptr));
}

std::size_t ours(const Shape& shape, std::size_t piece = 65536) {
    DelimitedTextReader reader(shape.given);
    for (std::size_t at = 0; at < shape.text.size(); at += piece)
        if (!reader.take(std::string_view(shape.text).substr(at, piece)))
            break;
    const auto recording = reader.finish();
    if (!recording)
        std::printf("refused: %s\n", recording.refusal().sentence.c_str());
    return recording ? recording->samples() : 0;
}

void bench(const Shape& shape) {
    const auto bytes = static_cast<double>(shape.text.size());
    const auto count_cells = [&] {
        std::size_t count = 0;
        each_cell(shape, [&](std::size_t, const char*, const char*) { ++count; });
        sink = count;
    };
    const auto took = nanoseconds({[&] { sink = ours(shape); }, [&] { sink = count_line_ends(shape.text); },
                                   count_cells, [&] { sink = read_cells(shape, by_from_chars); },
                                   [&] { sink = read_cells(shape, by_strtod); }});
    std::printf("%-20s", shape.name);
    for (const auto& each : took)
        std::printf(" %9.0f", 1000 * bytes / median(each));
    std::printf(" %8.0f%% %8.0f%% %8.1fx %7.1fx\n", 100 * ratio(took[1], took[0]),
                100 * ratio(took[2], took[0]), ratio(took[3], took[0]), ratio(took[4], took[0]));
}

std::string peak_memory() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:"))
            return line.substr(line.find_first_not_of(" \t", 6));
    return "unknown";
}

// 200 MB of four-byte lines, made piece by piece so that the text itself takes no memory.
void stream() {
    std::printf("\nstreaming 200 MB of lines like \"701\\n\"; the limit is %zu samples\n", most_samples);
    RecordingGiven given;
    given.rate_hz = 20000;
    given.unit = ForceUnit::newton;
    DelimitedTextReader reader(given);
    std::string piece;
    for (int i = 0; i < 16000; ++i)
        piece += std::to_string(700 + i % 7) + "\n";
    std::size_t bytes = 0;
    bool said = false;
    for (std::size_t next_report = 0; bytes < 200'000'000; bytes += piece.size()) {
        if (bytes >= next_report) {
            std::printf("  %4zu MB taken, peak memory %s\n", bytes / 1'000'000, peak_memory().c_str());
            next_report = next_report == 0     ? 4'000'000
                          : bytes < 16'000'000 ? next_report + 4'000'000
                                               : next_report * 3;
        }
        const auto taken = reader.take(piece);
        if (!taken && !std::exchange(said, true))
            std::printf("  refused: %s (%s)\n", taken.refusal().sentence.c_str(),
                        taken.refusal().field.c_str());
    }
    std::printf("  %4zu MB taken, peak memory %s\n", bytes / 1'000'000, peak_memory().c_str());
}

} // namespace

int main() {
    stream(); // first, while the peak is still small
    std::printf("\nMB/s %25s %9s %9s %9s %9s %9s %9s %9s %8s\n", "ours", "line ends", "cell ends",
                "from_chars", "strtod", "of lines", "of cells", "/f_chars", "/strtod");
    for (const auto& shape : shapes())
        bench(shape);
}
