#include "operations/inside/arm_case.h"

#include "operations/inside/shown_pains.h"
#include "throwing_workload/pitch_tables_in_force.h"

#include <array>

namespace amentum {
namespace {

ArmCase empty_case(const Athlete& athlete, std::vector<PitchRule> in_force) {
    return {&athlete, {}, {}, std::move(in_force), {}, {}, {}, {}, {}, {}, {}};
}

void complete(ArmCase& arm, const ReferenceTables& tables) {
    arm.days = pitching_days(arm.entries);
    for (const auto& pain : arm.pains)
        if (pain_block_of(tables, pain.region).throwing)
            arm.pains_that_stop_throwing.push_back(pain);
}

template <class Kept>
void copy_own(const std::vector<Kept>& all, const AthleteId& athlete, std::vector<Kept>& own) {
    for (const auto& each : all)
        if (each.athlete == athlete)
            own.push_back(each);
}

template <class Kept>
void deal_out(const std::vector<Kept>& all, std::map<std::string, ArmCase>& cases,
              std::vector<Kept> ArmCase::*own) {
    for (const auto& each : all)
        if (const auto found = cases.find(each.athlete.text); found != cases.end())
            (found->second.*own).push_back(each);
}

} // namespace

std::vector<ArmTable> ArmCase::tables_on(Date day) const {
    return tables_of_arm(in_force, places, *athlete, day);
}

std::vector<PitchRule> pitch_rules_in_force(const ReferenceTables& tables, const FacilityView& view) {
    return pitch_tables_in_force(tables.pitch_rules, view.records.pitch_tables);
}

ArmCase arm_case(const FacilityView& view, const ReferenceTables& tables, const Athlete& athlete) {
    const auto& records = view.records;
    ArmCase arm = empty_case(athlete, pitch_rules_in_force(tables, view));
    copy_own(records.throws, athlete.id, arm.entries);
    copy_own(records.teams, athlete.id, arm.places);
    copy_own(records.pains, athlete.id, arm.pains);
    copy_own(records.clearances, athlete.id, arm.clearances);
    copy_own(records.throw_steps, athlete.id, arm.steps);
    copy_own(records.stops_answered, athlete.id, arm.stops_answered);
    copy_own(records.calendar, athlete.id, arm.calendar);
    complete(arm, tables);
    return arm;
}

std::map<std::string, ArmCase> arm_cases(const FacilityView& view, const ReferenceTables& tables) {
    const auto in_force = pitch_rules_in_force(tables, view);
    const auto& records = view.records;
    std::map<std::string, ArmCase> cases;
    for (const auto& athlete : records.athletes)
        cases.emplace(athlete.id.text, empty_case(athlete, in_force));
    deal_out(records.throws, cases, &ArmCase::entries);
    deal_out(records.teams, cases, &ArmCase::places);
    deal_out(records.pains, cases, &ArmCase::pains);
    deal_out(records.clearances, cases, &ArmCase::clearances);
    deal_out(records.throw_steps, cases, &ArmCase::steps);
    deal_out(records.stops_answered, cases, &ArmCase::stops_answered);
    deal_out(records.calendar, cases, &ArmCase::calendar);
    for (auto& [id, arm] : cases)
        complete(arm, tables);
    return cases;
}

std::vector<Date> days_spoken_for(const ArmCase& arm) {
    std::vector<Date> days;
    for (const auto& entry : arm.calendar)
        if (entry.kind != DayKind::practice)
            for (Date day = entry.date; day <= entry.last_date; day = day + 1)
                days.push_back(day);
    return days;
}

std::string weekday_words(Date day) {
    constexpr std::array<const char*, 7> names{"Monday", "Tuesday",  "Wednesday", "Thursday",
                                               "Friday", "Saturday", "Sunday"};
    return std::string(names[static_cast<std::size_t>(day.iso_weekday() - 1)]) + " " + day.text();
}

} // namespace amentum
