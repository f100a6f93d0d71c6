#include "operations/inside/local_day.h"

#include <ctime>
#include <date/tz.h>
#include <stdexcept>

namespace amentum {
namespace {

const date::time_zone* zone_named(const std::string& name) {
    try {
        return date::locate_zone(name);
    } catch (const std::runtime_error&) { // the library's way to say that there is none
        return nullptr;
    }
}

} // namespace

Result<Date> local_day(const std::string& zone, std::chrono::sys_seconds instant) {
    const auto* found = zone_named(zone);
    if (!found)
        return Refusal{RefusalCode::unknown_name, "There is no time zone \"" + zone + "\".", "time_zone",
                       zone, "a name of the tz database, like America/Halifax or Asia/Tokyo"};
    const auto local = found->to_local(instant);
    return Date::from_days(
        static_cast<int>(std::chrono::floor<std::chrono::days>(local.time_since_epoch()).count()));
}

Date day_of_this_computer(std::chrono::sys_seconds instant) {
    const std::time_t now = std::chrono::system_clock::to_time_t(instant);
    std::tm local{};
    localtime_r(&now, &local);
    using namespace std::chrono;
    return Date::from(year(local.tm_year + 1900) / month(static_cast<unsigned>(local.tm_mon + 1)) /
                      day(static_cast<unsigned>(local.tm_mday)));
}

} // namespace amentum
