// Days counted by hand on a small record of pain.
#include "throwing_workload/open_pains.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

Date day(const char* text) {
    return *parse_date(text, "date");
}

PainEntry pain(int number, const char* date, const char* athlete = "ira") {
    return {AthleteId{athlete}, number, day(date), PainRegion::elbow, "", "inside, at release", "Kim Osei"};
}

PainClearance clearance(int number, const char* date, const char* athlete = "ira") {
    return {AthleteId{athlete}, number, day(date), "Dr. Ada Fenwick", "Kim Osei", day(date), ""};
}

std::vector<int> open_on(const std::vector<PainEntry>& pains, const std::vector<PainClearance>& clearances,
                         const char* date) {
    std::vector<int> numbers;
    for (const auto& each : open_pains(pains, clearances, day(date)))
        numbers.push_back(each.number);
    return numbers;
}

using Numbers = std::vector<int>;

} // namespace

TEST_CASE("open from the day it was felt to the day before the clearance holds") {
    const std::vector pains{pain(1, "2026-03-02")};
    const std::vector cleared{clearance(1, "2026-03-20")};
    CHECK(open_on(pains, cleared, "2026-03-01") == Numbers{});
    CHECK(open_on(pains, cleared, "2026-03-02") == Numbers{1});
    CHECK(open_on(pains, cleared, "2026-03-19") == Numbers{1});
    CHECK(open_on(pains, cleared, "2026-03-20") == Numbers{});
    CHECK(open_on(pains, {}, "2030-01-01") == Numbers{1}); // time alone clears nothing
}

TEST_CASE("a clearance answers for its own entry and athlete alone") {
    const std::vector pains{pain(1, "2026-03-02"), pain(2, "2026-03-10"), pain(1, "2026-03-02", "ben")};
    CHECK(open_on(pains, {clearance(2, "2026-03-11")}, "2026-03-12") == Numbers{1, 1});
    CHECK(open_on(pains, {clearance(1, "2026-03-11", "ben")}, "2026-03-12") == Numbers{1, 2});
}

TEST_CASE("a clearance dated before the pain it names clears nothing; one of several is enough") {
    const std::vector pains{pain(1, "2026-03-02")};
    CHECK(open_on(pains, {clearance(1, "2026-03-01")}, "2026-03-30") == Numbers{1});
    CHECK(open_on(pains, {clearance(1, "2026-04-30"), clearance(1, "2026-03-02")}, "2026-03-02") ==
          Numbers{});
}
