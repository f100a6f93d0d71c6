#include "operations/inside/limiter_work.h"
#include "operations/inside/roster_model.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

constexpr int fewest_athletes = 8, fewest_repeated = 5; // (proposal of this project, no source)

constexpr double least_spread = 1e-9; // on the kind's scale

struct TestedSoFar {
    const TestKind* kind = nullptr;
    int athletes = 0, repeated = 0;
};

std::set<int> days_of(const Series& series) {
    std::set<int> days;
    for (const auto& value : tested_values(series))
        days.insert(value.day);
    return days;
}

TestedSoFar coverage_of(const FacilityView& view, const TestKind& kind) {
    TestedSoFar coverage{&kind};
    for (const auto& athlete : view.records.athletes)
        if (const Series* series = view.one_series(athlete.id.text, kind.key)) {
            const auto days = days_of(*series).size();
            coverage.athletes += days > 0;
            coverage.repeated += days > 1;
        }
    return coverage;
}

// Of a quality's tests the one most athletes did on several days.
TestedSoFar best_test(const FacilityView& view, const ReferenceTables& tables, const std::string& quality) {
    TestedSoFar best;
    for (const auto& kind : tables.test_kinds) {
        if (kind.quality != quality)
            continue;
        const TestedSoFar coverage = coverage_of(view, kind);
        if (!best.kind ||
            std::pair(coverage.repeated, coverage.athletes) > std::pair(best.repeated, best.athletes))
            best = coverage;
    }
    return best;
}

double spread_of_means(const FacilityView& view, const TestKind& kind) {
    std::vector<double> means;
    for (const auto& athlete : view.records.athletes)
        if (const Series* series = view.one_series(athlete.id.text, kind.key)) {
            const auto values = tested_values(*series);
            double sum = 0;
            for (const auto& value : values)
                sum += value.value;
            if (!values.empty())
                means.push_back(sum / static_cast<double>(values.size()));
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

} // namespace

std::vector<DatedValue> tested_values(const Series& series) {
    std::vector<DatedValue> values;
    for (const auto& each : series.results)
        if (each.point >= 0 && !each.from_logged_set)
            values.push_back(series.values[static_cast<std::size_t>(each.point)]);
    return values;
}

void choose_qualities(const FacilityView& view, const ReferenceTables& tables, RosterModel& model) {
    for (const auto& quality : tables.qualities) {
        const auto* prior = row_of(view.velocity_priors, quality.key);
        if (!prior)
            continue;
        const TestedSoFar test = best_test(view, tables, quality.key);
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
        if (!(spread > least_spread)) {
            model.left_out.push_back({&quality, "every thrower has the same result in its most used test"});
            continue;
        }
        const auto* change = row_of(view.attainable_changes, quality.key);
        const double a_unit =
            usual_velocity_spread / spread; // m/s for one unit, of a standardised slope of 1
        const Estimate slope{prior->mean * a_unit, prior_doubt * prior->sd * a_unit};
        model.priors.within.push_back(slope);
        model.priors.between.push_back(slope);
        model.qualities.push_back(
            {&quality, test.kind, test.athletes, spread, (change ? change->mean : 0.5) * spread});
    }
}

} // namespace amentum
