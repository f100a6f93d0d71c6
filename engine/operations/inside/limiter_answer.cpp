#include "operations/inside/limiter_answer.h"

#include "operations/inside/limiter_work.h"
#include "operations/inside/test_days.h"
#include "operations/inside/test_worth.h"
#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

std::string quality_name(const ReferenceTables& tables, const std::string& key) {
    const Quality* quality = tables.quality(key);
    return quality ? quality->name : key;
}

// The test most worth doing before the next choice, by the same reckoning as next_test.
std::optional<TestWorth> test_most_worth(const Workplace::Inside& inside, const FacilityView& view,
                                         const Athlete& athlete, const LimiterWork& work) {
    const Date today = inside.today(), choice = usual_choice_day(view, athlete, today).day;
    const auto worth =
        worth_of_tests(view, inside.tables, athlete, work, today, choice - today, [&](const TestKind& kind) {
            const auto free = last_free_day(view, inside.tables, athlete, kind, today, choice);
            return free.day ? std::optional(*free.day - today) : std::nullopt;
        });
    return !worth.empty() && worth.front().value > least_worth_of_test ? std::optional(worth.front())
                                                                       : std::nullopt;
}

LimiterLine line_of(const ReferenceTables& tables, const LimiterGain& gain, const LimiterWork& work,
                    const ShownUnit& speed) {
    const auto& level = work.levels.at(gain.quality);
    const Estimate z{level.z.mean, std::sqrt(level.z.variance)};
    LimiterLine line{gain.quality,
                     quality_name(tables, gain.quality),
                     shown_estimate(gain.expected, gain.central_80, speed),
                     gain.chance_best,
                     gain.regret * speed.factor,
                     {},
                     level.words,
                     gain.tested,
                     gain.information,
                     gain.sources};
    if (gain.tested)
        line.level = ShownEstimate{z.value, z.central().low, z.central().high, "SD", 1};
    return line;
}

std::string leading_words(const LimiterWork& work, const LimiterLine& first, const ShownUnit& speed) {
    const auto& gain = work.answer.gains.front();
    const std::string size = describe_difference(gain.expected, gain.central_80, speed);
    if (!work.answer.can_tell)
        return "Cannot tell which quality holds velocity back: the likeliest, " + first.name + ", has a " +
               describe_chance(first.chance_best) + " chance of being the best one to train (it goes with " +
               size + " over twelve weeks).";
    return first.name + " goes with the most velocity to gain: " + size +
           " from an attainable improvement over twelve weeks; " + describe_chance(first.chance_best) +
           " chance that it is the best one to train.";
}

// The fewest leading qualities among which the best one is with a chance of 80 % or more.
std::string likely_among(const FindLimitersAnswer& answer) {
    std::vector<const LimiterLine*> ordered;
    for (const auto& line : answer.limiters)
        ordered.push_back(&line);
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](auto a, auto b) { return a->chance_best > b->chance_best; });
    std::string names;
    double chance = 0;
    for (const auto* line : ordered) {
        names += (names.empty() ? "" : ", ") + line->name;
        chance += line->chance_best;
        if (chance >= 0.8)
            break;
    }
    return "The best one to train is among: " + names + " (" + describe_chance(chance) + " together).";
}

std::vector<std::string> words_of_answer(const FindLimitersAnswer& answer, const LimiterWork& work,
                                         const ShownUnit& speed) {
    std::vector<std::string> words{leading_words(work, answer.limiters.front(), speed)};
    if (!work.answer.can_tell)
        words.push_back(likely_among(answer));
    if (!work.answer.can_tell && work.answer.value_of_knowing <= work.smallest_worthwhile / 2)
        words.push_back(
            "Among those the choice matters little: training the first and being wrong costs less on average "
            "than half of what is worth noticing.");
    if (!answer.test_next.empty())
        words.push_back(answer.test_next_words);
    words.push_back("Not knowing which is best costs " +
                    format_fixed(work.answer.value_of_knowing * speed.factor, 2) + " " + speed.unit +
                    " on average; the smallest worthwhile change of velocity here is " +
                    format_fixed(work.smallest_worthwhile * speed.factor, 1) + " " + speed.unit + ".");
    for (const auto& sentence : work.answer.words)
        words.push_back(sentence);
    if (!work.spread_from_here)
        words.push_back(
            "Too few throwers here have a velocity test; a usual spread within a team (2 m/s) was taken.");
    return words;
}

} // namespace

FindLimitersAnswer limiter_answer(const Workplace::Inside& inside, const FacilityView& view,
                                  const RosterModel& model, const Athlete& athlete) {
    const auto work = limiter_work(view, inside.tables, model, athlete, inside.today());
    const auto facility = view.records.facility.value_or(Facility{"This facility"});
    const auto speed = shown_unit(TestUnit::metre_per_second, facility);
    FindLimitersAnswer answer{};
    answer.athlete = athlete.id.text;
    answer.name = athlete.name;
    answer.today = inside.today().text();
    answer.model = work.model;
    for (const auto& gain : work.answer.gains)
        answer.limiters.push_back(line_of(inside.tables, gain, work, speed));
    answer.verdict = work.answer.can_tell ? answer.limiters.front().quality : "cannot_tell";
    answer.value_of_knowing = {work.answer.value_of_knowing * speed.factor, 0,
                               work.answer.value_of_knowing * speed.factor, speed.unit, 2};
    if (const auto worth = test_most_worth(inside, view, athlete, work)) {
        answer.test_next = worth->kind->key;
        answer.test_next_words = "Test this next: " + worth->kind->name + " (" +
                                 quality_name(inside.tables, worth->quality) +
                                 "); it would sharpen the choice most.";
    }
    answer.words = words_of_answer(answer, work, speed);
    return answer;
}

std::string short_limiter_words(const FindLimitersAnswer& answer) {
    const auto& first = answer.limiters.front();
    const std::string likeliest = first.name + " (" + describe_chance(first.chance_best) + ")";
    return answer.verdict == "cannot_tell" ? "cannot tell; likeliest " + likeliest : likeliest;
}

} // namespace amentum
