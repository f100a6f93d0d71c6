#include "operations/inside/reopened_answers.h"

#include "operations/inside/may_pitch.h"

namespace amentum {
namespace {

constexpr int days_ahead = 14;

} // namespace

std::vector<ReopenedAnswer> reopened_answers(const ReferenceTables& tables, const FacilityView& before,
                                             const FacilityView& after, const AthleteId& id, Date entry,
                                             Date today) {
    if (entry >= today)
        return {};
    const Athlete *was = before.athlete(id.text), *is = after.athlete(id.text);
    const auto old_arm = arm_case(before, tables, *was);
    const auto new_arm = arm_case(after, tables, *is);
    std::vector<ReopenedAnswer> changed;
    for (Date day = entry; day <= today + days_ahead; day = day + 1) {
        const auto then = may_pitch_in_short(may_pitch(old_arm, tables, day, today));
        const auto now = may_pitch_in_short(may_pitch(new_arm, tables, day, today));
        if (then != now)
            changed.push_back({day.text(), then, now});
    }
    return changed;
}

std::string reopened_words(const std::vector<ReopenedAnswer>& changed) {
    std::string words =
        std::to_string(changed.size()) + (changed.size() == 1 ? " answer changed: " : " answers changed: ");
    for (std::size_t i = 0; i < changed.size() && i < 3; ++i)
        words +=
            (i ? "; " : "") + changed[i].date + ", before " + changed[i].before + ", now " + changed[i].now;
    return words + (changed.size() > 3 ? "; and more." : ".");
}

} // namespace amentum
