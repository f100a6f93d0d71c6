// A small invented block that keeps every rule, for tests to break on purpose: four weeks of Monday and
// Thursday for an adult pitcher; the fourth week has half the sets.
#pragma once

#include "guard_rails/check_block.h"

#include <algorithm>

namespace amentum::guard_rail_tests {

inline Date day(const char* text) {
    return *parse_date(text, "date");
}

inline KitItem item(ItemKind kind, std::string label, int count, std::optional<Mass> mass = std::nullopt) {
    return {kind, std::move(label), count, mass, {}, {}, {}, {}};
}

inline Exercise exercise(std::string key, std::string pattern, Part part, Region region, LoadMeans means) {
    Exercise made{};
    made.key = key;
    made.name = std::move(key);
    made.pattern = std::move(pattern);
    made.part = part;
    made.region = region;
    made.means = means;
    return made;
}

struct Scene {
    Kit kit{KitId{"loft"},
            "Loft",
            MassUnit::lb,
            {item(ItemKind::hex_bar, "hex bar, high handles", 1, Mass::pounds(60)),
             item(ItemKind::plate, "45 lb plate", 4, Mass::pounds(45)),
             item(ItemKind::plate, "10 lb plate", 2, Mass::pounds(10)),
             item(ItemKind::dumbbell, "40 lb dumbbell", 2, Mass::pounds(40)),
             item(ItemKind::ball, "4 lb ball", 2, Mass::pounds(4)),
             item(ItemKind::ball, "10 lb ball", 1, Mass::pounds(10)), item(ItemKind::bench, "bench", 1)}};
    Athlete athlete{AthleteId{"ona"},
                    "Ona",
                    day("2005-06-01"),
                    Sex::female,
                    Hand::right,
                    Sport::softball,
                    Role::pitcher,
                    Level::college,
                    {},
                    {},
                    {},
                    {},
                    KitId{"loft"},
                    ""};
    std::vector<Exercise> catalogue;
    std::vector<Caution> cautions{{"medial_elbow_symptoms",
                                   "sore inside of the elbow",
                                   "Usually replaced.",
                                   {"band_pull"},
                                   true,
                                   {"common_practice"}},
                                  {"operated_arm",
                                   "operated arm, not yet released",
                                   "Not with that arm.",
                                   {},
                                   false,
                                   {"common_practice"}},
                                  {"every_thrower",
                                   "every overhead thrower",
                                   "Loads the front of the shoulder.",
                                   {},
                                   true,
                                   {"common_practice"}}};
    std::vector<CalendarEntry> calendar;
    std::vector<Override> overrides;
    Date today = day("2026-03-01");
    Block block{
        BlockId{"ona-2026-03-02"}, AthleteId{"ona"}, KitId{"loft"}, day("2026-03-02"), 4, 2, 60, {}, {}, ""};

    Scene() {
        catalogue = {
            exercise("hex_deadlift", "hinge", Part::main_lift, Region::legs, LoadMeans::hex_bar),
            exercise("row", "horizontal_pull", Part::main_lift, Region::upper_pull,
                     LoadMeans::dumbbell_single),
            exercise("overhead_ball", "overhead_throw", Part::speed, Region::whole_body, LoadMeans::ball),
            exercise("scoop_ball", "rotational_throw", Part::speed, Region::whole_body, LoadMeans::ball)};
        catalogue[0].item = "high handles";
        catalogue[1].needs = {ItemKind::bench};
        catalogue[1].cautions = {"medial_elbow_symptoms", "operated_arm"};
        for (int week = 1; week <= 4; ++week) {
            const int sets = week == 4 ? 2 : 4;
            add(week, 1, 1, "overhead_ball", Part::speed, sets, 4, Mass::pounds(4));
            add(week, 1, 2, "hex_deadlift", Part::main_lift, sets, 6, Mass::pounds(150));
            add(week, 2, 1, "scoop_ball", Part::speed, sets, 4, Mass::pounds(10));
            add(week, 2, 2, "row", Part::main_lift, sets, 8, Mass::pounds(40));
        }
    }

    void add(int week, int session, int order, std::string key, Part part, int sets, int reps,
             std::optional<Mass> load) {
        const Date date = block.start + 7 * (week - 1) + (session == 1 ? 0 : 3);
        block.lines.push_back(
            {week, session, date, order, std::move(key), part, sets, reps, {}, {}, load, "", 2, "", "", {}});
    }

    BlockLine& line(int week, int session, int order) {
        return *std::find_if(block.lines.begin(), block.lines.end(), [&](const auto& l) {
            return l.week == week && l.session == session && l.order == order;
        });
    }

    void mark(const char* date, DayKind kind) {
        calendar.push_back({athlete.id, day(date), day(date), kind, ""});
    }

    std::vector<Finding> check() const {
        return check_block(block, athlete, kit, catalogue, cautions, calendar, overrides, today);
    }

    // The codes found, in order; most tests break one rule and expect just that one.
    std::vector<std::string> codes() const {
        std::vector<std::string> all;
        for (const auto& finding : check())
            all.push_back(finding.code);
        return all;
    }
};

using Codes = std::vector<std::string>;

} // namespace amentum::guard_rail_tests
