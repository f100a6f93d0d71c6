#include "throwing_workload/pitch_allowance.h"

#include "throwing_workload/months_off.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int longest_rest = 5; // days: rest_to has six bands
constexpr int days_searched = 400;
constexpr int outs_of_an_inning = 3;

using namespace std::chrono;

int age_on(year_month_day birth, year_month_day day) { // as whole_years, from calendar days
    const bool before_birthday = std::pair(day.month(), day.day()) < std::pair(birth.month(), birth.day());
    return static_cast<int>(day.year()) - static_cast<int>(birth.year()) - (before_birthday ? 1 : 0);
}

int age_reckoned(const PitchRule& rule, year_month_day birth, year_month_day day) {
    if (!rule.age_month || !rule.age_day)
        return age_on(birth, day);
    return age_on(birth, day.year() / *rule.age_month / *rule.age_day);
}

// What had been thrown on and before a day.
struct Thrown {
    std::span<const PitchingDay> to_day;  // up to and with it
    std::span<const PitchingDay> earlier; // before it
    const PitchingDay* on_day;            // null: nothing

    int pitches_on_day() const { return on_day ? on_day->pitches : 0; }
};

Thrown thrown_to(std::span<const PitchingDay> days, Date day) {
    const auto after = std::upper_bound(days.begin(), days.end(), day,
                                        [](Date d, const PitchingDay& each) { return d < each.date; });
    const auto to_day = days.first(static_cast<std::size_t>(after - days.begin()));
    if (!to_day.empty() && to_day.back().date == day)
        return {to_day, to_day.first(to_day.size() - 1), &to_day.back()};
    return {to_day, to_day, nullptr};
}

bool is_same_game(const GameOfDay& game, const std::string& asked) {
    return !asked.empty() && game.name == asked;
}

struct Count {
    int pitches = 0;
    std::optional<int> before_last_batter; // of all games together
};

Count count_of(const std::vector<GameOfDay>& games, const std::string& left_out) {
    Count count;
    for (const auto& game : games) {
        if (is_same_game(game, left_out))
            continue;
        count.before_last_batter =
            game.before_last_batter ? std::optional(count.pitches + *game.before_last_batter) : std::nullopt;
        count.pitches += game.pitches;
    }
    return count;
}

int counted_for_rest(const PitchRule& rule, const Count& count) {
    if (rule.last_batter != LastBatter::counts_as_reached || !count.before_last_batter)
        return count.pitches;
    int counted = count.pitches;
    for (const auto& to : rule.rest_to)
        if (to && *count.before_last_batter < *to && *to <= count.pitches)
            counted = *to; // bands rise: the highest such end stays
    return counted;
}

void add_rest(const PitchTableOfArm& table, const Thrown& thrown, Date day, std::vector<LimitOfDay>& limits) {
    std::optional<LimitOfDay> longest;
    Date last_end = day - 1;
    for (auto d = thrown.earlier.rbegin(); d != thrown.earlier.rend() && day - d->date <= longest_rest; ++d) {
        const PitchRule* rule = d->pitches > 0 ? rule_on(table, d->date) : nullptr;
        if (!rule)
            continue;
        const int counted = pitches_for_rest(*rule, *d);
        const Date end = d->date + days_of_rest_after(*rule, counted);
        if (end > last_end) {
            longest = LimitOfDay{PitchLimit::rest, 0, d->date, counted};
            last_end = end;
        }
    }
    if (longest)
        limits.push_back(*longest);
}

int days_running_before(const Thrown& thrown, Date day) {
    int running = 0;
    for (auto d = thrown.earlier.rbegin(); d != thrown.earlier.rend(); ++d) {
        if (d->pitches == 0 || d->date != day - running - 1)
            break;
        ++running;
    }
    return running;
}

void add_days_running(const PitchRule& rule, const Thrown& thrown, Date day,
                      std::vector<LimitOfDay>& limits) {
    if (!rule.most_days_running && !rule.third_day_max)
        return;
    const int running = days_running_before(thrown, day);
    if (rule.most_days_running && running >= *rule.most_days_running)
        limits.push_back({PitchLimit::days_running, 0, day - running, running});
    if (rule.third_day_max && running >= 2)
        limits.push_back({PitchLimit::third_day, *rule.third_day_max - thrown.pitches_on_day(), day - running,
                          thrown.pitches_on_day()});
}

void add_same_day(const PitchRule& rule, const Thrown& thrown, const std::string& game,
                  std::vector<LimitOfDay>& limits) {
    if (!thrown.on_day)
        return;
    const Count others = count_of(thrown.on_day->games, game);
    const bool barred = rule.second_game == SecondGame::never ||
                        (rule.second_game == SecondGame::after_no_rest_count &&
                         days_of_rest_after(rule, counted_for_rest(rule, others)) > 0);
    if (others.pitches > 0 && barred)
        limits.push_back({PitchLimit::second_game, 0, {}, others.pitches});
    const int caught = thrown.on_day->outs_caught;
    if (rule.no_pitching_caught && caught >= *rule.no_pitching_caught * outs_of_an_inning)
        limits.push_back({PitchLimit::caught, 0, {}, caught});
}

