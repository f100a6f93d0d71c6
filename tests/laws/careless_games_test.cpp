// Games and throw steps planned without a look at the log are caught every time: 10,000 random logs with random games and steps
// ahead, judged by a second, plain writing of the rules of pitching in this file, day by day and without throwing_workload. Both
// must name the same stops on the same days; a plan the plain rules find nothing in has no stop at all. The tables are those that
// came with the program, and an invented one that uses every column. AMENTUM_PLANS sets another number of plans.
#include "careless_plans.h"

#include "guard_rails/check_planned_throwing.h"

#include <cstdlib>
#include <map>
#include <set>
#include <string>

using namespace amentum;
using careless::Dice;

namespace {

using Stop = std::pair<std::string, Date>; // code, day
using Stops = std::set<Stop>;

const std::vector<PitchRule>& tables() {
    static const std::vector<PitchRule> all = [] {
        auto rows = tables_on_disk().pitch_rules;
        for (const Sport sport : {Sport::baseball, Sport::softball}) {
            PitchRule harbour{
                "Harbour league", 2026, sport, 8, 30, 70, {15, 30, 45, 60}, 50, 20, 3, 12, "", {"x"}};
            harbour.second_game = SecondGame::after_no_rest_count;
            harbour.no_pitching_caught = 4;
            harbour.no_catching_from = 41;
            rows.push_back(harbour);
        }
        return rows;
    }();
    return all;
}

// --- worlds

struct Plan {
    Athlete athlete;
    Date today;
    std::vector<TeamPlace> teams;
    std::vector<ThrowEntry> log;
    std::vector<PainEntry> pains;
    std::vector<PainClearance> clearances;
    std::vector<StopAnswered> answers;
    std::vector<CalendarEntry> calendar;
    std::vector<GameAhead> games;
    std::optional<ThrowSteps> steps;
    std::vector<PlannedThrowStep> planned;

