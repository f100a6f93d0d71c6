// Racks that share one stock of plates: compared with every joint stacking, on 1,500 random small kits.
//
// The rival shares no code with the engine: it walks every way to deal the pairs out to the racks, and for each
// rack and deal every ordered stack of every multiset (ordered_stacks.h). It is complete for racks that keep their
// plates all session, which is what load_racks.h promises, and for nothing else. Counted beside it: how often the
// best order of the racks alone, one after the other, would have missed a way or the cheapest way.
#include "equipment/load_racks.h"
#include "equipment/rack_search.h"
#include "ordered_stacks.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace amentum;

namespace {

constexpr Units gram = 10'000'000;
constexpr Units bar = 20'000 * gram;

struct Drawn {
    Pairs pairs;
    std::vector<std::vector<Units>> racks; // sides of each rack's sets
};

Mass mass(Units units) {
    return Mass::kilograms(static_cast<double>(units) / 1e10);
}

Drawn draw(std::mt19937_64& random) {
    static const std::vector<Units> plates{2500, 5000, 10000, 15000, 20000, 25000};
    Drawn drawn;
    for (const Units grams : plates)
        if (random() % 2)
            drawn.pairs.emplace_back(grams * gram, 1 + static_cast<int>(random() % 3));
    if (drawn.pairs.size() > 4)
        drawn.pairs.resize(4);
    if (drawn.pairs.empty())
        drawn.pairs.emplace_back(10000 * gram, 3);
    drawn.racks.resize(2 + random() % 2);
    for (auto& sides : drawn.racks) {
        sides.resize(1 + random() % 3);
        for (auto& side : sides) {
            side = 0;
            for (const auto& [each, count] : drawn.pairs)
                side += static_cast<Units>(random() % static_cast<unsigned>(count + 1)) /
                        (random() % 2 ? 1 : 2) * each;
        }
    }
    return drawn;
}

Kit kit_of(const Drawn& drawn) {
    Kit kit{KitId{"drawn"},
            "drawn",
            MassUnit::kg,
            {{ItemKind::straight_bar, "bar", 4, mass(bar), {}, {}, {}, {}}}};
    for (const auto& [each, count] : drawn.pairs)
        kit.items.push_back({ItemKind::plate,
                             std::to_string(each / gram) + " g plate",
                             2 * count,
                             mass(each),
                             {},
                             {},
                             {},
                             {}});
    return kit;
}

std::vector<RackWanted> wanted(const Drawn& drawn) {
    std::vector<RackWanted> racks;
    for (const auto& sides : drawn.racks) {
        RampWanted ramp{LoadMeans::straight_bar, {}, {}};
        for (const Units side : sides)
            ramp.loads.push_back(mass(bar + 2 * side));
        racks.push_back({"rack " + std::to_string(racks.size() + 1), {ramp}});
    }
    return racks;
}

// Every deal of the pairs; none when no deal serves all racks.
class EveryDeal {
public:
    explicit EveryDeal(const Drawn& drawn) : drawn_(drawn), dealt_(drawn.racks.size(), drawn.pairs) {
        for (auto& hand : dealt_)
            for (auto& pair : hand)
                pair.second = 0;
    }
    std::optional<int> fewest() {
        deal(0, 0, drawn_.pairs[0].second);
        return best_;
    }

private:
    void deal(std::size_t kind, std::size_t rack, int left) {
        if (kind == drawn_.pairs.size())
            return price();
        if (rack + 1 == dealt_.size()) {
            dealt_[rack][kind].second = left;
            return deal(kind + 1, 0, kind + 1 < drawn_.pairs.size() ? drawn_.pairs[kind + 1].second : 0);
        }
        for (int n = 0; n <= left; ++n) {
            dealt_[rack][kind].second = n;
            deal(kind, rack + 1, left - n);
        }
    }
    void price() {
        int sum = 0;
        for (std::size_t r = 0; r < dealt_.size(); ++r) {
            const auto [place, fresh] = known_.try_emplace({r, dealt_[r]});
            if (fresh)
                if (const auto handled = fewest_handled(dealt_[r], drawn_.racks[r]))
                    place->second = handled->first;
            if (!place->second)
                return;
            sum += *place->second;
        }
        best_ = best_ ? std::min(*best_, sum) : sum;
    }
    const Drawn& drawn_;
    std::vector<Pairs> dealt_;
    std::map<std::pair<std::size_t, Pairs>, std::optional<int>> known_;
    std::optional<int> best_;
};

std::vector<RackOfBars> bars_of(const Kit& kit, const std::vector<RackWanted>& racks) {
    std::vector<RackOfBars> bars;
    for (const auto& rack : racks)
        bars.push_back({rack.name, {*bar_ramp(kit, rack.bars.front())}});
    return bars;
}

} // namespace

