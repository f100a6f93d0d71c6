#include "force_traces/quiet_standing.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double lightest_n = 150;
constexpr double same_variance = 1e-6; // N^2: of seconds equally quiet, the last counts

double mean_of(const ForceSignal& signal, SampleSpan span) {
    double sum = 0;
    for (std::size_t i = span.from; i < span.to; ++i)
        sum += signal.vertical[i];
    return sum / static_cast<double>(span.length());
}

// SD of the means of ten equal parts, over sqrt(10).
double error_by_parts(const ForceSignal& signal, SampleSpan span, double mean) {
    constexpr std::size_t parts = 10;
    double squares = 0;
    for (std::size_t p = 0; p < parts; ++p) {
        const SampleSpan part{span.from + p * span.length() / parts,
                              span.from + (p + 1) * span.length() / parts};
        const double off = mean_of(signal, part) - mean;
        squares += off * off;
    }
    return std::sqrt(squares / (parts - 1) / parts);
}

} // namespace

std::optional<SampleSpan> quietest_second(const ForceSignal& signal, SampleSpan within,
                                          double highest_mean_n) {
    const std::size_t length = signal.samples_in(quiet_seconds);
    if (within.length() < length)
        return std::nullopt;
    const double* force = signal.vertical.data() + within.from;
    const double n = static_cast<double>(length), centre = force[within.length() / 2];
    double sum = 0, squares = 0, quietest = std::numeric_limits<double>::infinity();
    std::optional<SampleSpan> found;
    for (std::size_t i = 0; i < within.length(); ++i) {
        const double in = force[i] - centre;
        sum += in, squares += in * in;
        if (i + 1 < length)
            continue;
        const double variance = (squares - sum * sum / n) / (n - 1), mean = centre + sum / n;
        if (mean >= lightest_n && mean <= highest_mean_n && variance <= quietest + same_variance) {
            quietest = std::min(quietest, variance);
            found = SampleSpan{within.from + i + 1 - length, within.from + i + 1};
        }
        const double out = force[i + 1 - length] - centre;
        sum -= out, squares -= out * out;
    }
    return found;
}

QuietStanding weigh(const ForceSignal& signal, SampleSpan span) {
    const double mean = mean_of(signal, span), n = static_cast<double>(span.length());
    double squares = 0, steps = 0;
    for (std::size_t i = span.from; i < span.to; ++i) {
        const double off = signal.vertical[i] - mean;
        squares += off * off;
        if (i > span.from) {
            const double step = signal.vertical[i] - signal.vertical[i - 1];
            steps += step * step;
        }
    }
    const double sd = std::sqrt(squares / (n - 1)), white = sd / std::sqrt(n);
    const double by_parts = error_by_parts(signal, span, mean);
    return {span, mean, sd, std::sqrt(steps / (n - 1) / 2), by_parts > 1.5 * white ? by_parts : white};
}

Refusal refuse_short_quiet(double seconds_before, const std::string& before_what) {
    return {RefusalCode::quiet_too_short,
            "The trace has " + format_fixed(seconds_before, 2) + " s on the plate before " + before_what +
                "; a second of quiet standing is needed to weigh the athlete. Stand still for two seconds, "
                "then go.",
            "vertical", format_fixed(seconds_before, 2) + " s", "at least 1 s of quiet standing"};
}

std::optional<Refusal> refuse_noisy_quiet(const QuietStanding& quiet, bool on_one_leg) {
    const double share = on_one_leg ? 0.035 : 0.02;
    if (quiet.sd_n <= share * quiet.weight_n)
        return std::nullopt;
    return Refusal{RefusalCode::quiet_too_noisy,
                   "In the quietest second the force wanders by " + format_fixed(quiet.sd_n, 1) +
                       " N (SD) around " + format_fixed(quiet.weight_n, 0) +
                       " N: the athlete moved, or the plate shakes, so the weight is not known well enough.",
                   "vertical", format_fixed(quiet.sd_n, 1) + " N",
                   "SD up to " + format_fixed(share * quiet.weight_n, 1) + " N"};
}

} // namespace amentum
