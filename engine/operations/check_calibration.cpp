#include "operations/check_calibration.h"

#include "operations/inside/inside.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr std::size_t fewest = 20;  // results before a rate is judged (proposal of this project, no source)
constexpr double improbable = 0.01; // of a histogram, before it is called uneven (proposal)
constexpr int bins = 10, most_ranks = 200;

CoverageShown shown(const Coverage& counted) {
    return {counted.stated, counted.held, counted.all, counted.true_chance.low, counted.true_chance.high};
}

std::string verdict_on(const Coverage& counted) {
    if (counted.all < static_cast<int>(fewest))
        return "cannot_tell";
    return counted.true_chance.high < counted.stated  ? "too_sure"
           : counted.true_chance.low > counted.stated ? "too_cautious"
                                                      : "as_stated";
}

std::optional<ShownEstimate> shown_gain(std::span<const HeldForecast> forecasts) {
    if (forecasts.size() < fewest)
        return std::nullopt;
    const Estimate share = compare_scores(forecasts).share;
    const Interval band = share.central();
    return ShownEstimate{100 * share.value, 100 * band.low, 100 * band.high, "%", 0};
}

std::vector<HeldForecast> of_quality(const HeldBack& held, int quality) {
    std::vector<HeldForecast> forecasts;
    for (const auto& each : held.results)
        if (each.quality == quality)
            forecasts.push_back(each.forecast);
    return forecasts;
}

// Every test in units of its spread, so that none outweighs the others by its unit.
std::vector<HeldForecast> all_in_spreads(const HeldBack& held) {
    std::vector<HeldForecast> forecasts;
    for (const auto& [quality, each] : held.results) {
        const double unit = held.fit.mode.unit[static_cast<std::size_t>(quality)];
        const auto scaled = [&](const StateOnDay& state) {
            return StateOnDay{state.mean / unit, state.variance / (unit * unit)};
        };
        forecasts.push_back({scaled(each.forecast), each.value / unit, scaled(each.rival)});
    }
    return forecasts;
}

std::vector<CalibrationLine> lines_of(const HeldBack& held, const RosterModel& model) {
    std::vector<CalibrationLine> lines;
    for (std::size_t k = 0; k < model.kinds.size(); ++k) {
        const auto forecasts = of_quality(held, static_cast<int>(k));
        if (forecasts.empty())
            continue;
        const Coverage counted = count_coverage(forecasts, 0.8);
        lines.push_back({model.kinds[k]->key, model.kinds[k]->name, shown(counted), verdict_on(counted),
                         shown_gain(forecasts)});
    }
    return lines;
}

std::string counted_words(const CoverageShown& counted) {
    return "Of " + std::to_string(counted.all) + " results held back, " + std::to_string(counted.held) +
           " (" + format_fixed(100.0 * counted.held / counted.all, 0) + " %) lay inside their " +
           format_fixed(100 * counted.stated, 0) + " % interval; by that count the true rate is " +
           format_fixed(100 * counted.low, 0) + " to " + format_fixed(100 * counted.high, 0) + " %.";
}

std::vector<std::string> words_beside(const CheckCalibrationAnswer& answer) {
    std::vector<std::string> words{counted_words(answer.coverage[1])};
    const std::string& verdict = answer.verdict;
    words.push_back(verdict == "as_stated" ? "So the 80 % intervals were right about as often as they say."
                    : verdict == "too_sure"
                        ? "So the 80 % intervals were too narrow here: read them as wider."
                    : verdict == "too_cautious"
                        ? "So the 80 % intervals were too wide here: they promise less than they hold."
                        : "Fewer than " + std::to_string(fewest) + " results are too few to judge that.");
    if (answer.transform_chance < improbable)
        words.push_back("The results do not lie evenly within their forecasts: the forecasts lean to one "
                        "side, or are too wide "
                        "or too narrow.");
    const auto& better = answer.better;
    words.push_back(better && better->low > 0
                        ? "The forecasts beat \"as last time\" by " + format_fixed(better->value, 0) +
                              " % (80 %: " + format_fixed(better->low, 0) + " to " +
                              format_fixed(better->high, 0) + " %)."
                    : better && better->high < 0
                        ? "\"As last time\" foretold better than the model: do not lean on its forecasts."
                        : "Whether the forecasts beat \"as last time\" cannot be told.");
    if (answer.ranks)
        words.push_back(std::to_string(answer.ranks->fitted) +
                        " rosters like this one were simulated with known slopes and "
                        "fitted (" +
                        std::to_string(answer.ranks->refused) + " more could not be): the truth lay " +
                        (answer.ranks->chance < improbable
                             ? "unevenly within what the fit said: its intervals for slopes are not to be "
                               "trusted as they "
                               "stand."
                             : "evenly within what the fit said."));
    return words;
}

Result<std::shared_ptr<const HeldBack>> held_back(Workplace::Inside& inside, const RosterModel& model) {
    const std::lock_guard lock(inside.holding);
    if (!inside.held || inside.held->version != model.version) {
        auto held = hold_back_last_results(model, {run_on_threads, {}, &model.fit->mode});
        if (!held)
            return held.refusal();
        inside.held = std::make_shared<const HeldBack>(*std::move(held));
    }
    return inside.held;
}

} // namespace

Result<CheckCalibrationAnswer> check_calibration(Workplace& workplace,
                                                 const CheckCalibrationRequest& request) {
    const int rosters = request.ranks.value_or(0);
    if (rosters < 0 || rosters > most_ranks)
        return refuse_range("ranks", rosters, 0, most_ranks, "simulated rosters");
    auto& inside = workplace.inside();
    const auto model = inside.roster_model();
    if (!model->fit)
        return model->fit.refusal();
    const auto held = held_back(inside, *model);
    if (!held)
        return held.refusal();
    const auto all = all_in_spreads(**held);
    if (all.empty())
        return Refusal{RefusalCode::too_few_data,
                       "No thrower has two test days of one test, so nothing can be held back and foretold.",
                       "test days", "1", "2 or more"};
    CheckCalibrationAnswer answer{};
    answer.athletes = (*held)->athletes;
    answer.results = static_cast<int>(all.size());
    for (const double stated : {0.5, 0.8, 0.95})
        answer.coverage.push_back(shown(count_coverage(all, stated)));
    answer.verdict = verdict_on(count_coverage(all, 0.8));
    const auto transform = check_uniform(integral_transform(all), bins);
    answer.transform = transform.counts;
    answer.transform_chance = transform.chance;
    answer.better = shown_gain(all);
    answer.tests = lines_of(**held, *model);
    if (rosters > 0) {
        const auto ranks = rank_known_slopes(*model, rosters, {run_on_threads, {}, &model->fit->mode});
        if (!ranks.ranks.empty()) {
            const auto even = check_uniform(ranks.ranks, bins);
            answer.ranks = RanksShown{ranks.fitted, ranks.refused, static_cast<int>(ranks.ranks.size()),
                                      even.counts, even.chance};
        }
    }
    answer.words = words_beside(answer);
    answer.cautions = {
        "Results of one thrower, and slopes of one roster, go together, so the counts are somewhat less "
        "certain than their intervals "
        "say.",
        "Held-back days judge forecasts of tests. Whether a training effect is what it seems is not judged "
        "here."};
    answer.model = model->kept->version;
    return answer;
}

} // namespace amentum
