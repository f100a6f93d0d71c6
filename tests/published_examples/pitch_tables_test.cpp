// Every band edge of every table that comes with the program, and the check values 14 to 19 of the project's facts on throwing
// (section 12), asked of measure_allowance and next_day_to_pitch. The expected numbers are typed from the published tables as
// they were read: USA Baseball and Major League Baseball, pitching guidelines (daily maximum, rest, innings, days running, two
// games); Baseball Canada's counts by division; the softball guidance of the American Orthopaedic Society for Sports Medicine.
// From memory: five days of rest after 106 and more at 19 to 22 years; which ages Canada's divisions mean.
#include "records/reference_tables.h"
#include "throwing_workload/check_pitch_table.h"
#include "throwing_workload/pitch_allowance.h"

#include <doctest/doctest.h>

#include <fstream>
#include <sstream>

using namespace amentum;

namespace {

const std::string national = "United States baseball guideline";
const std::string canada = "Canada baseball rule";
const std::string guidance = "Softball clinical guidance";
const Date monday = *parse_date("2026-03-09", "date");

const std::vector<PitchRule>& all_rules() {
    static const std::vector<PitchRule> rules = [] {
        std::map<std::string, std::string> texts;
        for (const auto& name : reference_file_names()) {
            std::ifstream file(std::string(AMENTUM_SOURCE_DIR "/data/") + name);
            std::ostringstream text;
            text << file.rdbuf();
            texts[name] = text.str();
        }
        return parse_reference_tables(texts)->pitch_rules;
    }();
    return rules;
}

std::vector<PitchRule> rows_of(const std::string& organisation) {
    std::vector<PitchRule> rows;
    for (const auto& rule : all_rules())
        if (rule.organisation == organisation)
            rows.push_back(rule);
    return rows;
}

// An arm of that age all through March 2026: born on 1 January.
class Arm {
public:
    Arm(const std::string& organisation, int age)
        : rows_(rows_of(organisation)), born_(Date::from(std::chrono::year(2026 - age) / 1 / 1)) {}

    void pitched(Date date, int pitches, int outs = 0) {
        days_.push_back({date, {{"", pitches, {}}}, pitches, outs, 0});
    }
    int most(Date date) const { return measure_allowance(table(), days_, date)->most; }
    Date next(Date date) const { return *next_day_to_pitch(table(), days_, date); }
    PitchTableOfArm table() const { return {rows_, born_}; }

private:
    std::vector<PitchRule> rows_;
    Date born_;
    std::vector<PitchingDay> days_;
};

// Days of rest that `pitches` on Monday ask for: whole days without a pitch allowed.
int rest_after(const std::string& organisation, int age, int pitches) {
    Arm arm(organisation, age);
    arm.pitched(monday, pitches);
    const Date next = arm.next(monday + 1);
    for (Date day = monday + 1; day < next; day = day + 1)
        CHECK(arm.most(day) == 0);
    CHECK(arm.most(next) > 0);
    return next - monday - 1;
}

struct Division {
    std::string organisation;
    int age_low, age_high, daily_max;
    std::vector<int> ends; // of the bands for 0, 1, 2 ... days of rest, the last one being the daily maximum
};

const std::vector<Division> with_bands{
    {national, 7, 8, 50, {20, 35, 50}},
    {national, 9, 10, 75, {20, 35, 50, 65, 75}},
    {national, 11, 12, 85, {20, 35, 50, 65, 85}},
    {national, 13, 14, 95, {20, 35, 50, 65, 95}},
    {national, 15, 16, 95, {30, 45, 60, 75, 95}},
    {national, 17, 18, 105, {30, 45, 60, 75, 105}},
    {national, 19, 22, 120, {30, 45, 60, 75, 105, 120}},
    {canada, 10, 11, 75, {25, 40, 55, 65, 75}},
    {canada, 12, 13, 85, {30, 45, 60, 75, 85}},
    {canada, 14, 15, 95, {35, 50, 65, 80, 95}},
    {canada, 16, 18, 105, {40, 55, 70, 85, 105}},
    {canada, 19, 22, 115, {45, 60, 75, 90, 115}},
};

struct Guidance {
    int age_low, age_high, per_game, per_day, third_day;
};
const std::vector<Guidance> softball{{8, 10, 50, 80, 0},
                                     {11, 12, 65, 95, 0},
                                     {13, 14, 80, 115, 80},
                                     {15, 30, 100, 140, 100}}; // 15 and older: to 99 in the table

} // namespace

TEST_CASE("each band's end, one pitch either side, at every age of every baseball table that has bands") {
    for (const auto& division : with_bands)
        for (int age = division.age_low; age <= division.age_high; ++age) {
            CAPTURE(division.organisation);
            CAPTURE(age);
            CHECK(rest_after(division.organisation, age, 1) == 0);
            for (int rest = 0; rest < static_cast<int>(division.ends.size()); ++rest) {
                const int end = division.ends[static_cast<std::size_t>(rest)];
                const bool last = end == division.daily_max;
                CAPTURE(end);
                CHECK(rest_after(division.organisation, age, end) == rest);
                CHECK(rest_after(division.organisation, age, end + 1) == rest + (last ? 0 : 1));
            }
        }
}

