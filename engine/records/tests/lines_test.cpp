// What each line of a file would do, and every way in which it can be refused.
#include "records/tests/small_gym.h"

using namespace amentum;
using enum RecordKind;

namespace {

const Gym gym;

const std::string athlete_header = "name,birth_date,sex,throwing_hand,sport,role,level,restrictions\n";

Refusal athlete_refusal(const std::string& line) {
    return gym.refusal(athletes, athlete_header + line + "\n");
}

Refusal throw_refusal(const std::string& line) {
    return gym.refusal(throws, "athlete,date,setting,count,effort,speed_mph,soreness_after\n" + line + "\n");
}

} // namespace

TEST_CASE("a good line says what it would add, in the file's units") {
    const auto test = gym.read(test_results, "athlete,date,test,side,load_lb,reps\n"
                                             "ona reyes,2026-03-02,Split Squat,LEFT,185,5\n");
    REQUIRE(test.lines.size() == 1);
    CHECK(test.lines[0].line == 2);
    CHECK(test.lines[0].words == "adds a test: Ona Reyes, 2026-03-02, Split squat, left, 185 lb x 5");
    CHECK(test.can_be_taken());
    const auto thrown = gym.read(throws, "athlete,date,setting,count\nOna Reyes,2026-03-02,bullpen,35\n");
    CHECK(thrown.lines[0].words == "adds throws: Ona Reyes, 2026-03-02, bullpen, 35 throws");
    const auto person =
        gym.read(athletes, athlete_header + "Bao Lind,2007-01-02,male,left,baseball,pitcher,school,\n");
    CHECK(person.lines[0].words ==
          "adds an athlete: Bao Lind, born 2007-01-02, baseball pitcher, throws left");
    const auto set = gym.read(
        sets, "athlete,date,exercise,set_number,load_lb,reps\nOna Reyes,2026-03-02,Pull-up,1,10,5\n");
    CHECK(set.lines[0].words == "adds a set: Ona Reyes, 2026-03-02, Pull-up, set 1, 10 lb x 5");
    const auto days =
        gym.read(calendar, "athlete,date,kind,last_date\nOna Reyes,2026-07-01,travel,2026-07-04\n");
    CHECK(days.lines[0].words == "adds a calendar entry: Ona Reyes, 2026-07-01 to 2026-07-04, travel");
}

TEST_CASE("an athlete's line is read whole") {
    const auto person =
        gym.added(
               athletes,
               "name,birth_date,sex,throwing_hand,sport,role,level,restrictions,stature_m,training_years,kit,"
               "guardian\n"
               "  Bao Lind ,2012-01-02,male,left,baseball,catcher,youth,sore_shoulder;wrist_pain,1.6,2,main "
               "HALL, Ida Lind \n")
            .athletes.at(0);
    CHECK(person.id.text == "bao-lind");
    CHECK(person.name == "Bao Lind");
    CHECK(person.role == Role::catcher);
    CHECK(person.restrictions == std::vector<std::string>{"sore_shoulder", "wrist_pain"});
    CHECK(person.kit.text == "main-hall");
    CHECK(person.guardian == "Ida Lind");
    CHECK(person.training_years == 2.0);
}

TEST_CASE("an athlete who cannot be is refused") {
    const auto unborn = athlete_refusal("Bao Lind,2027-01-02,male,left,baseball,pitcher,school,");
    CHECK(unborn.code == RefusalCode::impossible_date);
    CHECK(unborn.field == "line 2, birth_date");
    CHECK(unborn.sentence == "Line 2: The birth date 2027-01-02 is in the future.");
    CHECK(athlete_refusal("Bao Lind,2021-01-02,male,left,baseball,pitcher,school,")
              .sentence.find("5 years old") != std::string::npos);
    CHECK(athlete_refusal("Bao Lind,1940-01-02,male,left,baseball,pitcher,school,").code ==
          RefusalCode::impossible_date);
    CHECK(athlete_refusal("Bao Lind,2007-02-30,male,left,baseball,pitcher,school,").field ==
          "line 2, birth_date");
    CHECK(athlete_refusal("Bao Lind,,male,left,baseball,pitcher,school,").code == RefusalCode::missing_field);
    CHECK(athlete_refusal("Bao Lind,2007-01-02,male,left,baseball,picher,school,")
              .sentence.find("\"pitcher\"") != std::string::npos);
    CHECK(athlete_refusal("Bao Lind,2007-01-02,male,,baseball,pitcher,school,").field ==
          "line 2, throwing_hand");
    CHECK(athlete_refusal("Bao Lind,2007-01-02,male,left,baseball,pitcher,school,sore_sholder")
              .sentence.find("\"sore_shoulder\"") != std::string::npos);
    CHECK(athlete_refusal("???,2007-01-02,male,left,baseball,pitcher,school,").code ==
          RefusalCode::wrong_type);
    CHECK(athlete_refusal("\"Bao\nLind\",2007-01-02,male,left,baseball,pitcher,school,").code ==
          RefusalCode::wrong_type);
}

