#include "operations/inside/roster_model.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

namespace amentum {
namespace {

std::vector<KeptSum> sums_of(const RosterData& data) {
    std::vector<KeptSum> sums(static_cast<std::size_t>(data.qualities));
    for (const auto& athlete : data.athletes)
        for (const auto& day : athlete.days)
            for (const auto& r : day.readings) {
                auto& sum = sums[static_cast<std::size_t>(r.quality)];
                sum.count += 1;
                sum.mean += (r.value - sum.mean) / sum.count;
            }
    return sums;
}

std::vector<std::string> tests_of(const RosterModel& model) {
    std::vector<std::string> tests;
    for (const TestKind* kind : model.kinds)
        tests.push_back(kind->key);
    return tests;
}

bool nearly_same(const RosterModel& now, const KeptFit& earlier) {
    constexpr double few = 0.02, far = 0.05; // of readings; of a quality's spread
    const auto sums = sums_of(now.data);
    if (sums.size() != earlier.sums.size())
        return false;
    for (std::size_t k = 0; k < sums.size(); ++k)
        if (std::abs(sums[k].count - earlier.sums[k].count) > few * earlier.sums[k].count + 1 ||
            std::abs(sums[k].mean - earlier.sums[k].mean) > far * earlier.fit.mode.unit[k])
            return false;
    return true;
}

bool starts_with(const std::vector<std::string>& all, const std::vector<std::string>& first) {
    return all.size() >= first.size() && std::equal(first.begin(), first.end(), all.begin());
}

// The fit's share of the whole work, when a check follows.
constexpr double share_of_fit = 0.2;

FitControl part_of(const FitControl& control, double from, double to) {
    FitControl part = control;
    if (control.going)
        part.going = [&control, from, to](double share) { return control.going(from + (to - from) * share); };
    return part;
}

// The fit with its errors checked, or why not.
Result<RosterFit> checked(const RosterModel& model, const FitControl& control, KeptFit& kept) {
    const auto check =
        check_joint_fit(model.data, model.priors, *model.fit, part_of(control, share_of_fit, 1));
    if (!check)
        return check.refusal();
    kept.checked =
        FitChecked{std::isfinite(check->tail_shape) ? std::optional(check->tail_shape) : std::nullopt,
                   check->shape_limit,
                   check->sampled,
                   check->worst_r_hat,
                   check->least_worth,
                   check->divergences};
    return checked_fit(*model.fit, model.priors, *check);
}

} // namespace

void fit_roster_model(RosterModel& model, const FitControl& control, bool thorough) {
    if (const auto fault = roster_fault(model)) {
        model.fit = *fault;
        return;
    }
    model.fit =
        fit_joint_model(model.data, model.priors, thorough ? part_of(control, 0, share_of_fit) : control);
    auto kept = std::make_shared<KeptFit>();
    if (model.fit && thorough)
        model.fit = checked(model, control, *kept);
    if (!model.fit) {
        model.fit = named_by_test(model.fit.refusal(), model);
        return;
    }
    const auto own = estimate_individual_slopes(model.data, *model.fit, control.run);
    kept->tests = tests_of(model);
    kept->session_names = model.session_names;
    kept->priors_version = model.priors_version;
    kept->version = model.version;
    kept->sums = sums_of(model.data);
    kept->fit = *model.fit;
    kept->own_spread = own.spread;
    kept->own_spread_learned = own.spread_learned;
    for (std::size_t i = 0; i < model.athlete_ids.size(); ++i)
        kept->own_slopes[model.athlete_ids[i]] = own.athletes[i];
    model.kept = std::move(kept);
}

bool take_over_fit(RosterModel& now, const std::shared_ptr<const KeptFit>& earlier) {
    if (roster_fault(now) || !earlier || earlier->fit.mode.covariates != now.data.covariates ||
        earlier->fit.mode.growths != now.data.growths || tests_of(now) != earlier->tests ||
        now.priors_version != earlier->priors_version ||
        !starts_with(now.session_names, earlier->session_names) || !nearly_same(now, *earlier))
        return false;
    now.fit = earlier->fit;
    now.kept = earlier;
    return true;
}

const std::vector<Estimate>& RosterModel::slopes_of(const std::string& id) const {
    const auto found = kept->own_slopes.find(id);
    return found == kept->own_slopes.end() ? fit->within : found->second;
}

void run_on_threads(std::size_t parts, const std::function<void(std::size_t)>& part) {
    const std::size_t count = std::min<std::size_t>(parts, std::max(1U, std::thread::hardware_concurrency()));
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t p = next++; p < parts; p = next++)
            part(p);
    };
    std::vector<std::jthread> others;
    for (std::size_t i = 1; i < count; ++i)
        others.emplace_back(work);
    work();
}

} // namespace amentum
