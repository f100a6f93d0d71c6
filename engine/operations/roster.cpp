#include "operations/roster.h"

#include "operations/inside/inside.h"
#include "operations/inside/limiter_answer.h"
#include "operations/inside/throwing_answer.h"
#include "operations/inside/trajectory_answer.h"
#include "reports/sentences.h"

namespace amentum {
namespace {

// The one thing to do next, in the order of urgency.
std::string next_step(const FacilityView& view, const Athlete& athlete, const FindLimitersAnswer& limiters,
                      const std::vector<ShownFinding>& throwing, Date today) {
    for (const auto& finding : throwing)
        if (finding.severity == "stops")
            return finding.sentence + " " + finding.what_to_do;
    if (!view.one_series(athlete.id.text, "throwing_velocity"))
        return "Measure throwing velocity: nothing can be ranked without it.";
    const Block* running = nullptr;
    for (const auto& block : view.records.blocks)
        if (block.athlete == athlete.id && today <= block.start + 7 * block.weeks)
            running = &block;
    if (limiters.verdict == "cannot_tell" && !limiters.test_next_words.empty())
        return limiters.test_next_words;
    if (!running)
        return "Plan a block from " + limiters.limiters.front().name + ".";
    return "Train: block from " + running->start.text() + ", " + std::to_string(running->weeks) + " weeks.";
}

RosterLine line_of(Workplace::Inside& inside, const FacilityView& view, const Athlete& athlete,
                   const Facility& facility) {
    const Date today = inside.today();
    const auto limiters = limiter_answer(inside, view, *inside.roster_model(), athlete);
    RosterLine line{athlete.id.text,
                    athlete.name,
                    word(athlete.sport),
                    word(athlete.role),
                    word(athlete.level),
                    whole_years(athlete.birth_date, today),
                    {},
                    {},
                    {},
                    {},
                    {},
                    short_limiter_words(limiters),
                    {},
                    "",
                    ""};
    if (const Series* velocity = view.one_series(athlete.id.text, "throwing_velocity")) {
        line.velocity = shown_state(*velocity->kind,
                                    velocity->trajectory.front().state_on(today.days_since_1970()), facility);
        line.velocity_curve = curve_of(*velocity, facility, today);
        line.velocity_tests = tests_of(*velocity, facility);
    }
    if (limiters.verdict != "cannot_tell") {
        line.limiter = limiters.limiters.front().name;
        line.limiter_chance = limiters.limiters.front().chance_best;
    }
    const auto account = throws_of(view, athlete, today);
    line.days_since_hard_throw = account.days_since_hard;
    line.hard_throw_words = hard_throw_words(account);
    line.next_step =
        next_step(view, athlete, limiters, throwing_findings(inside, view, athlete, today), today);
    return line;
}

RosterAnswer roster_of(Workplace::Inside& inside, const FacilityView& view, Date today) {
    const auto facility = inside.facility();
    RosterAnswer answer{facility.name,
                        today.text(),
                        word(facility.mass_unit),
                        word(facility.speed_unit),
                        word(facility.length_unit),
                        {}};
    for (const auto& athlete : view.records.athletes)
        answer.throwers.push_back(line_of(inside, view, athlete, facility));
    return answer;
}

} // namespace

Result<RosterAnswer> roster(Workplace& workplace, const RosterRequest&) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const Date today = inside.today();
    const std::lock_guard lock(inside.listing);
    if (!inside.listed || inside.listed_view != view || inside.listed->today != today.text()) {
        inside.listed = std::make_shared<const RosterAnswer>(roster_of(inside, *view, today));
        inside.listed_view = view;
    }
    return *inside.listed;
}

} // namespace amentum
