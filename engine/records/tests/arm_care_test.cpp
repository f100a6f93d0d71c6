// The account of the arm in files: throws of several occasions, days without, tables, teams, pain, clearances, steps.
#include "records/check_throws.h"
#include "records/tests/small_gym.h"
#include "records/write_records.h"

using namespace amentum;
using enum RecordKind;

namespace {

const Gym gym;
const std::string throw_header =
    "athlete,date,setting,count,occasion,outs,before_last_batter,outs_caught,soreness_after,game\n";

Refusal throw_refusal(const std::string& lines) {
    return gym.refusal(throws, throw_header + lines + "\n");
}

// The file of a kind that `records` are written to.
std::string written(const RecordSet& records, RecordKind kind) {
    for (const auto& file : write_records(records))
        if (file.name == word(kind) + ".csv")
            return file.text;
    return "";
}

const std::string table_header =
    "number,organisation,sport,author,date,reason,year,age_low,age_high,daily_max,"
    "rest_0_to,rest_1_to,rest_2_to\n";
const std::string table_head = "Quarry league rule,softball,Kim Osei,2026-03-02,our own table now,";

Refusal table_refusal(const std::string& lines) {
    return gym.refusal(pitch_rules, table_header + lines + "\n");
}

const std::string steps_header = "athlete,number,step,origin,author,start,days_between,throws,distance_ft,"
                                 "effort_percent,recorded_by,recorded\n";
const std::string by_fenwick = "clinician,Ada Fenwick,2026-03-20,1,";

Refusal steps_refusal(const std::string& lines) {
    return gym.refusal(throw_steps, steps_header + lines + "\n");
}

} // namespace

TEST_CASE("a double-header is two occasions, a catcher's innings need no throws, a day without throws is a "
          "record") {
    const auto preview = gym.read(throws, throw_header + "Ona Reyes,2026-03-01,game,41,,13,37,,,Terns 1\n"
                                                         "Ona Reyes,2026-03-01,game,22,2,4,,,,Terns 2\n"
                                                         "Ona Reyes,2026-03-01,fielding,0,,,,9,,\n"
                                                         "Imre Vale,2026-03-01,none,,,,,,2,\n"
                                                         "Imre Vale,2026-03-02,none,0,,,,,,\n");
    REQUIRE(preview.can_be_taken());
    CHECK(preview.lines[1].words == "adds throws: Ona Reyes, 2026-03-01, game 2, 22 throws");
    CHECK(preview.lines[3].words == "adds a day without throws: Imre Vale, 2026-03-01");
    const auto& entries = preview.new_records.throws; // by athlete, day, setting, occasion
    REQUIRE(entries.size() == 5);
    CHECK(entries[0].setting == ThrowSetting::none);
    CHECK(entries[0].count == 0);
    CHECK(entries[2].outs_caught == 9);
    CHECK(entries[3].occasion == 1);
    CHECK(entries[3].outs == 13);
    CHECK(entries[3].before_last_batter == 37);
    CHECK(entries[4].game == "Terns 2");
}

TEST_CASE("a file of before these columns reads as before") {
    const auto entry =
        gym.added(throws, "athlete,date,setting,count\nOna Reyes,2026-03-02,bullpen,35\n").throws.at(0);
    CHECK(entry ==
          ThrowEntry{
              {"ona-reyes"}, day("2026-03-02"), ThrowSetting::bullpen, 35, {}, {}, {}, {}, {}, {}, {}, ""});
    CHECK(entry.occasion == 1);
    CHECK(gym.read(facility, "name\nQuarry Street Gym\n").count(Verdict::already_held) == 1);
}

