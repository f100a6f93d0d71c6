#include "operations/kit.h"

#include "equipment/kit_purchases.h"
#include "equipment/load_words.h"
#include "equipment/stamped_mass.h"
#include "operations/inside/inside.h"
#include "operations/inside/kit_words.h"
#include "operations/inside/prescribed_loads.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double wide_gap = 1.10; // the largest usual step of load [ACSM2009]

std::string item_words(const KitItem& item, MassUnit unit) {
    std::string words;
    const auto add = [&](const std::string& more) { words += (words.empty() ? "" : "; ") + more; };
    if (item.mass)
        add(mass_beside_stamp(item, unit));
    if (item.height)
        add(format_fixed(item.height->centimetres(), 0) + " cm high");
    if (item.ratio && item.step && item.most)
        add("handle moves " + format_shortest(*item.ratio) + " of the stack; steps of " +
            describe_mass(*item.step, unit) + " up to " + describe_mass(*item.most, unit));
    return words;
}

ShownItem shown_item(const KitItem& item, MassUnit unit) {
    const auto shown = shown_mass(unit);
    std::string kind = word(item.kind);
    std::replace(kind.begin(), kind.end(), '_', ' ');
    ShownItem line{
        item.label, kind, item.count, {}, {}, {}, can_be_weighed(item.kind), item_words(item, unit)};
    const auto stamped = stamped_mass(item.label);
    if (item.mass)
        line.mass = shown_load_in(*item.mass, shown);
    if (stamped && can_be_weighed(item.kind))
        line.stamped = shown_load_in(*stamped, shown);
    if (line.stamped && item.mass)
        line.off_percent = std::round(1e6 * (*item.mass / *stamped - 1)) / 1e4;
    return line;
}

ShownLoads shown_loads(std::string what, LoadMeans means, const LoadTable& table, const ShownUnit& unit) {
    ShownLoads shown{std::move(what),
                     word(means),
                     static_cast<int>(table.size()),
                     shown_load_in(table.total(0), unit),
                     shown_load_in(table.total(table.size() - 1), unit),
                     0,
                     0,
                     {}};
    std::vector<double> steps;
    for (std::size_t i = 1; i < table.size(); ++i) {
        steps.push_back(shown_load_in(table.total(i) - table.total(i - 1), unit));
        const double ratio = table.total(i) / table.total(i - 1);
        if (ratio > wide_gap + 1e-9)
            shown.gaps.push_back({shown_load_in(table.total(i - 1), unit),
                                  shown_load_in(table.total(i), unit), std::round(1e4 * (ratio - 1)) / 1e2});
    }
    if (steps.empty())
        return shown;
    std::sort(steps.begin(), steps.end());
    shown.smallest_step = steps.front();
    shown.usual_step = steps[steps.size() / 2];
    return shown;
}

// Each bar and column by itself; dumbbells, balls, and what takes plates without a bar, together.
std::vector<ShownLoads> all_shown_loads(const Kit& kit, std::vector<std::string>& notes) {
    const auto unit = shown_mass(kit.unit);
    std::vector<ShownLoads> all;
    const auto add = [&](const std::string& what, LoadMeans means, const std::optional<std::string>& item) {
        const auto table = LoadTable::of(kit, means, item);
        if (table)
            all.push_back(shown_loads(what, means, *table, unit));
        else if (table.refusal().code == RefusalCode::missing_field &&
                 std::find(notes.begin(), notes.end(), table.refusal().sentence) == notes.end())
            notes.push_back(table.refusal().sentence);
    };
    for (const auto& item : kit.items)
        if (const auto means = means_of_item(item.kind))
            add(item.label, *means, item.label);
    for (const LoadMeans means : {LoadMeans::dumbbell_pair, LoadMeans::dumbbell_single, LoadMeans::ball,
                                  LoadMeans::landmine, LoadMeans::added_plate, LoadMeans::sled})
        add(means_in_words(means), means, {});
    return all;
}

std::string prescribed_words(const ShownPrescribed& shown, const std::string& unit) {
    if (shown.blocks.empty())
        return "No block is kept for a thrower who trains here, so nothing can be said of what to buy.";
    if (shown.sets == 0)
        return "The kept blocks ask for no load yet.";
    const std::string sets = std::to_string(shown.sets);
    std::string words = std::to_string(shown.made) + " of " + sets +
                        " prescribed sets are made to less than " + format_shortest(shown.small_step) + " " +
                        unit + " below what was aimed at, " + std::to_string(shown.exactly) +
                        " of them exactly. ";
    if (shown.purchases.empty())
        return words + "No single purchase would make more of them.";
    const std::string what = shown.purchases.front().what + ".";
    return words +
           (shown.purchases.front().more > 0
                ? "The purchase that would help most: " + what
                : "No single purchase would make more of them; nearest to what was aimed at comes " + what);
}

ShownPrescribed shown_prescribed(const PrescribedLoads& prescribed, const KitPurchases& purchases,
                                 const ShownUnit& unit, MassUnit speaks) {
    const auto percent = [](double fraction) { return std::round(1e4 * fraction) / 1e2; };
    ShownPrescribed shown{prescribed.blocks,
                          purchases.now.asked,
                          purchases.now.made,
                          purchases.now.exactly,
                          shown_load_in(small_step(speaks), unit),
                          percent(purchases.now.lacking),
                          {},
                          ""};
    for (const auto& each : purchases.best)
        shown.purchases.push_back({each.what, each.then.made - purchases.now.made, each.then.made,
                                   each.then.exactly, percent(each.then.lacking)});
    shown.words = prescribed_words(shown, unit.unit);
    return shown;
}

} // namespace

Result<KitAnswer> kit(Workplace& workplace, const KitRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto found = kit_or_first(*view, request.kit);
    if (!found)
        return found.refusal();
    const Kit& kit = **found;
    const auto unit = shown_mass(kit.unit);
    KitAnswer answer{kit.id.text, kit.name, unit.unit, {}, {}, {}, {}};
    for (const auto& item : kit.items)
        answer.items.push_back(shown_item(item, kit.unit));
    answer.loads = all_shown_loads(kit, answer.notes);
    const auto prescribed = prescribed_loads(inside, *view, kit);
    answer.prescribed =
        shown_prescribed(prescribed, solve_kit_purchases(kit, prescribed.loads), unit, kit.unit);
    return answer;
}

} // namespace amentum
