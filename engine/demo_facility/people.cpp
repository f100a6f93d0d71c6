#include "demo_facility/people.h"

#include "demo_facility/hall_loads.h"

#include <array>

namespace amentum {
namespace {

struct Line {
    const char* name;
    double age;
    Sex sex;
    Hand hand;
    Sport sport;
    Role role;
    Level level;
    double stature_m;
    double training_years;
    const char* restriction;
};

constexpr auto F = Sex::female, M = Sex::male;
constexpr auto L = Hand::left, R = Hand::right;
constexpr auto baseball = Sport::baseball;
constexpr auto softball = Sport::softball;
constexpr auto pitcher = Role::pitcher;
constexpr auto fielder = Role::fielder;

constexpr std::array<Line, 36> lines{{
    {"Marisol Quay", 20.4, F, R, softball, pitcher, Level::college, 1.74, 3.5, ""},
    {"Anders Tollefsen", 22.1, M, R, baseball, pitcher, Level::college, 1.88, 5, ""},
    {"Ikenna Brightwater", 19.3, M, R, baseball, pitcher, Level::college, 1.85, 2, ""},
    {"Kenji Aldous", 24.8, M, L, baseball, pitcher, Level::amateur, 1.83, 6, "sore_shoulder"},
    {"Tomas Verlaine", 27.6, M, R, baseball, pitcher, Level::professional, 1.91, 9, ""},
    {"Obi Castellane", 31.2, M, R, baseball, pitcher, Level::professional, 1.90, 12, "extension_back_pain"},
    {"Rafe Ostrander", 17.2, M, R, baseball, pitcher, Level::school, 1.82, 1.5, ""},
    {"Jonah Pellworm", 16.1, M, L, baseball, pitcher, Level::school, 1.78, 1, ""},
    {"Dmitri Saltmarsh", 15.3, M, R, baseball, pitcher, Level::school, 1.74, 0.8, "growth_spurt"},
    {"Caleb Underhaugh", 14.2, M, R, baseball, pitcher, Level::youth, 1.66, 0.5, "growth_spurt"},
    {"Mateo Lindqvist", 13.1, M, R, baseball, pitcher, Level::youth, 1.58, 0.3, ""},
    {"Finn Abernarrow", 12.3, M, R, baseball, pitcher, Level::youth, 1.51, 0, ""},
    {"Luca Thistlewood", 18.7, M, R, baseball, pitcher, Level::college, 1.86, 2.5, "medial_elbow_symptoms"},
    {"Emeka Harrowgate", 21.5, M, R, baseball, pitcher, Level::college, 1.93, 4, ""},
    {"Soren Blackmoor", 20.9, M, L, baseball, pitcher, Level::college, 1.87, 3, ""},
    {"Teo Marchbanks", 23.4, M, R, baseball, pitcher, Level::amateur, 1.80, 3, ""},
    {"Idris Penhallow", 19.9, M, R, baseball, fielder, Level::college, 1.81, 2, ""},
    {"Wade Corrigane", 21.8, M, R, baseball, Role::catcher, Level::college, 1.83, 4, ""},
    {"Nils Fairweather", 18.2, M, R, baseball, fielder, Level::school, 1.79, 1.5, ""},
    {"Pascal Dunmorrow", 16.8, M, R, baseball, fielder, Level::school, 1.77, 1, ""},
    {"Hugo Sandpiper", 14.9, M, L, baseball, fielder, Level::youth, 1.70, 0.5, ""},
    {"Arlo Winterbourne", 25.7, M, R, baseball, fielder, Level::amateur, 1.84, 5, ""},
    {"Bastian Greyling", 22.9, M, R, baseball, fielder, Level::amateur, 1.86, 4, "wrist_pain"},
    {"Keanu Longshore", 20.2, M, R, baseball, fielder, Level::college, 1.82, 2.5, ""},
    {"Odalys Fenn", 21.3, F, R, softball, pitcher, Level::college, 1.76, 4, ""},
    {"Greta Holloway", 19.1, F, R, softball, pitcher, Level::college, 1.72, 2, ""},
    {"Saoirse Mallory", 17.6, F, L, softball, pitcher, Level::school, 1.70, 1.5, ""},
    {"Yara Kestrel", 16.4, F, R, softball, pitcher, Level::school, 1.69, 1, ""},
    {"Ingrid Vasquane", 15.2, F, R, softball, pitcher, Level::school, 1.67, 0.8, ""},
    {"Leilani Moorcock", 13.8, F, R, softball, pitcher, Level::youth, 1.62, 0.4, ""},
    {"Noor Ashgrove", 12.6, F, R, softball, pitcher, Level::youth, 1.55, 0.2, ""},
    {"Tuva Skagen", 22.7, F, R, softball, pitcher, Level::amateur, 1.73, 3, ""},
    {"Delphine Rook", 24.1, F, R, softball, pitcher, Level::amateur, 1.75, 5, "lax_shoulder"},
    {"Amara Tidewell", 20.6, F, R, softball, pitcher, Level::college, 1.78, 3, ""},
    {"Valborg Lindhag", 26.3, F, R, Sport::javelin, Role::thrower, Level::amateur, 1.77, 7, ""},
    {"Casimir Holt", 23.9, M, R, Sport::javelin, Role::thrower, Level::amateur, 1.89, 6, ""},
}};

KitItem item(ItemKind kind, std::string label, int count) {
    return {kind, std::move(label), count, {}, {}, {}, {}, {}};
}
KitItem heavy(ItemKind kind, std::string label, int count, double lb) {
    KitItem made = item(kind, std::move(label), count);
    made.mass = Mass::pounds(lb);
    return made;
}
KitItem high(ItemKind kind, std::string label, int count, double cm) {
    KitItem made = item(kind, std::move(label), count);
    made.height = Length::centimetres(cm);
    return made;
}

void add_dumbbells(Kit& kit, double from, double to) {
    for (double lb = from; lb <= to; lb += 5)
        kit.items.push_back(
            heavy(ItemKind::dumbbell, std::to_string(static_cast<int>(lb)) + " lb dumbbell", 2, lb));
}

Kit hall() {
    Kit kit{KitId{"saltgrass-hall"}, "Saltgrass hall", MassUnit::lb, {}};
    auto& items = kit.items;
    items.push_back(heavy(ItemKind::straight_bar, "straight bar", 3, straight_bar_lb)); // as weighed
    KitItem low = heavy(ItemKind::hex_bar, "hex bar, low handles", 1, 56.2),
            raised = heavy(ItemKind::hex_bar, "hex bar, high handles", 1, high_hex_bar_lb);
    low.height = Length::centimetres(22);
    raised.height = Length::centimetres(32);
    items.push_back(low);
    items.push_back(raised);
    items.push_back(heavy(ItemKind::safety_bar, "safety bar", 1, safety_bar_lb));
    items.push_back(heavy(ItemKind::plate, "45 lb plate", 12, 45));
    items.push_back(heavy(ItemKind::plate, "35 lb plate, old", 2, 34.4)); // weighed off its stamp
    items.push_back(heavy(ItemKind::plate, "25 lb plate", 8, 25));
    items.push_back(heavy(ItemKind::plate, "10 lb plate", 8, 10));
    items.push_back(heavy(ItemKind::plate, "5 lb plate", 6, 5));
    items.push_back(heavy(ItemKind::plate, "2.5 lb plate", 4, 2.5));
    add_dumbbells(kit, 10, 100);
    for (const double lb : {2.0, 4.0, 6.0, 8.0, 10.0})
        items.push_back(heavy(ItemKind::ball, std::to_string(static_cast<int>(lb)) + " lb ball", 4, lb));
    KitItem column = item(ItemKind::column, "column", 1);
    column.ratio = 0.5;
    column.step = Mass::pounds(10);
    column.most = Mass::pounds(200);
    items.push_back(column);
    for (const char* colour : {"yellow band", "red band", "blue band"})
        items.push_back(item(ItemKind::band, colour, 4));
    for (const double cm : {30.0, 45.0, 60.0})
        items.push_back(high(ItemKind::box, std::to_string(static_cast<int>(cm)) + " cm box", 2, cm));
    items.push_back(high(ItemKind::pad, "rear-foot pad", 3, 40));
    for (const auto& [kind, label, count] :
         {std::tuple{ItemKind::rack, "rack", 3}, std::tuple{ItemKind::bench, "bench", 4},
          std::tuple{ItemKind::pull_up_bar, "pull-up bar, neutral grips", 2},
          std::tuple{ItemKind::landmine, "landmine", 1}, std::tuple{ItemKind::belt, "belt", 2},
          std::tuple{ItemKind::open_floor, "open floor", 1}, std::tuple{ItemKind::wall_bay, "wall bay", 2},
          std::tuple{ItemKind::sled, "sled", 1}})
        items.push_back(item(kind, label, count));
    return kit;
}

Kit home() {
    Kit kit{KitId{"tuva-s-garage"}, "Tuva's garage", MassUnit::lb, {}};
    add_dumbbells(kit, 10, 50);
    kit.items.push_back(item(ItemKind::bench, "bench", 1));
    kit.items.push_back(item(ItemKind::band, "red band", 2));
    kit.items.push_back(item(ItemKind::band, "blue band", 1));
    kit.items.push_back(heavy(ItemKind::ball, "4 lb ball", 1, 4));
    kit.items.push_back(item(ItemKind::open_floor, "open floor", 1));
    kit.items.push_back(item(ItemKind::wall_bay, "brick wall", 1));
    return kit;
}

} // namespace

std::vector<Kit> demo_kits() {
    return {hall(), home()};
}

std::vector<Athlete> demo_athletes(Date last_day) {
    std::vector<Athlete> athletes;
    int number = 0;
    for (const auto& line : lines) {
        const Date birth = last_day - static_cast<int>(line.age * 365.25);
        const bool at_home = std::string_view(line.name) == "Tuva Skagen";
        Athlete athlete{AthleteId{slug(line.name)},
                        line.name,
                        birth,
                        line.sex,
                        line.hand,
                        line.sport,
                        line.role,
                        line.level,
                        Length::metres(line.stature_m),
                        {},
                        line.training_years,
                        {},
                        KitId{at_home ? "tuva-s-garage" : "saltgrass-hall"},
                        ""};
        if (++number % 9 == 0 && line.age > 18)
            athlete.stature.reset(); // never taped
        if (*line.restriction)
            athlete.restrictions.push_back(line.restriction);
        if (line.age < 18)
            athlete.guardian = "the " + athlete.name.substr(athlete.name.rfind(' ') + 1) + " family";
        athletes.push_back(std::move(athlete));
    }
    return athletes;
}

} // namespace amentum
