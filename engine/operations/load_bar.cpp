#include "operations/load_bar.h"

#include "equipment/solve_load.h"
#include "equipment/to_add.h"
#include "equipment/warm_up.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"
#include "operations/inside/throwing_answer.h"

namespace amentum {
namespace {

constexpr double heaviest_kg = 600;

ShownLoad shown_load(const MadeLoad& load, const ShownUnit& unit) {
    ShownLoad shown{shown_load_in(load.total, unit), unit.unit, {}, load.words};
    for (const auto& plates : load.one_side)
        shown.one_side.push_back({plates.label, shown_load_in(plates.each, unit), plates.count});
    return shown;
}

Result<Mass> target_of(const LoadBarRequest& request) {
    const auto target = mass_given("target", request.target_kg, request.target_lb);
    if (!target)
        return target.refusal();
    if (!*target)
        return refuse_missing("target_lb", "the load wanted, or target_kg");
    const double kg = (*target)->kilograms();
    if (kg <= 0 || kg > heaviest_kg)
        return refuse_range("target_kg", kg, 0, heaviest_kg, "kg");
    return **target;
}

} // namespace

Result<LoadBarAnswer> load_bar(Workplace& workplace, const LoadBarRequest& request) {
    const auto view = workplace.inside().view();
    if (view->records.kits.empty())
        return Refusal{RefusalCode::too_few_data, "No kit is held yet: import one first.", "kit", "",
                       "a kit"};
    const auto kit =
        request.kit ? kit_named(*view, *request.kit) : Result<const Kit*>(&view->records.kits.front());
    if (!kit)
        return kit.refusal();
    const auto means = from_word<LoadMeans>(request.means.value_or("straight_bar"));
    if (!means)
        return refuse_choice("means", *request.means, all_words<LoadMeans>());
    const auto target = target_of(request);
    if (!target)
        return target.refusal();
    const auto choice = solve_load(**kit, *means, *target, request.item);
    if (!choice)
        return choice.refusal();

    const auto unit = shown_mass((*kit)->unit);
    LoadBarAnswer answer{(*kit)->name, shown_load_in(*target, unit),
                         unit.unit,    shown_load(choice->nearest, unit),
                         {},           {},
                         {},           {}};
    if (choice->not_above)
        answer.not_above = shown_load(*choice->not_above, unit);
    if (choice->above)
        answer.above = shown_load(*choice->above, unit);
    answer.stop_and_refer = stop_and_refer_words(workplace.inside().tables);
    const auto additions = solve_to_add(**kit, *means, *target, request.item);
    if (additions)
        for (const auto& each : *additions)
            answer.to_add.push_back(each.what + " would make " + each.would_make.words);
    const auto ramp = choice->not_above ? plan_warm_up(**kit, *means, choice->not_above->total, request.item)
                                        : Result<WarmUp>(Refusal{});
    if (ramp)
        for (const auto& step : ramp->steps)
            answer.warm_up.push_back({step.reps, shown_load(step.load, unit),
                                      100 * (step.load.total / choice->not_above->total), step.moves});
    return answer;
}

} // namespace amentum
