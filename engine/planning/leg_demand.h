// What does a lift ask of the lead leg in either gym, and which load of another lift asks the same?
//
// H + K of one leg, as equivalent_load.h has it, for the exercises whose set-up is given; every answer is kept, because a
// block asks the same few questions many times. Two lifts are compared when both stand on split feet, or are of one
// pattern (two squats, two pulls from the floor): a squat's depth and a pull's are not the same lift.
// Units: N m, kg. What it cannot tell: back, grip, balance, speed.
//
// Example: the same bar and depth in another gym -> the same demand, and the load itself.
#pragma once

#include "body_mechanics/equivalent_load.h"
#include "planning/retargeted_line.h"
#include "values/exercise.h"

#include <map>
#include <optional>
#include <string>
#include <utility>

namespace amentum {

using SetupsOfExercises = std::map<std::string, Setup>; // by exercise key; their loads are not read

enum class Gym { first, other };

class LegDemand {
public:
    LegDemand(std::optional<Body> body, SetupsOfExercises first, SetupsOfExercises other)
        : body_(std::move(body)), first_(std::move(first)), other_(std::move(other)) {}

    bool compares(const Exercise& from, const Exercise& to) const;
    bool same_lift(const Exercise& from, const Exercise& to) const; // the load held otherwise
    std::optional<double> demand(Gym, const Exercise&, Mass load) const;
    std::optional<Mass> equal_load(const Exercise& from, Mass load, const Exercise& to) const;
    // With its standard error: some fifty times the work.
    std::optional<EquivalentLoad> equal_with_band(const Exercise& from, Mass load, const Exercise& to) const;

private:
    const Setup* setup(Gym, const Exercise&) const;

    std::optional<Body> body_;
    SetupsOfExercises first_;
    SetupsOfExercises other_;
    mutable std::map<std::pair<std::string, double>, std::optional<double>> demands_[2];
    mutable std::map<std::pair<std::string, double>, std::optional<Mass>> loads_;
    mutable std::map<std::pair<std::string, double>, std::optional<EquivalentLoad>> bands_;
};

} // namespace amentum