TEST_CASE("racks on one stock of plates: equal to every joint stacking on 1500 random kits") {
    std::mt19937_64 random(20261202);
    int fits = 0, lightened = 0, refused = 0, contested = 0, order_misses = 0, order_dearer = 0;
    for (int k = 0; k < 1500; ++k) {
        CAPTURE(k);
        const Drawn drawn = draw(random);
        const Kit kit = kit_of(drawn);
        const auto fewest = EveryDeal(drawn).fewest();
        const auto racks = solve_load_racks(kit, wanted(drawn));
        const bool as_asked = racks && racks->lightened.empty();
        REQUIRE(as_asked == fewest.has_value());
        lightened += racks && !as_asked;
        refused += !racks;
        if (!as_asked)
            continue;
        ++fits;
        contested += !racks->contested.empty();
        CHECK(racks->proven);
        CHECK(racks->moves == *fewest);
        CHECK(racks->at_least == *fewest);
        const auto orders = search_racks(bars_of(kit, wanted(drawn)), *stock_of(kit), Looking::orders);
        order_misses += !orders.found;
        if (orders.found) {
            int moves = 0;
            for (const auto& rack : *orders.found)
                moves += 2 * rack.cost.intervals;
            order_dearer += moves > *fewest;
        }
        // No more plates are given out than there are, and each rack's sets use only its own.
        std::map<Units, int> given;
        for (const auto& rack : racks->racks) {
            std::map<Units, int> own;
            for (const auto& plates : rack.plates)
                own[std::llround(plates.each.kilograms() * 1e10)] += plates.count;
            for (const auto& [each, count] : own)
                given[each] += count;
            for (const auto& set : rack.bars.front().sets) {
                std::map<Units, int> on;
                for (const auto& run : set.load.one_side)
                    on[std::llround(run.each.kilograms() * 1e10)] += 2 * run.count;
                for (const auto& [each, count] : on)
                    CHECK(count <= own[each]);
            }
        }
        for (const auto& [each, pairs] : drawn.pairs)
            CHECK(given[each] <= 2 * pairs);
    }
    CHECK(fits > 400);
    CHECK(contested > 60);
    CHECK(lightened + refused > 30);
    MESSAGE(fits, " fit, ", contested, " of them contested; ", lightened, " only lighter; ", refused,
            " refused; the best order alone finds no way in ", order_misses, " and a dearer one in ",
            order_dearer);
}

TEST_CASE(
    "lightened racks are the last ones, never heavier than asked, and at most one smallest step lighter") {
    std::mt19937_64 random(20261203);
    int seen = 0;
    for (int k = 0; k < 600; ++k) {
        const Drawn drawn = draw(random);
        const Kit kit = kit_of(drawn);
        const auto racks = solve_load_racks(kit, wanted(drawn));
        if (!racks)
            continue;
        Units smallest = drawn.pairs.front().first;
        for (const auto& [each, pairs] : drawn.pairs)
            smallest = std::min(smallest, each);
        for (std::size_t r = 0; r < racks->racks.size(); ++r)
            for (const auto& set : racks->racks[r].bars.front().sets) {
                const Units lacking = std::llround((set.wanted - set.load.total).kilograms() * 1e10);
                const bool may = r + racks->lightened.size() >= racks->racks.size();
                CHECK(lacking >= 0);
                CHECK(lacking <= (may ? 2 * smallest : 0));
                seen += lacking > 0;
            }
        if (!racks->lightened.empty()) {
            CHECK(racks->lightened.front() == racks->racks.back().name);
            CHECK_FALSE(racks->proven);
        }
    }
    CHECK(seen > 0);
}

TEST_CASE("the names of short plates are told, and the pair that would do") {
    const Drawn drawn{{{20'000 * gram, 1}, {2'500 * gram, 1}}, {{20'000 * gram}, {20'000 * gram}}};
    const auto racks = solve_load_racks(kit_of(drawn), wanted(drawn));
    REQUIRE_FALSE(racks);
    CHECK(racks.refusal().sentence.find("20000 g plate (4 wanted, 2 owned)") != std::string::npos);
    CHECK(racks.refusal().sentence.find("One pair more of 20000 g plate") != std::string::npos);
}

TEST_CASE("a hex bar with two heights is one bar: two racks cannot have it") {
    Kit kit = kit_of({{{20'000 * gram, 3}}, {}});
    for (const char* label : {"hex bar, low handles", "hex bar, high handles"})
        kit.items.push_back({ItemKind::hex_bar, label, 1, Mass::kilograms(25), {}, {}, {}, {}});
    const auto rack = [](const char* item) {
        return RackWanted{item, {{LoadMeans::hex_bar, item, {Mass::kilograms(65)}}}};
    };
    const auto racks = solve_load_racks(kit, {rack("low handles"), rack("high handles")});
    REQUIRE_FALSE(racks);
    CHECK(racks.refusal().sentence.find("2 racks want the hex bar") != std::string::npos);
    CHECK(solve_load_racks(kit, {rack("low handles")}));
}
