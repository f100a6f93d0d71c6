#include "guard_rails/answered_stops.h"
#include "guard_rails/inside/throw_rules.h"
#include "throwing_workload/months_off.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

constexpr int history_after_days = 28; // proposal of this project, no source
constexpr int outs_of_an_inning = 3;

std::string pitches_on(const PitchingDay& day) {
    return std::to_string(day.pitches) + (day.pitches == 1 ? " pitch" : " pitches") + " on " +
           day.date.text();
}

std::string innings_caught(int outs) {
    const int whole = outs / outs_of_an_inning, part = outs % outs_of_an_inning;
    return std::to_string(whole) + (part ? " " + std::to_string(part) + "/3" : "") +
           (whole == 1 && !part ? " inning" : " innings") + " caught";
}

// A day up to and with its first `games` games: what had been thrown when the next game began.
PitchingDay first_games(const PitchingDay& day, std::size_t games) {
    PitchingDay first{day.date, {}, 0, 0, 0}; // of which game the outs were is not known
    first.games.assign(day.games.begin(), day.games.begin() + static_cast<std::ptrdiff_t>(games));
    for (const auto& game : first.games)
        first.pitches += game.pitches;
    return first;
}

// What was broken on one day, by one table.
class BrokenOnDay {
public:
    // `days_to` is changed while it works, and given back as it was.
    BrokenOnDay(const PitchTableOfArm& table, std::span<PitchingDay> days_to, const PitchRule& rule)
        : table_(table), days_to_(days_to), day_(days_to.back()), rule_(rule) {}

    std::vector<Finding> all() {
        for (std::size_t i = 0; i < day_.games.size(); ++i)
            check_game(i);
        days_to_.back() = day_;
        if (breaks_daily_maximum(rule_, day_))
            add(PitchLimit::daily_maximum, pitches_on(day_) + " are above the daily maximum.",
                describe_daily_maximum(rule_), "Give the arm the longest rest of the rule at least.");
        check_whole_day();
        return std::move(findings_);
    }

private:
    void check_game(std::size_t number) {
        const GameOfDay& game = day_.games[number];
        days_to_.back() = first_games(day_, number);
        const auto allowance = measure_allowance(table_, days_to_, day_.date, game.name);
        for (const auto& limit : allowance->limits) {
            if (game.pitches <= limit.most || limit.limit == PitchLimit::daily_maximum ||
                limit.limit == PitchLimit::innings || !told_.insert(limit.limit).second)
                continue;
            add(limit.limit, sentence_of(limit, game), describe_limit(table_, limit, day_.date),
                what_to_do(limit.limit));
        }
    }

    void check_whole_day() {
        const auto allowance = measure_allowance(table_, days_to_, day_.date);
        for (const auto& limit : allowance->limits) {
            const std::string words = describe_limit(table_, limit, day_.date);
            if (limit.limit == PitchLimit::caught && day_.pitches > 0)
                add(limit.limit,
                    pitches_on(day_) + ", and " + innings_caught(day_.outs_caught) + " on that day.", words,
                    what_to_do(limit.limit));
            else if (limit.limit == PitchLimit::innings &&
                     (day_.outs == 0 || limit.counted > *rule_.yearly_innings * outs_of_an_inning))
                add(limit.limit, pitches_on(day_) + " came with the innings of 12 months used up.", words,
                    what_to_do(limit.limit));
        }
        if (day_.outs_caught > 0 && !may_catch(table_, days_to_, day_.date))
            add(PitchLimit::caught,
                pitches_on(day_) + ", and " + innings_caught(day_.outs_caught) + " on that day.",
                "No catching on a day of " + std::to_string(*rule_.no_catching_from) + " pitches or more.",
                what_to_do(PitchLimit::caught));
    }

    std::string sentence_of(const LimitOfDay& limit, const GameOfDay& game) const {
        switch (limit.limit) {
        case PitchLimit::rest:
            return "Pitching again on " + day_.date.text() + " came too soon after " +
                   std::to_string(limit.counted) + (limit.counted == 1 ? " pitch on " : " pitches on ") +
                   limit.because->text() + ".";
        case PitchLimit::days_running:
            return day_.date.text() + " is day " + std::to_string(limit.counted + 1) +
                   " running with pitches.";
        case PitchLimit::third_day:
            return pitches_on(day_) + " are above the limit of a third day running.";
        case PitchLimit::second_game:
            return "A second game with pitches on " + day_.date.text() + ".";
        default:
            return std::to_string(game.pitches) + " pitches in a game on " + day_.date.text() +
                   " are above the game's maximum.";
        }
    }

    static std::string what_to_do(PitchLimit limit) {
        switch (limit) {
        case PitchLimit::rest:
            return "Plan the pitching days with the rest in between.";
        case PitchLimit::days_running:
            return "Give the arm a day off.";
        case PitchLimit::third_day:
            return "Leave the pitching on third days to somebody else.";
        case PitchLimit::second_game:
            return "Leave the second game of a day to somebody else.";
        case PitchLimit::caught:
            return "Pitch or catch on one day, not both.";
        case PitchLimit::innings:
            return "No more innings this year; give the arm its months off.";
        default:
            return "Change the pitcher before the limit.";
        }
    }

