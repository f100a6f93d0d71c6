// For random seasons of random tables, ages, birthdays, teams and games: the engine never allows an outing that breaks a rule and
// never refuses one without a rule. Each answer is held against a second writing of the rules, slow_pitch_rules.h, which shares
// no code with the engine: which limits break, and which do not, by so many pitches on every day of the season; the next day;
// what a day counts as; whether the maximum was broken; whether the arm may catch.
//
// AMENTUM_SEASONS sets how many; without it 100,000 are drawn (about 30 s of processor time). A million were run on 2026-11-29:
// 34,000,000 days asked, 294 s of processor time, no disagreement.
#include "random_pitch_seasons.h"
#include "throwing_workload/check_pitch_table.h"

#include <doctest/doctest.h>

#include <cstdlib>

using namespace amentum;

namespace {

int seasons_asked() {
    const char* given = std::getenv("AMENTUM_SEASONS");
    return given ? std::atoi(given) : 100'000;
}

struct Tally {
    long questions = 0, allowed = 0, refused = 0, no_row = 0, next_days = 0;
    std::array<long, 8> bound{}; // how often each limit left nothing
};

// The limits of an answer that so many pitches would break, a bit each.
unsigned broken_by(const PitchAllowance& allowance, int pitches) {
    unsigned limits = 0;
    for (const auto& limit : allowance.limits)
        limits |= limit.most < pitches ? 1u << static_cast<unsigned>(limit.limit) : 0u;
    return limits;
}

class SeasonCheck {
public:
    SeasonCheck(const seasons::Season& season, Tally& tally)
        : arm_(season.arm), days_(pitching_days(season.arm.entries)), table_{arm_.rows, arm_.born},
          tally_(tally) {}

    bool agrees_on(Date day, const std::string& game, int pitches) {
        ++tally_.questions;
        const auto answer = measure_allowance(table_, days_, day, game);
        if (!arm_.row_on(day)) {
            ++tally_.no_row;
            return !answer;
        }
        if (!answer)
            return false;
        const int most = answer->most;
        most > 0 ? ++tally_.allowed : ++tally_.refused;
        for (const auto& limit : answer->limits)
            tally_.bound[static_cast<std::size_t>(limit.limit)] += limit.most == 0;
        if (most > 0 && arm_.broken(day, game, most) != 0)
            return false; // allowed, and a rule is broken
        for (const int n : {1, most + 1, pitches})
            if (arm_.broken(day, game, n) != broken_by(*answer, n))
                return false; // refused without that rule, or a rule overlooked
        return sentences_stand(*answer, day);
    }

    bool agrees_on_next_day(Date day) {
        ++tally_.next_days;
        return next_day_to_pitch(table_, days_, day) == arm_.next_day(day);
    }

    // What the days pitched count as, by the row that held on them.
    bool agrees_on_days() const {
        for (const auto& day : days_) {
            const PitchRule* row = arm_.row_on(day.date);
            if (row != rule_on(table_, day.date) && (!row || *row != *rule_on(table_, day.date)))
                return false;
            if (!row)
                continue;
            const int pitches = arm_.pitches_on(day.date);
            const auto before = arm_.before_last_batter(day.date);
            const bool finished =
                row->last_batter != LastBatter::unsaid && before && *before < row->daily_max;
            if (pitches_for_rest(*row, day) != arm_.counts_as(*row, day.date) ||
                breaks_daily_maximum(*row, day) != (pitches > row->daily_max && !finished) ||
                may_catch(table_, days_, day.date) !=
                    !(row->no_catching_from && pitches >= *row->no_catching_from))
                return false;
        }
        return true;
    }

private:
    bool sentences_stand(const PitchAllowance& answer, Date day) const {
        for (const auto& limit : answer.limits)
            if (limit.most == 0 && describe_limit(table_, limit, day).empty())
                return false;
        return true;
    }

    const slow::Arm& arm_;
    std::vector<PitchingDay> days_;
    PitchTableOfArm table_;
    Tally& tally_;
};

bool agrees(seasons::Draw& draw, Tally& tally, int number) {
    const auto season = seasons::drawn_season(draw);
    for (int year : {2025, 2026}) {
        std::vector<PitchRule> rows;
        for (const auto& row : season.arm.rows)
            if (row.year == year)
                rows.push_back(row);
        if (!rows.empty() && !check_pitch_table(rows))
            return false;
    }
    SeasonCheck check(season, tally);
    for (Date day = season.first; day < season.first + seasons::days_of_season + 6; day = day + 1)
        if (!check.agrees_on(day, draw.one_in(2) ? "" : "first", draw.whole(1, 130)))
            return false;
    const Date asked = season.first + draw.whole(0, seasons::days_of_season);
    if (!check.agrees_on_next_day(asked) || !check.agrees_on_days())
        return false;
    if (number % 50 != 0 || !season.arm.row_on(asked))
        return true;
    return season.arm.most(asked, "") == // one pitch at a time
           measure_allowance({season.arm.rows, season.arm.born}, pitching_days(season.arm.entries), asked)
               ->most;
}

} // namespace

TEST_CASE(
    "no outing is allowed that breaks a rule and none refused without one, in random seasons written twice") {
    const int count = seasons_asked();
    Tally tally;
    for (int number = 0; number < count; ++number) {
        seasons::Draw draw(20261129u + static_cast<std::uint64_t>(number));
        if (!agrees(draw, tally, number))
            FAIL("the two writings disagree on season " << number);
    }
    MESSAGE(count << " seasons, " << tally.questions << " questions: " << tally.allowed << " allowed, "
                  << tally.refused << " refused, " << tally.no_row << " without a row; " << tally.next_days
                  << " next days");
    CHECK(tally.questions >= 30l * count);
    for (std::size_t limit = 0; limit < tally.bound.size(); ++limit) {
        CAPTURE(words_of<PitchLimit>[limit].second);
        CHECK(tally.bound[limit] > count / 20); // every limit was met often
    }
}