TEST_CASE("unknown names are refused with the nearest known one") {
    CHECK(throw_refusal("Ona Reyez,2026-03-02,game,30,,,").sentence ==
          "Line 2: There is no athlete \"Ona Reyez\". Did you mean \"Ona Reyes\"?");
    CHECK(gym.refusal(test_results,
                      "athlete,date,test,load_kg,reps\nOna Reyes,2026-03-02,split_squat_mix,80,5\n")
              .sentence == "Line 2: There is no test \"split_squat_mix\". Did you mean \"split_squat_max\"?");
    CHECK(gym.refusal(sets, "athlete,date,exercise,set_number\nOna Reyes,2026-03-02,pul_up,1\n").sentence ==
          "Line 2: There is no exercise \"pul_up\". Did you mean \"pull_up\"?");
    CHECK(gym.refusal(athletes, "name,birth_date,sex,throwing_hand,sport,role,level,kit\n"
                                "Bao Lind,2007-01-02,male,left,baseball,pitcher,school,Main hal\n")
              .sentence == "Line 2: There is no kit \"Main hal\". Did you mean \"Main hall\"?");
    CHECK(gym.refusal(block_lines, "block,week,session,order,date,exercise,part,sets,reps,rest_minutes\n"
                                   "none,1,1,1,2026-03-02,pull_up,main_lift,4,5,3\n")
              .code == RefusalCode::unknown_name);
}

TEST_CASE("throws out of their ranges are refused in the file's unit") {
    const auto fast = throw_refusal("Ona Reyes,2026-03-02,game,30,,140,");
    CHECK(fast.code == RefusalCode::out_of_range);
    CHECK(fast.field == "line 2, speed_mph");
    CHECK(fast.given == "140");
    CHECK(fast.allowed == "0 to 134.2 mph"); // 60 m/s / 0.44704
    CHECK(throw_refusal("Ona Reyes,2026-03-02,game,0,,,").allowed == "1 to 400");
    CHECK(throw_refusal("Ona Reyes,2026-03-02,game,12.5,,,").code == RefusalCode::wrong_type);
    CHECK(throw_refusal("Ona Reyes,2026-03-02,game,30,90,,").field == "line 2, effort");
    CHECK(throw_refusal("Ona Reyes,2026-03-02,game,30,,,11").allowed == "0 to 10");
    CHECK(throw_refusal("Ona Reyes,2026-03-02,gaem,30,,,").code == RefusalCode::unknown_choice);
    CHECK(throw_refusal("Ona Reyes,2026-03-15,game,30,,,").sentence ==
          "Line 2: The day 2026-03-15 is after today.");
    CHECK(throw_refusal("Ona Reyes,2001-03-15,game,30,,,").code == RefusalCode::impossible_date);
}

