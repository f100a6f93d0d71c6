// Time of one force trace: a jump of 10 s at 1,000 Hz on two plates, 20,000 samples.
//   measured   samples in memory to numbers with errors (measure_trace)
//   read       the same jump's text file, 20,000 numbers with a time column, to samples (read_recording)
//   rival      strtod over the same text, which reads the numbers and nothing else
// Run it by `./dev bench`, or: ninja force_trace_bench && ./bench/force_trace_bench
// Each time is the median of 49 repeats after one warm-up, in microseconds of processor time, one thread.
#include "force_traces/measure_trace.h"
#include "recordings/read_recording.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string>
#include <vector>

using namespace amentum;

namespace {

constexpr double pi = 3.14159265358979323846;

// A jump of 80 kg with a dip, as in the closed-form tests, with a fixed ripple of about 2 N.
double jump_force(double t) {
    const double weight = 784.532, up = 2.85290025, flight = 0.58182973;
    const auto lobe = [](double size, double at, double length) {
        const double s = std::sin(pi * at / length);
        return size * s * s;
    };
    if (t < 3)
        return weight;
    if (t < 3.4)
        return weight + lobe(-500, t - 3, 0.4);
    if (t < 3.8)
        return weight + lobe(1700, t - 3.4, 0.4);
    if (t < 3.83)
        return weight * (1 - (t - 3.8) / 0.03);
    const double landed = t - 3.83 - flight;
    return landed < 0 ? 0 : weight + (landed < 0.3 ? lobe(160 * up / 0.3, landed, 0.3) : 0);
}

ForceRecording two_plates() {
    ForceRecording recording{1000, {{"left", Side::left, {}, {}}, {"right", Side::right, {}, {}}}, {}};
    unsigned ripple = 1;
    for (int i = 0; i < 10000; ++i)
        for (std::size_t p = 0; p < 2; ++p) {
            ripple = ripple * 1664525u + 1013904223u;
            const double noise = static_cast<double>(ripple >> 16) / 16384 - 2;
            recording.plates[p].vertical.push_back(
                static_cast<float>(jump_force(i / 1000.0) * (p == 0 ? 0.52 : 0.48) + noise));
        }
    return recording;
}

std::string as_text(const ForceRecording& recording) {
    std::string text = "Time (s),Left Fz (N),Right Fz (N)\n";
    char line[96];
    for (std::size_t i = 0; i < recording.samples(); ++i) {
        std::snprintf(line, sizeof line, "%.3f,%.2f,%.2f\n", static_cast<double>(i) / 1000,
                      static_cast<double>(recording.plates[0].vertical[i]),
                      static_cast<double>(recording.plates[1].vertical[i]));
        text += line;
    }
    return text;
}

double processor_microseconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e6 * static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e3;
}

template <class Question>
double microseconds(Question question) {
    std::vector<double> repeats;
    for (int repeat = 0; repeat < 50; ++repeat) {
        const double start = processor_microseconds();
        question();
        if (repeat > 0)
            repeats.push_back(processor_microseconds() - start); // the first warms up
    }
    std::nth_element(repeats.begin(), repeats.begin() + 24, repeats.end());
    return repeats[24];
}

volatile double sink; // keeps the compiler from dropping the answers

double strtod_over(const std::string& text) {
    double sum = 0;
    const char* at = text.c_str() + text.find('\n') + 1;
    for (char* next = nullptr; *at != '\0'; at = next + 1)
        sum += std::strtod(at, &next);
    return sum;
}

} // namespace

int main() {
    const ForceRecording recording = two_plates();
    const std::string text = as_text(recording);
    const TraceGiven given{TraceTest::countermovement_jump, Legs::both, {}, {}, {}};
    const auto height = [](const Result<TraceMeasurement>& jump) {
        return jump ? jump->metric("jump_height_impulse")->value : 0;
    };
    if (!read_recording(text, {}) || height(measure_trace(recording, given)) < 0.3) {
        std::fprintf(stderr, "the trace of the bench was refused\n");
        return 1;
    }
    const double measured = microseconds([&] { sink = height(measure_trace(recording, given)); });
    const double read = microseconds([&] { sink = read_recording(text, {})->rate_hz; });
    const double both = microseconds([&] { sink = height(measure_trace(*read_recording(text, {}), given)); });
    const double rival = microseconds([&] { sink = strtod_over(text); });
    std::printf("a jump of 10 s, 1,000 Hz, two plates; text of %zu bytes; microseconds of processor time\n",
                text.size());
    std::printf("%-34s %8.0f\n", "measured from memory", measured);
    std::printf("%-34s %8.0f\n", "text read", read);
    std::printf("%-34s %8.0f   (goal: 1,000)\n", "text to numbers", both);
    std::printf("%-34s %8.0f\n", "rival for the reading: strtod", rival);
}
