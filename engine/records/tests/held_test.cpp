// Taking a file twice adds nothing; the same record with other values is refused, and both values are said.
#include "records/tests/small_gym.h"

using namespace amentum;
using enum RecordKind;

namespace {

void nothing_new(const Gym& gym, RecordKind kind, std::string_view text) {
    const auto again = gym.read(kind, text);
    CHECK(again.can_be_taken());
    CHECK(again.count(Verdict::added) == 0);
    CHECK(again.count(Verdict::already_held) == static_cast<int>(again.lines.size()));
    CHECK(again.new_records == RecordSet{});
}

} // namespace

TEST_CASE("a file taken twice adds nothing the second time") {
    Gym gym;
    const char* tests = "athlete,date,test,side,load_lb,reps\n"
                        "Ona Reyes,2026-03-02,split_squat_max,left,185,5\n"
                        "Ona Reyes,2026-03-02,split_squat_max,left,190,3\n";
    gym.held.readings = gym.added(test_results, tests).readings;
    CHECK(gym.held.readings.size() == 2);
    nothing_new(gym, test_results, tests);

    const char* done = "athlete,date,exercise,set_number,load_lb,reps\n"
                       "Ona Reyes,2026-03-02,pull_up,1,10,5\nOna Reyes,2026-03-02,pull_up,2,10,5\n";
    gym.held.sets = gym.added(sets, done).sets;
    CHECK(gym.held.sets.size() == 2);
    CHECK(gym.held.sets[0].key != gym.held.sets[1].key);
    nothing_new(gym, sets, done);

    nothing_new(gym, kit, "kit,unit,item,label,count,mass_lb\nMain hall,lb,plate,45 lb plate,8,45\n");
    nothing_new(gym, kit, "kit\nmain hall\n");
    nothing_new(gym, facility, "name\nQuarry Street Gym\n");
    nothing_new(gym, athletes,
                "name,birth_date,sex,throwing_hand,sport,role,level\n"
                "Ona Reyes,2008-05-11,female,right,softball,pitcher,school\n");
}

TEST_CASE("other values under the same key are refused with both, in the file's unit") {
    Gym gym;
    gym.held.readings = gym.added(test_results, "athlete,date,test,side,load_lb,reps\n"
                                                "Ona Reyes,2026-03-02,split_squat_max,left,180,5\n")
                            .readings;
    const auto refusal = gym.refusal(test_results, "athlete,date,test,side,load_lb,reps\n"
                                                   "Ona Reyes,2026-03-02,split_squat_max,left,185,4\n");
    CHECK(refusal.code == RefusalCode::already_held);
    CHECK(refusal.field == "line 2, load_lb");
    CHECK(refusal.sentence ==
          "Line 2: Ona Reyes, 2026-03-02, Split squat, left, 185 lb x 4: held with other values: "
          "load is held as 180 lb, the file says 185 lb; reps is held as \"5\", the file says \"4\".");
    const auto born = gym.refusal(athletes, "name,birth_date,sex,throwing_hand,sport,role,level\n"
                                            "ona reyes,2008-05-12,female,right,softball,pitcher,school\n");
    CHECK(born.sentence.find("birth_date is held as \"2008-05-11\", the file says \"2008-05-12\"") !=
          std::string::npos);
    const auto plates = gym.refusal(kit, "kit,item,label,count,mass_lb\nMain hall,plate,45 lb plate,6,45\n");
    CHECK(plates.sentence.find("count is held as \"8\", the file says \"6\"") != std::string::npos);
    CHECK(gym.refusal(facility, "name\nOther Gym\n").code == RefusalCode::already_held);
}

TEST_CASE("a new item of a held kit comes with the kit as it is held") {
    const Gym gym;
    const auto records = gym.added(kit, "kit,item,count,mass_kg\nMAIN HALL,plate,4,5\n");
    REQUIRE(records.kits.size() == 1);
    CHECK(records.kits[0].name == "Main hall");
    CHECK(records.kits[0].unit == MassUnit::lb);
    CHECK(records.kits[0].items.size() == 1);
}

TEST_CASE("one refused line, and nothing of the file is taken") {
    const Gym gym;
    const auto preview = gym.read(
        throws, "athlete,date,setting,count\n"
                "Ona Reyes,2026-03-02,game,30\nOna Reyes,2026-03-03,game,0\nOna Reyes,2026-03-04,game,30\n");
    CHECK(preview.count(Verdict::added) == 2);
    CHECK(preview.count(Verdict::refused) == 1);
    CHECK_FALSE(preview.can_be_taken());
    CHECK(preview.new_records == RecordSet{});
}
