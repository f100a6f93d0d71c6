#include "operations/inside/roster_model.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

constexpr std::size_t fewest_to_be_twins =
    4; // results; two athletes with fewer equal ones are let through (proposal)

struct DayAndValue {
    int day, quality;
    double value;
    auto operator<=>(const DayAndValue&) const = default;
};

std::set<DayAndValue> results_of(const RosterAthlete& athlete) {
    std::set<DayAndValue> results;
    for (const auto& day : athlete.days)
        for (const auto& r : day.readings)
            results.insert({day.day, r.quality, r.value});
    return results;
}

// Two of the roster with the very same results on the same days: one person entered twice.
std::optional<Refusal> twins(const RosterModel& model) {
    std::vector<std::set<DayAndValue>> all;
    for (const auto& athlete : model.data.athletes)
        all.push_back(results_of(athlete));
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j)
            if (all[i].size() >= fewest_to_be_twins && all[i] == all[j])
                return Refusal{
                    RefusalCode::already_held,
                    model.athlete_names[i] + " and " + model.athlete_names[j] +
                        " have the very same results on the same days: it looks as if one person was entered "
                        "twice, and would count twice.",
                    "athletes", model.athlete_names[i] + ", " + model.athlete_names[j],
                    "one name for each person"};
    return std::nullopt;
}

} // namespace

std::optional<Refusal> roster_fault(const RosterModel& model) {
    if (model.qualities.empty())
        return Refusal{RefusalCode::too_few_data,
                       "No quality was tested often enough in enough throwers to be laid beside velocity.",
                       "test results", std::to_string(model.data.athletes.size()) + " throwers with any",
                       "one test done by 8 throwers, 5 of them on two days or more"};
    int with_velocity = 0;
    for (const auto& athlete : model.data.athletes)
        with_velocity += std::any_of(athlete.days.begin(), athlete.days.end(), [](const auto& day) {
            return std::any_of(day.readings.begin(), day.readings.end(),
                               [](const auto& r) { return r.quality == 0; });
        });
    if (with_velocity < fewest_with_velocity)
        return Refusal{RefusalCode::too_few_data,
                       "Too few throwers have a velocity test, so nothing can be laid beside it.",
                       model.kinds.front()->key, std::to_string(with_velocity) + " throwers",
                       std::to_string(fewest_with_velocity) + " throwers or more"};
    return twins(model);
}

Refusal named_by_test(Refusal refusal, const RosterModel& model) {
    for (std::size_t k = 0; k < model.kinds.size(); ++k)
        if (refusal.field == "quality " + std::to_string(k)) {
            refusal.field = model.kinds[k]->key;
            refusal.sentence = model.kinds[k]->name + ": " + refusal.sentence;
        }
    return refusal;
}

} // namespace amentum
