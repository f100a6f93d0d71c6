#include "operations/explain_velocity.h"

#include "inference/athlete_states.h"
#include "operations/inside/inside.h"
#include "reports/verdicts.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

constexpr int fewest_pairs = 10; // for a correlation
constexpr std::size_t most_far_named = 3;

std::string verdict_word(const Estimate& slope) {
    return said_by(verdict_of(slope), "goes_with", "goes_against", "cannot_tell");
}

struct Pairs {
    double correlation = 0;
    int count = 0;
};

// Of every day on which an athlete has both, as observed: who differs and who improved, all in one.
Pairs pairs_of(const RosterData& data, int quality) {
    std::vector<std::pair<double, double>> pairs;
    for (const auto& athlete : data.athletes)
        for (const auto& day : athlete.days) {
            std::optional<double> velocity, other;
            for (const auto& r : day.readings) {
                if (r.quality == 0)
                    velocity = r.value;
                if (r.quality == quality)
                    other = r.value;
            }
            if (velocity && other)
                pairs.emplace_back(*velocity, *other);
        }
    double x = 0, y = 0, xx = 0, yy = 0, xy = 0;
    const double n = static_cast<double>(pairs.size());
    for (const auto& [a, b] : pairs) {
        x += a / n;
        y += b / n;
    }
    for (const auto& [a, b] : pairs) {
        xx += (a - x) * (a - x);
        yy += (b - y) * (b - y);
        xy += (a - x) * (b - y);
    }
    return {xx > 0 && yy > 0 ? xy / std::sqrt(xx * yy) : 0, static_cast<int>(pairs.size())};
}

ShownEstimate shown_slope(const Estimate& slope, double step, const ShownUnit& unit) {
    const Estimate of_step{slope.value * step, slope.standard_error * std::abs(step)};
    return shown_estimate(of_step.value, of_step.central(), {unit.unit, unit.factor, 2});
}

std::string direction_words(const std::string& verdict, const std::string& with, const std::string& against,
                            const std::string& unknown) {
    return verdict == "goes_with" ? with : verdict == "goes_against" ? against : unknown;
}

// No order in time and no cause: what improves together. Whose word it is comes with it.
std::string sentence_of(const GoesWith& line) {
    std::string words = direction_words(line.within_verdict, "Velocity goes with improving it",
                                        "Velocity goes against improving it",
                                        "Whether velocity goes with improving it cannot be told here");
    words += "; " + describe_whose_word(line.within_learned) + ".";
    return words + " " +
           direction_words(line.between_verdict, "Throwers who have more of it throw harder.",
                           "Throwers who have more of it throw less hard.",
                           "Whether throwers who have more of it throw harder cannot be told.");
}

GoesWith line_of(const RosterModel& model, std::size_t k, const ShownUnit& speed) {
    const auto& quality = model.qualities[k];
    const RosterFit& fit = *model.fit;
    const Pairs pairs = pairs_of(model.data, static_cast<int>(k) + 1);
    GoesWith line{quality.quality->key,
                  quality.quality->name,
                  quality.kind->name,
                  quality.athletes,
                  shown_slope(fit.within[k], quality.attainable, speed),
                  std::clamp(fit.within_learned[k], 0.0, 1.0),
                  verdict_word(fit.within[k]),
                  shown_slope(fit.between[k], fit.between_sd[k + 1], speed),
                  std::clamp(fit.between_learned[k], 0.0, 1.0),
                  verdict_word(fit.between[k]),
                  pairs.count >= fewest_pairs ? std::optional(pairs.correlation) : std::nullopt,
                  pairs.count,
                  ""};
    line.words = sentence_of(line);
    return line;
}

std::vector<std::string> words_of_model(const ExplainVelocityAnswer& answer) {
    std::vector<std::string> words{"All test days of " + std::to_string(answer.athletes) +
                                       " throwers in one model, the error of every test allowed "
                                       "for: what velocity goes with when an athlete improves, and what it "
                                       "goes with from athlete to athlete, apart.",
                                   "The correlation of all pairs of test days mixes the two, and with them "
                                   "age, size and level; errors of the tests "
                                   "pull it toward zero. It is shown only so that it can be compared."};
    if (!answer.qualities.empty() &&
        std::all_of(answer.qualities.begin(), answer.qualities.end(),
                    [](const auto& line) { return mostly_literature(line.within_learned); }))
        words.push_back(
            "These records say little of their own yet: the slopes within athletes are the literature's, not "
            "your athletes'. More test days of the same athletes change that most.");
    return words;
}

