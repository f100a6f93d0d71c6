#include "guard_rails/check_growth.h"

#include "measurement/straight_line.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr int adult = 18;
constexpr double days_a_month = 365.25 / 12;
constexpr int rate_days = 183;
constexpr int least_apart = 28; // days between two heights of a rate
constexpr int recent_days = 92; // older heights tell no spurt of today: proposal of this project, no source
constexpr int remind_days = 31;
constexpr double spurt_cm_a_month = 0.6; // proposal of this project, no source

Estimate rate_between(const HeightOfDay& from, const HeightOfDay& to) {
    const double months = (to.date - from.date) / days_a_month;
    return {(to.height.value - from.height.value) / months,
            std::hypot(from.height.standard_error, to.height.standard_error) / months};
}

std::vector<HeightOfDay> heights_of(const Athlete& athlete, std::span<const TestResult> results, Date today) {
    std::vector<HeightOfDay> heights;
    for (const auto& result : results)
        if (result.athlete == athlete.id && result.test == "stature" && result.date <= today)
            heights.push_back({result.date, {100 * result.value, 100 * result.standard_error}, {}});
    std::stable_sort(heights.begin(), heights.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    for (std::size_t i = 0; i < heights.size(); ++i)
        for (std::size_t j = i; j-- > 0 && !heights[i].rate;)
            if (heights[i].date - heights[j].date >= least_apart)
                heights[i].rate = rate_between(heights[j], heights[i]);
    return heights;
}

std::optional<Estimate> rate_of(const std::vector<HeightOfDay>& heights) {
    std::vector<LinePoint> points;
    int longest = 0;
    for (const auto& each : heights) {
        const int ago = heights.back().date - each.date;
        if (ago > rate_days)
            continue;
        points.push_back({-ago / days_a_month, each.height.value, 0, each.height.standard_error});
        longest = std::max(longest, ago);
    }
    if (longest < least_apart)
        return {};
    const auto line = fit_errors_in_y(points);
    if (!line)
        return {};
    const auto widened = widened_by_misfit(*line);
    return Estimate{widened.slope, std::sqrt(widened.slope_variance)};
}

std::optional<Mass> body_mass_near(const Athlete& athlete, std::span<const TestResult> results, Date day,
                                   Date today) {
    const TestResult* near = nullptr;
    for (const auto& result : results) {
        const int away = std::abs(result.date - day);
        if (result.athlete == athlete.id && result.test == "body_mass" && result.date <= today &&
            away <= recent_days && (!near || away < std::abs(near->date - day)))
            near = &result;
    }
    return near ? std::optional(Mass::kilograms(near->value)) : std::nullopt;
}

void place_in_growth(GrowthWatch& watch, const Athlete& athlete, std::span<const TestResult> results,
                     Date today) {
    const auto& last = watch.heights.back();
    const Growing growing{athlete.sex, decimal_years(athlete.birth_date, last.date),
                          Length::centimetres(last.height.value), athlete.sitting_height,
                          body_mass_near(athlete, results, last.date, today)};
    for (const auto equation : {OffsetEquation::mirwald, OffsetEquation::moore}) {
        const auto offset = estimate_maturity_offset(equation, growing);
        if (!offset)
            continue;
        watch.offset = *offset;
        watch.equation = equation;
        return;
    }
}

std::string describe_place(const GrowthWatch& watch) {
    const auto band = growth_band(watch.offset->value);
    const std::string where = band == GrowthBand::before ? "before the time of fastest growth"
                              : band == GrowthBand::around
                                  ? "around the time of fastest growth, within about a year of it"
                                  : "after the time of fastest growth";
    return "Probably " + where + ", by the equation of " +
           (*watch.equation == OffsetEquation::mirwald ? "Mirwald and others" : "Moore and others") +
           ": standard error " + format_fixed(watch.offset->standard_error, 1) +
           " years, and early maturers look 1.15 years less mature than they are, average ones 0.36. A rough "
           "band, no "
           "date; never for selection.";
}

std::string number(double centimetres, int decimals, LengthUnit unit) {
    return format_fixed(unit == LengthUnit::inches ? Length::centimetres(centimetres).inches() : centimetres,
                        decimals);
}

std::string spelled(LengthUnit unit) { // "0.31 in a month" would be read as a time
    return unit == LengthUnit::inches ? "inches" : "cm";
}

std::string describe_rate(const GrowthWatch& watch, LengthUnit unit) {
    const auto [low, high] = watch.rate->central();
    const auto& last = watch.heights.back();
    return "Height " + number(last.height.value, 1, unit) + " " + spelled(unit) + " on " + last.date.text() +
           ", growing " + number(watch.rate->value, 2, unit) + " " + spelled(unit) + " a month (likely " +
           number(low, 2, unit) + " to " + number(high, 2, unit) + ").";
}

Finding spurt(const GrowthWatch& watch, LengthUnit unit) {
    const std::string a_month =
        number(spurt_cm_a_month, unit == LengthUnit::inches ? 2 : 1, unit) + " " + spelled(unit) + " a month";
    return {Severity::warns,
            "growth_spurt",
            describe_rate(watch, unit) + " That is above " + a_month + " beyond the error of the heights.",
            "Above " + a_month + ", about " + (unit == LengthUnit::inches ? "2.8 inches" : "7 cm") +
                " a year, counts as fast growth.",
            "proposal of this project, no source",
            "Fewer throws while it lasts; take velocity and range anew as first readings, because the old "
            "ones are of a smaller body; measure height every month. Pain at the elbow or shoulder of a "
            "growing thrower goes to a clinician."};
}

Finding no_height(const GrowthWatch& watch) {
    const std::string last = watch.heights.empty()
                                 ? "Height was never measured."
                                 : "Height was last measured on " + watch.heights.back().date.text() + ", " +
                                       std::to_string(*watch.days_since_height) + " days ago.";
    return {
        Severity::notes,
        "measure_height",
        last,
        "Under 18, height is measured every month.",
        "proposal of this project, no source",
        "Measure standing height without shoes, at the same time of day, by the same person if possible."};
}

} // namespace

GrowthWatch check_growth(const Athlete& athlete, std::span<const TestResult> results, Date today,
                         LengthUnit words_in) {
    GrowthWatch watch;
    if (whole_years(athlete.birth_date, today) >= adult)
        return watch;
    watch.heights = heights_of(athlete, results, today);
    if (!watch.heights.empty()) {
        watch.days_since_height = today - watch.heights.back().date;
        watch.rate = rate_of(watch.heights);
        place_in_growth(watch, athlete, results, today);
    }
    if (watch.rate && *watch.days_since_height <= recent_days &&
        watch.rate->central(z90).low > spurt_cm_a_month)
        watch.findings.push_back(spurt(watch, words_in));
    if (!watch.days_since_height || *watch.days_since_height > remind_days)
        watch.findings.push_back(no_height(watch));
    if (watch.rate)
        watch.words.push_back(describe_rate(watch, words_in));
    else
        watch.words.push_back("How fast height changes cannot be told: it takes two heights a month or more "
                              "apart within half a "
                              "year.");
    if (watch.offset)
        watch.words.push_back(describe_place(watch));
    return watch;
}

} // namespace amentum
