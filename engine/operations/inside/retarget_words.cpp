#include "operations/inside/retarget_words.h"

#include "operations/inside/lift_names.h"
#include "operations/inside/setup_given.h"
#include "planning/equal_setup.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double hardly_other = 0.01; // of the hip's share

std::string percent(double share) {
    return format_fixed(100 * share, 0) + " %";
}

std::string settings_said(const Setup& setup, const Facility& facility) {
    std::string text;
    for (const Setting setting : settings_of(setup.lift))
        if (const auto value = setting_value(setup, setting))
            text += (text.empty() ? "" : ", ") + short_name(setting) + " " +
                    value_said(setting, *value, facility);
    return text;
}

std::string solved_said(const Body& body, const Setup& from, const Setup& to, const Facility& facility) {
    const auto equal = solve_equal_setup(body, from, to);
    if (!equal)
        return "Usual set-up: " + settings_said(to, facility) + ".";
    std::string text = "Set up with " + settings_said(equal->setup, facility) + ": the hip does " +
                       percent(equal->share_found) + " of it";
    if (std::abs(equal->share_found - equal->share_wanted) < hardly_other)
        return text + ", as written.";
    return text + ", where it does " + percent(equal->share_wanted) + " as written; no lean comes nearer.";
}

} // namespace

std::string change_in_words(Change change) {
    switch (change) {
    case Change::kept:
        return "as written";
    case Change::other_load:
        return "other load";
    case Change::held_otherwise:
        return "held otherwise";
    case Change::other_exercise:
        return "another exercise";
    case Change::lost:
        return "lost";
    }
    return "";
}

std::string basis_in_words(const RetargetedLine& line) {
    if (line.change == Change::kept)
        return "nothing changes";
    if (!line.to)
        return "nothing stands in";
    switch (line.basis) {
    case IntentBasis::lead_leg:
        return "by what hip and knee of one leg do at the bottom";
    case IntentBasis::load:
        return "by the load, in usual maxima";
    case IntentBasis::served:
        return "by what the exercise serves; the loads are not compared";
    }
    return "";
}

std::string equal_in_words(const RetargetedLine& line) {
    if (line.equal->by != IntentBasis::lead_leg)
        return "asks the same by usual maxima";
    return line.change == Change::held_otherwise
               ? "asks the same of one leg: at one depth the same load does, however it is held"
               : "asks the same of one leg";
}

std::string kept_in_words(const RetargetedBlock& made, const Kit& there) {
    if (made.kept > 0.9995 && std::all_of(made.lines.begin(), made.lines.end(),
                                          [](const auto& line) { return line.change == Change::kept; }))
        return there.name + " makes this block as it was written.";
    const bool compared = std::all_of(made.lines.begin(), made.lines.end(),
                                      [](const auto& line) { return line.loads_compared || !line.to; });
    return there.name + " keeps " + (compared ? "" : "at most ") + percent(made.kept) +
           " of the block's intent, set by set" +
           (compared ? "; the lines say what is lost."
                     : "; where loads cannot be compared, only what the exercise is for is counted.");
}

std::vector<std::string> retargeting_cannot_tell() {
    return {
        "Whether the block would have been written so for this gym from the start: planning anew does that.",
        "What a lost per cent costs in velocity.",
        "Back, grip and balance: they are named where they give out first, never measured.",
        "How hard a band pulls, and what a ball of another mass changes."};
}

std::string SetupsSaid::said(const RetargetRequest& request, const RetargetedLine& line,
                             const Facility& facility) {
    if (!request.body || !line.to || line.change == Change::kept || line.change == Change::other_load)
        return "";
    const auto from = request.setups_first.find(line.from.exercise);
    const auto to = request.setups_to.find(line.to->exercise);
    if (to == request.setups_to.end())
        return "";
    Setup there = to->second;
    there.load = line.to->load.value_or(Mass::kilograms(0));
    if (from == request.setups_first.end())
        return "Usual set-up: " + settings_said(there, facility) + ".";
    Setup here = from->second;
    here.load = line.from.load.value_or(Mass::kilograms(0));
    const std::string key = line.from.exercise + ">" + line.to->exercise + ">" +
                            format_shortest(here.load.kilograms()) + ">" +
                            format_shortest(there.load.kilograms());
    const auto [place, fresh] = known_.try_emplace(key);
    if (fresh)
        place->second = solved_said(*request.body, here, there, facility);
    return place->second;
}

} // namespace amentum
