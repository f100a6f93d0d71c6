#include "operations/growth.h"

#include "operations/inside/arm_watch.h"
#include "operations/inside/finding_answer.h"
#include "reports/shown_units.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int adult = 18;
constexpr double centimetres_in_inch = 2.54;

struct LengthShown {
    std::string unit;
    double from_centimetres;
    int decimals;
};

LengthShown shown_length(const Facility& facility) {
    return facility.length_unit == LengthUnit::inches ? LengthShown{"in", 1 / centimetres_in_inch, 1}
                                                      : LengthShown{"cm", 1, 1};
}

ShownEstimate shown(const Estimate& estimate, const std::string& unit, double factor, int decimals) {
    const Interval band = estimate.central();
    return {estimate.value * factor, band.low * factor, band.high * factor, unit, decimals};
}

std::string offset_words(const std::optional<Estimate>& offset) {
    if (!offset)
        return "";
    const std::string where = word(growth_band(offset->value));
    return where + " the fastest growth, as a band";
}

ShownGrowth growth_of(const FacilityView& view, const Athlete& athlete, const Facility& facility,
                      Date today) {
    const auto watch = watch_growth(view, athlete, today);
    const auto length = shown_length(facility);
    const auto rate = [&](const std::optional<Estimate>& each) {
        return each ? std::optional(shown(*each, (length.unit == "in" ? "inches" : length.unit) + " a month",
                                          length.from_centimetres, 2))
                    : std::nullopt;
    };
    ShownGrowth line;
    line.athlete = athlete.id.text;
    line.name = athlete.name;
    line.age = whole_years(athlete.birth_date, today);
    line.guardian = athlete.guardian;
    for (const auto& day : watch.heights)
        line.heights.push_back({day.date.text(),
                                shown(day.height, length.unit, length.from_centimetres, length.decimals),
                                rate(day.rate)});
    line.rate = rate(watch.rate);
    if (watch.offset)
        line.offset = shown(*watch.offset, "years", 1, 1);
    line.offset_words = offset_words(watch.offset);
    line.days_since_height = watch.days_since_height;
    line.findings = shown_findings(watch.findings);
    line.words = watch.words;
    return line;
}

bool measured_later(const ShownGrowth& a, const ShownGrowth& b) {
    constexpr int never = 100000;
    const int days_a = a.days_since_height.value_or(never), days_b = b.days_since_height.value_or(never);
    return days_a != days_b ? days_a > days_b : a.name < b.name;
}

} // namespace

Result<GrowthAnswer> growth(Workplace& workplace, const GrowthRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const Date today = inside.today();
    const auto facility = view->records.facility.value_or(Facility{"This facility"});
    GrowthAnswer answer{today.text(), {}, {}};
    if (request.athlete) {
        const auto athlete = athlete_named(*view, *request.athlete);
        if (!athlete)
            return athlete.refusal();
        if (whole_years((*athlete)->birth_date, today) >= adult)
            return Refusal{RefusalCode::method_does_not_apply, "Growth is watched under 18.", "athlete",
                           (*athlete)->name, "a thrower under 18"};
        answer.throwers.push_back(growth_of(*view, **athlete, facility, today));
    } else {
        for (const auto& athlete : view->records.athletes)
            if (whole_years(athlete.birth_date, today) < adult)
                answer.throwers.push_back(growth_of(*view, athlete, facility, today));
        std::sort(answer.throwers.begin(), answer.throwers.end(), measured_later);
    }
    answer.words = {
        "Height every month, in the same way, at the same time of day. In fast growth: fewer throws, fewer "
        "and "
        "lower jumps, and velocity and range measured anew (usual caution, proposal of this project).",
        "A band of growth is never for selection."};
    return answer;
}

} // namespace amentum
