#include "operations/weigh_item.h"

#include "equipment/exact_mass.h"
#include "equipment/load_words.h"
#include "equipment/stamped_mass.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"
#include "operations/inside/kit_words.h"
#include "records/limits.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double usually_off = 0.07; // unweighed plates are off by 1 to 7 % [common practice, no source]
constexpr double most_off =
    0.15; // beyond: another item, or another unit. Proposal of this project, no source

Result<const KitItem*> item_named(const Kit& kit, const std::string& label) {
    std::vector<std::string> known;
    for (const auto& item : kit.items) {
        if (item.label == label)
            return &item;
        if (can_be_weighed(item.kind))
            known.push_back(item.label);
    }
    return refuse_unknown("item", label, known);
}

Result<Mass> mass_of_request(const WeighItemRequest& request, MassUnit unit) {
    const auto given = mass_given("mass", request.mass_kg, request.mass_lb);
    if (!given)
        return given.refusal();
    const bool pounds = request.mass_lb || (!request.mass_kg && unit == MassUnit::lb);
    const std::string field = pounds ? "mass_lb" : "mass_kg";
    if (!*given)
        return refuse_missing(field, "the mass the scale shows");
    const auto shown = shown_mass(pounds ? MassUnit::lb : MassUnit::kg);
    const auto [low, high] = limits::item_mass_kg;
    if ((*given)->kilograms() < low || (*given)->kilograms() > high)
        return refuse_range(field, (*given)->kilograms() * shown.factor, low * shown.factor,
                            high * shown.factor, shown.unit);
    return **given;
}

std::string percent_off(double off) {
    return format_fixed(100 * std::abs(off), 1) + " % " + (off > 0 ? "over" : "under");
}

Refusal refuse_implausible(const WeighItemRequest& request, const KitItem& item, Mass stamped, Mass mass,
                           MassUnit unit) {
    const bool pounds = request.mass_lb.has_value();
    const MassUnit typed = pounds ? MassUnit::lb : MassUnit::kg;
    return {RefusalCode::out_of_range,
            describe_mass(mass, typed) + " is " + percent_off(mass / stamped - 1) + " what is stamped on \"" +
                item.label + "\" (" + describe_mass(stamped, unit) +
                "): another item, another unit, or a label to change in the kit's file.",
            pounds ? "mass_lb" : "mass_kg", describe_mass(mass, typed),
            describe_mass(stamped * (1 - most_off), typed) + " to " +
                describe_mass(stamped * (1 + most_off), typed)};
}

std::string question(const KitItem& item, Mass mass, MassUnit unit) {
    const auto stamped = stamped_mass(item.label);
    if (stamped && std::abs(mass / *stamped - 1) > usually_off)
        return describe_mass(mass, unit) + " is " + percent_off(mass / *stamped - 1) + " the stamp of \"" +
               item.label + "\"; plates nobody weighed are usually within 7 %. Keep it?";
    if (!stamped && item.mass && std::abs(mass / *item.mass - 1) > most_off)
        return "\"" + item.label + "\" counted as " + describe_mass(*item.mass, unit) + " until now; " +
               describe_mass(mass, unit) + " is " + percent_off(mass / *item.mass - 1) + " that. Keep it?";
    return "";
}

std::vector<std::string> after_words(const FacilityView& view, const Kit& kit, const KitItem& item,
                                     Mass mass) {
    KitItem weighed = item;
    weighed.mass = mass;
    std::vector<std::string> words{item.label + " counts as " + mass_beside_stamp(weighed, kit.unit) +
                                   " from now on."};
    if (item.count > 1)
        words.push_back("All " + std::to_string(item.count) +
                        " of that label count as this mass. An odd one "
                        "among them needs a label of its own in the kit's file.");
    if (item.kind == ItemKind::hex_bar)
        for (const auto& other : kit.items)
            if (other.kind == ItemKind::hex_bar && other.label != item.label &&
                other.label.substr(0, other.label.find(',')) == item.label.substr(0, item.label.find(',')) &&
                other.mass && exact_mass(*other.mass) != exact_mass(mass))
                words.push_back("\"" + other.label + "\" still counts as " +
                                describe_mass(*other.mass, kit.unit) +
                                ": if it is the same bar, weigh it too.");
    const auto stale = std::count_if(view.records.blocks.begin(), view.records.blocks.end(),
                                     [&](const auto& block) { return block.kit == kit.id; });
    if (stale > 0)
        words.push_back((stale == 1 ? "One kept block of this gym stays"
                                    : std::to_string(stale) + " kept blocks of this gym stay") +
                        " as written with the old mass until planned again.");
    return words;
}

} // namespace

Result<WeighItemAnswer> weigh_item(Workplace& workplace, const WeighItemRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto view = inside.view();
    const auto kit = kit_or_first(*view, request.kit);
    if (!kit)
        return kit.refusal();
    const auto item = item_named(**kit, trimmed(request.item));
    if (!item)
        return item.refusal();
    if (!can_be_weighed((*item)->kind))
        return Refusal{RefusalCode::method_does_not_apply,
                       "\"" + (*item)->label + "\" counts by its number or its steps, not by a mass.", "item",
                       (*item)->label, "a bar, plate, dumbbell, kettlebell or ball"};
    const auto mass = mass_of_request(request, (*kit)->unit);
    if (!mass)
        return mass.refusal();
    const auto stamped = stamped_mass((*item)->label);
    if (stamped && std::abs(*mass / *stamped - 1) > most_off)
        return refuse_implausible(request, **item, *stamped, *mass, (*kit)->unit);

    const auto unit = shown_mass((*kit)->unit);
    WeighItemAnswer answer{
        false, false, "", (*kit)->id.text, (*item)->label, {}, shown_load_in(*mass, unit), unit.unit, {}};
    if ((*item)->mass)
        answer.before = shown_load_in(*(*item)->mass, unit);
    answer.held_before = (*item)->mass && exact_mass(*(*item)->mass) == exact_mass(*mass);
    if (answer.held_before) {
        answer.words.push_back((*item)->label + " counts as " + mass_beside_stamp(**item, (*kit)->unit) +
                               " already; nothing is changed.");
        return answer;
    }
    if (!request.keep.value_or(false))
        answer.question = question(**item, *mass, (*kit)->unit);
    if (!answer.question.empty())
        return answer;
    inside.store.save_item_mass((*kit)->id, (*item)->label, *mass);
    answer.saved = true;
    answer.words = after_words(*view, **kit, **item, *mass);
    return answer;
}

} // namespace amentum
