#include "planning/notes_in_other_gym.h"

#include "planning/short_list.h"
#include "planning/stand_ins.h"

#include <algorithm>

namespace amentum {

std::vector<std::string> notes_in_other_gym(const RetargetRequest& request, const RetargetedBlock& made) {
    std::vector<std::string> notes{"The block " + request.block.id.text + ", written for " +
                                   request.first_kit.name + ", as " + request.to.kit.name + " makes it."};
    if (loading_of(request.to.athlete, request.block.start) == Loading::youth)
        notes.push_back(
            "Youth rules: two or three days not next to each other, 1 to 3 sets, loads for technique "
            "under qualified supervision, no maximal attempts.");
    std::vector<std::string> lost;
    for (const auto& line : made.lines) {
        const Exercise* from = exercise_in(request.to.catalogue, line.from.exercise);
        const std::string name = from ? from->name : line.from.exercise;
        if (!line.to && std::find(lost.begin(), lost.end(), name) == lost.end())
            lost.push_back(name);
    }
    if (!lost.empty())
        notes.push_back("Nothing stands in here for: " + listed_shortly(lost) + ".");
    if (!request.body)
        notes.push_back(
            "Without stature and body mass the lead leg's demand cannot be told: loads are compared "
            "by usual maxima alone.");
    notes.push_back(
        "Tempo, pauses and what is usually bought: common practice, no source. What an exercise is for, and "
        "usual "
        "maxima of one lift over another: shares of the catalogue, most of them a proposal of this project.");
    return notes;
}

} // namespace amentum
