#include "operations/plan_next_session.h"

#include "operations/inside/block_request.h"
#include "operations/inside/finding_answer.h"
#include "operations/inside/kept_block.h"
#include "operations/inside/throwing_answer.h"
#include "planning/next_session.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

const char* weekday_name(Date date) {
    static constexpr std::array names{"Monday", "Tuesday",  "Wednesday", "Thursday",
                                      "Friday", "Saturday", "Sunday"};
    return names[static_cast<std::size_t>(date.iso_weekday() - 1)];
}

ShownWhy shown_why(const WhyLine& why) {
    return {why.sentence, why.source};
}

// "; 44.7, 43.6 mph": of those sets whose ball was measured.
std::string speeds_said(const std::vector<const SetDone*>& sets, const ShownUnit& unit) {
    std::string text;
    for (const SetDone* set : sets)
        if (set->speed)
            text += (text.empty() ? "; " : ", ") +
                    format_fixed(set->speed->metres_per_second() * unit.factor, unit.decimals);
    return text.empty() ? text : text + " " + unit.unit;
}

ShownNextLine shown_line(const NextLine& line, const Exercise& exercise, const Kit& kit,
                         const ShownUnit& speed) {
    const auto unit = shown_mass(kit.unit);
    const auto& now = line.now;
    ShownNextLine shown{now.order,
                        now.exercise,
                        exercise.name,
                        word(now.part),
                        word(exercise.means),
                        describe_sets(line.written, exercise, kit.unit),
                        describe_sets(now, exercise, kit.unit),
                        line.changed,
                        {},
                        now.sets,
                        now.reps,
                        std::to_string(now.sets) + " x " + std::to_string(now.reps) +
                            (exercise.one_sided ? " a side" : ""),
                        now.reps_in_reserve,
                        {},
                        unit.unit,
                        now.load_words,
                        now.rest_minutes,
                        exercise.setup,
                        describe_done(line.last, kit.unit) + speeds_said(line.last, speed),
                        static_cast<int>(line.today.size()),
                        line.sets_left};
    if (now.load)
        shown.load = shown_load_in(*now.load, unit);
    for (const auto& why : line.why)
        shown.why.push_back(shown_why(why));
    return shown;
}

// The findings about this session alone; those about the whole block stand on its own page.
std::vector<ShownFinding> findings_of(const Workplace::Inside& inside, const FacilityView& view,
                                      const NextSession& next, const Block& block, const Athlete& athlete,
                                      const Kit& kit) {
    auto findings = block_findings(inside, view, next.adjusted(block), athlete, kit);
    std::erase_if(findings, [&](const ShownFinding& finding) {
        return finding.week != next.week || finding.session != next.session;
    });
    return findings;
}

std::string summary(const NextSession& next, int in_days) {
    const auto changed = std::count_if(next.lines.begin(), next.lines.end(),
                                       [](const NextLine& line) { return line.changed; });
    const std::string when = in_days == 0   ? "Today"
                             : in_days == 1 ? "Tomorrow"
                                            : "In " + std::to_string(in_days) + " days";
    return when + ", week " + std::to_string(next.week) + ", session " + std::to_string(next.session) + ": " +
           (changed == 0   ? "every line as written."
            : changed == 1 ? "one line of " + std::to_string(next.lines.size()) + " is not as written."
                           : std::to_string(changed) + " lines of " + std::to_string(next.lines.size()) +
                                 " are not as written.");
}

Result<PlanNextSessionAnswer> answer_for(Workplace::Inside& inside, const FacilityView& view,
                                         const Block& block) {
    const Athlete& athlete = *view.athlete(block.athlete.text);
    const auto kit = kit_named(view, block.kit.text);
    if (!kit)
        return kit.refusal();
    const auto today = block_request(inside, view, athlete, **kit, asked_of(block), LimiterWork{});
    const auto next = plan_next_session({today, block, view.records.sets, inside.today()});
    if (!next)
        return next.refusal();
    const int in_days = next->date - inside.today();
    const auto speed =
        shown_unit(TestUnit::metre_per_second, view.records.facility.value_or(Facility{"This facility"}));
    PlanNextSessionAnswer answer{block.id.text,
                                 athlete.id.text,
                                 athlete.name,
                                 (*kit)->name,
                                 inside.today().text(),
                                 speed.unit,
                                 next->week,
                                 next->session,
                                 next->date.text(),
                                 weekday_name(next->date),
                                 in_days,
                                 word(next->rule),
                                 shown_why(next->rule_words),
                                 next->missed,
                                 next->days_off,
                                 {},
                                 {},
                                 {},
                                 findings_of(inside, view, *next, block, athlete, **kit),
                                 stop_and_refer_words(inside.tables),
                                 summary(*next, in_days)};
    for (const auto& why : next->ordered)
        answer.ordered.push_back(shown_why(why));
    for (const auto& why : next->left_out)
        answer.ordered.push_back(shown_why(why));
    for (const auto& line : next->lines)
        answer.lines.push_back(shown_line(line, *inside.tables.exercise(line.now.exercise), **kit, speed));
    for (const auto& pain : next->pain) {
        const Exercise* exercise = inside.tables.exercise(pain.exercise);
        answer.pain_notes.push_back({pain.date.text(), exercise ? exercise->name : pain.exercise, pain.note});
    }
    return answer;
}

Refusal refuse_without_block(const Athlete& athlete) {
    return {RefusalCode::too_few_data,
            athlete.name + " has no kept block. Plan one, or bring one in from a file.", "athlete",
            athlete.name, "a thrower with a kept block"};
}

} // namespace

Result<PlanNextSessionAnswer> plan_next_session(Workplace& workplace, const PlanNextSessionRequest& request) {
    auto& inside = workplace.inside();
    if (request.athlete && request.block)
        return Refusal{RefusalCode::unknown_choice, "Give athlete or block, not both.", "block",
                       *request.block, "athlete alone, or block alone"};
    if (!request.athlete && !request.block)
        return refuse_missing("athlete", "whose next session, or block for that of one block");
    const auto view = inside.view();
    if (request.block) {
        const auto block = kept_block(*view, *request.block, "block");
        if (!block)
            return block.refusal();
        return answer_for(inside, *view, **block);
    }
    const auto athlete = athlete_named(*view, *request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto blocks = blocks_of(*view, (*athlete)->id); // the newest first
    Result<PlanNextSessionAnswer> answer = refuse_without_block(**athlete);
    const Block* to_begin = nullptr;
    for (const Block* block : blocks) {
        if (block->start > inside.today()) {
            to_begin = block;
            continue;
        }
        answer = answer_for(inside, *view, *block);
        break;
    }
    if (!answer && to_begin)
        return answer_for(inside, *view, *to_begin);
    return answer;
}

} // namespace amentum
