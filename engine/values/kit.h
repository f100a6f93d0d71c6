// What stands in a gym: the loads a block may ask for are the loads these items can make.
//
// Masses are as weighed when the coach has weighed them; a plate's or bar's stamp is only its label, because
// unweighed plates are off by 1 to 7 % [common practice, no source]. Plates, dumbbells and balls are counted singly
// (two plates of one mass make a pair).
//
//   item          mass            height            ratio             step         most
//   straight_bar  of the bar      -                 -                 -            -
//   hex_bar       of the bar      of the handle     -                 -            -       one line for each handle
//   safety_bar, camber_bar        of the bar        -                 -            -
//   plate, dumbbell, ball, kettlebell   of one      -                 -            -
//   column        -               -                 handle/stack      of the stack of the stack
//   band          -               -                 -                 -            -
//   box, pad      -               of the top        -                 -            -
//   rack, bench, pull_up_bar, landmine, belt, open_floor, wall_bay, sled      counted only
#pragma once

#include "values/enum_words.h"
#include "values/identifier.h"
#include "values/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

enum class ItemKind {
    straight_bar,
    hex_bar,
    safety_bar,
    camber_bar,
    plate,
    dumbbell,
    kettlebell,
    ball,
    column,
    band,
    box,
    pad,
    rack,
    bench,
    pull_up_bar,
    landmine,
    belt,
    open_floor,
    wall_bay,
    sled,
};

template <>
inline constexpr std::array<std::pair<ItemKind, std::string_view>, 20> words_of<ItemKind>{
    {{ItemKind::straight_bar, "straight_bar"},
     {ItemKind::hex_bar, "hex_bar"},
     {ItemKind::safety_bar, "safety_bar"},
     {ItemKind::camber_bar, "camber_bar"},
     {ItemKind::plate, "plate"},
     {ItemKind::dumbbell, "dumbbell"},
     {ItemKind::kettlebell, "kettlebell"},
     {ItemKind::ball, "ball"},
     {ItemKind::column, "column"},
     {ItemKind::band, "band"},
     {ItemKind::box, "box"},
     {ItemKind::pad, "pad"},
     {ItemKind::rack, "rack"},
     {ItemKind::bench, "bench"},
     {ItemKind::pull_up_bar, "pull_up_bar"},
     {ItemKind::landmine, "landmine"},
     {ItemKind::belt, "belt"},
     {ItemKind::open_floor, "open_floor"},
     {ItemKind::wall_bay, "wall_bay"},
     {ItemKind::sled, "sled"}}};

enum class MassUnit { lb, kg };
template <>
inline constexpr std::array<std::pair<MassUnit, std::string_view>, 2> words_of<MassUnit>{
    {{MassUnit::lb, "lb"}, {MassUnit::kg, "kg"}}};

struct KitItem {
    ItemKind kind;
    std::string label; // as the coach calls it: "45 lb plate", "hex bar, high handles"; unique in the kit
    int count;         // 1 to 500
    std::optional<Mass> mass;
    std::optional<Length> height;
    std::optional<double> ratio; // column: force at the handle over stack mass; 0.5 for 2:1
    std::optional<Mass> step;
    std::optional<Mass> most;

    friend bool operator==(const KitItem&, const KitItem&) = default;
};

struct Kit {
    KitId id;         // slug of the name
    std::string name; // "Main hall"
    MassUnit unit;    // the unit its loads are spoken in
    std::vector<KitItem> items;

    friend bool operator==(const Kit&, const Kit&) = default;
};

} // namespace amentum