    CareRecord care() const { return {tables_on_disk().pain_blocks, pains, clearances, answers}; }
};

void add_log(Dice& dice, Plan& plan) {
    std::map<Date, int> occasion;
    for (int i = dice.from(0, 10); i > 0; --i) {
        ThrowEntry entry{plan.athlete.id,
                         plan.today - dice.from(0, dice.chance(40) ? 3 : 9),
                         ThrowSetting::game,
                         dice.from(1, dice.chance(50) ? 20 : 110),
                         {},
                         {},
                         {},
                         {},
                         {},
                         {},
                         {},
                         ""};
        entry.occasion = ++occasion[entry.date];
        if (dice.chance(30))
            entry.outs = dice.from(0, 18);
        if (dice.chance(30)) {
            entry.setting = ThrowSetting::fielding;
            entry.outs_caught = dice.from(6, 21);
        }
        plan.log.push_back(entry);
    }
}

void add_steps(Dice& dice, Plan& plan) {
    const auto origin = dice.chance(50) ? StepsOrigin::clinician : StepsOrigin::ramp;
    plan.steps = ThrowSteps{plan.athlete.id, 1,  origin, "Noor Hale", plan.today + dice.from(0, 5),
                            dice.from(1, 3), {}, "",     "Kim Osei",  plan.today};
    plan.steps->steps.assign(6, ThrowStep{30, {}, {}, ""});
    Date day = plan.today + dice.from(0, 6);
    std::size_t step = dice.chance(85) ? 0 : 1;
    for (int i = dice.from(1, 4); i > 0; --i) {
        plan.planned.push_back({step, day});
        step += dice.chance(85) ? 1 : 2;
        day = day + dice.from(1, 5);
    }
}

Plan careless_plan(std::uint64_t seed) {
    Dice dice(seed);
    Plan plan{careless::random_thrower(dice),
              careless::first_monday() + dice.from(0, 6),
              {},
              {},
              {},
              {},
              {},
              {},
              {},
              {},
              {}};
    const Date today = plan.today;
    for (const auto* organisation : {"United States baseball guideline", "Canada baseball rule",
                                     "Softball clinical guidance", "Harbour league", "nobody knows"})
        if (dice.chance(30)) {
            plan.teams.push_back(
                {plan.athlete.id, organisation, organisation, today + dice.from(-30, 4), {}});
            if (dice.chance(50))
                plan.teams.back().last_date = plan.teams.back().date + dice.from(0, 40);
        }
    if (dice.chance(75))
        add_log(dice, plan);
    else
        add_steps(dice, plan);
    if (dice.chance(25))
        plan.pains.push_back({plan.athlete.id, 1, today - dice.from(0, 10),
                              dice.one_of(words_of<PainRegion>).first, "", "it hurts", "Kim Osei"});
    if (!plan.pains.empty() && dice.chance(50))
        plan.clearances.push_back(
            {plan.athlete.id, 1, today + dice.from(-10, 5), "Dr. Ada Fenwick", "Kim Osei", today, ""});
    for (int i = dice.from(0, 2); i > 0; --i)
        plan.calendar.push_back({plan.athlete.id, today + dice.from(0, 8), today + 8, DayKind::off, ""});
    for (int i = dice.from(1, 3); i > 0; --i)
        plan.games.push_back({today + dice.from(0, dice.chance(50) ? 1 : 8), dice.from(1, 110)});
    for (const auto* code :
         {"rest_not_over", "second_game", "open_pain", "daily_maximum", "steps_not_through", "step_too_soon"})
        for (const auto& game : plan.games)
            if (dice.chance(20))
                plan.answers.push_back(
                    {plan.athlete.id, code, game.date, "the final, and all agreed", "Rui", today});
    return plan;
}

// --- the rules once more, day by day

struct DayThrown {
    std::vector<int> games;
    int outs = 0, caught = 0;
    int pitches() const {
        int sum = 0;
        for (const int each : games)
            sum += each;
        return sum;
    }
};
using Thrown = std::map<Date, DayThrown>;

int age_on(const Plan& plan, Date day) {
    const auto born = plan.athlete.birth_date.calendar(), now = day.calendar();
    const bool had = std::pair(born.month(), born.day()) <= std::pair(now.month(), now.day());
    return static_cast<int>(now.year()) - static_cast<int>(born.year()) - (had ? 0 : 1);
}

bool adult(const Plan& plan, Date day) {
    return age_on(plan, day) >= 18 && plan.athlete.level != Level::youth &&
           plan.athlete.level != Level::school;
}

const PitchRule* row(const Plan& plan, const std::string& organisation, Date day) {
    for (const auto& rule : tables())
        if (rule.organisation == organisation && rule.sport == plan.athlete.sport &&
            rule.age_low <= age_on(plan, day) && age_on(plan, day) <= rule.age_high)
            return &rule;
    return nullptr;
}

std::set<std::string> organisations(const Plan& plan, Date day) {
    std::set<std::string> all;
    for (const auto& team : plan.teams)
        if (team.date <= day && day <= team.last_date.value_or(day))
            for (const auto& rule : tables())
                if (rule.organisation == team.organisation && rule.sport == plan.athlete.sport)
                    all.insert(team.organisation);
    if (all.empty())
        all.insert(plan.athlete.sport == Sport::baseball ? "United States baseball guideline"
                                                         : "Softball clinical guidance");
    return all;
}

int days_of_rest(const PitchRule& rule, int pitches) {
    int rest = 0;
    for (int k = 0; k < 6 && rule.rest_to[static_cast<std::size_t>(k)]; ++k) {
        rest = k;
        if (pitches <= *rule.rest_to[static_cast<std::size_t>(k)])
            return k;
    }
    return rest;
}

// Pitches each rule of one table leaves on a day, by the code of the rule.
std::map<std::string, int> left_by(const Plan& plan, const std::string& organisation, Thrown thrown,
                                   Date day) {
    std::map<std::string, int> left;
    const auto* rule = row(plan, organisation, day);
    if (!rule)
        return left;
    const auto pitched = [&](Date d) { return thrown.count(d) > 0 && thrown.at(d).pitches() > 0; };
    for (int back = 1; back <= 6; ++back)
        if (const auto* then = row(plan, organisation, day - back); then && pitched(day - back))
            if (back <= days_of_rest(*then, thrown.at(day - back).pitches()))
                left["rest_not_over"] = 0;
    int running = 0;
    while (pitched(day - (running + 1)))
        ++running;
    if (rule->most_days_running && running >= *rule->most_days_running)
        left["days_running_today"] = 0;
    const auto& on = thrown[day];
    if (rule->third_day_max && running >= 2)
        left["third_day_maximum"] = std::max(0, *rule->third_day_max - on.pitches());
    if (on.pitches() > 0 &&
        (rule->second_game == SecondGame::never ||
         (rule->second_game == SecondGame::after_no_rest_count && on.pitches() > *rule->rest_to[0])))
        left["second_game"] = 0;
    if (rule->no_pitching_caught && on.caught >= 3 * *rule->no_pitching_caught)
        left["caught_today"] = 0;
    int outs = 0; // the logs here are shorter than a year
    for (const auto& [d, each] : thrown)
        outs += d <= day ? each.outs : 0;
    if (rule->yearly_innings && outs >= 3 * *rule->yearly_innings)
        left["innings_a_year"] = 0;
    left["daily_maximum"] = std::max(0, rule->daily_max - on.pitches());
    if (rule->game_max)
        left["game_maximum"] = *rule->game_max;
    return left;
}

bool answered(const Plan& plan, const std::string& code, Date day) {
    return adult(plan, day) && std::any_of(plan.answers.begin(), plan.answers.end(), [&](const auto& each) {
               return each.code == code && each.date == day;
           });
}

bool throwing_hurts(const Plan& plan, Date day) {
    const std::set<PainRegion> arm{PainRegion::shoulder, PainRegion::elbow, PainRegion::forearm_and_hand,
                                   PainRegion::neck_and_upper_back, PainRegion::low_back};
    return std::any_of(plan.pains.begin(), plan.pains.end(), [&](const PainEntry& pain) {
        const bool cleared = !plan.clearances.empty() && pain.date <= plan.clearances[0].date &&
                             plan.clearances[0].date <= day;
        return arm.count(pain.region) > 0 && pain.date <= day && !cleared;
    });
}

Thrown thrown_so_far(const Plan& plan) {
    Thrown thrown;
    for (const auto& entry : plan.log) {
        auto& day = thrown[entry.date];
        if (entry.setting == ThrowSetting::game)
            day.games.push_back(entry.count);
        day.outs += entry.outs.value_or(0);
        day.caught += entry.outs_caught.value_or(0);
    }
    return thrown;
}

void games_by_plain_rules(const Plan& plan, Stops& stops) {
    Thrown thrown = thrown_so_far(plan);
    auto games = plan.games;
    std::stable_sort(games.begin(), games.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    for (const auto& game : games) {
        bool may = true, in_full = true;
        const auto stop = [&](const std::string& code) { stops.insert({code, game.date}); };
        if (throwing_hurts(plan, game.date)) {
            stop("open_pain");
            may = false;
        }
        if (plan.steps && plan.steps->origin == StepsOrigin::clinician) {
            stop("steps_not_through");
            may = false;
        }
        int most = game.pitches;
        for (const auto& organisation : organisations(plan, game.date))
            for (const auto& [code, left] : left_by(plan, organisation, thrown, game.date)) {
                most = std::min(most, left);
                if (left < game.pitches && !answered(plan, code, game.date)) {
                    stop(code);
                    in_full = false;
                }
            }
        if (may && (in_full || most > 0))
            thrown[game.date].games.push_back(in_full ? game.pitches : most);
    }
}

void steps_by_plain_rules(const Plan& plan, Stops& stops) {
    const PlannedThrowStep* before = nullptr;
    std::size_t next = 0;
    // Pain of today closes the gate for today, cleared or not: it is not known what the next day brings.
    Plan uncleared = plan;
    uncleared.clearances.clear();
    const bool felt_today = !plan.pains.empty() && plan.pains[0].date == plan.today;
    const bool closed = throwing_hurts(felt_today ? uncleared : plan, plan.today);
    for (const auto& each : plan.planned) {
        const auto stop = [&](const std::string& code) {
            if (plan.steps->origin == StepsOrigin::clinician || !answered(plan, code, each.date))
                stops.insert({code, each.date});
        };
        if (throwing_hurts(plan, each.date))
            stops.insert({"open_pain", each.date});
        if (std::any_of(plan.calendar.begin(), plan.calendar.end(),
                        [&](const auto& off) { return off.date <= each.date && each.date <= off.last_date; }))
            stop("throws_on_day_off");
        if (each.date < plan.steps->start || closed)
            stop("step_before_gate");
        if (each.step > next)
            stop("step_skipped");
        if (before && each.date - before->date <= plan.steps->days_between)
            stop("step_too_soon");
        next = std::max(next, each.step + 1);
        before = &each;
    }
}

void today_by_plain_rules(const Plan& plan, Stops& stops) {
    const Thrown thrown = thrown_so_far(plan);
    const Date today = plan.today;
    if (throwing_hurts(plan, today))
        stops.insert({"open_pain", today});
    for (const auto& organisation : organisations(plan, today)) {
        for (const auto& [code, left] : left_by(plan, organisation, thrown, today))
            if (left == 0 && !answered(plan, code, today))
                stops.insert({code, today});
        const auto* rule = row(plan, organisation, today);
        if (rule && rule->no_catching_from && thrown.count(today) > 0 &&
            thrown.at(today).pitches() >= *rule->no_catching_from)
            stops.insert({"no_catching_today", today});
    }
}

// --- both

Stops stops_of(const std::vector<Finding>& findings) {
    Stops stops;
    for (const auto& finding : findings)
        if (finding.severity == Severity::stops)
            stops.insert({finding.code, *finding.day});
    return stops;
}

std::string said(const Stops& stops) {
    std::string text;
    for (const auto& [code, day] : stops)
        text += code + " " + day.text() + "; ";
    return text;
}

int plans_wanted() {
    const char* given = std::getenv("AMENTUM_PLANS");
    return given ? std::atoi(given) : 10'000;
}

} // namespace

TEST_CASE("games and steps planned carelessly are caught every time, and nothing is stopped without a rule") {
    std::map<std::string, int> broken_in;
    int clean = 0;
    for (int seed = 0; seed < plans_wanted(); ++seed) {
        const Plan plan = careless_plan(static_cast<std::uint64_t>(seed));
        const CareRecord care = plan.care();
        const ThrowingCase arm{plan.athlete, plan.log, tables(), plan.teams, care, plan.today};
        std::vector<StepsAhead> steps;
        if (plan.steps)
            steps.push_back({*plan.steps, plan.planned});
        Stops ahead, today;
        games_by_plain_rules(plan, ahead);
        steps_by_plain_rules(plan, ahead);
        today_by_plain_rules(plan, today);
        const auto ahead_found = stops_of(check_planned_throwing(arm, plan.games, steps, plan.calendar));
        REQUIRE_MESSAGE(ahead_found == ahead, "plan " << seed << " on " << plan.today.text()
                                                      << "\n  guard rails: " << said(ahead_found)
                                                      << "\n  plain rules: " << said(ahead));
        const auto today_found = stops_of(check_throwing(arm));
        REQUIRE_MESSAGE(today_found == today, "log " << seed << " on " << plan.today.text()
                                                     << "\n  guard rails: " << said(today_found)
                                                     << "\n  plain rules: " << said(today));
        std::set<std::string> codes;
        for (const auto& stop : ahead)
            codes.insert(stop.first);
        for (const auto& stop : today)
            codes.insert(stop.first + " (today)");
        for (const auto& code : codes)
            ++broken_in[code];
        clean += ahead.empty() && today.empty();
    }
    for (const auto& [code, plans] : broken_in) {
        MESSAGE(code << ": in " << plans << " plans");
        CHECK_MESSAGE(plans > 100, code);
    }
    CHECK(broken_in.size() == 23);
    MESSAGE(clean << " plans broke no rule");
    CHECK(clean > 100);
}
