#include "operations/inside/roster_model.h"

#include "inference/random_stream.h"
#include "operations/inside/limiter_work.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

constexpr int fewest_athletes = 8, fewest_repeated = 5; // (proposal of this project, no source)
constexpr double prior_doubt = 2; // literature slopes lie between athletes: twice as doubtful here (proposal)

struct Coverage {
    const TestKind* kind = nullptr;
    int athletes = 0, repeated = 0;
};

std::set<int> days_of(const Series& series) {
    std::set<int> days;
    for (const auto& value : series.values)
        days.insert(value.day);
    return days;
}

Coverage coverage_of(const FacilityView& view, const TestKind& kind) {
    Coverage coverage{&kind};
    for (const auto& athlete : view.records.athletes)
        if (const Series* series = view.one_series(athlete.id.text, kind.key)) {
            const auto days = days_of(*series).size();
            coverage.athletes += days > 0;
            coverage.repeated += days > 1;
        }
    return coverage;
}

// Of a quality's tests the one most athletes did on several days.
Coverage best_test(const FacilityView& view, const ReferenceTables& tables, const std::string& quality) {
    Coverage best;
    for (const auto& kind : tables.test_kinds) {
        if (kind.quality != quality)
            continue;
        const Coverage coverage = coverage_of(view, kind);
        if (!best.kind ||
            std::pair(coverage.repeated, coverage.athletes) > std::pair(best.repeated, best.athletes))
            best = coverage;
    }
    return best;
}

double spread_of_means(const FacilityView& view, const TestKind& kind) {
    std::vector<double> means;
    for (const auto& athlete : view.records.athletes)
        if (const Series* series = view.one_series(athlete.id.text, kind.key);
            series && !series->values.empty()) {
            double sum = 0;
            for (const auto& value : series->values)
                sum += value.value;
            means.push_back(sum / static_cast<double>(series->values.size()));
        }
    double mean = 0, squares = 0;
    for (const double each : means)
        mean += each / static_cast<double>(means.size());
    for (const double each : means)
        squares += (each - mean) * (each - mean);
    return means.size() > 1 ? std::sqrt(squares / static_cast<double>(means.size() - 1)) : 0;
}

template <class Rows>
const auto* row_of(const Rows& rows, const std::string& quality) {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const auto& r) { return r.quality == quality; });
    return found == rows.end() ? nullptr : &*found;
}

void choose_qualities(const FacilityView& view, const ReferenceTables& tables, RosterModel& model,
                      RosterPriors& priors) {
    for (const auto& quality : tables.qualities) {
        const auto* prior = row_of(tables.velocity_priors, quality.key);
        if (!prior)
            continue;
        const Coverage test = best_test(view, tables, quality.key);
        if (test.athletes < fewest_athletes || test.repeated < fewest_repeated) {
            model.left_out.push_back(
                {&quality, test.athletes == 0
                               ? std::string("nobody was tested in it")
                               : "its most used test was done by " + std::to_string(test.athletes) +
                                     " athletes, " + std::to_string(test.repeated) +
                                     " of them on two days; " + std::to_string(fewest_athletes) + " and " +
                                     std::to_string(fewest_repeated) + " are needed"});
            continue;
        }
        const double spread = spread_of_means(view, *test.kind);
        const auto* change = row_of(tables.attainable_changes, quality.key);
        const double a_unit =
            usual_velocity_spread / spread; // m/s for one unit, of a standardised slope of 1
        const Estimate slope{prior->mean * a_unit, prior_doubt * prior->sd * a_unit};
        priors.within.push_back(slope);
        priors.between.push_back(slope);
        model.qualities.push_back(
            {&quality, test.kind, test.athletes, spread, (change ? change->mean : 0.5) * spread});
    }
}

// What athletes differ by before any test: years below 18, sex, sport, stature.
std::vector<double> covariates_of(const Athlete& athlete, double age) {
    constexpr double usual_stature_m = 1.75;
    const double stature = athlete.stature ? athlete.stature->metres() : usual_stature_m;
    return {std::max(0.0, 18 - age) / 3, athlete.sex == Sex::male ? 1.0 : 0.0,
            athlete.sport == Sport::softball ? 1.0 : 0.0, athlete.sport == Sport::javelin ? 1.0 : 0.0,
            std::log(stature / usual_stature_m) / 0.05};
}

void add_readings(const Series* series, int quality, double usual_variance, std::map<int, RosterDay>& days) {
    if (!series)
        return;
    for (const auto& value : series->values)
        days[value.day].readings.push_back({quality, value.value, value.variance / usual_variance});
}

double usual_variance(const FacilityView& view, const TestKind& kind) {
    double sum = 0;
    int count = 0;
    for (const auto& athlete : view.records.athletes)
        if (const Series* series = view.one_series(athlete.id.text, kind.key))
            for (const auto& value : series->values) {
                sum += value.variance;
                ++count;
            }
    return count > 0 ? sum / count : 1;
}

void gather(const FacilityView& view, const TestKind& velocity, RosterModel& model, RosterPriors& priors) {
    std::vector<const TestKind*> kinds{&velocity};
    for (const auto& quality : model.qualities)
        kinds.push_back(quality.kind);
    std::vector<double> variances;
    for (const TestKind* kind : kinds) {
        variances.push_back(usual_variance(view, *kind));
        priors.error_sd.push_back(std::sqrt(variances.back()));
    }
    model.data = {static_cast<int>(kinds.size()), 5, {}, 1};
    for (const auto& athlete : view.records.athletes) {
        std::map<int, RosterDay> days;
        for (std::size_t k = 0; k < kinds.size(); ++k)
            add_readings(view.one_series(athlete.id.text, kinds[k]->key), static_cast<int>(k), variances[k],
                         days);
        if (days.empty())
            continue;
        const double age = decimal_years(athlete.birth_date, Date::from_days(days.begin()->first));
        RosterAthlete one{covariates_of(athlete, age), {}, {std::max(0.0, 18 - age) / 3}};
        for (auto& [day, readings] : days) {
            readings.day = day;
            one.days.push_back(std::move(readings));
        }
        model.data.athletes.push_back(std::move(one));
    }
}

std::string version_of(const RosterModel& model, const RosterPriors& priors) {
    std::uint64_t data = 1, prior = 1;
    for (const auto& athlete : model.data.athletes)
        for (const auto& day : athlete.days)
            for (const auto& r : day.readings)
                data = seed_from(data, std::to_string(day.day) + std::to_string(r.quality) +
                                           std::to_string(r.value));
    for (const auto& each : priors.within)
        prior = seed_from(prior, std::to_string(each.value) + std::to_string(each.standard_error));
    return "joint model 1, data " + std::to_string(data % 1000000) + ", priors " +
           std::to_string(prior % 1000000);
}

} // namespace

RosterModel fit_roster_model(const FacilityView& view, const ReferenceTables& tables) {
    RosterModel model;
    RosterPriors priors;
    choose_qualities(view, tables, model, priors);
    gather(view, *tables.test_kind("throwing_velocity"), model, priors);
    model.version = version_of(model, priors);
    model.fit = fit_joint_model(model.data, priors);
    return model;
}

} // namespace amentum
