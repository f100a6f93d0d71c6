#include "operations/check_plan.h"

#include "guard_rails/check_logged_sets.h"
#include "operations/inside/arm_watch.h"
#include "operations/inside/finding_answer.h"
#include "operations/inside/planned_outings.h"
#include "operations/inside/throwing_answer.h"

#include <algorithm>

namespace amentum {
namespace {

template <class Lines>
void append(std::vector<ShownFinding>& all, const Lines& more) {
    all.insert(all.end(), more.begin(), more.end());
}

const Kit* kit_of(const FacilityView& view, const KitId& id) {
    const auto& kits = view.records.kits;
    const auto found = std::find_if(kits.begin(), kits.end(), [&](const auto& kit) { return kit.id == id; });
    return found == kits.end() ? nullptr : &*found;
}

// Blocks that have days ahead.
void check_blocks(const Workplace::Inside& inside, const FacilityView& view, const Athlete& athlete,
                  Date today, CheckedPlan& plan) {
    for (const auto& block : view.records.blocks) {
        const Kit* kit = kit_of(view, block.kit);
        if (block.athlete != athlete.id || block.start + 7 * block.weeks <= today || !kit)
            continue;
        plan.checked.push_back("block from " + block.start.text() + ", " + std::to_string(block.weeks) +
                               " weeks, " + std::to_string(block.lines.size()) + " lines");
        append(plan.findings, block_findings(inside, view, block, athlete, *kit));
    }
}

void check_sets(const Workplace::Inside& inside, const FacilityView& view, const Athlete& athlete, Date today,
                CheckedPlan& plan) {
    const auto& sets = view.records.sets;
    const auto own = std::count_if(sets.begin(), sets.end(), [&](const auto& set) {
        return set.athlete == athlete.id && today - set.date <= 28;
    });
    if (own == 0)
        return;
    plan.checked.push_back(std::to_string(own) + (own == 1 ? " set" : " sets") + " logged in 28 days");
    append(plan.findings, shown_findings(check_logged_sets(sets, athlete, inside.tables.exercises,
                                                           care_record(inside.tables, view), today)));
}

int weight_of(const ShownFinding& finding) {
    return finding.severity == word(Severity::stops) ? 0 : finding.severity == word(Severity::warns) ? 1 : 2;
}

CheckedPlan plan_of(const Workplace::Inside& inside, const FacilityView& view, const Athlete& athlete,
                    Date today) {
    CheckedPlan plan{athlete.id.text, athlete.name, {}, {}};
    check_blocks(inside, view, athlete, today, plan);
    append(plan.findings, throwing_findings(inside, view, athlete, today));
    append(plan.findings, planned_throwing_findings(inside, view, athlete, today, plan.checked));
    check_sets(inside, view, athlete, today, plan);
    append(plan.findings, shown_findings(watch_ranges(view, athlete, today).findings));
    append(plan.findings, shown_findings(watch_growth(view, athlete, today).findings));
    std::stable_sort(plan.findings.begin(), plan.findings.end(),
                     [](const auto& a, const auto& b) { return weight_of(a) < weight_of(b); });
    return plan;
}

int stops_in(const CheckedPlan& plan) {
    return static_cast<int>(std::count_if(plan.findings.begin(), plan.findings.end(),
                                          [](const auto& each) { return weight_of(each) == 0; }));
}

} // namespace

Result<CheckPlanAnswer> check_plan(Workplace& workplace, const CheckPlanRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const Date today = inside.today();
    CheckPlanAnswer answer{today.text(), 0, 0, {}, {}, stop_and_refer_words(inside.tables)};
    std::vector<const Athlete*> asked;
    if (request.athlete) {
        const auto athlete = athlete_named(*view, *request.athlete);
        if (!athlete)
            return athlete.refusal();
        asked.push_back(*athlete);
    } else {
        for (const auto& athlete : view->records.athletes)
            asked.push_back(&athlete);
    }
    for (const auto* athlete : asked) {
        auto plan = plan_of(inside, *view, *athlete, today);
        answer.stops += stops_in(plan);
        if (request.athlete || !plan.findings.empty())
            answer.plans.push_back(std::move(plan));
    }
    answer.checked = static_cast<int>(asked.size());
    std::stable_sort(answer.plans.begin(), answer.plans.end(),
                     [](const auto& a, const auto& b) { return stops_in(a) > stops_in(b); });
    answer.words = {std::to_string(answer.checked) + (answer.checked == 1 ? " thrower" : " throwers") +
                    " checked, " + std::to_string(answer.stops) +
                    (answer.stops == 1 ? " finding stops." : " findings stop.") +
                    " No finding does not mean that anybody is fit: this compares what is written down."};
    return answer;
}

} // namespace amentum
