#include "throwing_workload/pitch_rule.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int most_pitches = 400;

struct Band {
    int rest;
    std::optional<int> above; // the band before ends here
    int to;
};

std::vector<Band> bands_of(const PitchRule& rule) {
    std::vector<Band> bands;
    for (int rest = 0; rest < static_cast<int>(rule.rest_to.size()); ++rest)
        if (const auto to = rule.rest_to[static_cast<std::size_t>(rest)])
            bands.push_back({rest, bands.empty() ? std::nullopt : std::optional(bands.back().to), *to});
    return bands;
}

Result<Band> band_for(const PitchRule& rule, int pitches) {
    if (pitches < 1 || pitches > most_pitches)
        return refuse_range("pitches", pitches, 1, most_pitches, "");
    const auto bands = bands_of(rule);
    if (bands.empty())
        return Refusal{RefusalCode::method_does_not_apply,
                       "The " + rule.organisation +
                           " gives no days of rest for these ages, only a daily maximum.",
                       "organisation", rule.organisation, "a rule with bands of rest"};
    const auto first =
        std::find_if(bands.begin(), bands.end(), [&](const Band& b) { return pitches <= b.to; });
    return first == bands.end() ? bands.back() : *first;
}

std::string ages(const PitchRule& rule) {
    return std::to_string(rule.age_low) + " to " + std::to_string(rule.age_high) + " years";
}

std::string days_of_rest(int days) {
    return std::to_string(days) + (days == 1 ? " day" : " days") + " of rest";
}

} // namespace

Result<PitchRule> pitch_rule_for(std::span<const PitchRule> rules, const std::string& organisation,
                                 Sport sport, int age) {
    std::vector<std::string> organisations = organisations_for(rules, sport);
    if (std::find(organisations.begin(), organisations.end(), organisation) == organisations.end())
        return refuse_unknown("organisation", organisation, organisations);
    const PitchRule* newest = nullptr;
    std::string covered;
    for (const auto& rule : rules) {
        if (rule.organisation != organisation || rule.sport != sport)
            continue;
        const bool covers = rule.age_low <= age && age <= rule.age_high;
        if (covers && (!newest || rule.year > newest->year))
            newest = &rule;
        covered += (covered.empty() ? "" : ", ") + ages(rule);
    }
    if (newest)
        return *newest;
    return Refusal{RefusalCode::method_does_not_apply,
                   "The " + organisation + " has no row for an age of " + std::to_string(age) + " years.",
                   "age", std::to_string(age), covered};
}

std::vector<std::string> organisations_for(std::span<const PitchRule> rules, Sport sport) {
    std::vector<std::string> organisations;
    for (const auto& rule : rules)
        if (rule.sport == sport &&
            std::find(organisations.begin(), organisations.end(), rule.organisation) == organisations.end())
            organisations.push_back(rule.organisation);
    return organisations;
}

Result<int> rest_days(const PitchRule& rule, int pitches) {
    const auto band = band_for(rule, pitches);
    if (!band)
        return band.refusal();
    return band->rest;
}

Result<Date> next_day_allowed(const PitchRule& rule, Date pitched, int pitches) {
    const auto days = rest_days(rule, pitches);
    if (!days)
        return days.refusal();
    return pitched + *days + 1;
}

Result<std::string> describe_rest(const PitchRule& rule, Date pitched, int pitches) {
    const auto found = band_for(rule, pitches);
    if (!found)
        return found.refusal();
    const auto& [rest, above, to] = *found;
    std::string words =
        std::to_string(pitches) + (pitches == 1 ? " pitch" : " pitches") + " at " + ages(rule);
    if (pitches > to)
        words += " are above the daily maximum of " + std::to_string(rule.daily_max) + ", so at least " +
                 days_of_rest(rest);
    else if (above)
        words += " are above " + std::to_string(*above) + " and not above " + std::to_string(to) + ", so " +
                 days_of_rest(rest);
    else
        words += std::string(pitches == 1 ? " is" : " are") + " not above " + std::to_string(to) + ", so " +
                 days_of_rest(rest);
    if (rest == 1)
        words += ": " + (pitched + 1).text();
    if (rest > 1)
        words += ": " + (pitched + 1).text() + " to " + (pitched + rest).text();
    return words + "; pitching again from " + (pitched + rest + 1).text() + ".";
}

std::string describe_daily_maximum(const PitchRule& rule) {
    std::string words = "The " + rule.organisation + " allows at most " + std::to_string(rule.daily_max) +
                        " pitches in a day at " + ages(rule);
    if (rule.game_max)
        words += ", and " + std::to_string(*rule.game_max) + " in a game";
    if (rule.third_day_max)
        words += *rule.third_day_max == 0
                     ? ", and none on a third day running"
                     : ", and " + std::to_string(*rule.third_day_max) + " on a third day running";
    return words + ".";
}

} // namespace amentum
