#include "planning/next_line.h"

#include "equipment/load_words.h"
#include "planning/line_in_hand.h"
#include "values/shortest_decimal.h"

namespace amentum {
namespace {

std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (const auto& part : parts)
        text += (text.empty() ? "" : ", ") + part;
    return text;
}

} // namespace

NextLine next_line(const LineCase& given) {
    LineInHand line(given);
    line.take_level();
    line.take_found_load();
    line.take_reserve();
    line.take_estimate();
    line.take_ball();
    line.take_sets_of_today();
    return std::move(line).finished();
}

std::string describe_sets(const BlockLine& line, const Exercise& exercise, MassUnit unit) {
    std::string text = std::to_string(line.sets) + " x " + std::to_string(line.reps);
    if (exercise.one_sided)
        text += " a side";
    if (!line.load_words.empty())
        text += ", " + line.load_words;
    if (line.load && exercise.means != LoadMeans::ball)
        text += " (" + describe_mass(*line.load, unit) + ")";
    const bool says_reserve = line.load_words.find("in reserve") != std::string::npos;
    if (line.reps_in_reserve && !says_reserve)
        text += ", leaving " + format_shortest(*line.reps_in_reserve);
    return text;
}

std::string describe_done(const std::vector<const SetDone*>& sets, MassUnit unit) {
    if (sets.empty())
        return "";
    std::string text = sets.front()->date.text() + ": ";
    std::vector<std::string> done, left;
    std::optional<Mass> load;
    bool first = true;
    for (const SetDone* set : sets) {
        std::string each =
            first || set->load != load ? (set->load ? describe_mass(*set->load, unit) + " x " : "") : "";
        each += set->reps ? std::to_string(*set->reps) : "?";
        load = set->load;
        first = false;
        done.push_back(each);
        left.push_back(set->reps_in_reserve ? format_shortest(*set->reps_in_reserve) : "?");
    }
    text += joined(done);
    for (const SetDone* set : sets)
        if (set->reps_in_reserve)
            return text + ", leaving " + joined(left);
    return text;
}

} // namespace amentum
