// A test day's lines against what can be, and against each other.
#include "records/tests/small_gym.h"

using namespace amentum;
using enum RecordKind;

namespace {

const Gym gym;

std::string squats(const std::string& lines) {
    return "athlete,date,test,side,load_lb,reps,device\n" + lines;
}
std::string throws_of(const std::string& lines) {
    return "athlete,date,test,speed_mph,device\n" + lines;
}

} // namespace

TEST_CASE("a 900-lb split squat is refused on its line") {
    const auto preview = gym.read(test_results, squats("Ona Reyes,2026-03-02,split_squat_max,left,185,5,\n"
                                                       "Ona Reyes,2026-03-02,split_squat_max,left,900,1,\n"
                                                       "Imre Vale,2026-03-02,split_squat_max,left,135,5,\n"));
    CHECK(preview.count(Verdict::refused) == 1);
    CHECK(preview.count(Verdict::added) == 2);
    CHECK(preview.new_records == RecordSet{});
    REQUIRE(preview.lines[1].refusal);
    CHECK(preview.lines[1].refusal->code == RefusalCode::out_of_range);
    CHECK(preview.lines[1].refusal->field == "line 3, load_lb");
    CHECK(preview.lines[1].refusal->given == "900");
    CHECK(preview.lines[1].words.starts_with("Line 3: load_lb is 900 lb. "));
}

TEST_CASE("a 140-mph throw is refused although the mean of the day would pass") {
    const auto refusal =
        gym.refusal(test_results, throws_of("Ona Reyes,2026-03-02,throwing_velocity,60,\n"
                                            "Ona Reyes,2026-03-02,throwing_velocity,61,\n"
                                            "Ona Reyes,2026-03-02,throwing_velocity,128,\n"));
    CHECK(refusal.field == "line 4, speed_mph");
    CHECK(gym.refusal(test_results, throws_of("Ona Reyes,2026-03-02,throwing_velocity,140,\n")).code ==
          RefusalCode::out_of_range);
}

TEST_CASE("what a test needs is asked for by its column") {
    CHECK(gym.refusal(test_results, squats("Ona Reyes,2026-03-02,split_squat_max,left,185,,\n"))
              .sentence.find("reps") != std::string::npos);
    const auto no_load = gym.refusal(test_results, squats("Ona Reyes,2026-03-02,split_squat_max,left,,5,\n"));
    CHECK(no_load.code == RefusalCode::missing_field);
    CHECK(no_load.field == "line 2, load_lb");
    CHECK(gym.refusal(test_results, squats("Ona Reyes,2026-03-02,split_squat_max,,185,5,\n")).field ==
          "line 2, side");
    CHECK(gym.refusal(test_results, squats("Ona Reyes,2026-03-02,split_squat_max,left,185,0,\n")).field ==
          "line 2, reps");
    CHECK(gym.refusal(test_results,
                      "athlete,date,test,added_load_lb,reps\nOna Reyes,2026-03-02,pull_up_max,25,5\n")
              .sentence.find("body_mass") != std::string::npos);
}

TEST_CASE("two devices in one result are refused on every line of it") {
    const auto preview =
        gym.read(test_results, throws_of("Ona Reyes,2026-03-02,throwing_velocity,60,radar 1\n"
                                         "Ona Reyes,2026-03-02,throwing_velocity,61,radar 2\n"
                                         "Imre Vale,2026-03-02,throwing_velocity,61,radar 2\n"));
    CHECK(preview.count(Verdict::refused) == 2);
    CHECK(preview.lines[0].refusal->code == RefusalCode::method_does_not_apply);
    CHECK(preview.lines[2].verdict == Verdict::added);
}

TEST_CASE("new trials are measured together with those held") {
    Gym later;
    later.held.readings =
        gym.added(test_results, throws_of("Ona Reyes,2026-03-02,throwing_velocity,60,radar 1\n")).readings;
    const std::string header = "athlete,date,test,trial,speed_mph,device\n";
    CHECK(later.read(test_results, header + "Ona Reyes,2026-03-02,throwing_velocity,2,61,radar 1\n")
              .can_be_taken());
    CHECK(
        later.refusal(test_results, header + "Ona Reyes,2026-03-02,throwing_velocity,2,61,radar 2\n").code ==
        RefusalCode::method_does_not_apply);
}

TEST_CASE("trials without a number are numbered in the file's order, and a set too long to judge may stand "
          "beside others") {
    const auto records =
        gym.added(test_results, squats("Ona Reyes,2026-03-02,split_squat_max,left,45,20,\n"
                                       "Ona Reyes,2026-03-02,split_squat_max,right,150,5,\n"
                                       "Ona Reyes,2026-03-02,split_squat_max,left,155,5,\n"));
    REQUIRE(records.readings.size() == 3);
    CHECK(records.readings[0].side == Side::left);
    CHECK(records.readings[0].trial == 1);
    CHECK(records.readings[1].trial == 2);
    CHECK(records.readings[1].load->pounds() == doctest::Approx(155));
    CHECK(records.readings[2].side == Side::right);
    CHECK(records.readings[2].trial == 1);
    // alone, the long set cannot be a test
    CHECK(gym.refusal(test_results, squats("Ona Reyes,2026-03-02,split_squat_max,left,45,20,\n")).code ==
          RefusalCode::method_does_not_apply);
}

TEST_CASE("the same trial twice is refused") {
    const std::string header = "athlete,date,test,trial,speed_mph\n";
    const auto refusal = gym.refusal(test_results, header + "Ona Reyes,2026-03-02,throwing_velocity,1,60\n"
                                                            "Ona Reyes,2026-03-02,throwing_velocity,1,60\n");
    CHECK(refusal.code == RefusalCode::already_held);
    CHECK(refusal.sentence.find("line 2 of this file") != std::string::npos);
    CHECK(refusal.given == "lines 2 and 3");
}
