#include "operations/judge_block.h"

#include "operations/inside/judged_block.h"
#include "reports/verdicts.h"

#include <algorithm>

namespace amentum {
namespace {

// Numbers in the fit of what is judged: velocity, then as the block emphasised; with dates alone, all.
std::vector<int> wanted_qualities(const RosterModel& model, const BlockSpan& span, JudgeBlockAnswer& answer,
                                  const ReferenceTables& tables) {
    std::vector<int> wanted{0};
    if (span.emphasised.empty())
        for (std::size_t k = 1; k < model.kinds.size(); ++k)
            wanted.push_back(static_cast<int>(k));
    for (const auto& key : span.emphasised) {
        const auto found = std::find_if(model.qualities.begin(), model.qualities.end(),
                                        [&](const auto& each) { return each.quality->key == key; });
        const Quality* quality = tables.quality(key);
        if (found != model.qualities.end())
            wanted.push_back(static_cast<int>(found - model.qualities.begin()) + 1);
        else if (quality)
            answer.not_judged.push_back(
                {quality->name, "too few throwers here are tested in it for the joint model"});
    }
    return wanted;
}

Refusal no_test(const Athlete& athlete, const BlockSpan& span, bool before) {
    const std::string day = before ? span.start.text() : span.last.text();
    return {RefusalCode::too_few_data,
            athlete.name +
                (before ? " has no test up to the block's start, " + day +
                              ", so there is nothing to forecast from."
                        : " has no test from the block's last week, to " + day +
                              ", or the six weeks after it: there is nothing to hold against the forecast."),
            before ? "from_date" : "to_date", day,
            before ? "a block with a test of velocity or of what it emphasised up to its start"
                   : "a test day of velocity or of what it emphasised after the block"};
}

std::string headline(const JudgeBlockAnswer& answer) {
    const auto& first = answer.qualities.front();
    const std::string than = first.others ? "throwers without a block showed beside their own forecasts"
                                          : "the records before it foretold";
    const std::string more = first.name + (answer.finished ? " after this block" : " so far in this block");
    if (first.verdict == "more")
        return more + " is more than " + than + ".";
    if (first.verdict == "less")
        return more + " is less than " + than + ".";
    return "Cannot tell whether " + more + " differs from what " + than + ".";
}

void add_words(JudgeBlockAnswer& answer) {
    answer.words.push_back(headline(answer));
    for (const auto& line : answer.qualities.front().words)
        answer.words.push_back(line);
    if (answer.qualities.front().quality != "throwing_velocity")
        answer.words.push_back(
            "Velocity itself was not tested both before and after the block: see what was not judged.");
    if (!answer.finished)
        answer.words.push_back(
            "The block is still running: the last test in it stands for the one after it.");
    answer.words.push_back("A direction is said when its chance is nine in ten or more: of ten blocks that "
                           "do nothing, about one would be said to have "
                           "done more and one less, in each quality by itself.");
    answer.not_taken_out = {
        "Getting used to a repeated test: a first or second test of a kind often rises by itself.",
        "The season, the radar's change since the last test and whatever else came with the block: " +
            std::string(answer.qualities.front().others
                            ? "only what all throwers had in common is taken out, by those without a block."
                            : "nothing of it is taken out.")};
}

} // namespace

Result<JudgeBlockAnswer> judge_block(Workplace& workplace, const JudgeBlockRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto named = athlete_named(*view, request.athlete);
    if (!named)
        return named.refusal();
    const Athlete& athlete = **named;
    const auto span = span_of_block(*view, athlete, request, inside.today());
    if (!span)
        return span.refusal();
    const auto model = inside.roster_model();
    if (!model->fit)
        return model->fit.refusal();
    JudgeBlockAnswer answer{
        athlete.id.text,
        athlete.name,
        span->block,
        span->start.text(),
        span->last.text(),
        span->finished,
        "",
        {},
        {},
        {},
        {},
        model->version,
        {"DurbinKoopman2012", "Barnett2005", "Birge1932", "Williamson2017", "ProjectProposal"}};
    bool any_before = false;
    for (const int quality : wanted_qualities(*model, *span, answer, inside.tables)) {
        auto one = judged_quality(inside, *view, *model, athlete, *span, quality);
        any_before |= !one.no_test_before;
        if (one.judged)
            answer.qualities.push_back(std::move(*one.judged));
        else
            answer.not_judged.push_back(
                {model->kinds[static_cast<std::size_t>(quality)]->name,
                 one.no_test_before ? "no test up to the start" : "no test after the block"});
    }
    if (answer.qualities.empty())
        return no_test(athlete, *span, !any_before);
    answer.verdict = answer.qualities.front().verdict;
    add_words(answer);
    return answer;
}

} // namespace amentum
