#include "operations/inside/test_worth.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

// Where nobody can be compared with yet: seven others, a test with a third of an SD of error (proposal of this project).
constexpr double usual_doubt_of_few = 1, usual_error = 0.1;
constexpr double numbers_of_usual =
    7; // of the regression behind what is usual: its doubt is about 7 / athletes (reference_level.h)

// The test that speaks for this athlete, else the one most throwers here have done.
const TestKind* test_of(const FacilityView& view, const ReferenceTables& tables, const Athlete& athlete,
                        const std::string& quality) {
    if (const Series* series = view.spoken_for(athlete.id.text, quality))
        return series->kind;
    const TestKind* best = nullptr;
    std::ptrdiff_t most = -1;
    for (const auto& kind : tables.test_kinds) {
        if (kind.quality != quality)
            continue;
        const auto tested = std::count_if(view.series.begin(), view.series.end(), [&](const auto& each) {
            return each.first.second == kind.key && !each.second.trajectory.empty();
        });
        if (tested > most)
            most = tested, best = &kind;
    }
    return best;
}

// Error variance of one day of a test: as of the athlete's last one, else of the roster's last ones, else as published.
double error_of(const FacilityView& view, const Series* own, const TestKind& kind) {
    if (own && !own->values.empty())
        return own->values.back().variance;
    double sum = 0;
    int count = 0;
    for (const auto& [key, series] : view.series)
        if (key.second == kind.key && !series.values.empty())
            sum += series.values.back().variance, ++count;
    return count > 0 ? sum / count : kind.trial_error * kind.trial_error + kind.day_error * kind.day_error;
}

// What the gain moves by for one SD of the level: the headroom's slope, over the level's own doubt.
double gain_a_sd(double expected, const StateOnDay& z) {
    const double sd = std::sqrt(std::max(z.variance, 1e-6));
    return expected * (headroom(z.mean + sd) - headroom(z.mean - sd)) / (2 * sd) / headroom(z.mean);
}

// Nothing for who is tested but cannot be compared: another test changes no level then. For who is not, a usual test beside a few
// others who do it too.
std::optional<UsualLevelAhead> level_ahead(const FacilityView& view, const TestKind& kind,
                                           const Series* series, const ReferenceLevel& level, Date today,
                                           int test_in, int choice_in) {
    if (level.spread <= 0 || level.compared_with == 0) {
        if (series)
            return std::nullopt;
        return UsualLevelAhead{{}, 0, usual_doubt_of_few, usual_error, test_in, choice_in};
    }
    const double a_sd = level.spread * level.spread;
    const auto fitted = view.variances.find(kind.key);
    const double drift = series                           ? series->trajectory.front().drift
                         : fitted == view.variances.end() ? 0
                                                          : fitted->second.drift;
    UsualLevelAhead ahead{
        {},      drift / a_sd, numbers_of_usual / level.compared_with, error_of(view, series, kind) / a_sd,
        test_in, choice_in};
    if (series) {
        const double own = series->trajectory.front().state_on(today.days_since_1970()).variance / a_sd;
        const double whole =
            level.z.variance / (1 - std::min(level.z.variance, 0.999)); // (u + P), from Var(z)
        ahead.variance_today = own;
        ahead.usual_doubt = std::max(0.0, whole - own);
    }
    return ahead;
}

} // namespace

std::vector<TestWorth> worth_of_tests(const FacilityView& view, const ReferenceTables& tables,
                                      const Athlete& athlete, const LimiterWork& work, Date today,
                                      int choice_in_days, const DaysAhead& days_ahead) {
    const auto& gains = work.answer.gains;
    std::vector<double> expected;
    for (const auto& gain : gains)
        expected.push_back(gain.expected);
    std::vector<TestWorth> worth;
    for (std::size_t k = 0; k < gains.size(); ++k) {
        const TestKind* kind = test_of(view, tables, athlete, gains[k].quality);
        if (!kind)
            continue;
        const Series* series = view.one_series(athlete.id.text, kind->key);
        const auto& now = work.levels.at(gains[k].quality);
        const auto level = series ? now : level_in(view, *kind, athlete, today); // untested: the others only
        TestWorth one{gains[k].quality, kind, 0, {now.z.variance, now.z.variance}, ""};
        const auto test_in = days_ahead(*kind);
        const auto ahead =
            level_ahead(view, *kind, series, level, today, test_in.value_or(0), choice_in_days);
        if (!ahead)
            one.nothing = "too few others here did it to be compared with";
        else if (!test_in)
            one.nothing = "no day is free for it";
        else {
            one.doubt = doubt_at_choice(*ahead);
            if (gains.size() > 1)
                one.value = value_of_test(
                    expected, test_outlook(*ahead, k, gains.size(), gain_a_sd(gains[k].expected, now.z)));
        }
        worth.push_back(std::move(one));
    }
    std::stable_sort(worth.begin(), worth.end(), [](const auto& a, const auto& b) {
        return a.value != b.value ? a.value > b.value : a.quality < b.quality;
    });
    return worth;
}

} // namespace amentum