TEST_CASE("the daily maximum of every baseball row: all of it on a rested day, what is left after some, none "
          "above") {
    auto divisions = with_bands;
    divisions.push_back({canada, 7, 9, 50, {}}); // the table read gives only its daily maximum
    for (const auto& division : divisions)
        for (int age = division.age_low; age <= division.age_high; ++age) {
            CAPTURE(division.organisation);
            CAPTURE(age);
            CHECK(Arm(division.organisation, age).most(monday) == division.daily_max);
            for (const int thrown : {division.daily_max - 1, division.daily_max, division.daily_max + 1}) {
                Arm arm(division.organisation, age);
                arm.pitched(monday, thrown);
                const bool two_games = division.organisation != national;
                CHECK(arm.most(monday) == (two_games ? std::max(division.daily_max - thrown, 0) : 0));
            }
        }
    CHECK(rest_after(canada, 9, 50) == 0); // no bands: the table asks for no rest
}

TEST_CASE("no table speaks of ages it has no row for") {
    for (const auto& [organisation, age] :
         {std::pair(national, 6), std::pair(national, 23), std::pair(canada, 6), std::pair(canada, 23),
          std::pair(guidance, 7), std::pair(guidance, 100)}) {
        CAPTURE(organisation);
        const auto refused = measure_allowance(Arm(organisation, age).table(), {}, monday);
        REQUIRE_FALSE(refused);
        CHECK(refused.refusal().code == RefusalCode::method_does_not_apply);
        CHECK(refused.refusal().given == std::to_string(age));
    }
}

TEST_CASE("14: age 13 to 14, 40 pitches on Monday: next on Thursday; 66: next on Saturday; 20: next day") {
    REQUIRE(monday.iso_weekday() == 1);
    for (const int age : {13, 14}) {
        CHECK((monday + 1 + rest_after(national, age, 40)).iso_weekday() == 4);
        CHECK((monday + 1 + rest_after(national, age, 66)).iso_weekday() == 6);
        CHECK((monday + 1 + rest_after(national, age, 20)).iso_weekday() == 2);
    }
}

TEST_CASE("15: daily maximum of 11 to 12, 17 to 18, 7 to 8 years: 85, 105, 50") {
    CHECK(Arm(national, 11).most(monday) == 85);
    CHECK(Arm(national, 12).most(monday) == 85);
    CHECK(Arm(national, 17).most(monday) == 105);
    CHECK(Arm(national, 18).most(monday) == 105);
    CHECK(Arm(national, 7).most(monday) == 50);
    CHECK(Arm(national, 8).most(monday) == 50);
}

TEST_CASE("16 and 17: days of rest at 15 to 16 and at 9 to 10 years") {
    const auto rest = [](int age, const std::vector<int>& counts) {
        std::vector<int> days;
        for (const int pitches : counts)
            days.push_back(rest_after(national, age, pitches));
        return days;
    };
    const std::vector<int> expected{0, 1, 1, 2, 2, 3, 3, 4};
    for (const int age : {15, 16})
        CHECK(rest(age, {30, 31, 45, 46, 60, 61, 75, 76}) == expected);
    for (const int age : {9, 10})
        CHECK(rest(age, {20, 21, 35, 36, 50, 51, 65, 66}) == expected);
}

TEST_CASE("18: innings in 12 months, 60 to the age of 8, 80 to 12, 100 to 18: the last out is the limit") {
    const auto left_after = [](int age, int outs) {
        Arm arm(national, age);
        arm.pitched(monday - 40, 1, outs);
        return arm.most(monday);
    };
    for (const auto& [age, innings] : {std::pair(7, 60), std::pair(8, 60), std::pair(9, 80),
                                       std::pair(12, 80), std::pair(13, 100), std::pair(18, 100)}) {
        CAPTURE(age);
        CHECK(left_after(age, 3 * innings - 1) > 0);
        CHECK(left_after(age, 3 * innings) == 0);
    }
    CHECK(left_after(19, 2000) == 120); // no cap is published for 19 to 22 years
}

TEST_CASE("19: softball at 13 to 14 years: 115, 115 and 80 on days 1 to 3, 80 a game; and the other rows") {
    for (const auto& row : softball)
        for (int age = row.age_low; age <= row.age_high; ++age) {
            CAPTURE(age);
            Arm arm(guidance, age);
            CHECK(arm.most(monday) == row.per_game); // of one game; of the day, below
            arm.pitched(monday, row.per_day - 1);
            CHECK(arm.most(monday) == 1);
            arm.pitched(monday + 1, row.per_day);
            CHECK(arm.most(monday + 1) == 0);
            CHECK(arm.most(monday + 2) == std::min(row.third_day, row.per_game));
            CHECK(arm.most(monday + 3) == row.per_game); // a day off between
            const auto allowed = measure_allowance(arm.table(), {}, monday);
            REQUIRE(allowed->limits.size() == 2);
            CHECK(allowed->limits[0].limit == PitchLimit::game_maximum);
            CHECK(allowed->limits[0].most == row.per_game);
            CHECK(allowed->limits[1].limit == PitchLimit::daily_maximum);
            CHECK(allowed->limits[1].most == row.per_day);
        }
}

TEST_CASE("the national guideline: not on three days running, not in two games of one day") {
    for (const int age : {7, 9, 11, 13, 15, 17, 19}) {
        CAPTURE(age);
        Arm arm(national, age);
        arm.pitched(monday, 10);
        CHECK(arm.most(monday) == 0); // the first game is over
        CHECK(arm.most(monday + 1) > 0);
        arm.pitched(monday + 1, 10);
        CHECK(arm.most(monday + 2) == 0);
        CHECK(arm.most(monday + 3) > 0);
    }
}

TEST_CASE("every table that comes with the program is whole") {
    for (const auto& organisation : {national, canada, guidance})
        CHECK(check_pitch_table(rows_of(organisation)));
    CHECK(all_rules().size() == 17);
}