TEST_CASE("what throws cannot be is refused by its field") {
    CHECK(throw_refusal("Ona Reyes,2026-03-01,none,3,,,,,,").field == "line 2, count");
    CHECK(throw_refusal("Ona Reyes,2026-03-01,none,,2,,,,,").field == "line 2, occasion");
    CHECK(throw_refusal("Ona Reyes,2026-03-01,none,,,,,,,a game").field == "line 2, game");
    CHECK(throw_refusal("Ona Reyes,2026-03-01,game,0,,,,,,").sentence.find("setting none") !=
          std::string::npos);
    CHECK(throw_refusal("Ona Reyes,2026-03-01,game,,,,,,,").code == RefusalCode::missing_field);
    CHECK(throw_refusal("Ona Reyes,2026-03-01,fielding,0,,,,,,").allowed == "1 to 400");
    CHECK(throw_refusal("Ona Reyes,2026-03-01,bullpen,30,,3,,,,").field == "line 2, outs");
    CHECK(throw_refusal("Ona Reyes,2026-03-01,game,30,,61,,,,").allowed == "0 to 60");
    CHECK(throw_refusal("Ona Reyes,2026-03-01,game,30,,,31,,,").allowed == "0 to 30");
    CHECK(throw_refusal("Ona Reyes,2026-03-01,game,30,,,,3,,").field == "line 2, outs_caught");
    CHECK(throw_refusal("Ona Reyes,2026-03-01,game,30,10,,,,,").allowed == "1 to 9");
}

TEST_CASE("a day without throws stands alone: within a file, and beside what is held") {
    const auto both =
        throw_refusal("Ona Reyes,2026-03-02,bullpen,35,,,,,,\nOna Reyes,2026-03-02,none,,,,,,,");
    CHECK(both.code == RefusalCode::already_held);
    CHECK(both.field == "line 3, setting");
    CHECK(both.sentence == "Line 3: a day without throws (none) and 35 throws (bullpen) cannot both stand on "
                           "2026-03-02: a day without throws stands alone.");
    Gym with_day = gym;
    with_day.held.throws =
        with_day.added(throws, "athlete,date,setting,count\nOna Reyes,2026-03-02,none,0\n").throws;
    CHECK(with_day.refusal(throws, "athlete,date,setting,count\nOna Reyes,2026-03-02,game,12\n").sentence ==
          "Line 2: 12 throws (game) and a day without throws (none) cannot both stand on 2026-03-02: a day "
          "without "
          "throws stands alone.");
    CHECK(
        with_day.added(throws, "athlete,date,setting,count\nOna Reyes,2026-03-03,game,12\n").throws.size() ==
        1);
    CHECK(
        with_day.added(throws, "athlete,date,setting,count\nImre Vale,2026-03-02,game,12\n").throws.size() ==
        1);
    CHECK(with_day.read(throws, "athlete,date,setting,count\nOna Reyes,2026-03-02,none,0\n")
              .count(Verdict::already_held) == 1);
}

TEST_CASE("a time zone has the characters of one") {
    Gym empty = gym;
    empty.held.facility = std::nullopt;
    CHECK(empty.added(facility, "name,time_zone\nGym,America/Argentina/Buenos_Aires\n").facility->time_zone ==
          "America/Argentina/Buenos_Aires");
    CHECK(empty.refusal(facility, "name,time_zone\nGym,here; there\n").field == "line 2, time_zone");
}

TEST_CASE("a pitch table comes whole, in order, and goes back by a line without ages") {
    const std::string whole = table_header + "1," + table_head + "2026,13,14,80,20,35,80\n1," + table_head +
                              "2026,15,99,100,30,45,100\n2," + table_head + ",,,,,,\n";
    const auto tables = gym.added(pitch_rules, whole).pitch_tables;
    REQUIRE(tables.size() == 2);
    REQUIRE(tables[0].rules.size() == 2);
    CHECK(tables[0].rules[1].rest_to[1] == 45);
    CHECK(tables[0].rules[1].organisation == "Quarry league rule");
    CHECK(tables[0].rules[0].second_game == SecondGame::unsaid);
    CHECK(tables[1].rules.empty());
    Gym later = gym;
    later.held.pitch_tables = tables;
    CHECK(later.read(pitch_rules, written(later.held, pitch_rules)).count(Verdict::already_held) == 3);
    // A held table is never changed, nor added to.
    const auto refused = [&](const std::string& line) {
        return later.refusal(pitch_rules, table_header + line + "\n").code;
    };
    CHECK(refused("1," + table_head + "2026,13,14,85,20,35,85") == RefusalCode::already_held);
    CHECK(refused("1," + table_head + "2026,11,12,70,20,35,70") == RefusalCode::already_held);
    CHECK(refused("1," + table_head + ",,,,,,") == RefusalCode::already_held);
    CHECK(refused("2," + table_head + "2026,11,12,70,20,35,70") == RefusalCode::already_held);
    CHECK(refused(
              "1,Quarry league rule,softball,Kim Osei,2026-03-03,our own table now,2026,13,14,80,20,35,80") ==
          RefusalCode::already_held); // another day
}