TEST_CASE("a kit is one line an item, and its unit follows its masses") {
    const auto records = gym.added(kit, "kit,item,label,count,mass_kg,height_cm,ratio,step_kg,most_kg\n"
                                        "Yard,straight_bar,,,20,,,,\n"
                                        "Yard,plate,,6,10,,,,\n"
                                        "Yard,hex_bar,\"hex bar, high handles\",1,25,30,,,\n"
                                        "Yard,column,cable,1,,,0.5,5,100\n"
                                        "Yard,rack,,2,,,,,\n"
                                        "Empty shed,,,,,,,,\n");
    REQUIRE(records.kits.size() == 2);
    CHECK(records.kits[0].name == "Empty shed");
    CHECK(records.kits[0].items.empty());
    const Kit& yard = records.kits[1];
    CHECK(yard.unit == MassUnit::kg);
    REQUIRE(yard.items.size() == 5);
    CHECK(yard.items[0].label == "20 kg straight bar");
    CHECK(yard.items[1].label == "10 kg plate");
    CHECK(yard.items[1].count == 6);
    CHECK(yard.items[2].height->metres() == doctest::Approx(0.3));
    CHECK(yard.items[3].most->kilograms() == 100);
    CHECK(yard.items[4].label == "rack");
}

TEST_CASE("a kit's line that cannot be loaded is refused") {
    const auto refusal = [](const std::string& line) {
        return gym.refusal(kit, "kit,unit,item,label,count,mass_lb,step_lb,most_lb\n" + line + "\n");
    };
    CHECK(refusal("Yard,lb,plate,,2,,,").field == "line 2, mass_lb");
    CHECK(refusal("Yard,lb,plat,,2,45,,").sentence.find("\"plate\"") != std::string::npos);
    CHECK(refusal("Yard,lb,plate,,0,45,,").code == RefusalCode::out_of_range);
    CHECK(refusal("Yard,lb,column,,1,,10,").field == "line 2, most_lb");
    CHECK(refusal("Yard,lb,,nameless,1,45,,").code == RefusalCode::missing_field);
    CHECK(refusal("Yard,stone,plate,,2,45,,").code == RefusalCode::unknown_choice);
    CHECK(refusal("Yard,lb,plate,,2,45,,\nYard,kg,plate,other,2,45,,").field == "line 3, unit");
    CHECK(refusal("Main hall,kg,plate,10 lb plate,2,10,,\nMain hall,lb,plate,25 lb plate,2,25,,").code ==
          RefusalCode::already_held);
}

TEST_CASE("calendar days run forward") {
    const std::string header = "athlete,date,kind,last_date\n";
    const auto one = gym.added(calendar, header + "Ona Reyes,2026-04-04,start,\n").calendar.at(0);
    CHECK(one.last_date == one.date);
    CHECK(gym.refusal(calendar, header + "Ona Reyes,2026-04-04,off,2026-04-03\n").field ==
          "line 2, last_date");
    CHECK(gym.refusal(calendar, header + "Ona Reyes,2026-04-04,off,2029-04-04\n").code ==
          RefusalCode::impossible_date);
    CHECK(gym.refusal(calendar, header + "Ona Reyes,2026-04-31,off,\n").code == RefusalCode::impossible_date);
}

TEST_CASE("a block's lines stand within the block") {
    Gym with_block;
    with_block.held.blocks =
        with_block
            .added(RecordKind::blocks,
                   "block,athlete,kit,start,weeks,sessions_per_week,minutes,notes\n"
                   "ona-1,Ona Reyes,Main hall,2026-03-02,4,3,60,\"No landmine here.\nOne day lost to "
                   "travel.\"\n")
            .blocks;
    REQUIRE(with_block.held.blocks.size() == 1);
    CHECK(with_block.held.blocks[0].notes ==
          std::vector<std::string>{"No landmine here.", "One day lost to travel."});
    const auto line = [&](const std::string& week, const std::string& date) {
        return "block,week,session,order,date,exercise,part,sets,reps,rest_minutes,intensity_percent,load_"
               "lb\nona-1," +
               week + ",1,1," + date + ",split_squat_bar,main_lift,4,5,3,80,155\n";
    };
    const auto added = with_block.added(block_lines, line("1", "2026-03-03")).blocks.at(0);
    CHECK(added.minutes == 60);
    CHECK(added.lines.at(0).intensity == 0.8);
    CHECK(with_block.refusal(block_lines, line("5", "2026-03-28")).field == "line 2, week");
    CHECK(with_block.refusal(block_lines, line("4", "2026-03-30")).field == "line 2, date");
    CHECK(with_block.refusal(block_lines, line("1", "2026-03-01")).allowed == "2026-03-02 to 2026-03-29");
    CHECK(gym.refusal(RecordKind::blocks,
                      "block,athlete,kit,start,weeks,sessions_per_week,minutes\nb,Ona Reyes,Main "
                      "hall,2026-03-02,3,3,60\n")
              .field == "line 2, weeks");
}