// Results far from what all earlier ones foretold: shown, in the model as they are.
std::vector<std::string> far_results(const RosterModel& model) {
    std::vector<std::string> named;
    for (std::size_t i = 0; i < model.data.athletes.size(); ++i) {
        const AthleteStates states(model.fit->mode, model.data.athletes[i]);
        for (const auto& each : states.surprises())
            if (each.far_from_expected)
                named.push_back(model.athlete_names[i] + ", " + Date::from_days(each.day).text() + ", " +
                                model.kinds[static_cast<std::size_t>(each.quality)]->name);
    }
    if (named.empty())
        return {};
    std::string words = std::to_string(named.size()) + (named.size() == 1 ? " result lies" : " results lie") +
                        " far from what the earlier ones foretold, and " +
                        (named.size() == 1 ? "is" : "are") +
                        " in the model as entered; look at the unit and the number: ";
    for (std::size_t i = 0; i < std::min(named.size(), most_far_named); ++i)
        words += (i == 0 ? "" : "; ") + named[i];
    return {words + (named.size() > most_far_named ? "; ..." : ".")};
}

// How much throwers differ in their own slopes, in SDs of velocity for one of a quality: seldom settled.
std::string own_slope_words(const KeptFit& kept) {
    const Interval band = kept.own_spread.central();
    return "What goes with velocity differs from thrower to thrower, by about " +
           format_fixed(kept.own_spread.value, 2) +
           " SD of velocity for one SD of a quality (80 %: " + format_fixed(std::max(0.0, band.low), 2) +
           " to " + format_fixed(band.high, 2) + "); each thrower's own limiters use that.";
}

} // namespace

Result<ExplainVelocityAnswer> explain_velocity(Workplace& workplace, const ExplainVelocityRequest&) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto model = inside.roster_model();
    if (!model->fit)
        return model->fit.refusal();
    const auto speed =
        shown_unit(TestUnit::metre_per_second, view->records.facility.value_or(Facility{"This facility"}));
    ExplainVelocityAnswer answer{};
    answer.athletes = static_cast<int>(model->data.athletes.size());
    for (const auto& athlete : model->data.athletes)
        answer.test_days += static_cast<int>(athlete.days.size());
    answer.readings = model->fit->readings;
    for (std::size_t k = 0; k < model->qualities.size(); ++k)
        answer.qualities.push_back(line_of(*model, k, speed));
    std::stable_sort(answer.qualities.begin(), answer.qualities.end(), [](const auto& a, const auto& b) {
        return std::abs(a.within.value) / (a.within.high - a.within.low) >
               std::abs(b.within.value) / (b.within.high - b.within.low);
    });
    for (const auto& [quality, why] : model->left_out)
        answer.left_out.push_back({quality->key, quality->name, why});
    answer.words = words_of_model(answer);
    answer.words.push_back(own_slope_words(*model->kept));
    for (auto& words : far_results(*model))
        answer.words.push_back(std::move(words));
    answer.cautions = {
        "Goes with is not causes: growth, a new radar or a hard winter move several things at once. Years "
        "below 18 are in the model; whatever else moved them all is not."};
    answer.model = model->version + ", gradient " + (model->fit->gradient < 1e-6 ? "below 1e-6" : "fair") +
                   ", curvature positive";
    std::set<std::string> sources{"DurbinKoopman2012", "KoopmanShephard1992", "GuidoWerner2012",
                                  "ProjectProposal"};
    for (const auto& line : answer.qualities)
        for (const auto& prior : view->velocity_priors)
            if (prior.quality == line.quality)
                sources.insert(prior.sources.begin(), prior.sources.end());
    answer.sources.assign(sources.begin(), sources.end());
    return answer;
}

} // namespace amentum
