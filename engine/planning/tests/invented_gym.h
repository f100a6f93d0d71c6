// A small invented gym, its twenty-odd exercises and one thrower, for the tests of planning.
#pragma once

#include "planning/plan_block.h"
#include "values/shortest_decimal.h"

namespace amentum::invented {

inline KitItem item(ItemKind kind, std::string label, int count, std::optional<Mass> mass = {}) {
    return {kind, std::move(label), count, mass, {}, {}, {}, {}};
}

inline Kit gym() {
    Kit kit{KitId{"shed"}, "Shed", MassUnit::lb, {}};
    auto& all = kit.items;
    all.push_back(item(ItemKind::hex_bar, "hex bar, low handles", 1, Mass::pounds(60)));
    all.push_back(item(ItemKind::hex_bar, "hex bar, high handles", 1, Mass::pounds(60)));
    all.push_back(item(ItemKind::safety_bar, "safety bar", 1, Mass::pounds(65)));
    for (const double lb : {45.0, 25.0, 10.0, 5.0, 2.5})
        all.push_back(
            item(ItemKind::plate, format_shortest(lb) + " lb plate", lb > 40 ? 8 : 4, Mass::pounds(lb)));
    for (const double lb : {20.0, 30.0, 40.0, 50.0})
        all.push_back(item(ItemKind::dumbbell, std::to_string(static_cast<int>(lb)) + " lb dumbbell", 2,
                           Mass::pounds(lb)));
    for (const double lb : {2.0, 4.0, 6.0, 8.0, 10.0, 12.0})
        all.push_back(
            item(ItemKind::ball, std::to_string(static_cast<int>(lb)) + " lb ball", 1, Mass::pounds(lb)));
    all.push_back(item(ItemKind::band, "red band", 2));
    all.push_back(item(ItemKind::band, "blue band", 1));
    for (const auto kind :
         {ItemKind::rack, ItemKind::bench, ItemKind::pull_up_bar, ItemKind::belt, ItemKind::box})
        all.push_back(item(kind, word(kind), 1));
    return kit;
}

inline std::vector<Quality> qualities() {
    return {{"leg_strength", "Leg strength", "", true},  {"jump_power", "Jump power", "", true},
            {"ball_speed", "Ball speed", "", true},      {"pulling", "Pulling strength", "", true},
            {"pressing", "Pressing strength", "", true}, {"outward", "Outward rotation", "", true},
            {"hip_range", "Hip range", "", true},        {"shoulder_range", "Shoulder range", "", true},
            {"velocity", "Throwing velocity", "", false}};
}

struct Is {
    std::string pattern;
    Part part;
    Region region;
    LoadMeans means;
    std::string quality;
    double share;
    std::optional<std::string> load_test = {};
    double load_share = 1;
    double set_minutes = 2;
    double setup_minutes = 0.5;
};

inline Exercise exercise(std::string key, const Is& is) {
    Exercise e;
    e.key = key;
    e.name = key;
    e.pattern = is.pattern;
    e.part = is.part;
    e.region = is.region;
    e.means = is.means;
    e.qualities = {{is.quality, is.share}};
    e.load_test = is.load_test;
    e.load_share = is.load_share;
    e.set_minutes = is.set_minutes;
    e.setup_minutes = is.setup_minutes;
    return e;
}

inline std::vector<Exercise> catalogue() {
    using enum Part;
    using R = Region;
    using M = LoadMeans;
    std::vector<Exercise> all{
        exercise("hex_low",
                 {"hinge", main_lift, R::legs, M::hex_bar, "leg_strength", 0.9, "hex_low_max", 1, 3.5, 2}),
        exercise("squat_safety",
                 {"squat", main_lift, R::legs, M::safety_bar, "leg_strength", 0.85, "squat_max", 1, 3.5, 2}),
        exercise("split_dumbbells", {"split_squat", main_lift, R::legs, M::dumbbell_pair, "leg_strength", 0.8,
                                     "split_max", 1, 4, 1}),
        exercise("pull_up_plate", {"vertical_pull", main_lift, R::upper_pull, M::added_plate, "pulling", 0.9,
                                   "pull_max", 1, 3, 1}),
        exercise("row_supported", {"horizontal_pull", main_lift, R::upper_pull, M::dumbbell_pair, "pulling",
                                   0.8, "row_max", 1, 2.5, 1}),
        exercise("press_dumbbells", {"horizontal_press", main_lift, R::upper_push, M::dumbbell_pair,
                                     "pressing", 0.9, "press_max", 1, 3, 0.5}),
        exercise("press_overhead",
                 {"vertical_press", assistance, R::upper_push, M::dumbbell_pair, "pressing", 0.6}),
        exercise("step_up", {"step_up", assistance, R::legs, M::dumbbell_pair, "leg_strength", 0.6,
                             "split_max", 0.6, 3, 0.5}),
        exercise("push_up", {"horizontal_press", assistance, R::upper_push, M::body, "pressing", 0.5}),
        exercise("row_band", {"horizontal_pull", assistance, R::upper_pull, M::band, "pulling", 0.5}),
        exercise("box_jump", {"jump", speed, R::legs, M::body, "jump_power", 0.8, {}, 1, 1.5, 0.5}),
        exercise("side_bound", {"lateral_jump", speed, R::legs, M::body, "jump_power", 0.6, {}, 1, 1.5, 0.5}),
        exercise("kneeling_overhead_throw",
                 {"overhead_throw", speed, R::whole_body, M::ball, "ball_speed", 0.9, {}, 1, 1.5, 0.5}),
        exercise("chest_pass",
                 {"chest_throw", speed, R::upper_push, M::ball, "ball_speed", 0.4, {}, 1, 1.5, 0.5}),
        exercise("rotational_throw",
                 {"rotational_throw", speed, R::whole_body, M::ball, "ball_speed", 0.8, {}, 1, 1.5, 0.5}),
        exercise("outward_band",
                 {"shoulder_rotation", shoulder, R::shoulder, M::band, "outward", 0.8, {}, 1, 1.2, 0.5}),
        exercise("pull_apart", {"scapula", shoulder, R::shoulder, M::band, "outward", 0.4, {}, 1, 1, 0.5}),
        exercise("dead_bug", {"trunk_brace", trunk, R::trunk, M::body, "ball_speed", 0.1, {}, 1, 1.2, 0.5}),
        exercise("chop_band",
                 {"trunk_rotation", trunk, R::trunk, M::band, "ball_speed", 0.3, {}, 1, 1.5, 0.5}),
        exercise("hip_turn", {"mobility_hip", mobility, R::legs, M::body, "hip_range", 0.8, {}, 1, 1, 0.5}),
        exercise(
            "reach_wall",
            {"mobility_shoulder", mobility, R::shoulder, M::body, "shoulder_range", 0.7, {}, 1, 1, 0.5})};
    all[0].item = "low handles";
    all[1].needs = {ItemKind::rack};
    all[1].cautions = {"sore_back"};
    all[3].needs = {ItemKind::pull_up_bar, ItemKind::belt};
    all[12].name = "Kneeling overhead throw";
    all[12].cautions = {"sore_elbow"};
    return all;
}

inline std::vector<Caution> cautions() {
    return {
        {"sore_elbow", "sore elbow", "Throws overhead are usually replaced.", {"rotational_throw"}, true, {}},
        {"sore_back", "sore back", "A clinician decides.", {"split_dumbbells"}, false, {}}};
}

inline Date monday() {
    return Date::from(std::chrono::year(2026) / 3 / 2);
}

inline Athlete thrower(int age = 20, std::optional<double> training_years = 3.0) {
    const auto start = monday().calendar();
    return {AthleteId{"ivo-brandt"},
            "Ivo Brandt",
            Date::from(std::chrono::year(static_cast<int>(start.year()) - age) / 1 / 15),
            Sex::male,
            Hand::right,
            Sport::baseball,
            Role::pitcher,
            Level::college,
            {},
            {},
            training_years,
            {},
            KitId{"shed"},
            ""};
}

// Owns what a request only points to.
struct World {
    std::vector<Quality> quality_list = qualities();
    std::vector<Exercise> exercise_list = catalogue();
    std::vector<Caution> caution_list = cautions();
    Athlete athlete = thrower();
    Kit kit = gym();

    BlockRequest request(int weeks = 4, int sessions = 3, double minutes = 60) const {
        BlockRequest r{athlete, kit, monday(),     weeks,         sessions,
                       minutes, {},  quality_list, exercise_list, caution_list};
        r.priorities = {{"leg_strength", 0.6, "goes with +0.8 mph (80 %: 0.1 to 1.6)"},
                        {"ball_speed", 0.4, ""}};
        r.maxima = {{"hex_low_max", {180, 6}}, {"squat_max", {140, 5}}, {"split_max", {70, 4}},
                    {"pull_max", {115, 4}},    {"row_max", {60, 3}},    {"press_max", {70, 3}}};
        r.body_mass = Estimate{88, 0.5};
        r.moves = 20'000; // the gym is small
        return r;
    }
    CalendarEntry entry(int days_after_start, DayKind kind, int length = 1) const {
        const Date first = monday() + days_after_start;
        return {athlete.id, first, first + (length - 1), kind, ""};
    }
    const Exercise& exercise_called(const std::string& key) const {
        for (const auto& each : exercise_list)
            if (each.key == key)
                return each;
        assert(!"an exercise of the invented catalogue");
        return exercise_list.front();
    }
};

} // namespace amentum::invented
