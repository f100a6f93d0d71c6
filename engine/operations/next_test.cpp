#include "operations/next_test.h"

#include "operations/inside/inside.h"
#include "operations/inside/test_days.h"
#include "operations/inside/test_worth.h"
#include "operations/inside/throwing_answer.h"
#include "values/shortest_decimal.h"

#include <cmath>

namespace amentum {
namespace {

constexpr int most_days_ahead = 183;

Result<ChoiceDay> choice_day(const FacilityView& view, const Athlete& athlete, const NextTestRequest& request,
                             Date today) {
    if (!request.before)
        return usual_choice_day(view, athlete, today);
    const auto day = parse_date(*request.before, "before");
    if (!day)
        return day.refusal();
    if (*day <= today || *day - today > most_days_ahead)
        return Refusal{
            RefusalCode::impossible_date,
            "The day of the choice, " + day->text() + ", must lie after today and within half a year.",
            "before", *request.before, (today + 1).text() + " to " + (today + most_days_ahead).text()};
    return ChoiceDay{*day, "the day given: " + day->text()};
}

std::string last_tested(const FacilityView& view, const Athlete& athlete, const TestKind& kind) {
    const Series* series = view.one_series(athlete.id.text, kind.key);
    return series && !series->values.empty() ? Date::from_days(series->values.back().day).text() : "";
}

std::string words_of(const TestChoice& choice, const std::string& nothing, const ShownUnit& speed) {
    const std::string seen = choice.last_date.empty() ? "never tested" : "last tested on " + choice.last_date;
    if (!nothing.empty())
        return choice.quality_name + ", " + seen + ": " + nothing + ".";
    return choice.quality_name + ", " + seen +
           ": one more test would bring the doubt about the level on the day of the choice from " +
           format_fixed(choice.doubt_without, 2) + " to " + format_fixed(choice.doubt_with, 2) +
           " SD; for the choice that is worth " + format_fixed(choice.value * speed.factor, 3) + " " +
           speed.unit + " on average.";
}

void add_words(const ChoiceDay& choice, const LimiterWork& work, const ShownUnit& speed,
               NextTestAnswer& answer) {
    if (answer.best.empty())
        answer.words.push_back("No single test would sharpen the choice enough to be done for that alone.");
    else {
        const auto& best = answer.tests.front();
        answer.words.push_back("Test next: " + best.test_name + " (" + best.quality_name + "), on " +
                               best.date + ". It would shrink the doubt about what to train most.");
        answer.words.push_back(best.words);
        if (!best.passed_over.empty())
            answer.words.push_back(
                "That is the last free day before the choice: a later test says more of that day.");
    }
    answer.words.push_back("The choice is made on " + answer.before + ": " + choice.words + ".");
    answer.words.push_back(
        "Not knowing what is best to train costs " +
        format_fixed(work.answer.value_of_knowing * speed.factor, 2) + " " + speed.unit +
        " on average, all in all. Most of it is doubt about the slopes, and those get sharper by more "
        "test days of all throwers, not by one test of one.");
}

TestChoice shown_choice(const FacilityView& view, const ReferenceTables& tables, const Athlete& athlete,
                        const TestWorth& worth, const FreeDay& free, const ShownUnit& speed) {
    const Quality* quality = tables.quality(worth.quality);
    TestChoice choice{worth.kind->key,
                      worth.kind->name,
                      worth.quality,
                      quality ? quality->name : worth.quality,
                      worth.value,
                      std::sqrt(worth.doubt.without),
                      std::sqrt(worth.doubt.with_test),
                      last_tested(view, athlete, *worth.kind),
                      free.day ? free.day->text() : "",
                      free.passed_over,
                      ""};
    choice.words = words_of(choice, worth.nothing, speed);
    choice.value *= speed.factor;
    return choice;
}

} // namespace

Result<NextTestAnswer> next_test(Workplace& workplace, const NextTestRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto named = athlete_named(*view, request.athlete);
    if (!named)
        return named.refusal();
    const Athlete& athlete = **named;
    const Date today = inside.today();
    const auto choice = choice_day(*view, athlete, request, today);
    if (!choice)
        return choice.refusal();
    const auto model = inside.roster_model();
    const auto work = limiter_work(*view, inside.tables, *model, athlete, today);
    const auto speed =
        shown_unit(TestUnit::metre_per_second, view->records.facility.value_or(Facility{"This facility"}));
    const auto free_day = [&](const TestKind& kind) {
        return last_free_day(*view, inside.tables, athlete, kind, today, choice->day);
    };
    NextTestAnswer answer{athlete.id.text,
                          athlete.name,
                          today.text(),
                          choice->day.text(),
                          choice->words,
                          "",
                          speed.unit,
                          {},
                          {},
                          {},
                          work.model,
                          {"Raiffa1961", "Frazier2009", "CommonPractice", "ProjectProposal"}};
    const auto worth = worth_of_tests(*view, inside.tables, athlete, work, today, choice->day - today,
                                      [&](const TestKind& kind) {
                                          const auto day = free_day(kind).day;
                                          return day ? std::optional(*day - today) : std::nullopt;
                                      });
    for (const auto& each : worth)
        answer.tests.push_back(
            shown_choice(*view, inside.tables, athlete, each, free_day(*each.kind), speed));
    if (!worth.empty() && worth.front().value > least_worth_of_test)
        answer.best = worth.front().kind->key;
    add_words(*choice, work, speed, answer);
    for (const auto& finding : throwing_findings(inside, *view, athlete, today))
        if (finding.severity == "stops")
            answer.cautions.push_back(finding.sentence + " " + finding.what_to_do);
    answer.cautions.push_back("A test to the limit is work: it counts as a session, and pain stops it.");
    return answer;
}

} // namespace amentum
