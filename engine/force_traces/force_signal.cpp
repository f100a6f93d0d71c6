#include "force_traces/force_signal.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double top_seconds = 0.010;
constexpr std::size_t top_samples = 8;
constexpr double steep_rise_n = 2; // over the three samples before: a plateau reached slowly is no clipping

// The length of the first run at the plate's highest value, when it is entered at a corner; else 0.
std::size_t samples_at_the_top(const std::vector<float>& force, std::size_t needed) {
    const float top = *std::max_element(force.begin(), force.end());
    for (std::size_t i = 0; i < force.size(); ++i) {
        if (force[i] != top)
            continue;
        std::size_t end = i;
        while (end < force.size() && force[end] == top)
            ++end;
        if (end - i >= needed && i >= 3 && top - force[i - 3] > steep_rise_n)
            return end - i;
        i = end;
    }
    return 0;
}

std::optional<Refusal> refuse_saturation(const PlateForces& plate, double rate_hz) {
    const auto needed = std::max(top_samples, static_cast<std::size_t>(std::ceil(top_seconds * rate_hz)));
    const std::size_t at_top = samples_at_the_top(plate.vertical, needed);
    if (at_top == 0)
        return std::nullopt;
    const float top = *std::max_element(plate.vertical.begin(), plate.vertical.end());
    return Refusal{
        RefusalCode::saturated_plate,
        "The plate \"" + plate.name + "\" stays at " + format_fixed(top, 0) + " N for " +
            format_fixed(1000 * static_cast<double>(at_top) / rate_hz, 0) +
            " ms, the top of its range: the peak was not recorded. Set a wider range and jump again.",
        "vertical", format_fixed(top, 0) + " N", "a peak below the plate's range"};
}

void add(std::vector<double>& sum, const std::vector<float>& plate) {
    for (std::size_t i = 0; i < plate.size(); ++i)
        sum[i] += static_cast<double>(plate[i]);
}

bool all_numbers(const std::vector<double>& force) {
    double sum = 0; // one value that is not a number makes the sum so
    for (const double each : force)
        sum += each;
    return std::isfinite(sum);
}

} // namespace

Result<ForceSignal> sum_plates(const ForceRecording& recording) {
    if (!(recording.rate_hz >= lowest_jump_rate_hz))
        return Refusal{
            RefusalCode::wrong_rate,
            "The plate wrote " + format_shortest(recording.rate_hz) +
                " samples a second; below 180 the instant of take-off is too uncertain (a jump reads "
                "1.3 to 1.5 cm too low at 100).",
            "rate_hz", format_shortest(recording.rate_hz), "180 to 20000"};
    const std::size_t n = recording.samples();
    ForceSignal signal{recording.rate_hz, std::vector<double>(n), {}};
    for (const auto& plate : recording.plates) {
        if (auto refusal = refuse_saturation(plate, recording.rate_hz))
            return *refusal;
        add(signal.vertical, plate.vertical);
        if (!plate.lateral.empty()) {
            signal.lateral.resize(n);
            add(signal.lateral, plate.lateral);
        }
    }
    if (!all_numbers(signal.vertical) || !all_numbers(signal.lateral))
        return Refusal{RefusalCode::wrong_type, "The trace holds a sample that is not a number.", "vertical",
                       "", "numbers"};
    return signal;
}

std::string describe_rate_bias(double rate_hz) {
    if (rate_hz >= 500)
        return "";
    return "At " + format_shortest(rate_hz) +
           " samples a second a jump reads lower than at 1,000: 0.1 to 0.2 cm at 500, 0.5 to 0.6 cm at 200. "
           "Compare only with traces of the same rate.";
}

} // namespace amentum