    void add(PitchLimit limit, std::string sentence, std::string words, std::string what_to_do) {
        findings_.push_back({Severity::warns,
                             code_of(limit, false),
                             std::move(sentence),
                             std::move(words),
                             source_of(rule_),
                             std::move(what_to_do),
                             {},
                             day_.date});
    }

    const PitchTableOfArm& table_;
    std::span<PitchingDay> days_to_; // up to and with the day
    const PitchingDay day_;
    const PitchRule& rule_;
    std::set<PitchLimit> told_;
    std::vector<Finding> findings_;
};

std::string nothing_left(PitchLimit limit, const LimitOfDay& why) {
    switch (limit) {
    case PitchLimit::rest:
        return "The rest after " + std::to_string(why.counted) +
               (why.counted == 1 ? " pitch on " : " pitches on ") + why.because->text() + " is not over.";
    case PitchLimit::days_running:
        return "There were pitches on each of the last " + std::to_string(why.counted) + " days.";
    case PitchLimit::third_day:
        return "Today is a third day running with pitches, and nothing is left of its limit.";
    case PitchLimit::second_game:
        return "There was a game with pitches today.";
    case PitchLimit::caught:
        return "There were " + innings_caught(why.counted) + " today.";
    case PitchLimit::innings:
        return "The innings of 12 months are used up.";
    default:
        return "The pitches of today are used up.";
    }
}

void check_today(const ThrowLog& log, const PitchTableOfArm& table, const PitchRule& rule,
                 const TimeOff& time_off, std::vector<Finding>& findings) {
    const Date today = log.arm.today;
    const auto answers = who_answers_for_rest(log.arm.athlete, today);
    const auto stop = [&](std::string code, std::string sentence, std::string words, std::string what) {
        findings.push_back({Severity::stops,
                            std::move(code),
                            std::move(sentence),
                            std::move(words),
                            source_of(rule),
                            std::move(what),
                            {},
                            today,
                            answers});
    };
    const auto allowance = measure_allowance(table, log.days, today);
    for (const auto& limit : allowance->limits)
        if (limit.most == 0)
            stop(code_of(limit.limit, true), nothing_left(limit.limit, limit),
                 describe_limit(table, limit, today), not_before(table, log.days, today));
    if (!may_catch(table, log.days, today))
        stop("no_catching_today", pitches_on(log.days.back()) + ".",
             "No catching on a day of " + std::to_string(*rule.no_catching_from) + " pitches or more.",
             "No catching today.");
    if (log.days.empty())
        return;
    const auto off = check_months_off(rule, time_off);
    if (off.altogether == TimeOffWord::too_short || off.in_one_piece == TimeOffWord::too_short)
        findings.push_back({Severity::warns,
                            "months_off_too_short",
                            off.sentence,
                            "The table asks for months off in every 12.",
                            source_of(rule),
                            "Plan the months off now.",
                            {},
                            today});
}

} // namespace

std::string code_of(PitchLimit limit, bool today) {
    switch (limit) {
    case PitchLimit::rest:
        return today ? "rest_not_over" : "rest_too_short";
    case PitchLimit::days_running:
        return today ? "days_running_today" : "days_running";
    case PitchLimit::third_day:
        return "third_day_maximum";
    case PitchLimit::second_game:
        return "second_game";
    case PitchLimit::caught:
        return today ? "caught_today" : "pitched_and_caught";
    case PitchLimit::innings:
        return "innings_a_year";
    case PitchLimit::daily_maximum:
        return "daily_maximum";
    case PitchLimit::game_maximum:
        return "game_maximum";
    }
    return "";
}

std::string source_of(const PitchRule& rule) {
    std::string keys;
    for (const auto& key : rule.sources)
        keys += (keys.empty() ? "" : ", ") + key;
    return rule.organisation + " " + std::to_string(rule.year) + " [" + keys + "]";
}

std::string not_before(const PitchTableOfArm& table, const std::vector<PitchingDay>& days, Date day) {
    const auto next = next_day_to_pitch(table, days, day);
    return next ? "No pitching in games before " + next->text() + "." : "No pitching in games.";
}

std::vector<Finding> check_pitch_rules(const ThrowLog& log) {
    const ThrowingCase& arm = log.arm;
    std::vector<Finding> findings;
    std::vector<PitchingDay> days = log.days;
    for (std::size_t i = 0; i < days.size(); ++i) {
        if (arm.today - days[i].date > history_after_days || days[i].pitches == 0)
            continue;
        for (const auto& each : tables_of_arm(arm.tables, arm.teams, arm.athlete, days[i].date)) {
            const PitchTableOfArm table{each.rows, arm.athlete.birth_date};
            if (const auto* rule = rule_on(table, days[i].date)) {
                auto broken = BrokenOnDay(table, std::span(days).first(i + 1), *rule).all();
                std::move(broken.begin(), broken.end(), std::back_inserter(findings));
            }
        }
    }
    const TimeOff time_off = measure_time_off(log.entries, arm.today);
    for (const auto& each : tables_of_arm(arm.tables, arm.teams, arm.athlete, arm.today)) {
        const PitchTableOfArm table{each.rows, arm.athlete.birth_date};
        if (const auto* rule = rule_on(table, arm.today))
            check_today(log, table, *rule, time_off, findings);
    }
    return findings;
}

} // namespace amentum
