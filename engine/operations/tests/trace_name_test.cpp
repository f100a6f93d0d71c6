// What a file's name says of the trace in it.
#include "operations/inside/trace_name.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

Athlete named(const std::string& name) {
    Athlete athlete{AthleteId{slug(name)}, name, *parse_date("2004-02-01", "birth_date")};
    return athlete;
}
const std::vector<Athlete> squad{named("Ona Reyes"), named("Bo Tarn"), named("Ines Tarn"),
                                 named("Ikenna Brightwater")};

TraceName read(const std::string& name) {
    return read_trace_name(name, squad);
}

} // namespace

TEST_CASE("a name is cut where people cut words") {
    CHECK(words_of_name("June/OnaReyes_CMJ-2.txt") ==
          std::vector<std::string>{"june", "ona", "reyes", "cmj", "2"});
    CHECK(words_of_name("noending") == std::vector<std::string>{"noending"});
}

TEST_CASE("thrower, effort, day, legs and trial are found wherever they stand") {
    const auto one = read("2026-06-01/Reyes Ona countermovement jump 3.csv");
    REQUIRE(one.athlete);
    CHECK(one.athlete->name == "Ona Reyes");
    CHECK(one.athlete_sure);
    CHECK(one.effort == TraceTest::countermovement_jump);
    REQUIRE(one.date);
    CHECK(one.date->text() == "2026-06-01");
    CHECK(one.trial == 3);
    CHECK_FALSE(one.legs);
    const auto two = read("ikenna_brightwater-20260215-side-bound-left-t2.c3d");
    REQUIRE(two.athlete);
    CHECK(two.athlete->name == "Ikenna Brightwater");
    CHECK(two.effort == TraceTest::lateral_bound);
    CHECK(two.legs == Legs::left);
    CHECK(two.trial == 2);
    REQUIRE(two.date);
    CHECK(two.date->text() == "2026-02-15");
    CHECK(read("bo tarn/cmj4.txt").trial == 4);
    CHECK(read("bo tarn/cmj4.txt").effort == TraceTest::countermovement_jump);
    CHECK(read("bo_tarn_mid-thigh-pull_1.txt").effort == TraceTest::isometric_pull);
}

TEST_CASE("what is ambiguous stays open") {
    CHECK_FALSE(read("tarn cmj 1.txt").athlete); // two of that name
    CHECK_FALSE(read("somebody cmj 1.txt").athlete);
    CHECK_FALSE(read("ona reyes cmj drop jump.txt").effort); // two efforts
    CHECK_FALSE(read("ona reyes 01-06-2026 cmj.txt").date);  // day or month first?
    CHECK_FALSE(read("ona reyes left right bound.txt").legs);
    CHECK_FALSE(read("ona reyes 2026-02-31 cmj.txt").date); // no such day
    CHECK_FALSE(read("").athlete);
}

TEST_CASE("a part of a name, or another spelling, is a guess and not sure") {
    const auto part = read("brightwater_cmj_1.csv");
    REQUIRE(part.athlete);
    CHECK(part.athlete->name == "Ikenna Brightwater");
    CHECK_FALSE(part.athlete_sure);
    const auto spelt = read("brightwatr_cmj_1.csv");
    REQUIRE(spelt.athlete);
    CHECK(spelt.athlete->name == "Ikenna Brightwater");
    CHECK_FALSE(spelt.athlete_sure);
}
