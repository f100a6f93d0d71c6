#include "operations/inside/limiter_work.h"

#include "inference/random_stream.h"
#include "inference/test_scale.h"

#include <cmath>

namespace amentum {
namespace {

constexpr double worthwhile_share = 0.2; // of the between-athlete SD [Hopkins2004]
constexpr std::uint64_t seed = 1;

std::optional<DatedValue> level_today(const Series* series, Date today) {
    if (!series)
        return std::nullopt;
    const auto state = series->trajectory.front().state_on(today.days_since_1970());
    return DatedValue{today.days_since_1970(), state.mean, state.variance};
}

bool has_line(const auto& table, const std::string& quality) {
    for (const auto& line : table)
        if (line.quality == quality)
            return true;
    return false;
}

std::string model_of(const FacilityView& view, const Athlete& athlete) {
    std::uint64_t data = seed, priors = seed;
    for (const auto& [key, series] : view.series)
        if (key.first == athlete.id.text)
            for (const auto& value : series.values)
                data = seed_from(data, std::to_string(value.value));
    for (const auto& prior : view.velocity_priors)
        priors = seed_from(priors, prior.quality + std::to_string(prior.mean) + std::to_string(prior.sd));
    return "limiters 2, " + view.priors_version + " (" + std::to_string(priors % 1000000) + "), data " +
           std::to_string(data % 1000000) + ", seed " + std::to_string(seed);
}

} // namespace

BodySize body_of(const FacilityView& view, const Athlete& athlete, Date today) {
    BodySize body{decimal_years(athlete.birth_date, today), athlete.sex == Sex::male,       {}, {},
                  athlete.sport == Sport::softball,         athlete.sport == Sport::javelin};
    if (athlete.stature)
        body.stature_m = athlete.stature->metres();
    if (const auto* taped = view.one_series(athlete.id.text, "stature"))
        body.stature_m =
            back_on_unit(taped->kind->scale, taped->trajectory.front().state_on(today.days_since_1970()))
                .value;
    if (const auto* weighed = view.one_series(athlete.id.text, "body_mass"))
        body.mass_kg =
            back_on_unit(weighed->kind->scale, weighed->trajectory.front().state_on(today.days_since_1970()))
                .value;
    return body;
}

ReferenceLevel level_in(const FacilityView& view, const TestKind& kind, const Athlete& athlete, Date today) {
    std::vector<Measured> others;
    for (const auto& other : view.records.athletes) {
        if (other.id == athlete.id)
            continue;
        const auto level = level_today(view.one_series(other.id.text, kind.key), today);
        if (level)
            others.push_back({body_of(view, other, today), level->value, level->variance});
    }
    return estimate_reference_level(others, body_of(view, athlete, today),
                                    level_today(view.one_series(athlete.id.text, kind.key), today));
}

namespace {

// What the joint model says of each quality of the question it has: own slope, attainable change, and how the slopes'
// doubts go together.
void add_roster_slopes(const RosterModel& model, const FacilityView& view, const Athlete& athlete,
                       LimiterQuestion& question) {
    const auto& fit = *model.fit;
    const auto& own = model.slopes_of(athlete.id.text);
    const std::size_t n = question.qualities.size(), p = model.qualities.size();
    std::vector<std::optional<std::size_t>> in_fit(n);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t k = 0; k < p; ++k)
            if (model.qualities[k].quality->key == question.qualities[i].quality)
                in_fit[i] = k;
    question.slope_correlation.assign(n * n, 0);
    for (std::size_t i = 0; i < n; ++i) {
        question.slope_correlation[i * n + i] = 1;
        if (!in_fit[i])
            continue;
        const std::size_t k = *in_fit[i];
        auto& state = question.qualities[i];
        const double to_sds = fit.between_sd[k + 1] / question.velocity_spread;
        state.slope = Estimate{own[k].value * to_sds, own[k].standard_error * to_sds};
        state.information = fit.within_learned[k];
        for (const auto& published : view.attainable_changes)
            if (published.quality == state.quality)
                state.attainable = attainable_here(fit.drift_sd[k + 1] / fit.between_sd[k + 1],
                                                   model.qualities[k].athletes, published);
        for (std::size_t j = 0; j < i; ++j)
            if (in_fit[j])
                question.slope_correlation[i * n + j] = question.slope_correlation[j * n + i] =
                    fit.within_covariance[k * p + *in_fit[j]] /
                    (own[k].standard_error * own[*in_fit[j]].standard_error);
    }
}

} // namespace

LimiterWork limiter_work(const FacilityView& view, const ReferenceTables& tables, const RosterModel& model,
                         const Athlete& athlete, Date today) {
    LimiterWork work{};
    const TestKind* velocity = tables.test_kind("throwing_velocity");
    const auto velocity_level = level_in(view, *velocity, athlete, today);
    work.spread_from_here = velocity_level.spread > 0;
    work.velocity_spread = work.spread_from_here ? velocity_level.spread : usual_velocity_spread;
    work.smallest_worthwhile = worthwhile_share * work.velocity_spread;
    work.under_18 = whole_years(athlete.birth_date, today) < 18;

    LimiterQuestion question{{},   work.velocity_spread,  work.smallest_worthwhile, work.under_18,
                             seed, athlete.training_years};
    for (const auto& quality : tables.qualities) {
        if (!quality.trainable || !has_line(view.velocity_priors, quality.key) ||
            !has_line(view.attainable_changes, quality.key))
            continue;
        const Series* series = view.spoken_for(athlete.id.text, quality.key);
        ReferenceLevel level{
            {0, 1}, 0, 0, 0, "not tested; taken as usual, give or take one standard deviation"};
        if (series)
            level = level_in(view, *series->kind, athlete, today);
        question.qualities.push_back({quality.key, level.z, series != nullptr});
        work.levels[quality.key] = level;
    }
    if (model.fit)
        add_roster_slopes(model, view, athlete, question);
    work.answer = estimate_limiters(question, view.velocity_priors, view.attainable_changes);
    work.model = model_of(view, athlete) + (model.fit ? "; " + model.kept->version : "");
    return work;
}

} // namespace amentum
