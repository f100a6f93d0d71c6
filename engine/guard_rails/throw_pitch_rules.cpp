#include "guard_rails/throw_rules.h"

#include "throwing_workload/throw_account.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int history_after_days = 28; // proposal of this project, no source

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const auto& word : words)
        text += (text.empty() ? "" : ", ") + word;
    return text;
}

std::string pitches_on(Date day, int pitches) {
    return std::to_string(pitches) + (pitches == 1 ? " pitch" : " pitches") + " on " + day.text();
}

class PitchLog {
public:
    PitchLog(const std::map<Date, int>& pitches, const Athlete& athlete, std::span<const PitchRule> rules,
             std::string organisation, Date today)
        : pitches_(pitches), athlete_(athlete), rules_(rules), organisation_(std::move(organisation)),
          today_(today) {}

    void check_day(Date day, int pitches) {
        const auto rule = rule_on(day);
        if (!rule)
            return;
        const int running = days_running_to(day);
        if (pitches > rule->daily_max)
            add(*rule, Severity::warns, "daily_maximum",
                pitches_on(day, pitches) + " are above the daily maximum.", describe_daily_maximum(*rule),
                "Give the arm the longest rest of the rule at least.");
        if (running == 3 && rule->third_day_max && pitches > *rule->third_day_max)
            add(*rule, Severity::warns, "third_day_maximum",
                pitches_on(day, pitches) + " are above the limit of a third day running.",
                describe_daily_maximum(*rule), "Leave the pitching on third days to somebody else.");
        if (rule->most_days_running && running == *rule->most_days_running + 1)
            add(*rule, Severity::warns, "days_running",
                day.text() + " is day " + std::to_string(running) + " running with pitches.",
                "At most " + std::to_string(*rule->most_days_running) + " days running with pitches.",
                "Give the arm a day off.");
        check_rest_before(*rule, day);
    }

    // Is the rest after the last day of pitching over today?
    void check_today(Date last, int pitches) {
        const auto rule = rule_on(last);
        if (!rule || last == today_)
            return;
        const auto next = next_day_allowed(*rule, last, pitches);
        if (next && today_ < *next)
            add(*rule, Severity::stops, "rest_not_over",
                "The rest after " + pitches_on(last, pitches) + " is not over.",
                *describe_rest(*rule, last, pitches), "No pitching in games before " + next->text() + ".");
        else if (rule->most_days_running && last + 1 == today_ &&
                 days_running_to(last) >= *rule->most_days_running)
            add(*rule, Severity::stops, "days_running_today",
                "There were pitches on each of the last " + std::to_string(days_running_to(last)) + " days.",
                "At most " + std::to_string(*rule->most_days_running) + " days running with pitches.",
                "No pitching in games today.");
    }

    std::vector<Finding> findings;

private:
    Result<PitchRule> rule_on(Date day) const {
        return pitch_rule_for(rules_, organisation_, athlete_.sport, whole_years(athlete_.birth_date, day));
    }

    int days_running_to(Date day) const {
        int running = 0;
        while (pitches_.contains(day - running))
            ++running;
        return running;
    }

    void check_rest_before(const PitchRule& rule, Date day) {
        const auto here = pitches_.find(day);
        if (here == pitches_.begin())
            return;
        const auto& [last, pitches] = *std::prev(here);
        const auto next = next_day_allowed(rule, last, pitches);
        if (!next || day >= *next)
            return;
        add(rule, Severity::warns, "rest_too_short",
            "Pitching again on " + day.text() + " came too soon after " + pitches_on(last, pitches) + ".",
            *describe_rest(rule, last, pitches), "Plan the pitching days with the rest in between.");
    }

    void add(const PitchRule& rule, Severity severity, std::string code, std::string sentence,
             std::string words, std::string what_to_do) {
        findings.push_back(
            {severity, std::move(code), std::move(sentence), std::move(words),
             rule.organisation + " " + std::to_string(rule.year) + " [" + joined(rule.sources) + "]",
             std::move(what_to_do)});
    }

    const std::map<Date, int>& pitches_;
    const Athlete& athlete_;
    std::span<const PitchRule> rules_;
    std::string organisation_;
    Date today_;
};

} // namespace

std::vector<Finding> check_pitch_rules(const std::vector<ThrowEntry>& entries, const Athlete& athlete,
                                       std::span<const PitchRule> rules, const std::string& organisation,
                                       Date today) {
    const auto organisations = organisations_for(rules, athlete.sport);
    const auto pitches = game_pitches(entries);
    if (athlete.role != Role::pitcher || organisations.empty() || pitches.empty())
        return {};
    PitchLog log(pitches, athlete, rules, organisation.empty() ? organisations.front() : organisation, today);
    for (const auto& [day, count] : pitches)
        if (today - day <= history_after_days)
            log.check_day(day, count);
    log.check_today(pitches.rbegin()->first, pitches.rbegin()->second);
    return log.findings;
}

} // namespace amentum
