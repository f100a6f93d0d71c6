#include "operations/load_racks.h"

#include "equipment/load_racks.h"
#include "operations/inside/inside.h"
#include "operations/inside/kept_block.h"
#include "operations/inside/kit_words.h"
#include "operations/inside/session_bars.h"
#include "operations/inside/throwing_answer.h"

#include <algorithm>

namespace amentum {
namespace {

Refusal at_rack(Refusal refusal, std::size_t rack) {
    refusal.field = "racks." + std::to_string(rack) + (refusal.field.empty() ? "" : "." + refusal.field);
    return refusal;
}

// The kit named; else that of the first block named; else the first.
Result<const Kit*> kit_of(const FacilityView& view, const LoadRacksRequest& request) {
    if (!request.kit)
        for (const auto& rack : request.racks)
            if (rack.block)
                if (const auto block = kept_block(view, *rack.block, "block"))
                    return kit_named(view, (*block)->kit.text);
    return kit_or_first(view, request.kit);
}

Result<NamedRack> loads_given(const RackGiven& given, std::size_t number) {
    if (!given.loads_lb.empty() && !given.loads_kg.empty())
        return Refusal{RefusalCode::two_units, "The loads are given in lb and in kg; give them once.",
                       "loads_lb", "", "one of loads_lb, loads_kg"};
    const auto means = from_word<LoadMeans>(given.means.value_or("straight_bar"));
    if (!means)
        return refuse_choice("means", *given.means, all_words<LoadMeans>());
    NamedRack rack{
        {given.name.value_or("Rack " + std::to_string(number + 1)), {{*means, given.item, {}}}}, {{}}, {}};
    for (const double pounds : given.loads_lb)
        rack.wanted.bars[0].loads.push_back(Mass::pounds(pounds));
    for (const double kilograms : given.loads_kg)
        rack.wanted.bars[0].loads.push_back(Mass::kilograms(kilograms));
    for (std::size_t t = 0; t < rack.wanted.bars[0].loads.size(); ++t)
        rack.names[0].push_back({"set " + std::to_string(t + 1), ""});
    if (rack.names[0].empty())
        return refuse_missing("loads_lb", "the loads of the sets in order, or loads_kg, or a block");
    return rack;
}

Result<NamedRack> rack_given(const Workplace::Inside& inside, const FacilityView& view, const Kit& kit,
                             const RackGiven& given, std::size_t number) {
    if (!given.block)
        return loads_given(given, number);
    if (!given.loads_lb.empty() || !given.loads_kg.empty())
        return Refusal{RefusalCode::unknown_choice,
                       "A rack has its loads from a block or from a list, not both.", "block", *given.block,
                       "a block, or loads"};
    const auto block = kept_block(view, *given.block, "block");
    if (!block)
        return block.refusal();
    auto rack = session_bars(inside, view, kit, **block, given.week.value_or(1), given.session.value_or(1));
    if (rack && given.name) {
        NamedRack named = *std::move(rack);
        named.wanted.name = *given.name;
        return named;
    }
    return rack;
}

ShownLoad shown(const MadeLoad& load, const ShownUnit& unit) {
    ShownLoad shown{shown_load_in(load.total, unit), unit.unit, {}, load.words};
    for (const auto& plates : load.one_side)
        shown.one_side.push_back({plates.label, shown_load_in(plates.each, unit), plates.count});
    return shown;
}

RackBar shown_bar(const LoadRamp& ramp, const RampWanted& wanted, const std::vector<NamedSet>& names,
                  const ShownUnit& unit) {
    RackBar bar{ramp.item, word(wanted.means), ramp.stacks, 0, {}, ramp.strip, ramp.moves, ramp.usual_moves};
    for (std::size_t t = 0; t < ramp.sets.size(); ++t) {
        const RampSet& set = ramp.sets[t];
        bar.sets.push_back({names[t].what, names[t].dose, shown_load_in(set.wanted, unit),
                            shown(set.load, unit), set.moves});
    }
    Mass plates = Mass::kilograms(0);
    for (const auto& run : ramp.sets.front().load.one_side)
        plates = plates + run.each * run.count * ramp.stacks;
    bar.bar = shown_load_in(ramp.sets.front().load.total - plates, unit);
    return bar;
}

std::string plates_handled(int moves) {
    return std::to_string(moves) + (moves == 1 ? " plate" : " plates");
}

std::vector<std::string> what_was_found(const LoadedRacks& racks) {
    std::vector<std::string> words{plates_handled(racks.moves) +
                                   " handled on one side in all, empty bar to empty "
                                   "bar; with the fewest plates and the heaviest inside it would be " +
                                   std::to_string(racks.usual_moves) + "."};
    if (racks.proven)
        words.push_back("Proven: no stacking of these loads handles fewer.");
    else if (racks.lightened.empty() && racks.at_least > 0)
        words.push_back("The best found; none can handle fewer than " + std::to_string(racks.at_least) + ".");
    else
        words.push_back("The best found; that none handles fewer is not proven.");
    for (const auto& plate : racks.contested)
        words.push_back(plate.label + ": the racks would like " + std::to_string(plate.wanted) +
                        ", there are " + std::to_string(plate.owned) +
                        "; one of them is stacked from other plates.");
    std::string lightened;
    for (const auto& name : racks.lightened)
        lightened += (lightened.empty() ? "" : " and ") + name;
    if (!lightened.empty())
        words.push_back("The plates do not make all loads at once, so " + lightened +
                        " may be one smallest step lighter in a set, never heavier.");
    return words;
}

} // namespace

Result<LoadRacksAnswer> load_racks(Workplace& workplace, const LoadRacksRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto kit = kit_of(*view, request);
    if (!kit)
        return kit.refusal();
    if (request.racks.empty())
        return refuse_missing("racks", "one to four racks, each with loads or a block");
    std::vector<NamedRack> named;
    std::vector<RackWanted> wanted;
    for (std::size_t r = 0; r < request.racks.size(); ++r) {
        auto rack = rack_given(inside, *view, **kit, request.racks[r], r);
        if (!rack)
            return at_rack(rack.refusal(), r);
        wanted.push_back(rack->wanted);
        named.push_back(*std::move(rack));
    }
    const auto racks = solve_load_racks(**kit, wanted);
    if (!racks)
        return racks.refusal();

    const auto unit = shown_mass((*kit)->unit);
    LoadRacksAnswer answer{(*kit)->name,
                           unit.unit,
                           {},
                           racks->moves,
                           racks->usual_moves,
                           racks->proven,
                           racks->at_least,
                           {},
                           racks->lightened,
                           what_was_found(*racks),
                           stop_and_refer_words(inside.tables)};
    for (std::size_t r = 0; r < named.size(); ++r) {
        const LoadedRack& rack = racks->racks[r];
        answer.racks.push_back({rack.name, {}, {}, rack.moves, rack.usual_moves, named[r].notes});
        for (std::size_t b = 0; b < rack.bars.size(); ++b)
            answer.racks.back().bars.push_back(
                shown_bar(rack.bars[b], wanted[r].bars[b], named[r].names[b], unit));
        for (const auto& plates : rack.plates)
            answer.racks.back().plates.push_back(
                {plates.label, shown_load_in(plates.each, unit), plates.count});
    }
    for (const auto& plate : racks->contested)
        answer.contested.push_back({plate.label, plate.wanted, plate.owned});
    return answer;
}

} // namespace amentum
