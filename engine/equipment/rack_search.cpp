#include "equipment/rack_search.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <queue>
#include <set>
#include <tuple>

namespace amentum {
namespace {

constexpr int most_branches = 400;

using Singly = std::vector<int>; // single plates of each kind

RampCost cost_of(const std::vector<RackStacks>& racks) {
    RampCost sum;
    for (const auto& rack : racks)
        sum = sum + rack.cost;
    return sum;
}

Singly together(const std::vector<RackStacks>& racks, std::size_t kinds) {
    Singly sum(kinds, 0);
    for (const auto& rack : racks)
        for (std::size_t k = 0; k < kinds; ++k)
            sum[k] += rack.singly[k];
    return sum;
}

class Search {
public:
    Search(const std::vector<RackOfBars>& racks, const PlateStock& stock) : racks_(racks), stock_(stock) {}

    RackSearch run(Looking looking) {
        RackSearch done{{}, {}, false, true, Singly(stock_.each.size(), 0)};
        const std::vector<Singly> no_caps(racks_.size(), stock_.singly);
        auto alone = all_within(no_caps);
        if (!alone)
            return done;
        done.wanted = together(*alone, stock_.each.size());
        if (all_proven(*alone))
            done.at_least = cost_of(*alone);
        if (!first_short(*alone)) {
            done.proven = all_proven(*alone);
            done.found = std::move(alone);
            return done;
        }
        done.found = best_order();
        done.complete = false;
        if (looking == Looking::branches)
            branch(no_caps, *std::move(alone), done);
        return done;
    }

private:
    struct Branch {
        RampCost cost;
        int number; // the older of two equals first
        std::vector<Singly> caps;
        std::vector<RackStacks> stacks;
    };
    struct Dearer {
        bool operator()(const Branch& a, const Branch& b) const {
            return std::tie(b.cost, b.number) < std::tie(a.cost, a.number);
        }
    };

    // Exact, each rack by itself; none when a set of it cannot be made within the cap.
    const std::optional<RackStacks>& within(std::size_t rack, const Singly& cap) {
        const auto [place, fresh] = known_.try_emplace({rack, cap});
        if (fresh)
            place->second = stack(rack, cap);
        return place->second;
    }
    std::optional<RackStacks> stack(std::size_t rack, const Singly& cap) const {
        RackStacks stacks{{}, {}, Singly(stock_.each.size(), 0), true};
        PlateStock capped = stock_;
        capped.singly = cap;
        for (const auto& ramp : racks_[rack].bars) {
            auto solved =
                solve_ramp_stacks(ramp.sides, stock_.each, most_on(ramp, capped), ramp.stacking.most_plates);
            if (!solved)
                return std::nullopt;
            stacks.cost = stacks.cost + solved->cost;
            stacks.proven &= solved->proven;
            for (std::size_t k = 0; k < stock_.each.size(); ++k)
                stacks.singly[k] = std::max(stacks.singly[k], ramp.stacking.stacks * solved->used.of[k]);
            stacks.bars.push_back(*std::move(solved));
        }
        return stacks;
    }
    std::optional<std::vector<RackStacks>> all_within(const std::vector<Singly>& caps) {
        std::vector<RackStacks> all;
        for (std::size_t r = 0; r < racks_.size(); ++r) {
            const auto& one = within(r, caps[r]);
            if (!one)
                return std::nullopt;
            all.push_back(*one);
        }
        return all;
    }
    static bool all_proven(const std::vector<RackStacks>& racks) {
        return std::all_of(racks.begin(), racks.end(), [](const auto& r) { return r.proven; });
    }

    // The kind that is short by most plates.
    std::optional<std::size_t> first_short(const std::vector<RackStacks>& racks) const {
        const Singly sum = together(racks, stock_.each.size());
        std::optional<std::size_t> shortest;
        int lacking = 0;
        for (std::size_t k = 0; k < sum.size(); ++k)
            if (sum[k] - stock_.singly[k] > lacking) {
                lacking = sum[k] - stock_.singly[k];
                shortest = k;
            }
        return shortest;
    }

    std::optional<std::vector<RackStacks>> best_order() {
        std::vector<std::size_t> order(racks_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::optional<std::vector<RackStacks>> best;
        do {
            std::vector<std::optional<RackStacks>> racks(racks_.size());
            Singly left = stock_.singly;
            bool fits = true;
            for (const std::size_t r : order) {
                racks[r] = within(r, left);
                fits = racks[r].has_value();
                if (!fits)
                    break;
                for (std::size_t k = 0; k < left.size(); ++k)
                    left[k] -= racks[r]->singly[k];
            }
            if (!fits)
                continue;
            std::vector<RackStacks> all;
            for (auto& rack : racks)
                all.push_back(*std::move(rack));
            if (!best || cost_of(all) < cost_of(*best))
                best = std::move(all);
        } while (std::next_permutation(order.begin(), order.end()));
        return best;
    }

    // Cheapest first: the first branch that fits is as cheap as any, as long as every stacking looked at was
    // proven, so that its cost bounds what lies below it.
    void branch(const std::vector<Singly>& caps, std::vector<RackStacks> alone, RackSearch& done) {
        std::priority_queue<Branch, std::vector<Branch>, Dearer> open;
        std::set<std::vector<Singly>> seen{caps};
        int number = 0;
        bool exact = all_proven(alone);
        open.push({cost_of(alone), number, caps, std::move(alone)});
        while (!open.empty()) {
            const Branch cheapest = open.top();
            open.pop();
            if (exact)
                done.at_least = cheapest.cost;
            const auto kind = first_short(cheapest.stacks);
            if (!kind)
                done.found = cheapest.stacks;
            if (done.found && cost_of(*done.found) <= cheapest.cost) {
                done.complete = done.proven = exact;
                return;
            }
            if (number > most_branches)
                return;
            for (std::size_t r = 0; r < racks_.size(); ++r) {
                auto tighter = cheapest.caps;
                tighter[r][*kind] = cheapest.stacks[r].singly[*kind] - 1;
                if (tighter[r][*kind] < 0 || !seen.insert(tighter).second)
                    continue;
                if (auto stacks = all_within(tighter)) {
                    exact &= all_proven(*stacks);
                    const RampCost cost = cost_of(*stacks);
                    open.push({cost, ++number, std::move(tighter), *std::move(stacks)});
                }
            }
        }
        done.complete = true; // every branch ended
        done.proven = done.found && exact;
        if (done.proven)
            done.at_least = cost_of(*done.found);
    }

    const std::vector<RackOfBars>& racks_;
    const PlateStock& stock_;
    std::map<std::pair<std::size_t, Singly>, std::optional<RackStacks>> known_;
};

} // namespace

RackSearch search_racks(const std::vector<RackOfBars>& racks, const PlateStock& stock, Looking looking) {
    return Search(racks, stock).run(looking);
}

} // namespace amentum
