#include "operations/sides.h"

#include "measurement/joint_range.h"
#include "measurement/side_comparison.h"
#include "operations/inside/inside.h"
#include "operations/inside/sides_of_day.h"
#include "operations/inside/throwing_answer.h"
#include "reports/sentences.h"

namespace amentum {
namespace {

constexpr ShownUnit per_cent{"%", 1, 1};

Estimate estimate_of(const MeasuredSide& side) {
    return {side.result.value, side.result.standard_error};
}

struct Compared {
    const SidesOfDay* day;
    Estimate difference;
};

// Every day on which both sides were taken alike; reasons for the others.
std::vector<Compared> compared_days(const std::vector<SidesOfDay>& days, std::vector<std::string>& reasons) {
    std::vector<Compared> all;
    for (const auto& day : days) {
        if (!day.main || !day.other)
            continue;
        const auto difference = measure_side_difference(day.main->result, day.other->result);
        if (difference)
            all.push_back({&day, *difference});
        else
            reasons.push_back(day.date.text() + ": " + difference.refusal().sentence);
    }
    return all;
}

std::string verdict_words(SideVerdict verdict, const std::string& more, const std::string& size) {
    switch (verdict) {
    case SideVerdict::larger_than_error:
        return "The " + more + " has more, by " + size + ": larger than the error of measuring it.";
    case SideVerdict::cannot_tell:
        return "Cannot tell: " + size +
               " lies between what error often makes and what it seldom makes. Measure again.";
    case SideVerdict::within_error:
        return size + ": within the error of measuring it.";
    }
    return {};
}

void add_over_total(SideLine& line, SideVerdict& verdict, const Compared& latest) {
    const auto compared = compare_sides(estimate_of(*latest.day->other), estimate_of(*latest.day->main),
                                        SidesTested::one_at_a_time);
    if (!compared)
        return;
    verdict = compared->verdict;
    line.over_total = shown_estimate(compared->over_total.value, compared->over_total.central(), per_cent);
    line.rivals = RivalFormulas{compared->rivals.of_larger, compared->rivals.smaller_share,
                                compared->rivals.over_mean, compared->rivals.symmetry_angle};
}

int same_way_as(const Compared& latest, const std::vector<Compared>& all) {
    int days = 0;
    for (const auto& each : all)
        days += each.difference.value * latest.difference.value > 0;
    return days;
}

SideLine line_of(const TestKind& kind, const std::vector<Compared>& all, const Facility& facility) {
    const auto& latest = all.back();
    const auto unit = shown_unit(kind.unit, facility);
    const auto shown = [&unit](const Estimate& e) { return shown_estimate(e.value, e.central(), unit); };
    SideLine line{};
    line.test = kind.key;
    line.name = kind.name;
    line.date = latest.day->date.text();
    line.main_side = main_side_words(kind) + ", " + word(latest.day->main->result.side);
    line.other_side = other_side_words(kind) + ", " + word(latest.day->other->result.side);
    line.main = shown(estimate_of(*latest.day->main));
    line.other = shown(estimate_of(*latest.day->other));
    line.difference = shown(latest.difference);
    auto verdict = judge_difference(latest.difference);
    if (kind.measure != Measure::joint_angle)
        add_over_total(line, verdict, latest);
    line.verdict = word(verdict);
    line.days_compared = static_cast<int>(all.size());
    line.days_same_way = same_way_as(latest, all);
    const std::string more = latest.difference.value > 0 ? main_side_words(kind) : other_side_words(kind);
    line.words = verdict_words(
        verdict, more, describe_difference(latest.difference.value, latest.difference.central(), unit));
    if (all.size() > 1)
        line.words += " The difference was on the same side on " + std::to_string(line.days_same_way) +
                      " of " + std::to_string(line.days_compared) + " days.";
    return line;
}

std::string why_not(const TestKind& kind, const std::vector<SidesOfDay>& days) {
    bool main = false, other = false;
    for (const auto& day : days) {
        main = main || day.main;
        other = other || day.other;
    }
    if (main && other)
        return "its sides were measured on different days.";
    return "only the " + (main ? main_side_words(kind) : other_side_words(kind)) + " was measured.";
}

void add_test(SidesAnswer& answer, const FacilityView& view, const TestKind& kind, const Athlete& athlete,
              const Facility& facility) {
    const auto days = sides_by_day(view, kind, athlete);
    if (days.empty())
        return;
    std::vector<std::string> reasons;
    const auto compared = compared_days(days, reasons);
    for (const auto& day : days)
        for (const auto& refusal : day.refusals)
            answer.not_compared.push_back(day.date.text() + ", " + refusal);
    for (const auto& reason : reasons)
        answer.not_compared.push_back(kind.name + ", " + reason);
    if (!compared.empty())
        answer.tests.push_back(line_of(kind, compared, facility));
    else if (reasons.empty())
        answer.not_compared.push_back(kind.name + ": " + why_not(kind, days));
}

} // namespace

Result<SidesAnswer> sides(Workplace& workplace, const SidesRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto facility = view->records.facility.value_or(Facility{"This facility"});
    SidesAnswer answer{(*athlete)->id.text, (*athlete)->name, inside.today().text(), {}, {}, {}, {}};
    for (const auto& kind : inside.tables.test_kinds)
        if (kind.side_rule != SideRule::none)
            add_test(answer, *view, kind, **athlete, facility);
    if (answer.tests.empty())
        answer.words.push_back(
            "No test has both sides, measured alike on one day; measure both to compare them.");
    else
        answer.words.push_back(
            "Above 0: the throwing side or lead leg has more. Formulas differ; never compare "
            "numbers of two. No fixed line of per cent is used.");
    answer.words.push_back(
        "Throwers differ between sides because they throw; a difference is no sign of injury.");
    answer.stop_and_refer = stop_and_refer_words(inside.tables);
    return answer;
}

} // namespace amentum
