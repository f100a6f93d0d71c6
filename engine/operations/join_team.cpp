#include "operations/join_team.h"

#include "operations/inside/entry_fields.h"
#include "operations/inside/may_pitch.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr std::size_t longest_name = 80;

Result<TeamPlace> place_from(const JoinTeamRequest& request, const Athlete& athlete,
                             const std::vector<PitchRule>& rules, Date today) {
    const std::string team = trimmed(request.team);
    if (team.empty() || team.size() > longest_name)
        return Refusal{RefusalCode::out_of_range, "Please name the team.", "team", request.team,
                       "1 to 80 characters"};
    const std::string organisation = trimmed(request.organisation.value_or(""));
    const auto known = organisations_for(rules, athlete.sport);
    if (!organisation.empty() && std::find(known.begin(), known.end(), organisation) == known.end())
        return refuse_unknown("organisation", organisation, known);
    const auto date = parse_date(request.date.value_or(today.text()), "date");
    if (!date)
        return date.refusal();
    TeamPlace place{athlete.id, team, organisation, *date, std::nullopt};
    if (!request.last_date)
        return place;
    const auto last = parse_date(*request.last_date, "last_date");
    if (!last)
        return last.refusal();
    if (*last < *date)
        return Refusal{RefusalCode::out_of_range, "The last day comes before the first.", "last_date",
                       last->text(), "from " + date->text()};
    place.last_date = *last;
    return place;
}

// A place held from the same day: only its last day may be new.
std::optional<Refusal> refuse_other(const FacilityView& view, const TeamPlace& place) {
    for (const auto& held : view.records.teams) {
        if (held.athlete != place.athlete || held.team != place.team || held.date != place.date)
            continue;
        if (held.organisation != place.organisation)
            return Refusal{RefusalCode::already_held,
                           "That place is held under the organisation \"" + held.organisation +
                               "\". End it, and begin another from a later day.",
                           "organisation", place.organisation, held.organisation};
        if (held.last_date && held.last_date != place.last_date)
            return Refusal{RefusalCode::already_held,
                           "That place has ended on " + held.last_date->text() + ".", "last_date",
                           place.last_date ? place.last_date->text() : "",
                           "the same day, or another first day"};
    }
    return std::nullopt;
}

} // namespace

Result<JoinTeamAnswer> join_team(Workplace& workplace, const JoinTeamRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto athlete = athlete_named(*before, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto rules = pitch_rules_in_force(inside.tables, *before);
    const auto place = place_from(request, **athlete, rules, inside.today());
    if (!place)
        return place.refusal();
    if (const auto refusal = refuse_other(*before, *place))
        return *refusal;
    RecordSet more;
    more.teams = {*place};
    inside.store.save_records(more);
    const auto after = inside.view();
    const auto arm = arm_case(*after, inside.tables, *after->athlete(place->athlete.text));
    const auto teams = team_words(arm, inside.today());
    return JoinTeamAnswer{teams,
                          "Kept. " + (*athlete)->name + " plays for " + std::to_string(teams.size()) +
                              (teams.size() == 1 ? " team" : " teams") +
                              " today; all pitches add up, and the strictest table holds. " +
                              may_pitch(arm, inside.tables, inside.today(), inside.today()).short_answer};
}

} // namespace amentum
