#include "force_traces/plate_zero.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double loaded_from_n = 150;
constexpr double shortest_span_s = 0.080;
constexpr double trimmed_s = 0.010; // ramp and ringing at both ends
constexpr double flattest_sd_n = 25;
constexpr double level_tolerance_n = 60;
constexpr double largest_offset_n = 50;
constexpr double largest_drift = 5; // N/s

struct Level {
    double mean;
    double sd;
};

Level level_of(const std::vector<double>& force, SampleSpan span) {
    double sum = 0, squares = 0;
    const double centre = force[span.middle()];
    for (std::size_t i = span.from; i < span.to; ++i) {
        sum += force[i] - centre;
        squares += (force[i] - centre) * (force[i] - centre);
    }
    const double n = static_cast<double>(span.length());
    return {centre + sum / n, std::sqrt(std::max(0.0, (squares - sum * sum / n) / std::max(1.0, n - 1)))};
}

// The flat part of a run below 150 N, or an empty span.
SampleSpan flat_part(const ForceSignal& signal, SampleSpan run) {
    const auto& force = signal.vertical;
    const std::size_t quarter = run.length() / 4;
    const SampleSpan core{run.from + quarter, std::max(run.from + quarter + 1, run.to - quarter)};
    const Level level = level_of(force, core);
    if (level.sd > flattest_sd_n)
        return {run.from, run.from};
    const double width = std::max(10.0, 5 * level.sd);
    const auto flat = [&](std::size_t i) { return std::abs(force[i] - level.mean) <= width; };
    SampleSpan part{run.middle(), run.middle()};
    while (part.from > run.from && flat(part.from - 1))
        --part.from;
    while (part.to < run.to && flat(part.to))
        ++part.to;
    const std::size_t trim = signal.samples_in(trimmed_s);
    if (part.from > 0)
        part.from = std::min(part.from + trim, part.to);
    if (part.to < force.size())
        part.to = std::max(part.to - std::min(trim, part.to), part.from);
    return part;
}

std::vector<SampleSpan> unloaded_spans(const ForceSignal& signal) {
    const std::size_t shortest = signal.samples_in(shortest_span_s);
    std::vector<SampleSpan> spans;
    std::vector<double> levels;
    const std::size_t n = signal.vertical.size();
    for (std::size_t i = 0; i < n; ++i) {
        if (signal.vertical[i] >= loaded_from_n)
            continue;
        std::size_t end = i;
        while (end < n && signal.vertical[end] < loaded_from_n)
            ++end;
        if (end - i >= shortest) {
            const SampleSpan part = flat_part(signal, {i, end});
            if (part.length() >= shortest) {
                spans.push_back(part);
                levels.push_back(level_of(signal.vertical, part).mean);
            }
        }
        i = end;
    }
    if (spans.empty())
        return spans;
    const double lowest = *std::min_element(levels.begin(), levels.end());
    std::vector<SampleSpan> kept;
    for (std::size_t i = 0; i < spans.size(); ++i)
        if (levels[i] <= lowest + level_tolerance_n)
            kept.push_back(spans[i]);
    return kept;
}

template <class Force>
bool set_to_zero(const Force& force, const std::vector<SampleSpan>& spans) {
    std::size_t zeros = 0, all = 0;
    bool alike = true;
    for (const auto& span : spans)
        for (std::size_t i = span.from; i < span.to; ++i, ++all) {
            if (force[i] < 0)
                return false;
            zeros += force[i] == 0;
            alike = alike && force[i] == force[spans.front().from];
        }
    return 5 * zeros >= all || (alike && force[spans.front().from] == 0);
}