TEST_CASE("a pitch table that is not whole is refused") {
    CHECK(table_refusal("2," + table_head + "2026,13,14,80,20,35,80").field == "line 2, number");
    CHECK(table_refusal("1," + table_head + "2026,13,14,80,20,,80").code !=
          RefusalCode::already_held); // a gap
    CHECK(table_refusal("1," + table_head + "2026,13,14,80,20,35,70").field.find("line 2") ==
          0); // below the maximum
    CHECK(table_refusal("1," + table_head + "2026,13,14,80,20,35,80\n1," + table_head +
                        "2026,16,99,80,20,35,80")
              .field.find("line 2") == 0); // nobody of 15
    CHECK(table_refusal("1," + table_head + "2026,,14,80,20,35,80").field == "line 2, age_low");
    CHECK(table_refusal("1," + table_head + "2026,13,14,,20,35,80").field == "line 2, daily_max");
    CHECK(table_refusal("1,Quarry league rule,softball,Kim Osei,2026-03-02,short,2026,13,14,80,20,35,80")
              .field == "line 2, reason");
    const std::string first = "1," + table_head + "2026,13,14,80,20,35,80\n";
    CHECK(table_refusal(first + "1," + table_head + ",,,,,,").field == "line 3, number");
    CHECK(table_refusal(first +
                        "1,Other rule,softball,Kim Osei,2026-03-02,our own table now,2026,15,99,80,20,35,80")
              .field == "line 3, number");
}

TEST_CASE("a place in a team names an organisation that has a table") {
    const std::string header = "athlete,team,organisation,date,last_date\n";
    const auto refusal = [&](const std::string& line) { return gym.refusal(teams, header + line + "\n"); };
    const auto places = gym.added(teams, header + "Ona Reyes,Terns,Quarry league rule,2026-03-01,\n"
                                                  "Ona Reyes,Gulls,,2026-05-01,2026-07-01\n")
                            .teams;
    REQUIRE(places.size() == 2);
    CHECK(places[0].team == "Gulls");
    CHECK(places[0].last_date == day("2026-07-01"));
    CHECK(refusal("Ona Reyes,Terns,Quary league rule,2026-03-01,").sentence.find("\"Quarry league rule\"") !=
          std::string::npos);
    CHECK(refusal("Ona Reyes,,Quarry league rule,2026-03-01,").field == "line 2, team");
    CHECK(refusal("Ona Reyes,Terns,,2026-03-01,2026-02-01").field == "line 2, last_date");
}

TEST_CASE("pain entries come in order, and a clearance names one that is held") {
    const std::string header = "athlete,number,date,region,sign,words,noted_by\n";
    const auto refusal = [&](const std::string& line) { return gym.refusal(pains, header + line + "\n"); };
    Gym sore = gym;
    sore.held.pains =
        gym.added(pains, header +
                             "Ona Reyes,1,2026-03-05,elbow,sharp_arm_pain,\"it \"\"popped\"\"\",Kim Osei\n"
                             "Ona Reyes,2,2026-03-06,low back,,,Kim Osei\n"
                             "Imre Vale,1,2026-03-06,knee,,,Kim Osei\n")
            .pains;
    REQUIRE(sore.held.pains.size() == 3);
    CHECK(sore.held.pains[1].words == "it \"popped\"");
    CHECK(refusal("Ona Reyes,2,2026-03-05,elbow,,,Kim Osei").field == "line 2, number");
    CHECK(refusal("Ona Reyes,1,2026-03-05,wing,,,Kim Osei").field == "line 2, region");
    CHECK(refusal("Ona Reyes,1,2026-03-05,elbow,sharp_arm_pian,,Kim Osei")
              .sentence.find("\"sharp_arm_pain\"") != std::string::npos);
    CHECK(refusal("Ona Reyes,1,2026-03-05,elbow,,,").field == "line 2, noted_by");
    CHECK(refusal("Ona Reyes,1,2026-03-15,elbow,,,Kim Osei").field == "line 2, date");

    const std::string clears = "athlete,number,date,cleared_by,recorded_by,recorded,words\n";
    const auto clearing = [&](const std::string& line) {
        return sore.refusal(clearances, clears + line + "\n");
    };
    CHECK(sore.added(clearances, clears + "Ona Reyes,1,2026-03-09,Ada Fenwick,Kim Osei,2026-03-10,\n")
              .clearances.size() == 1);
    CHECK(clearing("Ona Reyes,3,2026-03-09,Ada Fenwick,Kim Osei,2026-03-10,").sentence ==
          "Line 2: Ona Reyes has no pain entry 3.");
    CHECK(clearing("Ona Reyes,1,2026-03-04,Ada Fenwick,Kim Osei,2026-03-10,").field == "line 2, date");
    CHECK(clearing("Ona Reyes,1,2026-03-11,Ada Fenwick,Kim Osei,2026-03-10,").field == "line 2, date");
    CHECK(clearing("Ona Reyes,1,2026-03-09,,Kim Osei,2026-03-10,").field == "line 2, cleared_by");
    CHECK(clearing("Ona Reyes,1,2026-03-09,Ada Fenwick,,2026-03-10,").field == "line 2, recorded_by");
    CHECK(clearing("Ona Reyes,1,2026-03-09,Ada Fenwick,Kim Osei,2026-03-15,").field == "line 2, recorded");
}

