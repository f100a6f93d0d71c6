#include "equipment/solve_load.h"

namespace amentum {

Result<LoadChoice> solve_load(const Kit& kit, LoadMeans means, Mass target,
                              const std::optional<std::string>& item) {
    if (!(target > Mass::kilograms(0)) || target > Mass::kilograms(LoadTable::most_kilograms))
        return refuse_range("target load", target.kilograms(), 0, LoadTable::most_kilograms, "kg",
                            "A load to be made is above nothing.");
    const auto table = LoadTable::of(kit, means, item);
    if (!table)
        return table.refusal();
    return table->choose(target);
}

Result<std::vector<MadeLoad>> all_loads(const Kit& kit, LoadMeans means,
                                        const std::optional<std::string>& item) {
    const auto table = LoadTable::of(kit, means, item);
    if (!table)
        return table.refusal();
    std::vector<MadeLoad> loads;
    for (std::size_t i = 0; i < table->size(); ++i)
        loads.push_back(table->made(i));
    return loads;
}

} // namespace amentum