void add_innings(const PitchRule& rule, const Thrown& thrown, Date day, std::vector<LimitOfDay>& limits) {
    if (!rule.yearly_innings)
        return;
    const Date first = first_of_12_months(day);
    int outs = 0;
    for (auto d = thrown.to_day.rbegin(); d != thrown.to_day.rend() && d->date >= first; ++d)
        outs += d->outs;
    if (outs >= *rule.yearly_innings * outs_of_an_inning)
        limits.push_back({PitchLimit::innings, 0, {}, outs});
}

void add_game(const PitchRule& rule, const Thrown& thrown, const std::string& game,
              std::vector<LimitOfDay>& limits) {
    if (!rule.game_max)
        return;
    LimitOfDay limit{PitchLimit::game_maximum, *rule.game_max, {}, 0};
    if (!game.empty())
        for (const auto& day : thrown.to_day)
            for (const auto& each : day.games)
                if (each.name == game) {
                    limit.counted += each.pitches;
                    if (!limit.because && &day != thrown.on_day)
                        limit.because = day.date;
                }
    limit.most -= limit.counted;
    limits.push_back(limit);
}

Refusal no_row(const PitchTableOfArm& table, Date day) {
    std::string covered;
    for (const auto& rule : table.rows)
        covered += (covered.empty() ? "" : ", ") + std::to_string(rule.age_low) + " to " +
                   std::to_string(rule.age_high) + " years";
    const int age = table.rows.empty() ? whole_years(table.birth_date, day)
                                       : age_by(table.rows.front(), table.birth_date, day);
    return {RefusalCode::method_does_not_apply,
            "The table of limits has no row for an age of " + std::to_string(age) + " years on " +
                day.text() + ".",
            "age", std::to_string(age), covered};
}

} // namespace

int age_by(const PitchRule& rule, Date birth_date, Date day) {
    return age_reckoned(rule, birth_date.calendar(), day.calendar());
}

const PitchRule* rule_on(const PitchTableOfArm& table, Date day) {
    const auto birth = table.birth_date.calendar();
    const auto on = day.calendar();
    const PitchRule* newest = nullptr;
    for (const auto& rule : table.rows) {
        const int age = age_reckoned(rule, birth, on);
        if (rule.age_low <= age && age <= rule.age_high && (!newest || rule.year > newest->year))
            newest = &rule;
    }
    return newest;
}

int pitches_for_rest(const PitchRule& rule, const PitchingDay& day) {
    if (rule.last_batter != LastBatter::counts_as_reached)
        return day.pitches;
    return counted_for_rest(rule, {day.pitches, count_of(day.games, "").before_last_batter});
}

int days_of_rest_after(const PitchRule& rule, int pitches) {
    int rest = 0;
    for (int k = 0; k < static_cast<int>(rule.rest_to.size()); ++k) {
        const auto& to = rule.rest_to[static_cast<std::size_t>(k)];
        if (!to)
            break;
        rest = k;
        if (pitches <= *to)
            break;
    }
    return rest;
}

bool breaks_daily_maximum(const PitchRule& rule, const PitchingDay& day) {
    if (day.pitches <= rule.daily_max)
        return false;
    const auto before = count_of(day.games, "").before_last_batter;
    return rule.last_batter == LastBatter::unsaid || !before || *before >= rule.daily_max;
}

bool may_catch(const PitchTableOfArm& table, std::span<const PitchingDay> days, Date day) {
    const PitchRule* rule = rule_on(table, day);
    return !rule || !rule->no_catching_from ||
           thrown_to(days, day).pitches_on_day() < *rule->no_catching_from;
}

Result<PitchAllowance> measure_allowance(const PitchTableOfArm& table, std::span<const PitchingDay> days,
                                         Date day, const std::string& game) {
    const PitchRule* rule = rule_on(table, day);
    if (!rule)
        return no_row(table, day);
    const Thrown thrown = thrown_to(days, day);
    PitchAllowance allowance{0, {}};
    auto& limits = allowance.limits;
    limits.reserve(4);
    add_rest(table, thrown, day, limits);
    add_days_running(*rule, thrown, day, limits);
    add_same_day(*rule, thrown, game, limits);
    add_innings(*rule, thrown, day, limits);
    limits.push_back(
        {PitchLimit::daily_maximum, rule->daily_max - thrown.pitches_on_day(), {}, thrown.pitches_on_day()});
    add_game(*rule, thrown, game, limits);
    for (auto& limit : limits)
        limit.most = std::max(limit.most, 0);
    std::sort(limits.begin(), limits.end(), [](const LimitOfDay& a, const LimitOfDay& b) {
        return std::pair(a.most, a.limit) < std::pair(b.most, b.limit);
    });
    allowance.most = limits.front().most;
    return allowance;
}

std::optional<Date> next_day_to_pitch(const PitchTableOfArm& table, std::span<const PitchingDay> days,
                                      Date day) {
    for (int ahead = 0; ahead <= days_searched; ++ahead)
        if (rule_on(table, day + ahead) && measure_allowance(table, days, day + ahead)->most > 0)
            return day + ahead;
    return std::nullopt;
}

} // namespace amentum
