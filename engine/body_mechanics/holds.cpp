#include "body_mechanics/holds.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

struct PlaceOf {
    Hold hold;
    HoldPlace place;
};
constexpr std::array<PlaceOf, 10> places{{
    {Hold::straight_bar, {0.97, -0.05, 0, ArmsAt::trunk, 0.85, 0}},
    {Hold::safety_bar, {0.97, 0.05, 0, ArmsAt::trunk, 0.85, 0}},
    {Hold::camber_bar, {0.97, -0.05, 0.30, ArmsAt::trunk, 0.85, 0}},
    {Hold::front_bar, {1.00, 0.07, 0, ArmsAt::trunk, 0.85, 0.10}},
    {Hold::dumbbells, {1.00, 0, 0, ArmsAt::hanging, 0, 0}},
    {Hold::goblet, {0.80, 0.20, 0, ArmsAt::trunk, 0.85, 0.10}},
    {Hold::hex_bar, {1.00, 0, 0, ArmsAt::hanging, 0, 0}},
    {Hold::bar_in_hands, {1.00, 0, 0, ArmsAt::bar, 0, 0}},
    {Hold::belt, {0, 0, 0.30, ArmsAt::hanging, 0, 0}},
    {Hold::body, {0.80, 0.10, 0, ArmsAt::trunk, 0.85, 0.10}},
}};

constexpr std::array split_holds{Hold::straight_bar, Hold::safety_bar, Hold::camber_bar, Hold::front_bar,
                                 Hold::dumbbells,    Hold::goblet,     Hold::body};
constexpr std::array back_holds{Hold::straight_bar, Hold::safety_bar, Hold::camber_bar, Hold::body};
constexpr std::array front_holds{Hold::front_bar, Hold::goblet};
constexpr std::array hex_holds{Hold::hex_bar};
constexpr std::array bar_holds{Hold::bar_in_hands};
constexpr std::array hanging_holds{Hold::body, Hold::belt};

} // namespace

HoldPlace hold_place(const Setup& setup) {
    const auto found =
        std::find_if(places.begin(), places.end(), [&](const auto& p) { return p.hold == setup.hold; });
    assert(found != places.end());
    HoldPlace place = found->place;
    if (setup.load_along)
        place.along = *setup.load_along;
    if (setup.load_ahead)
        place.ahead = setup.load_ahead->metres();
    return place;
}

std::span<const Hold> holds_of(Lift lift) {
    switch (lift) {
    case Lift::rear_foot_raised_split_squat:
    case Lift::split_squat:
    case Lift::lunge:
    case Lift::step_up:
        return split_holds;
    case Lift::back_squat:
        return back_holds;
    case Lift::front_squat:
        return front_holds;
    case Lift::hex_bar_deadlift:
        return hex_holds;
    case Lift::straight_bar_deadlift:
        return bar_holds;
    case Lift::pull_up:
        return hanging_holds;
    }
    assert(!"every lift has its holds");
    return {};
}

} // namespace amentum