TEST_CASE("steps come in order, and end by a line without a step") {
    const std::string one = "Ona Reyes,1,1," + by_fenwick + "25,45,50,Kim Osei,2026-03-10\n";
    const std::string two = "Ona Reyes,1,2," + by_fenwick + "30,60,,Kim Osei,2026-03-10\n";
    const std::string end = "Ona Reyes,2,," + by_fenwick + ",,,Kim Osei,2026-03-12\n";
    const auto sets = gym.added(throw_steps, steps_header + one + two + end).throw_steps;
    REQUIRE(sets.size() == 2);
    REQUIRE(sets[0].steps.size() == 2);
    CHECK(sets[0].steps[0].effort == 0.5);
    CHECK(sets[0].steps[1].throws == 30);
    CHECK(sets[1].steps.empty());
    CHECK(steps_refusal(two).field == "line 2, step");
    CHECK(steps_refusal(end).field == "line 2, number");
    CHECK(steps_refusal("Ona Reyes,1,1,coach,Kim,2026-03-20,1,25,,,Kim Osei,2026-03-10").field ==
          "line 2, origin");
    CHECK(steps_refusal("Ona Reyes,1,1,ramp,Kim,2026-03-20,7,25,,,Kim Osei,2026-03-10").allowed == "0 to 6");
    CHECK(steps_refusal("Ona Reyes,1,,ramp,Kim,2026-03-20,1,25,,,Kim Osei,2026-03-10").field ==
          "line 2, step");
    CHECK(steps_refusal("Ona Reyes,1,1,ramp,Kim,2026-03-20,1,,,,Kim Osei,2026-03-10").field ==
          "line 2, throws");
    CHECK(steps_refusal(one + "Ona Reyes,1,2,ramp,Kim,2026-03-20,1,25,,,Kim Osei,2026-03-10").field ==
          "line 3, number");
    Gym later = gym;
    later.held.throw_steps = sets;
    CHECK(later.read(throw_steps, written(later.held, throw_steps)).count(Verdict::already_held) == 3);
    const std::string three = "Ona Reyes,1,3," + by_fenwick + "35,60,,Kim Osei,2026-03-10\n";
    CHECK(later.refusal(throw_steps, steps_header + one + two + three).code == RefusalCode::already_held);
    CHECK(later
              .refusal(throw_steps,
                       steps_header + "Ona Reyes,2,1," + by_fenwick + "25,45,50,Kim Osei,2026-03-12\n")
              .code == RefusalCode::already_held);
}

TEST_CASE("a stop is answered with a reason, for a day") {
    const std::string header = "athlete,code,date,reason,coach,recorded\n";
    const auto stop =
        gym.added(stops_answered,
                  header + "Ona Reyes,many_throws,2026-03-16,a camp with its own count,Kim Osei,2026-03-14\n")
            .stops_answered.at(0);
    CHECK(stop.date == day("2026-03-16"));
    CHECK(
        gym.refusal(stops_answered, header + "Ona Reyes,many_throws,2026-03-16,because,Kim Osei,2026-03-14\n")
            .field == "line 2, reason");
    CHECK(gym.refusal(stops_answered,
                      header + "Ona Reyes,,2026-03-16,a camp with its own count,Kim Osei,2026-03-14\n")
              .field == "line 2, code");
}
