#include "demo_facility/arm_account.h"

#include "demo_facility/people.h"
#include "inference/random_stream.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <string_view>

namespace amentum {
namespace {

constexpr const char* coach = "Halloran";
constexpr const char* clinician = "Dr. Ada Fenwick, sports physician";
constexpr const char* of_the_states = "United States baseball guideline";
constexpr const char* of_canada = "Canada baseball rule";
constexpr const char* of_softball = "Softball clinical guidance";

constexpr std::array<std::string_view, 3> forgetful{"Jonah Pellworm", "Greta Holloway", "Arlo Winterbourne"};
constexpr double forgotten = 0.4;        // share of a forgetful thrower's days without throws
constexpr double pitches_an_inning = 18; // of young pitchers, common practice, no source

struct SecondTeam {
    std::string_view athlete;
    const char* team;
    const char* organisation;
    int first_day; // before the last
};
constexpr std::array<SecondTeam, 5> second_teams{{{"Caleb Underhaugh", "Upland Otters", of_canada, 120},
                                                  {"Mateo Lindqvist", "Upland Otters", of_canada, 430},
                                                  {"Finn Abernarrow", "Upland Minnows", of_canada, 90},
                                                  {"Leilani Moorcock", "Upland Terns", of_softball, 400},
                                                  {"Yara Kestrel", "Harbour Gulls", "", 60}}};

// The athlete's first team, by sport and level.
std::optional<TeamPlace> first_team(const Athlete& a, Date last_day) {
    const Date joined = last_day - demo_days;
    if (a.sport == Sport::javelin)
        return std::nullopt;
    const bool softball = a.sport == Sport::softball;
    if (a.level == Level::amateur || a.level == Level::professional)
        return TeamPlace{a.id, "Quarry Town", softball ? of_softball : "", joined, {}};
    if (a.level == Level::college)
        return TeamPlace{a.id,
                         softball ? "Saltgrass College women" : "Saltgrass College",
                         softball ? of_softball : of_the_states,
                         joined,
                         {}};
    return TeamPlace{a.id,
                     softball ? "Saltgrass Plovers" : "Saltgrass Herons",
                     softball ? of_softball : of_the_states,
                     joined,
                     {}};
}

void add_teams(RecordSet& records, const Athlete& a, Date last_day) {
    if (auto place = first_team(a, last_day))
        records.teams.push_back(*place);
    for (const auto& second : second_teams)
        if (second.athlete == a.name)
            records.teams.push_back(
                {a.id, second.team, second.organisation, last_day - second.first_day, {}});
}

// Every second Saturday of the time in two teams is the second team's.
const TeamPlace* team_of(const RecordSet& records, const ThrowEntry& t) {
    const TeamPlace* team = nullptr;
    for (const auto& place : records.teams) {
        if (place.athlete != t.athlete || t.date < place.date)
            continue;
        if (!team || t.date.days_since_1970() / 7 % 2 == 0)
            team = &place;
    }
    return team;
}

void add_innings(RecordSet& records, const Athlete& a, RandomStream& stream) {
    ThrowEntry* last = nullptr;
    for (auto& t : records.throws) {
        if (t.athlete != a.id || t.setting != ThrowSetting::game)
            continue;
        const double innings = t.count / (pitches_an_inning * (0.9 + 0.2 * stream.next_uniform()));
        t.outs = static_cast<int>(std::lround(3 * innings));
        if (const auto* team = team_of(records, t))
            t.team = team->team;
        last = &t;
    }
    if (last && (a.name == "Caleb Underhaugh" || a.name == "Marisol Quay"))
        last->game = "Founders' Cup, final";
}

// From 12 to 25 October: nobody was asked.
bool nobody_asked(Date day) {
    const auto calendar = day.calendar();
    return calendar.month() == std::chrono::October && unsigned(calendar.day()) >= 12 &&
           unsigned(calendar.day()) <= 25;
}

void add_days_without(RecordSet& records, const Athlete& a, Date last_day, RandomStream& stream) {
    std::set<Date> with_throws;
    for (const auto& t : records.throws)
        if (t.athlete == a.id)
            with_throws.insert(t.date);
    const bool forgets = std::find(forgetful.begin(), forgetful.end(), a.name) != forgetful.end();
    for (Date day = last_day - demo_days; day < last_day; day = day + 1) {
        if (with_throws.contains(day))
            continue;
        const bool written = !forgets || stream.next_uniform() >= forgotten;
        if (written && !nobody_asked(day))
            records.throws.push_back({a.id, day, ThrowSetting::none, 0, {}, {}, {}, {}, {}, {}, {}, ""});
    }
}

ThrowStep step(int throws, double feet, double effort) {
    return {throws, Length::feet(feet), effort, ""};
}

// Of the wrist that the list of throwers restricts, and of a knee.
void add_pain(RecordSet& records, Date last_day) {
    const AthleteId wrist{"bastian-greyling"}, knee{"pascal-dunmorrow"};
    records.pains = {{wrist, 1, last_day - 70, PainRegion::forearm_and_hand, "",
                      "back of the wrist aches when I bat", coach},
                     {knee, 1, last_day - 6, PainRegion::knee, "",
                      "a bit sore under the kneecap after sliding practice", coach}};
    records.clearances = {{wrist, 1, last_day - 24, clinician, coach, last_day - 23,
                           "back to throwing by these steps; no push-ups on the flat hand"}};
    records.throw_steps = {{wrist,
                            1,
                            StepsOrigin::clinician,
                            clinician,
                            last_day - 20,
                            2,
                            {step(25, 30, 0.5), step(25, 45, 0.5), step(40, 45, 0.5), step(40, 60, 0.6),
                             step(50, 60, 0.6), step(50, 90, 0.7), step(60, 90, 0.7), step(60, 120, 0.8)},
                            "the next step only after a day without pain",
                            coach,
                            last_day - 23}};
}

} // namespace

void add_arm_account(RecordSet& records, Date last_day, std::uint64_t seed) {
    for (const auto& athlete : records.athletes) {
        RandomStream stream(seed_from(seed, "arm " + athlete.id.text));
        add_teams(records, athlete, last_day);
        add_innings(records, athlete, stream);
        add_days_without(records, athlete, last_day, stream);
    }
    add_pain(records, last_day);
}

} // namespace amentum
