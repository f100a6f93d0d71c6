#include "operations/joint_ranges.h"

#include "operations/inside/joint_day.h"
#include "operations/inside/throwing_answer.h"

#include <set>

namespace amentum {
namespace {

std::set<Date> days_of(const std::vector<AngleDays>& angles) {
    std::set<Date> days;
    for (const auto& angle : angles)
        for (const auto& day : angle.days)
            days.insert(day.date);
    return days;
}

Result<std::set<Date>> days_asked(const std::vector<AngleDays>& angles,
                                  const std::optional<std::string>& text) {
    auto days = days_of(angles);
    if (!text)
        return days;
    const auto date = parse_date(*text, "date");
    if (!date)
        return date.refusal();
    if (days.contains(*date))
        return std::set<Date>{*date};
    std::string held;
    for (const Date day : days)
        held += (held.empty() ? "" : ", ") + day.text();
    return Refusal{RefusalCode::unknown_name, "No joint angle was measured on " + *text + ".", "date", *text,
                   held.empty() ? "no day: no angle is held" : held};
}

} // namespace

Result<JointRangesAnswer> joint_ranges(Workplace& workplace, const JointRangesRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto angles = angles_of(inside, *view, **athlete);
    const auto days = days_asked(angles, request.date);
    if (!days)
        return days.refusal();
    JointRangesAnswer answer{(*athlete)->id.text, (*athlete)->name, inside.today().text(), {}, {}, {}, {}};
    for (auto day = days->rbegin(); day != days->rend(); ++day)
        answer.days.push_back(joint_day(angles, *day));
    for (const auto& angle : angles)
        answer.protocols.push_back({angle.kind->key, angle.kind->name, angle.kind->protocol,
                                    angle.kind->trial_error, angle.kind->day_error, angle.kind->sources});
    if (days->empty())
        answer.words.push_back("No joint angle is held. Measure both sides twice, one rater and one tool.");
    answer.words.push_back(
        "Compare like with like: the same rater, tool, position and day. Two raters differed by up "
        "to 19 degrees in a published study.");
    answer.words.push_back(
        "This tool records and compares angles. It does not diagnose, clear or predict injury.");
    answer.stop_and_refer = stop_and_refer_words(inside.tables);
    return answer;
}

} // namespace amentum
