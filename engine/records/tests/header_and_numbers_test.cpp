// Columns, units and decimal marks. Conversions against the exact definitions of [NistSp811, appendix B.8].
#include "records/record_columns.h"
#include "records/tests/small_gym.h"

#include <fstream>
#include <set>
#include <sstream>

using namespace amentum;
using enum RecordKind;

namespace {

const Gym gym;

std::string test_file(const std::string& columns, const std::string& values) {
    return "athlete,date,test,side," + columns + "\nOna Reyes,2026-03-02,split_squat_max,left," + values +
           "\n";
}

double load_kg(const std::string& text) {
    const auto records = gym.added(test_results, text);
    REQUIRE(records.readings.size() == 1);
    return records.readings[0].load->kilograms();
}

} // namespace

TEST_CASE("an unknown column is refused with the nearest name") {
    const auto preview = gym.read(test_results, "athlete,date,test,laod_lb\n");
    REQUIRE(preview.file_refusals.size() == 1);
    CHECK(preview.file_refusals[0].code == RefusalCode::unknown_field);
    CHECK(preview.file_refusals[0].sentence ==
          "A file of test_results has no column \"laod_lb\". Did you mean \"load_lb\"?");
    CHECK(preview.file_refusals[0].field == "line 1");
    CHECK_FALSE(preview.can_be_taken());
}

TEST_CASE("a quantity without its unit is told where the unit belongs") {
    const auto preview = gym.read(test_results, "athlete,date,test,load\n");
    REQUIRE(preview.file_refusals.size() == 1);
    CHECK(preview.file_refusals[0].sentence ==
          "A file of test_results has no column \"load\". Its unit belongs into its name: \"load_kg\".");
}

TEST_CASE("every missing column is named") {
    const auto preview = gym.read(throws, "athlete\nOna Reyes\n");
    REQUIRE(preview.file_refusals.size() == 3);
    CHECK(preview.file_refusals[0].code == RefusalCode::missing_field);
    CHECK(preview.file_refusals[0].sentence.find("\"date\"") != std::string::npos);
    CHECK(preview.file_refusals[1].sentence.find("\"setting\"") != std::string::npos);
    CHECK(preview.file_refusals[2].sentence.find("\"count\"") != std::string::npos);
    CHECK(preview.lines.empty());
}

TEST_CASE("a text column under both of its names is refused") {
    const auto preview = gym.read(athletes, "name,athlete,birth_date,sex,throwing_hand,sport,role,level\n");
    REQUIRE(preview.file_refusals.size() == 1);
    CHECK(preview.file_refusals[0].given == "name, athlete");
}

TEST_CASE("a file that is no table is refused whole") {
    CHECK(gym.read(throws, "").file_refusals.at(0).code == RefusalCode::unreadable_file);
    CHECK(gym.read(throws, "athlete,date\n\"Ona").file_refusals.at(0).code == RefusalCode::unreadable_file);
}

TEST_CASE("every unit of a column name is converted by its definition") {
    CHECK(load_kg(test_file("load_kg,reps", "80.5,5")) == 80.5);
    CHECK(load_kg(test_file("load_lb,reps", "185,5")) ==
          doctest::Approx(83.91458845).epsilon(1e-15)); // 185 x 0.45359237
    CHECK(load_kg(test_file("load_oz,reps", "160,5")) == doctest::Approx(4.5359237).epsilon(1e-15)); // 10 lb
    CHECK(load_kg(test_file("load_g,reps", "81500,5")) == doctest::Approx(81.5).epsilon(1e-15));
    CHECK(load_kg(test_file("added_load_lb,reps", "45,5")) == doctest::Approx(20.41165665).epsilon(1e-15));
    CHECK(load_kg(test_file("LOAD_KG,Reps", "80.5,5")) == 80.5);

    const auto thrown =
        gym.added(throws, "athlete,date,setting,count,speed_mph,distance_ft,ball_mass_oz,effort_percent\n"
                          "Ona Reyes,2026-03-02,long toss,20,60,120,5,75\n")
            .throws.at(0);
    CHECK(thrown.setting == ThrowSetting::long_toss);
    CHECK(thrown.speed->metres_per_second() == doctest::Approx(26.8224).epsilon(1e-15)); // 60 x 0.44704
    CHECK(thrown.distance->metres() == doctest::Approx(36.576).epsilon(1e-15));          // 120 x 0.3048
    CHECK(thrown.ball_mass->grams() == doctest::Approx(141.747615625).epsilon(1e-15));   // 5 x 28.349523125 g
    CHECK(thrown.effort == 0.75);
    const auto in_kmh =
        gym.added(throws, "athlete,date,setting,count,speed_kmh\nOna Reyes,2026-03-02,game,20,90\n")
            .throws.at(0);
    CHECK(in_kmh.speed->metres_per_second() == doctest::Approx(25).epsilon(1e-15));

    const auto jump =
        gym.added(test_results,
                  "athlete,date,test,flight_time_ms\nOna Reyes,2026-03-02,jump_height_flight,500\n")
            .readings.at(0);
    CHECK(jump.flight_time->seconds() == 0.5);
    const auto grip =
        gym.added(test_results, "athlete,date,test,force_lb,force_kg\nOna "
                                "Reyes,2026-03-02,grip_force,80,\nImre Vale,2026-03-02,grip_force,,40\n");
    CHECK(grip.readings.at(1).force->newtons() ==
          doctest::Approx(355.857729).epsilon(1e-8)); // 1 lbf = 4.448222 N
    CHECK(grip.readings.at(0).force->newtons() == doctest::Approx(392.266).epsilon(1e-12)); // 40 x 9.80665

    const auto tall =
        gym.added(athletes,
                  "name,birth_date,sex,throwing_hand,sport,role,level,stature_in,sitting_height_cm\n"
                  "Bao Lind,2007-01-02,male,left,baseball,pitcher,school,70,90.5\n")
            .athletes.at(0);
    CHECK(tall.stature->metres() == doctest::Approx(1.778).epsilon(1e-15)); // 70 x 0.0254
    CHECK(tall.sitting_height->metres() == doctest::Approx(0.905).epsilon(1e-15));
}

