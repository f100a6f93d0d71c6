// An exercise of the catalogue (data/exercises.csv): what it is for, what it needs, what limits it, what it can hurt.
//
// A hex bar stands in a kit once for each handle ("hex bar, low handles", "hex bar, high handles"): pulls from the two
// heights are different lifts and never share a maximum. Such an exercise names its item: only a kit item of the kind
// in `means` whose label contains that text may be loaded for it; a kit without such a label cannot do the exercise.
#pragma once

#include "values/enum_words.h"
#include "values/kit.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace amentum {

// How the load is made; each has one answer in the equipment module.
enum class LoadMeans {
    straight_bar,
    hex_bar,
    safety_bar,
    camber_bar,
    landmine,
    dumbbell_pair,
    dumbbell_single,
    added_plate,
    column,
    band,
    ball,
    sled,
    body
};
template <>
inline constexpr std::array<std::pair<LoadMeans, std::string_view>, 13> words_of<LoadMeans>{
    {{LoadMeans::straight_bar, "straight_bar"},
     {LoadMeans::hex_bar, "hex_bar"},
     {LoadMeans::safety_bar, "safety_bar"},
     {LoadMeans::camber_bar, "camber_bar"},
     {LoadMeans::landmine, "landmine"},
     {LoadMeans::dumbbell_pair, "dumbbell_pair"},     // both hands together: two equal dumbbells
     {LoadMeans::dumbbell_single, "dumbbell_single"}, // one dumbbell, or a kettlebell
     {LoadMeans::added_plate, "added_plate"},         // on a belt, added to body mass
     {LoadMeans::column, "column"},
     {LoadMeans::band, "band"},
     {LoadMeans::ball, "ball"},
     {LoadMeans::sled, "sled"},
     {LoadMeans::body, "body"}}};

enum class Part {
    speed,
    main_lift,
    assistance,
    shoulder,
    trunk,
    mobility
}; // its place in a session, in this order
template <>
inline constexpr std::array<std::pair<Part, std::string_view>, 6> words_of<Part>{
    {{Part::speed, "speed"},
     {Part::main_lift, "main_lift"},
     {Part::assistance, "assistance"},
     {Part::shoulder, "shoulder"},
     {Part::trunk, "trunk"},
     {Part::mobility, "mobility"}}};

enum class Region { legs, upper_pull, upper_push, shoulder, trunk, whole_body };
template <>
inline constexpr std::array<std::pair<Region, std::string_view>, 6> words_of<Region>{
    {{Region::legs, "legs"},
     {Region::upper_pull, "upper_pull"},
     {Region::upper_push, "upper_push"},
     {Region::shoulder, "shoulder"},
     {Region::trunk, "trunk"},
     {Region::whole_body, "whole_body"}}};

struct Exercise {
    std::string key;     // "rfe_split_squat_safety_bar"
    std::string name;    // "Rear-foot-elevated split squat, safety-type bar"
    std::string pattern; // "split_squat", "hinge", "squat", "vertical_pull", "overhead_throw" ...
    Part part;
    Region region;
    LoadMeans means;
    std::vector<ItemKind> needs;             // all of these, besides what `means` implies
    std::map<std::string, double> qualities; // quality key -> share of the work that serves it, 0 to 1
    std::optional<std::string> load_test;    // test kind whose value the load is a fraction of
    double load_share = 1.0;                 // this lift's usual maximum over that test's value
    bool one_sided = false;
    double set_minutes = 2.0; // one set of all sides with its rest
    double setup_minutes = 1.0;
    int youngest = 7;                  // years
    std::vector<std::string> limiting; // "grip", "balance" ...
    std::vector<std::string> cautions; // keys of data/cautions.csv that speak against it
    std::string setup;                 // how it is set up, for the sheet
    std::vector<std::string> sources;
    std::optional<std::string> item = {}; // "low handles": the label of the item in `means` must contain it
    std::optional<Mass> lightest = {};    // loads below this miss the exercise's purpose (balls: of the ball)
    std::optional<Mass> heaviest = {};    // nor above this, however strong the athlete (balls: of the ball)
};

// Why an exercise should not be given to an athlete with a restriction (data/cautions.csv).
struct Caution {
    std::string key;                       // the restriction: "medial_elbow_symptoms"
    std::string condition;                 // "sore or operated inside of the elbow"
    std::string sentence;                  // what is usually avoided, and why
    std::vector<std::string> alternatives; // exercise keys
    bool overridable;                      // with a kept reason; false: never here
    std::vector<std::string> sources;
};

} // namespace amentum
