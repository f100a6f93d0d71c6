// Every face of planning leaves out what an open pain entry blocks, over the real catalogue and every region; the guard rails, which
// see only the entry, find nothing left to stop.
#include "on_disk_tables.h"

#include "guard_rails/check_block.h"
#include "planning/retarget_block.h"

using namespace amentum;

namespace {

const Date monday = *parse_date("2026-06-08", "day");

Kit garage() {
    Kit kit{KitId{"garage"}, "Garage", MassUnit::lb, {}};
    const auto add = [&](ItemKind kind, std::string label, int count, std::optional<Mass> mass = {}) {
        kit.items.push_back({kind, std::move(label), count, mass, {}, {}, {}, {}});
    };
    for (int lb = 10; lb <= 60; lb += 10)
        add(ItemKind::dumbbell, std::to_string(lb) + " lb dumbbell", 2, Mass::pounds(lb));
    for (const int lb : {2, 4, 6, 8})
        add(ItemKind::ball, std::to_string(lb) + " lb ball", 1, Mass::pounds(lb));
    for (const auto kind :
         {ItemKind::band, ItemKind::bench, ItemKind::box, ItemKind::open_floor, ItemKind::pull_up_bar})
        add(kind, word(kind), 2);
    return kit;
}

BlockRequest request_of(const Athlete& athlete, const Kit& kit) {
    const auto& tables = tables_on_disk();
    BlockRequest request{athlete,        kit, monday, 4, 3, 60, {}, tables.qualities, tables.exercises,
                         tables.cautions};
    request.moves = 5'000;
    return request;
}

int pain_stops(const BlockRequest& request, const Block& block, PainRegion region) {
    const std::vector pains{PainEntry{request.athlete.id, 1, monday - 3, region, "", "it hurts", "Kim Osei"}};
    int stops = 0;
    for (const auto& finding :
         check_block(block, request.athlete, request.kit, request.catalogue, request.cautions, {}, {}, monday,
                     {tables_on_disk().pain_blocks, pains, {}, {}}))
        stops += finding.code == "open_pain";
    return stops;
}

Athlete adult() {
    return {AthleteId{"ada"},
            "Ada",
            monday - 8000,
            Sex::female,
            Hand::right,
            Sport::softball,
            Role::pitcher,
            Level::college,
            {},
            {},
            3.0,
            {},
            KitId{"garage"},
            ""};
}

} // namespace

TEST_CASE(
    "a block planned, retargeted or planned anew with open pain gives the guard rails nothing to stop") {
    const Athlete athlete = adult();
    const Kit kit = garage();
    const auto before = plan_block(request_of(athlete, kit));
    REQUIRE(before);
    for (const auto& row : tables_on_disk().pain_blocks) {
        CAPTURE(row.name);
        auto request = request_of(athlete, kit);
        CHECK(pain_stops(request, *before, row.region) > 0); // the block held already is caught
        request.painful = {row};
        const auto planned = plan_block(request);
        REQUIRE_MESSAGE(planned, (planned ? "" : planned.refusal().sentence));
        CHECK(pain_stops(request, *planned, row.region) == 0);
        const auto there = retarget_block({*before, kit, request, {}, {}, {}});
        CHECK(pain_stops(request, there.block, row.region) == 0);
        CHECK_FALSE(there.block.lines.empty());
        request.previous = *before;
        const auto anew = plan_block(request);
        REQUIRE(anew);
        CHECK(pain_stops(request, *anew, row.region) == 0);
    }
}
