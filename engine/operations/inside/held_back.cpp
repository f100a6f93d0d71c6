#include "operations/inside/held_back.h"

#include "inference/athlete_states.h"
#include "inference/random_stream.h"
#include "inference/simulated_roster.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

struct LastResult {
    std::size_t athlete;
    int day;
    RosterReading reading;
};

// Takes the last result of each athlete and test out of the data, where there is one of an earlier day.
std::vector<LastResult> take_last_results(RosterData& data) {
    std::vector<LastResult> taken;
    for (std::size_t i = 0; i < data.athletes.size(); ++i) {
        auto& days = data.athletes[i].days;
        for (int quality = 0; quality < data.qualities; ++quality) {
            std::vector<RosterDay*> tested;
            for (auto& day : days)
                if (std::any_of(day.readings.begin(), day.readings.end(),
                                [&](const auto& r) { return r.quality == quality; }))
                    tested.push_back(&day);
            if (tested.size() < 2)
                continue;
            auto& readings = tested.back()->readings;
            for (const auto& r : readings)
                if (r.quality == quality)
                    taken.push_back({i, tested.back()->day, r});
            std::erase_if(readings, [&](const auto& r) { return r.quality == quality; });
        }
        std::erase_if(days, [](const auto& day) { return day.readings.empty(); });
    }
    return taken;
}

// Of each quality: mean square of the steps between an athlete's neighbouring results.
std::vector<double> step_variances(const RosterData& data) {
    std::vector<double> sums(static_cast<std::size_t>(data.qualities), 0), counts = sums;
    for (const auto& athlete : data.athletes) {
        std::vector<std::optional<double>> last(sums.size());
        for (const auto& day : athlete.days)
            for (const auto& r : day.readings) {
                const auto k = static_cast<std::size_t>(r.quality);
                if (last[k]) {
                    sums[k] += std::pow(r.value - *last[k], 2);
                    counts[k] += 1;
                }
                last[k] = r.value;
            }
    }
    for (std::size_t k = 0; k < sums.size(); ++k)
        sums[k] = counts[k] > 0 ? sums[k] / counts[k] : 0;
    return sums;
}

std::optional<double> last_value(const RosterAthlete& athlete, int before, int quality) {
    std::optional<double> last;
    for (const auto& day : athlete.days)
        for (const auto& r : day.readings)
            if (r.quality == quality && day.day < before)
                last = r.value;
    return last;
}

// The forecast of one reading: its own share of the error, and the session it came in.
StateOnDay foretold(const RosterFit& fit, const RosterAthlete& athlete, const LastResult& result) {
    const RosterReading& r = result.reading;
    const auto k = static_cast<std::size_t>(r.quality);
    const auto state = forecast_state(fit.mode, athlete, result.day - 1, result.day, r.quality).state;
    const double session = r.session >= 0 ? fit.mode.session_spread[k] : 0;
    return {state.mean, state.variance + fit.error_sd[k] * fit.error_sd[k] * r.share + session * session};
}

} // namespace

Result<HeldBack> hold_back_last_results(const RosterModel& model, const FitControl& control) {
    RosterData rest = model.data;
    const auto last_results = take_last_results(rest);
    auto fit = fit_joint_model(rest, model.priors, control);
    if (!fit)
        return fit.refusal();
    const auto steps = step_variances(rest);
    HeldBack held{model.version, 0, {}, *std::move(fit)};
    std::set<std::size_t> athletes;
    for (const auto& result : last_results) {
        const auto& athlete = rest.athletes[result.athlete];
        const int quality = result.reading.quality;
        const auto last = last_value(athlete, result.day, quality);
        const double step = steps[static_cast<std::size_t>(quality)];
        if (!last || !(step > 0))
            continue;
        athletes.insert(result.athlete);
        held.results.push_back(
            {quality, {foretold(held.fit, athlete, result), result.reading.value, {*last, step}}});
    }
    held.athletes = static_cast<int>(athletes.size());
    return held;
}

KnownSlopeRanks rank_known_slopes(const RosterModel& model, int rosters, const FitControl& control) {
    KnownSlopeRanks known;
    const auto& believed = model.fit->within;
    RosterPriors priors = model.priors;
    priors.within = believed;
    for (int i = 0; i < rosters; ++i) {
        const auto seed = seed_from(1, "roster " + std::to_string(i));
        RandomStream random(seed_from(seed, "slopes"));
        std::vector<double> truth;
        for (const auto& slope : believed)
            truth.push_back(slope.value + slope.standard_error * random.next_normal());
        const auto fit =
            fit_joint_model(simulate_roster(model.data, model.fit->mode, truth, seed), priors, control);
        ++(fit ? known.fitted : known.refused);
        for (std::size_t k = 0; fit && k < truth.size(); ++k)
            known.ranks.push_back(
                normal_cdf((truth[k] - fit->within[k].value) / fit->within[k].standard_error));
    }
    return known;
}

} // namespace amentum