TEST_CASE("sets and overrides keep to their rules") {
    const auto refusal = [](const std::string& line) {
        return gym.refusal(sets, "key,athlete,date,exercise,set_number,load_lb,reps\n" + line + "\n");
    };
    CHECK(refusal("short,Ona Reyes,2026-03-02,pull_up,1,10,5").field == "line 2, key");
    CHECK(refusal("key_with_underscore,Ona Reyes,2026-03-02,pull_up,1,10,5").code == RefusalCode::wrong_type);
    CHECK(refusal(",Ona Reyes,2026-03-02,pull_up,41,10,5").code == RefusalCode::out_of_range);
    CHECK(refusal(",Ona Reyes,2026-03-02,pull_up,1,10,0").field == "line 2, reps");
    const std::string header = "athlete,exercise,caution,date,coach,reason\n";
    CHECK(gym.added(overrides,
                    header + "Ona Reyes,pull_up,sore_shoulder,2026-03-02,Kim Osei,cleared by her clinician\n")
              .overrides.size() == 1);
    CHECK(gym.refusal(overrides, header + "Ona Reyes,pull_up,sore_shoulder,2026-03-02,Kim Osei,because\n")
              .code == RefusalCode::caution_needs_reason);
    CHECK(gym.refusal(overrides,
                      header + "Ona Reyes,pull_up,sore_back,2026-03-02,Kim Osei,cleared by her clinician\n")
              .field == "line 2, caution");
}

TEST_CASE("edits of priors come in order, say who and why, and stay within what can be believed") {
    const std::string header = "number,kind,quality,published,mean,sd,author,date,reason\n";
    const std::string first =
        "1,slope,jump_power,,0.3,0.2,Kim Osei,2026-03-02,ours jump more than they throw\n";
    const auto refusal = [&](const std::string& line) {
        return gym.refusal(prior_edits, header + line + "\n");
    };
    const auto added = gym.added(
        prior_edits, header + first + "2,slope,jump_power,yes,,,Kim Osei,2026-03-02,back again for now\n");
    REQUIRE(added.prior_edits.size() == 2);
    CHECK(added.prior_edits[0].belief == PriorBelief{0.3, 0.2});
    CHECK(!added.prior_edits[1].belief);
    CHECK(refusal("2,slope,jump_power,,0.3,0.2,Kim Osei,2026-03-02,edit 1 is missing").field ==
          "line 2, number");
    CHECK(refusal("1,slope,throwing_velocity,,0.3,0.2,Kim Osei,2026-03-02,no such prior").code ==
          RefusalCode::unknown_name);
    CHECK(refusal("1,slope,jump_power,,1.3,0.2,Kim Osei,2026-03-02,more than all of it").field ==
          "line 2, mean");
    CHECK(refusal("1,slope,jump_power,,0.3,0,Kim Osei,2026-03-02,quite without doubt").field == "line 2, sd");
    CHECK(refusal("1,slope,jump_power,,,0.2,Kim Osei,2026-03-02,forgot the mean of it").field ==
          "line 2, mean");
    CHECK(refusal("1,slope,jump_power,yes,0.3,0.2,Kim Osei,2026-03-02,both at the same time").field ==
          "line 2, published");
    CHECK(refusal("1,slope,jump_power,,0.3,0.2,,2026-03-02,nobody said this one").field == "line 2, author");
    CHECK(refusal("1,slope,jump_power,,0.3,0.2,Kim Osei,2036-03-02,dated in ten years").field ==
          "line 2, date");
    CHECK(refusal("1,slope,jump_power,,0.3,0.2,Kim Osei,2026-03-02,because").field == "line 2, reason");
}
