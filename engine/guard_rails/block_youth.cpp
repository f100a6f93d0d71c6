#include "guard_rails/block_rules.h"

#include <algorithm>
#include <map>
#include <set>

namespace amentum {
namespace {

// Days, sets and repetitions: [Faigenbaum2009] [Stricker2020], details from memory. The age below which a
// thrower is trained as a youth, and the fraction that counts as maximal, are a proposal of this project, no
// source.
constexpr int youth_below_age = 14;
constexpr std::size_t most_days_a_week = 3;
constexpr int most_sets = 3;
constexpr int fewest_reps = 6;
constexpr int fewest_fast_reps = 3;
constexpr double maximal = 0.90; // of the estimated maximum
const std::string source = "Faigenbaum2009, Stricker2020";

int age_on(const BlockCase& whole, Date date) {
    return whole_years(whole.athlete.birth_date, date);
}

void check_days(const BlockCase& whole, std::vector<Finding>& findings) {
    std::map<int, std::set<Date>> of_week;
    std::set<Date> all;
    for (const auto& line : whole.block.lines)
        if (age_on(whole, line.date) < youth_below_age) {
            of_week[line.week].insert(line.date);
            all.insert(line.date);
        }
    for (const auto& [week, days] : of_week)
        if (days.size() > most_days_a_week)
            findings.push_back({Severity::stops,
                                "youth_days_a_week",
                                "Week " + std::to_string(week) + " has " + std::to_string(days.size()) +
                                    " days of training for a thrower under 14.",
                                "Under 14: two or three days of strength training a week.",
                                source,
                                "Leave a day out.",
                                {week, {}, {}}});
    for (const Date day : all)
        if (all.contains(day + 1))
            findings.push_back(
                {Severity::stops, "youth_days_running",
                 day.text() + " and the day after are both days of training for a thrower under 14.",
                 "Under 14: days of strength training are not next to each other.", source,
                 "Move one of them."});
}

void check_line(const BlockCase& whole, const BlockLine& line, const Exercise& exercise,
                std::vector<Finding>& findings) {
    const int age = age_on(whole, line.date);
    if (age < exercise.youngest)
        findings.push_back({Severity::stops, "too_young",
                            exercise.name + " is for throwers of " + std::to_string(exercise.youngest) +
                                " years and more; on " + line.date.text() + " this one is " +
                                std::to_string(age) + ".",
                            "An exercise has a youngest age.", own_proposal,
                            "Choose an exercise for the age.", place_of(line)});
    if (age >= youth_below_age)
        return;
    const bool loaded = exercise.means != LoadMeans::body && exercise.means != LoadMeans::band;
    const int fewest = exercise.part == Part::speed ? fewest_fast_reps : fewest_reps;
    if ((line.intensity && *line.intensity >= maximal) || (loaded && line.reps == 1))
        findings.push_back(
            {Severity::stops, "youth_maximal",
             exercise.name + " is a maximal attempt for a thrower under 14.",
             "Under 14: no maximal attempts; a maximum is estimated from 6 to 10 repetitions, or tested only "
             "under experienced supervision.",
             source, "Take a lighter load and more repetitions.", place_of(line)});
    else if (loaded && line.reps < fewest)
        findings.push_back(
            {Severity::warns, "youth_repetitions",
             exercise.name + " has " + std::to_string(line.reps) + " repetitions for a thrower under 14.",
             "Under 14: 6 to 15 repetitions, fast movements 3 to 6.", source,
             "Take a lighter load and more repetitions.", place_of(line)});
    if (line.sets > most_sets)
        findings.push_back(
            {Severity::warns, "youth_sets",
             exercise.name + " has " + std::to_string(line.sets) + " sets for a thrower under 14.",
             "Under 14: one to three sets.", source, "Take three sets at most.", place_of(line)});
}

} // namespace

std::vector<Finding> check_youth(const BlockCase& whole) {
    std::vector<Finding> findings;
    for (const auto& line : whole.block.lines)
        if (const auto* exercise = whole.exercise(line))
            check_line(whole, line, *exercise, findings);
    check_days(whole, findings);
    return findings;
}

} // namespace amentum
