#include "planning/reasons.h"

#include "planning/exercise_classes.h"

#include <algorithm>
#include <cctype>

namespace amentum {
namespace {

std::string kept_ready(const Exercise& exercise, const std::string& quality) {
    if (exercise.part == Part::shoulder || exercise.region == Region::upper_pull)
        return "keeps pulling and the back of the shoulder ready for slowing the arm";
    if (exercise.part == Part::trunk)
        return "keeps the trunk ready every week";
    if (exercise.part == Part::mobility)
        return exercise.region == Region::legs ? "keeps the hips free every week"
                                               : "keeps length overhead every week";
    return quality.empty() ? "rounds off the session" : "keeps " + quality + " ready";
}

std::string clause_why(const QualityWorth& worth, const LineStory& story) {
    const std::string quality = worth.name(story.what.purpose);
    if (story.stands_in_for)
        return "stands in for " + story.stands_in_for->exercise->name + " because " + story.why_stand_in;
    const int rank = worth.rank(story.what.purpose);
    if (rank > 0) {
        const std::string words = worth.words(story.what.purpose);
        return (rank == 1 ? "leading limiter, " : "number " + std::to_string(rank) + " by expected gain, ") +
               quality + (words.empty() ? "" : ", which " + words);
    }
    if (worth.led() || story.what.purpose.empty())
        return kept_ready(*story.what.exercise, quality);
    return "serves " + quality + ", with sets spread evenly because no limiter stands out";
}

std::string clause_here(const LineStory& story) {
    const Exercise& exercise = *story.what.exercise;
    const bool speaks_for_day = story.order == 1 || heavy_for_legs(exercise) || hard_on_tired_arm(exercise);
    if (speaks_for_day && !story.place.last_resort.empty())
        return "on this day because " + story.place.last_resort;
    if (speaks_for_day && !story.place.moved.empty())
        return story.place.moved;
    if (story.week.reduced)
        return "about half the sets in this easier week, intensity kept";
    if (exercise.part == Part::speed)
        return "early while fresh, stopped before speed falls";
    if (exercise.part == Part::main_lift && !story.stands_in_for)
        return "main lift kept in weeks " + std::to_string(story.first_week) + " to " +
               std::to_string(story.last_week);
    return "";
}

std::string clause_athlete(const BlockRequest& request, const LineStory& story) {
    if (!story.what.overridden.empty())
        return "used despite a caution, with the coach's reason kept";
    if (!story.what.instead_of.empty())
        return "preferred to what is ruled out for " + story.what.instead_of;
    const Exercise& exercise = *story.what.exercise;
    const bool strength = exercise.part == Part::main_lift || exercise.part == Part::assistance;
    if (strength && loading_of(request.athlete, request.start) == Loading::youth)
        return "a load for technique, no maximal attempts at this age";
    if (exercise.key.starts_with("high_to_low"))
        return "pulled from high to low as throwers do (common practice, no source)";
    return "";
}

} // namespace

std::string describe_reason(const BlockRequest& request, const QualityWorth& worth, const LineStory& story) {
    std::string sentence = clause_why(worth, story);
    for (const auto& clause : {clause_here(story), clause_athlete(request, story), story.sets.shaped_by})
        if (!clause.empty())
            sentence += "; " + clause;
    sentence[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(sentence[0])));
    return sentence + ".";
}

} // namespace amentum