// Least squares a + b t over the spans' samples.
template <class Force>
ZeroLine line_through(const Force& force, const std::vector<SampleSpan>& spans, double rate_hz) {
    double n = 0, t1 = 0, t2 = 0, y1 = 0, ty = 0, yy = 0;
    for (const auto& span : spans)
        for (std::size_t i = span.from; i < span.to; ++i) {
            const double t = static_cast<double>(i) / rate_hz, y = static_cast<double>(force[i]);
            n += 1, t1 += t, t2 += t * t, y1 += y, ty += t * y, yy += y * y;
        }
    const double mean = y1 / n;
    const double spread = static_cast<double>(spans.back().middle() - spans.front().middle()) / rate_hz;
    if (spread < 1)
        return {mean, 0};
    const double sxx = t2 - t1 * t1 / n, sxy = ty - t1 * y1 / n, syy = yy - y1 * y1 / n;
    const double slope = sxy / sxx;
    const double error = std::sqrt(std::max(0.0, (syy - slope * sxy) / (n - 2) / sxx));
    if (std::abs(slope) <= 3 * error || std::abs(slope) < 1e-9)
        return {mean, 0};
    return {mean - slope * t1 / n, slope};
}

std::string signed_newtons(double n, int decimals) {
    return (n > 0 ? "+" : "") + format_fixed(n, decimals) + " N";
}

std::string describe_line(const std::string& plate, const ZeroLine& line, double middle_s) {
    std::string words = plate + " read " + signed_newtons(line.at(middle_s), 1) + " when empty";
    if (line.drift_n_per_s != 0)
        words += ", wandering by " + signed_newtons(line.drift_n_per_s, 2) + " a second";
    return words + "; that was taken off every sample.";
}

void measure_noise(const ForceSignal& signal, PlateZero& zero) {
    double sum = 0, squares = 0, n = 0;
    for (const auto& span : zero.unloaded)
        for (std::size_t i = span.from; i < span.to; ++i) {
            double rest = signal.vertical[i];
            for (const auto& line : zero.lines)
                rest -= line.at(signal.seconds(i));
            sum += rest, squares += rest * rest, n += 1;
        }
    zero.sd_n = std::sqrt(std::max(0.0, (squares - sum * sum / n) / (n - 1)));
    zero.error_n = zero.sd_n / std::sqrt(n);
}

} // namespace

Result<PlateZero> measure_plate_zero(const ForceRecording& recording, const ForceSignal& signal) {
    PlateZero zero;
    zero.lines.resize(recording.plates.size());
    zero.unloaded = unloaded_spans(signal);
    if (zero.unloaded.empty()) {
        zero.corrections.push_back("No empty plate in the trace: an offset could not be seen or taken off.");
        return zero;
    }
    const double middle_s = signal.seconds(zero.unloaded.back().middle());
    double offset = 0, drift = 0;
    for (std::size_t p = 0; p < zero.lines.size(); ++p) {
        const auto& force = recording.plates[p].vertical;
        const std::string name =
            recording.plates.size() == 1 ? "The plate" : "The plate \"" + recording.plates[p].name + "\"";
        if (set_to_zero(force, zero.unloaded)) {
            zero.corrections.push_back(
                name + " was set to zero by its device when empty: an offset cannot be seen.");
            continue;
        }
        zero.seen = true;
        zero.lines[p] = line_through(force, zero.unloaded, signal.rate_hz);
        offset += zero.lines[p].at(middle_s);
        drift += zero.lines[p].drift_n_per_s;
        if (std::abs(zero.lines[p].at(middle_s)) >= 0.5 || zero.lines[p].drift_n_per_s != 0)
            zero.corrections.push_back(describe_line(name, zero.lines[p], middle_s));
    }
    if (std::abs(offset) > largest_offset_n || std::abs(drift) > largest_drift)
        return Refusal{RefusalCode::offset_too_large,
                       "The empty plate reads " + signed_newtons(offset, 1) + " and wanders by " +
                           signed_newtons(drift, 2) + " a second. Set it to zero and record again.",
                       "vertical", signed_newtons(offset, 1), "within 50 N and 5 N a second of zero"};
    measure_noise(signal, zero);
    return zero;
}

void subtract_zero(const PlateZero& zero, ForceSignal& signal) {
    ZeroLine total;
    for (const auto& line : zero.lines) {
        total.start_n += line.start_n;
        total.drift_n_per_s += line.drift_n_per_s;
    }
    if (total.start_n == 0 && total.drift_n_per_s == 0)
        return;
    for (std::size_t i = 0; i < signal.vertical.size(); ++i)
        signal.vertical[i] -= total.at(signal.seconds(i));
}

} // namespace amentum
