#include "operations/change_time_zone.h"

#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"
#include "operations/inside/local_day.h"

namespace amentum {

Result<ChangeTimeZoneAnswer> change_time_zone(Workplace& workplace, const ChangeTimeZoneRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const std::string zone = trimmed(request.time_zone);
    if (!zone.empty())
        if (const auto day = local_day(zone, inside.now()); !day)
            return day.refusal();
    if (!inside.view()->records.facility)
        return Refusal{RefusalCode::too_few_data, "There is no facility yet.", "time_zone", zone,
                       "a facility, brought in with its records"};
    inside.store.save_time_zone(zone);
    inside.view(); // takes the zone over
    const std::string today = inside.today().text();
    return ChangeTimeZoneAnswer{
        zone, today,
        (zone.empty() ? std::string("Days are the computer's own") : "Days are those of " + zone) +
            " from now on; today is " + today + ". Days written down stay as they are."};
}

} // namespace amentum