TEST_CASE("one quantity in two units on one line is refused; one in each on two lines is not") {
    const auto refusal = gym.refusal(test_results, test_file("load_lb,load_kg,reps", "185,84,5"));
    CHECK(refusal.code == RefusalCode::two_units);
    CHECK(refusal.sentence == "Line 2: Give load once: load_lb and load_kg both have a number.");
    CHECK(gym.refusal(test_results, test_file("load_lb,added_load_lb,reps", "185,84,5")).code ==
          RefusalCode::two_units);
    const auto records = gym.added(test_results, "athlete,date,test,side,reps,load_lb,load_kg\n"
                                                 "Ona Reyes,2026-03-02,split_squat_max,left,5,100,\n"
                                                 "Imre Vale,2026-03-02,split_squat_max,left,5,,50\n");
    CHECK(records.readings.size() == 2);
}

TEST_CASE("a unit or a word in a number's cell is refused with its column") {
    const auto refusal = gym.refusal(test_results, test_file("load_lb,reps", "185 lb,5"));
    CHECK(refusal.code == RefusalCode::wrong_type);
    CHECK(refusal.field == "line 2, load_lb");
    CHECK(refusal.given == "185 lb");
    for (const char* no_number : {"heavy", "+-5", "1e", "0x20", "nan", "inf", "--5"})
        CHECK(gym.refusal(test_results, test_file("load_lb,reps", std::string(no_number) + ",5")).code ==
              RefusalCode::wrong_type);
}

TEST_CASE("the decimal comma is read where the file says so, and where nothing else can be meant") {
    CHECK(load_kg("# decimal comma\n" + test_file("load_kg,reps", "\"80,5\",5")) == 80.5);
    CHECK(load_kg("# Decimal Comma\nathlete;date;test;side;load_kg;reps\nOna "
                  "Reyes;2026-03-02;split_squat_max;left;80,125;5\n") == 80.125);
    CHECK(
        load_kg("athlete;date;test;side;load_kg;reps\nOna Reyes;2026-03-02;split_squat_max;left;80,5;5\n") ==
        80.5);
    CHECK(
        load_kg("athlete;date;test;side;load_kg;reps\nOna Reyes;2026-03-02;split_squat_max;left;80.5;5\n") ==
        80.5);
    CHECK(load_kg("\xEF\xBB\xBF# decimal comma\r\nathlete;date;test;side;load_kg;reps\r\n"
                  "Ona Reyes;2026-03-02;split_squat_max;left;80,5;5\r\n") == 80.5);
}

TEST_CASE("a comma that could divide thousands is refused, never guessed at") {
    const std::string two_ways = "which may be read in two ways";
    const char* unclear[] = {
        "athlete;date;test;side;load_g;reps\nOna Reyes;2026-03-02;split_squat_max;left;80,500;5\n",
        "athlete,date,test,side,load_g,reps\nOna Reyes,2026-03-02,split_squat_max,left,\"80,500\",5\n",
        "athlete,date,test,side,load_kg,reps\nOna Reyes,2026-03-02,split_squat_max,left,\"80,5\",5\n",
        "athlete;date;test;side;load_kg;body_mass_kg;reps\n"
        "Ona Reyes;2026-03-02;split_squat_max;left;80,5;60.5;5\n"};
    for (const char* text : unclear) {
        const auto refusal = gym.refusal(test_results, text);
        CHECK(refusal.code == RefusalCode::wrong_type);
        CHECK(refusal.sentence.find(two_ways) != std::string::npos);
    }
    // with the file's word it is a decimal comma, three digits or not, and a point is then refused
    CHECK(load_kg("# decimal comma\nathlete;date;test;side;load_kg;reps\nOna "
                  "Reyes;2026-03-02;split_squat_max;left;80,500;5\n") == 80.5);
    CHECK(gym.refusal(test_results, "# decimal comma\nathlete;date;test;side;load_kg;reps\n"
                                    "Ona Reyes;2026-03-02;split_squat_max;left;80.5;5\n")
              .sentence.find("decimal comma") != std::string::npos);
    CHECK(gym.refusal(test_results, "# decimal point\nathlete;date;test;side;load_kg;reps\n"
                                    "Ona Reyes;2026-03-02;split_squat_max;left;80,5;5\n")
              .code == RefusalCode::wrong_type);
}

TEST_CASE("no two columns of a kind share a name in the header, and the guide tells every column") {
    std::ifstream file(AMENTUM_SOURCE_DIR "/docs/guide/import_records.md");
    const std::string guide((std::istreambuf_iterator<char>(file)), {});
    for (const RecordKind kind : import_order()) {
        std::set<std::string> names;
        const auto heading = guide.find("## `" + word(kind) + ".csv`");
        REQUIRE_MESSAGE(heading != std::string::npos, word(kind));
        const std::string section = guide.substr(heading, guide.find("\n## ", heading) - heading);
        for (const auto& column : record_columns(kind)) {
            for (const auto& name : header_names(column))
                CHECK_MESSAGE(names.insert(name).second, name);
            CHECK_MESSAGE(section.find("| `" + column.name) != std::string::npos, word(kind)
                                                                                      << " " << column.name);
        }
    }
}
