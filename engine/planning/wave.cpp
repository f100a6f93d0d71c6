#include "planning/wave.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

constexpr int weeks_in_a_wave = 4;
constexpr double later_rise = 0.025;
constexpr double speed_fraction = 0.60;

std::array<double, 3> rise_of(Loading loading) {
    switch (loading) {
    case Loading::youth:
        return {0.60, 0.65, 0.70};
    case Loading::novice:
        return {0.65, 0.70, 0.75};
    case Loading::trained:
        break;
    }
    return {0.75, 0.80, 0.85};
}

// One or two weeks at the end belong to the meso before them.
int meso_of(int week, int weeks) {
    const int meso = (week - 1) / weeks_in_a_wave;
    const int last = std::max(0, (weeks + 1) / weeks_in_a_wave - 1);
    return std::min(meso, last);
}

} // namespace

Loading loading_of(const Athlete& athlete, Date start) {
    if (whole_years(athlete.birth_date, start) < youth_rules_below_age)
        return Loading::youth;
    return training_status(athlete) == TrainingStatus::novice ? Loading::novice : Loading::trained;
}

std::vector<WeekOfWave> plan_wave(int weeks, Loading loading) {
    const auto rise = rise_of(loading);
    const double later = loading == Loading::youth ? 0 : later_rise;
    std::vector<WeekOfWave> wave;
    for (int week = 1; week <= weeks; ++week) {
        const int four = (week - 1) / weeks_in_a_wave;
        const int place = (week - 1) % weeks_in_a_wave;
        const int step = std::min(place, 2);
        const double fraction = rise[static_cast<std::size_t>(step)] + (four > 0 ? later : 0);
        wave.push_back({week, meso_of(week, weeks), step, place == 3, fraction});
    }
    return wave;
}

double fraction_for(Part part, double main_fraction) {
    switch (part) {
    case Part::main_lift:
        return main_fraction;
    case Part::assistance:
        return main_fraction - 0.10;
    case Part::speed:
        return speed_fraction;
    default:
        return main_fraction - 0.20;
    }
}

std::vector<int> reduced_sets(const std::vector<int>& sets) {
    std::vector<int> halved;
    int carried = 1;
    for (const int each : sets) {
        halved.push_back(std::max(1, (each + carried) / 2));
        carried = (each + carried) % 2;
    }
    return halved;
}

} // namespace amentum
