#include "guard_rails/check_ranges.h"

#include "guard_rails/watched_ranges.h"
#include "values/interval.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace amentum {
namespace {

constexpr int earlier_days = 365;
constexpr std::size_t least_earlier = 2;

bool taken_alike(const WatchedDay& a, const WatchedDay& b) {
    return !a.rater.empty() && a.rater == b.rater && !a.device.empty() && a.device == b.device;
}

struct Compared {
    double mean;
    int earlier;
    double error; // a drop above it is a finding
    bool alike;   // by rater and device
    bool dropped;
};

enum class CannotTell { nothing_earlier, taken_otherwise };

struct Judged {
    std::optional<Compared> compared;
    CannotTell why; // when it is not
    int running;    // measured days running, to the last, with a drop
};

Compared compare(const WatchedRange& range, const WatchedDay& day, const std::vector<WatchedDay>& earlier,
                 bool alike) {
    double sum = 0, worst = 0;
    for (const auto& each : earlier) {
        sum += each.value;
        worst = std::max(worst, each.standard_error);
    }
    const double mean = sum / static_cast<double>(earlier.size());
    double error = std::max(range.least_drop, z90 * std::hypot(day.standard_error, worst));
    if (!alike)
        error = std::max(error, *range.between_raters);
    return {mean, static_cast<int>(earlier.size()), error, alike, mean - day.value > error};
}

// The day beside the earlier ones it can be compared with.
Judged judge_day(const WatchedRange& range, const WatchedDay& day, const std::vector<WatchedDay>& kept) {
    std::vector<WatchedDay> all, alike;
    for (const auto& each : kept) {
        if (day.date - each.date > earlier_days)
            continue;
        all.push_back(each);
        if (taken_alike(each, day))
            alike.push_back(each);
    }
    if (alike.size() >= least_earlier)
        return {compare(range, day, alike, true), {}, 0};
    if (all.size() < least_earlier)
        return {{}, CannotTell::nothing_earlier, 0};
    if (!range.between_raters)
        return {{}, CannotTell::taken_otherwise, 0};
    return {compare(range, day, all, false), {}, 0};
}

// Of the last day; the range has one.
Judged judge_last(const WatchedRange& range) {
    std::vector<WatchedDay> kept, lower; // days that count as usual; those of a drop not yet over
    Judged last{{}, CannotTell::nothing_earlier, 0};
    for (const auto& day : range.days) {
        last = judge_day(range, day, kept);
        if (last.compared && last.compared->dropped) {
            lower.push_back(day);
        } else {
            if (lower.size() == 1) // not seen again
                kept.push_back(lower.front());
            lower.clear();
            kept.push_back(day);
        }
        last.running = static_cast<int>(lower.size());
    }
    return last;
}

std::string amount(const WatchedRange& range, double value) {
    return format_fixed(value, range.decimals) + " " + range.unit;
}

std::string describe(const WatchedRange& range, const Judged& judged) {
    if (range.days.empty())
        return range.name + ": not measured.";
    const auto& day = range.days.back();
    const std::string here = range.name + ": " + amount(range, day.value) + " on " + day.date.text();
    if (!judged.compared && judged.why == CannotTell::nothing_earlier)
        return here + ". Cannot tell: fewer than two earlier days in the year before.";
    if (!judged.compared)
        return here +
               ". Cannot tell: fewer than two earlier days of the same rater and device, both written down.";
    const auto& [mean, earlier, error, alike, dropped] = *judged.compared;
    const double drop = mean - day.value;
    return here + ", " + amount(range, std::abs(drop)) + (drop >= 0 ? " below" : " above") + " the mean of " +
           std::to_string(earlier) + " earlier days (" + format_fixed(mean, range.decimals) + "). Up to " +
           amount(range, error) + " below can be error alone, " +
           (alike ? "same rater and device." : "with another rater or device, or none written down.");
}

Finding found(const WatchedRange& range, const Judged& judged) {
    const bool again = judged.running >= 2;
    return {
        Severity::warns,
        again ? "show_clinician" : "re_measure",
        describe(range, judged) +
            (again ? " It is so on " + std::to_string(judged.running) + " measured days running." : ""),
        "A drop beyond the error of the test is measured again; on two measured days running it is shown to "
        "a "
        "clinician.",
        "error [Weir2005], between raters [Kolber2011]; the rule is a proposal of this project, no source",
        again ? "Show these numbers to a qualified clinician. This tool records and compares; it does not "
                "diagnose, "
                "clear or predict injury."
              : "Measure again on another day, with the same rater, device and position. One low day is no "
                "sign of "
                "anything else."};
}

} // namespace

RangeWatch check_ranges(const Athlete& athlete, std::span<const TestResult> results, Date today) {
    RangeWatch watch;
    for (const auto& range : watched_ranges(athlete, results, today)) {
        const auto judged = judge_last(range);
        watch.words.push_back(describe(range, judged));
        if (judged.running > 0)
            watch.findings.push_back(found(range, judged));
    }
    return watch;
}

} // namespace amentum
