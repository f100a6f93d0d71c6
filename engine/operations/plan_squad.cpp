#include "operations/plan_squad.h"

#include "operations/inside/inside.h"
#include "operations/inside/squad_job.h"
#include "planning/check_request.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace amentum {
namespace {

Result<SquadAsked> squad_asked(const FacilityView& view, const PlanSquadRequest& request, Date today) {
    const auto start = first_day(request.start, today);
    if (!start)
        return start.refusal();
    const auto effort = effort_named(request.effort);
    if (!effort)
        return effort.refusal();
    SquadAsked asked{{*start, request.weeks.value_or(4), request.sessions_per_week.value_or(3),
                      request.minutes.value_or(60)},
                     *effort,
                     {}};
    std::vector<const Athlete*> athletes;
    for (const auto& name : request.athletes) {
        const auto athlete = athlete_named(view, name);
        if (!athlete)
            return athlete.refusal();
        athletes.push_back(*athlete);
    }
    if (request.athletes.empty())
        for (const auto& athlete : view.records.athletes)
            athletes.push_back(&athlete);
    if (athletes.empty())
        return Refusal{RefusalCode::too_few_data, "There is no thrower to plan for yet.", "athletes", "",
                       "at least one thrower in the records"};
    // What is wrong for everybody is refused once, not once a thrower.
    const BlockRequest numbers{*athletes.front(),
                               {},
                               asked.block.start,
                               asked.block.weeks,
                               asked.block.sessions_per_week,
                               asked.block.minutes,
                               {},
                               {},
                               {},
                               {}};
    if (const auto refusal = check_request(numbers))
        return *refusal;
    std::stable_sort(athletes.begin(), athletes.end(), [](const auto* a, const auto* b) {
        return std::tie(a->name, a->id.text) < std::tie(b->name, b->id.text);
    });
    athletes.erase(std::unique(athletes.begin(), athletes.end()), athletes.end());
    for (const auto* athlete : athletes)
        asked.athletes.push_back(athlete->id);
    return asked;
}

std::string counted(int count, const std::string& what) {
    return std::to_string(count) + " " + what;
}

std::string words_of_squad(const PlanSquadAnswer& answer) {
    if (answer.state == "none")
        return "No squad was planned since the program started.";
    std::string text = answer.state == "running"   ? "Planning: "
                       : answer.state == "stopped" ? "Stopped; what was done is kept: "
                                                   : "Done: ";
    text += counted(answer.planned, "planned") + ", " + counted(answer.refused, "refused") + ", " +
            counted(answer.left, "left as they are");
    if (answer.waiting > 0)
        text += ", " + counted(answer.waiting, answer.state == "running" ? "to come" : "not planned");
    return text + ".";
}

PlanSquadAnswer answer_of(const SquadJob::Seen& seen) {
    constexpr std::array words{"none", "running", "done", "stopped", "stopped"};
    PlanSquadAnswer answer{};
    answer.state = words[static_cast<std::size_t>(seen.job.state)];
    answer.share = seen.job.share;
    if (seen.asked) {
        answer.start = seen.asked->block.start.text();
        answer.weeks = seen.asked->block.weeks;
        answer.sessions_per_week = seen.asked->block.sessions_per_week;
        answer.minutes = seen.asked->block.minutes;
    }
    for (const auto& row : seen.rows) {
        answer.planned += row.outcome == SquadOutcome::planned;
        answer.refused += row.outcome == SquadOutcome::refused;
        answer.left += row.outcome == SquadOutcome::left;
        answer.waiting += row.outcome == SquadOutcome::waiting || row.outcome == SquadOutcome::stopped;
        answer.lines.push_back(
            {row.athlete.text, row.name, std::string(word(row.outcome)), row.block, row.points, row.words});
    }
    answer.words = words_of_squad(answer);
    return answer;
}

} // namespace

Result<PlanSquadAnswer> plan_squad(Workplace& workplace, const PlanSquadRequest& request) {
    auto& inside = workplace.inside();
    const std::string step = request.step.value_or("begin");
    if (step != "begin" && step != "look" && step != "stop")
        return refuse_choice("step", step, std::vector<std::string>{"begin", "look", "stop"});
    if (step == "begin") {
        auto asked = squad_asked(*inside.view(), request, inside.today());
        if (!asked)
            return asked.refusal();
        if (!inside.squad_job->begin(inside, *std::move(asked)))
            return Refusal{RefusalCode::already_held,
                           "A squad is being planned already; look at it, wait for it or stop it.", "step",
                           step, "look or stop while one runs"};
    }
    if (step == "stop")
        inside.squad_job->stop();
    const bool wait = request.wait.value_or(true) && step != "look";
    return answer_of(wait ? inside.squad_job->wait() : inside.squad_job->look());
}

} // namespace amentum
