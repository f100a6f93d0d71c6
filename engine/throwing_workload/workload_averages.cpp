#include "throwing_workload/workload_averages.h"

#include <cassert>
#include <cmath>
#include <numeric>

namespace amentum {
namespace {

constexpr std::size_t short_days = 7, long_days = 28;

Result<Done> check_length(std::span<const double> daily) {
    if (daily.size() >= long_days)
        return Done{};
    return Refusal{RefusalCode::too_few_data, "The ratio needs 28 days, days without throws included.",
                   "daily", std::to_string(daily.size()) + " days", "28 days or more"};
}

Refusal refuse_quiet_time() {
    return {RefusalCode::method_does_not_apply,
            "Nothing was thrown in the longer time, so the ratio has no value.", "daily", "0",
            "a longer time with throws"};
}

} // namespace

double ewma_weight(int days) {
    assert(days >= 1);
    return 2.0 / (days + 1);
}

double ewma_half_life(int days) {
    assert(days >= 2);
    return std::log(0.5) / std::log(1 - ewma_weight(days));
}

std::vector<double> ewma(std::span<const double> daily, int days) {
    const double w = ewma_weight(days);
    std::vector<double> averages;
    averages.reserve(daily.size());
    for (const double load : daily)
        averages.push_back(averages.empty() ? load : w * load + (1 - w) * averages.back());
    return averages;
}

double mean_of_last(std::span<const double> daily, std::size_t days) {
    assert(days >= 1 && daily.size() >= days);
    const auto last = daily.last(days);
    return std::accumulate(last.begin(), last.end(), 0.0) / static_cast<double>(days);
}

Result<double> coupled_ratio(std::span<const double> daily) {
    if (const auto length = check_length(daily); !length)
        return length.refusal();
    const double chronic = mean_of_last(daily, long_days);
    if (chronic == 0)
        return refuse_quiet_time();
    return mean_of_last(daily, short_days) / chronic;
}

Result<double> uncoupled_ratio(std::span<const double> daily) {
    if (const auto length = check_length(daily); !length)
        return length.refusal();
    const double before = mean_of_last(daily.first(daily.size() - short_days), long_days - short_days);
    if (before == 0)
        return refuse_quiet_time();
    return mean_of_last(daily, short_days) / before;
}

double coupled_from_uncoupled(double uncoupled_ratio) {
    assert(uncoupled_ratio >= 0);
    return 4 * uncoupled_ratio / (uncoupled_ratio + 3);
}

} // namespace amentum
