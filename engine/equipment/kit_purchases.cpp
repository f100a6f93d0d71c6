#include "equipment/kit_purchases.h"

#include "equipment/load_words.h"
#include "equipment/plates_of_kit.h"
#include "equipment/standard_masses.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace amentum {
namespace {

constexpr std::size_t most_purchases = 5;
constexpr double worth_telling = 0.9;           // of what is lacking now: proposal of this project, no source
constexpr ExactMass exact_enough = 100'000'000; // 10 g

using Means = std::pair<LoadMeans, std::optional<std::string>>;
using Targets = std::map<Means, std::vector<std::pair<ExactMass, int>>>; // with their sets

struct Sums {
    int asked = 0, made = 0, exactly = 0;
    double lacking = 0;
    friend Sums operator+(const Sums& a, const Sums& b) {
        return {a.asked + b.asked, a.made + b.made, a.exactly + b.exactly, a.lacking + b.lacking};
    }
};

Sums made_of(const Kit& kit, const Means& means, const std::vector<std::pair<ExactMass, int>>& targets) {
    const auto table = LoadTable::of(kit, means.first, means.second);
    std::vector<ExactMass> loads;
    for (std::size_t i = 0; table && i < table->size(); ++i)
        loads.push_back(exact_mass(table->total(i)));
    const ExactMass step = exact_mass(small_step(kit.unit));
    Sums sums;
    for (const auto& [target, times] : targets) {
        const auto above = std::upper_bound(loads.begin(), loads.end(), target + exact_enough / 2);
        const ExactMass lacking =
            above == loads.begin() ? target : std::max<ExactMass>(0, target - *(above - 1));
        sums.asked += times;
        sums.made += lacking < step ? times : 0;
        sums.exactly += lacking < exact_enough ? times : 0;
        sums.lacking += times * static_cast<double>(lacking) / static_cast<double>(target);
    }
    return sums;
}

LoadsMade shown(const Sums& sums) {
    return {sums.asked, sums.made, sums.exactly, sums.asked > 0 ? sums.lacking / sums.asked : 0};
}

bool loaded_with(LoadMeans means, ItemKind kind) {
    switch (kind) {
    case ItemKind::plate:
        return stacking_of(means).stacks > 0;
    case ItemKind::dumbbell:
        return means == LoadMeans::dumbbell_pair || means == LoadMeans::dumbbell_single;
    case ItemKind::ball:
        return means == LoadMeans::ball;
    case ItemKind::straight_bar:
        return means == LoadMeans::straight_bar;
    default:
        return false;
    }
}

KitPurchase offered(ItemKind kind, Mass each, MassUnit unit) {
    const std::string mass = describe_mass(each, unit);
    switch (kind) {
    case ItemKind::plate:
        return {"a pair of " + mass + " plates", kind, each, 2, {}};
    case ItemKind::dumbbell:
        return {"a pair of " + mass + " dumbbells", kind, each, 2, {}};
    case ItemKind::ball:
        return {"a ball of " + mass, kind, each, 1, {}};
    default:
        return {"a straight bar of " + mass, kind, each, 1, {}};
    }
}

Kit with(Kit kit, const KitPurchase& purchase) {
    kit.items.push_back({purchase.kind, purchase.what, purchase.count, purchase.each, {}, {}, {}, {}});
    return kit;
}

bool better(const KitPurchase& a, const KitPurchase& b) {
    return std::tuple(-a.then.made, -a.then.exactly, a.then.lacking, a.each.kilograms()) <
           std::tuple(-b.then.made, -b.then.exactly, b.then.lacking, b.each.kilograms());
}

} // namespace

Mass small_step(MassUnit unit) {
    return unit == MassUnit::lb ? Mass::pounds(5) : Mass::kilograms(2.5);
}

KitPurchases solve_kit_purchases(const Kit& kit, const std::vector<PrescribedLoad>& wanted) {
    Targets targets;
    for (const auto& each : wanted)
        if (each.means != LoadMeans::band && each.means != LoadMeans::body)
            targets[{each.means, each.item}].emplace_back(exact_mass(each.target), each.times);
    std::map<Means, Sums> now;
    Sums sum;
    for (const auto& [means, loads] : targets)
        sum = sum + (now[means] = made_of(kit, means, loads));

    KitPurchases answer{shown(sum), {}};
    for (const ItemKind kind : {ItemKind::plate, ItemKind::dumbbell, ItemKind::ball, ItemKind::straight_bar})
        for (const Mass each : standard_masses(kind, kit.unit)) {
            KitPurchase purchase = offered(kind, each, kit.unit);
            const Kit bought = with(kit, purchase);
            Sums then;
            for (const auto& [means, loads] : targets)
                then =
                    then + (loaded_with(means.first, kind) ? made_of(bought, means, loads) : now.at(means));
            purchase.then = shown(then);
            if (purchase.then.made > answer.now.made || purchase.then.exactly > answer.now.exactly ||
                purchase.then.lacking < worth_telling * answer.now.lacking)
                answer.best.push_back(std::move(purchase));
        }
    std::stable_sort(answer.best.begin(), answer.best.end(), better);
    if (answer.best.size() > most_purchases)
        answer.best.erase(answer.best.begin() + most_purchases, answer.best.end());
    return answer;
}

} // namespace amentum
