#include "equipment/load_racks.h"

#include "equipment/rack_search.h"

#include <algorithm>
#include <cassert>
#include <map>

namespace amentum {
namespace {

constexpr std::size_t most_racks = 4;

// "hex bar, low handles" and "hex bar, high handles" are one bar.
std::string bar_itself(const BarRamp& ramp) {
    return ramp.wanted.means == LoadMeans::hex_bar ? ramp.item.substr(0, ramp.item.find(',')) : ramp.item;
}

std::optional<Refusal> refuse_shared_bars(const Kit& kit, const std::vector<RackOfBars>& racks) {
    std::map<std::string, std::pair<int, int>> bars; // racks that use it, bars owned
    for (const auto& rack : racks) {
        std::map<std::string, int> own;
        for (const auto& ramp : rack.bars)
            for (const auto& item : kit.items)
                if (item.label == ramp.item)
                    own[bar_itself(ramp)] = item.count;
        for (const auto& [bar, count] : own) {
            ++bars[bar].first;
            bars[bar].second = count;
        }
    }
    for (const auto& [bar, use] : bars)
        if (use.first > use.second)
            return Refusal{RefusalCode::load_not_makeable,
                           std::to_string(use.first) + " racks want the " + bar + ", and the kit has " +
                               std::to_string(use.second) + ".",
                           "racks", bar, "another bar, or one rack after the other"};
    return std::nullopt;
}

std::vector<ShortPlate> contested(const PlateStock& stock, const std::vector<int>& wanted) {
    std::vector<ShortPlate> kinds;
    for (std::size_t kind = 0; kind < stock.each.size(); ++kind)
        if (wanted[kind] > stock.singly[kind])
            kinds.push_back({stock.labels[kind], wanted[kind], stock.singly[kind]});
    return kinds;
}

// One smallest step of a bar: the lightest plate, on each of its sides. Every load of the bar within it, below
// each set's.
void lighten(const Kit& kit, RackOfBars& rack, const PlateStock& stock) {
    for (auto& ramp : rack.bars) {
        const auto table = LoadTable::of(kit, ramp.wanted.means, ramp.item);
        assert(table && !stock.each.empty());
        for (auto& side : ramp.sides)
            for (std::size_t i = 0; i < table->size(); ++i) {
                const ExactMass mass = (exact_mass(table->total(i)) - ramp.bar) / ramp.stacking.stacks;
                if (mass < side.mass && mass >= side.mass - stock.each.back())
                    side.or_lighter.push_back(mass);
            }
    }
}

Refusal refuse_short(const RackSearch& alone, const PlateStock& stock, const std::vector<RackOfBars>& racks) {
    std::string what, cure;
    for (const auto& plate : contested(stock, alone.wanted))
        what += (what.empty() ? "" : ", ") + plate.label + " (" + std::to_string(plate.wanted) + " wanted, " +
                std::to_string(plate.owned) + " owned)";
    for (std::size_t kind = 0; kind < stock.each.size(); ++kind) {
        PlateStock more = stock;
        more.singly[kind] += 2;
        if (search_racks(racks, more, Looking::orders).found)
            cure += (cure.empty() ? "" : " or ") + stock.labels[kind];
    }
    const std::string how_sure =
        alone.complete ? "" : " (no way was found, which does not prove there is none)";
    return {RefusalCode::load_not_makeable,
            "The racks together want more plates than the kit has: short of " + what + how_sure + ". " +
                (cure.empty() ? "No single pair more was found to do."
                              : "One pair more of " + cure + " would do."),
            "racks", "", "fewer racks at once, or other loads"};
}

LoadedRack rack_with(const RackOfBars& rack, const RackStacks& stacks, const PlateStock& stock,
                     MassUnit unit) {
    LoadedRack done{rack.name, {}, 0, 0, {}};
    for (std::size_t b = 0; b < rack.bars.size(); ++b) {
        done.bars.push_back(ramp_with(rack.bars[b], stock, stacks.bars[b], unit));
        done.moves += done.bars.back().moves;
        done.usual_moves += done.bars.back().usual_moves;
    }
    for (std::size_t kind = 0; kind < stock.each.size(); ++kind)
        if (stacks.singly[kind] > 0)
            done.plates.push_back({stock.labels[kind], mass_of(stock.each[kind]), stacks.singly[kind]});
    return done;
}

Result<std::vector<RackOfBars>> racks_of(const Kit& kit, const std::vector<RackWanted>& wanted) {
    if (wanted.empty() || wanted.size() > most_racks)
        return refuse_range("racks", static_cast<double>(wanted.size()), 1, static_cast<double>(most_racks),
                            "racks");
    std::vector<RackOfBars> racks;
    for (const auto& each : wanted) {
        if (each.bars.empty())
            return refuse_missing("racks", "the bars and loads of rack " + each.name);
        racks.push_back({each.name, {}});
        for (const auto& bar : each.bars) {
            auto ramp = bar_ramp(kit, bar);
            if (!ramp)
                return ramp.refusal();
            racks.back().bars.push_back(*std::move(ramp));
        }
    }
    return racks;
}

} // namespace

Result<LoadedRacks> solve_load_racks(const Kit& kit, const std::vector<RackWanted>& wanted) {
    auto racks = racks_of(kit, wanted);
    if (!racks)
        return racks.refusal();
    const auto stock = stock_of(kit);
    if (!stock)
        return stock.refusal();
    if (const auto refusal = refuse_shared_bars(kit, *racks))
        return *refusal;

    const RackSearch asked = search_racks(*racks, *stock);
    RackSearch search = asked;
    std::vector<std::string> lightened;
    auto lighter = *racks;
    for (auto rack = lighter.rbegin(); rack != lighter.rend() && !search.found; ++rack) {
        lighten(kit, *rack, *stock);
        lightened.push_back(rack->name);
        search = search_racks(lighter, *stock);
    }
    if (!search.found)
        return refuse_short(asked, *stock, *racks);

    LoadedRacks done{{}, 0,        0, 2 * search.at_least.intervals, search.proven && lightened.empty(),
                     {}, lightened};
    for (std::size_t r = 0; r < racks->size(); ++r) {
        done.racks.push_back(rack_with((*racks)[r], (*search.found)[r], *stock, kit.unit));
        done.moves += done.racks.back().moves;
        done.usual_moves += done.racks.back().usual_moves;
    }
    done.contested = contested(*stock, asked.wanted);
    return done;
}

} // namespace amentum
