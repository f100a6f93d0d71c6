// The last edit of each prior over the published tables; expected values written by hand.
#include "inference/priors_in_force.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <fstream>

using namespace amentum;

namespace {

const Date day = Date::from_days(20000);
const std::vector<VelocityPrior> slopes{{"jump_power", 0.4, 0.2, "r 0.71", {"Key2000"}},
                                        {"grip_strength", 0.2, 0.2, "r 0.71", {"Key2001"}}};
const std::vector<AttainableChange> changes{{"jump_power", 0.35, 0.2, "4.5 %", {"Key2000"}}};

PriorEdit edit(int number, PriorKind kind, const char* quality, std::optional<PriorBelief> belief) {
    return {number, kind, quality, belief, "Kim Osei", day, "reason " + std::to_string(number)};
}

} // namespace

TEST_CASE("without an edit the published priors are in force, at edition nought") {
    const auto held = priors_in_force(slopes, changes, {});
    CHECK(held.version == "priors 1.0");
    CHECK(held.velocity_priors[0].mean == 0.4);
    CHECK(held.velocity_priors[0].sources == std::vector<std::string>{"Key2000"});
    CHECK(held.attainable_changes[0].mean == 0.35);
}

TEST_CASE("the last edit of a prior holds, of that kind and quality alone; going back is an edit too") {
    const auto first = edit(1, PriorKind::slope, "jump_power", PriorBelief{0.1, 0.3});
    const auto second = edit(2, PriorKind::slope, "jump_power", PriorBelief{0.15, 0.25});
    const auto back = edit(3, PriorKind::slope, "jump_power", {});
    const auto two = priors_in_force(slopes, changes, {first, second});
    CHECK(two.version == "priors 1.2");
    CHECK(two.velocity_priors[0].mean == 0.15);
    CHECK(two.velocity_priors[0].sd == 0.25);
    CHECK(two.velocity_priors[0].why == "reason 2");
    CHECK(two.velocity_priors[0].sources.empty()); // nobody published it
    CHECK(two.velocity_priors[1].mean == 0.2);
    CHECK(two.attainable_changes[0].mean == 0.35);
    const auto three = priors_in_force(slopes, changes, {first, second, back});
    CHECK(three.version == "priors 1.3");
    CHECK(three.velocity_priors[0].mean == 0.4);
    CHECK(three.velocity_priors[0].why == "r 0.71");
    const auto change = edit(4, PriorKind::attainable_change, "jump_power", PriorBelief{0.5, 0.1});
    const auto four = priors_in_force(slopes, changes, {first, second, back, change});
    CHECK(four.velocity_priors[0].mean == 0.4);
    CHECK(four.attainable_changes[0].mean == 0.5);
}

TEST_CASE("an edit of a quality that the tables do not have is passed over") {
    const auto held = priors_in_force(
        slopes, changes, {edit(1, PriorKind::attainable_change, "grip_strength", PriorBelief{0.5, 0.1})});
    CHECK(held.attainable_changes.size() == 1);
    CHECK(held.version == "priors 1.1");
}

// A snapshot: when a mean or sd of the published tables changes, raise published_priors_version, then this number.
TEST_CASE("the published tables are those of the version they say") {
    std::uint64_t tables = published_priors_version;
    for (const char* name : {"velocity_priors.csv", "attainable_changes.csv"}) {
        std::ifstream file(std::string(AMENTUM_SOURCE_DIR "/data/") + name);
        REQUIRE(file);
        for (std::string line; std::getline(file, line);)
            if (line[0] != '#') // quality, mean, sd
                tables =
                    seed_from(tables, line.substr(0, line.find(',', line.find(',', line.find(',') + 1) + 1)));
    }
    CHECK(tables % 1000000 == 743817);
}
