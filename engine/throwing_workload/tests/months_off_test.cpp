// Months off of small invented years, counted by hand. A month of 30 days is this project's proposal.
#include "throwing_workload/months_off.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

const Date last = *parse_date("2026-12-31", "date");
const Date first = *parse_date("2026-01-01", "date");

ThrowEntry entry(Date date, ThrowSetting setting, int count) {
    return {AthleteId{"a"}, date, setting, count, {}, {}, {}, {}, {}, {}, {}, ""};
}

// Games on all days but `off` known ones from the 100th on, `unknown` of which nobody spoke of.
std::vector<ThrowEntry> year_with(int off, int unknown, ThrowSetting on_days_off = ThrowSetting::none) {
    std::vector<ThrowEntry> entries;
    for (int k = 364; k >= 0; --k) { // the order does not matter
        const bool is_off = k >= 100 && k < 100 + off;
        if (is_off && k < 100 + unknown)
            continue;
        const auto setting = is_off ? on_days_off : ThrowSetting::game;
        entries.push_back(entry(first + k, setting, setting == ThrowSetting::none ? 0 : 10));
    }
    return entries;
}

PitchRule asking(std::optional<int> months, std::optional<int> running, MonthsOffFrom from) {
    PitchRule rule{"Harbour league", 2026, Sport::baseball, 8, 14, 50, {}, {}, {}, {}, {}, "", {}};
    rule.months_off = months;
    rule.months_off_running = running;
    rule.months_off_from = from;
    return rule;
}

} // namespace

TEST_CASE("days off are days somebody spoke of; those of nobody's word may be off or not") {
    const auto off = measure_time_off(year_with(130, 10), last);
    CHECK(off.first == first);
    CHECK(off.unknown_days == 10);
    CHECK(off.from_pitching == DaysOff{120, 130, 120, 130});
    CHECK(off.from_throwing == DaysOff{120, 130, 120, 130});
    const auto catching = measure_time_off(year_with(130, 0, ThrowSetting::catch_play), last);
    CHECK(catching.from_pitching == DaysOff{130, 130, 130, 130});
    CHECK(catching.from_throwing == DaysOff{0, 0, 0, 0});
}

TEST_CASE("enough, too short, or it cannot be told: 120 days are four months") {
    const auto rule = asking(4, 2, MonthsOffFrom::throwing);
    const auto answer = [&](int off, int unknown) {
        return check_months_off(rule, measure_time_off(year_with(off, unknown), last)).altogether;
    };
    CHECK(answer(120, 0) == TimeOffWord::enough);
    CHECK(answer(119, 0) == TimeOffWord::too_short);
    CHECK(answer(119, 119) == TimeOffWord::too_short);
    CHECK(answer(120, 1) == TimeOffWord::cannot_tell);
    CHECK(answer(130, 10) == TimeOffWord::enough);
    const auto nobody = check_months_off(rule, measure_time_off({}, last));
    CHECK(nobody.altogether == TimeOffWord::cannot_tell);
    CHECK(nobody.in_one_piece == TimeOffWord::cannot_tell);
}

TEST_CASE("off pitching may be months of catch play; those in one piece are off every throw") {
    auto entries = year_with(130, 0, ThrowSetting::catch_play);
    const auto pitching =
        check_months_off(asking(4, 2, MonthsOffFrom::pitching), measure_time_off(entries, last));
    CHECK(pitching.altogether == TimeOffWord::enough);
    CHECK(pitching.in_one_piece == TimeOffWord::too_short);
    CHECK(pitching.sentence ==
          "From 2026-01-01 to 2026-12-31: 130 days without pitches in a game, 4 x 30 days "
          "asked: enough. In one piece without a throw: 0 days, 2 x 30 days asked: too "
          "short.");
    CHECK(check_months_off(asking(4, {}, MonthsOffFrom::throwing), measure_time_off(entries, last))
              .altogether == TimeOffWord::too_short);
    const auto unasked =
        check_months_off(asking({}, {}, MonthsOffFrom::pitching), measure_time_off(entries, last));
    CHECK(unasked.altogether == TimeOffWord::not_asked);
    CHECK(unasked.in_one_piece == TimeOffWord::not_asked);
}

TEST_CASE("innings caught are throwing; entries before and after the 12 months are left out") {
    std::vector<ThrowEntry> entries{entry(first + 5, ThrowSetting::fielding, 0),
                                    entry(first - 1, ThrowSetting::none, 0),
                                    entry(last + 1, ThrowSetting::none, 0)};
    entries[0].outs_caught = 3;
    const auto off = measure_time_off(entries, last);
    CHECK(off.unknown_days == 364);
    CHECK(off.from_throwing == DaysOff{0, 364, 0, 359});
    CHECK(off.from_pitching.known == 1);
    CHECK(first_of_12_months(*parse_date("2028-02-29", "date")).text() == "2027-03-01");
    CHECK(first_of_12_months(*parse_date("2029-02-28", "date")).text() == "2028-02-29");
}
