#include "reports/sentences.h"

#include "reports/verdicts.h"
#include "values/shortest_decimal.h"

#include <cmath>

namespace amentum {
namespace {

std::string shown(double si, const ShownUnit& unit) {
    return format_fixed(si * unit.factor, unit.decimals);
}

std::string with_sign(double si, const ShownUnit& unit) {
    const std::string text = shown(si, unit);
    return (text.front() == '-' ? "" : "+") + text;
}

} // namespace

std::string describe_chance(double probability) {
    if (probability < 0.01)
        return "under 1 %";
    if (probability > 0.99)
        return "over 99 %";
    return format_fixed(100 * probability, 0) + " %";
}

std::string describe_estimate(double value, Interval band, const ShownUnit& unit) {
    return shown(value, unit) + " " + unit.unit + " (80 %: " + shown(band.low, unit) + " to " +
           shown(band.high, unit) + ")";
}

std::string describe_difference(double value, Interval band, const ShownUnit& unit) {
    return with_sign(value, unit) + " " + unit.unit + " (80 %: " + with_sign(band.low, unit) + " to " +
           with_sign(band.high, unit) + ")";
}

std::string describe_change(const ChangeWords& change, const ShownUnit& unit) {
    const std::string worthwhile = shown(change.smallest_worthwhile, unit) + " " + unit.unit;
    const std::string than = change.growth_taken_out ? " than growth alone usually brings" : " than before";
    const std::string verdict =
        said_by(verdict_of(change.chance_gained, change.chance_lost), "More " + change.quality + than,
                "Less " + change.quality + than, "Cannot tell yet whether " + change.quality + " changed");
    return verdict + ": from " + change.from.text() + " to " + change.to.text() + " the tests differ by " +
           with_sign(change.measured, unit) + " " + unit.unit +
           (change.growth_taken_out ? ", the true change beyond growth is likely "
                                    : ", the true change is likely ") +
           describe_difference(change.likely, change.band, unit) + "; " +
           describe_chance(change.chance_gained) + " chance that at least the smallest worthwhile change (" +
           worthwhile + ") was gained, " + describe_chance(change.chance_lost) +
           " that it was lost. Test noise alone moves two such tests apart by up to " +
           shown(change.smallest_detectable, unit) + " " + unit.unit + ".";
}

std::string describe_hard_throw(std::optional<int> days, std::optional<Date> when,
                                const std::string& setting) {
    if (!days || !when)
        return "no hard throw is recorded";
    const std::string count =
        *days == 0 ? "today" : std::to_string(*days) + (*days == 1 ? " day ago" : " days ago");
    return "last hard throw " + count + " (" + when->text() + ", " + setting + ")";
}

std::string describe_limits_of_tool() {
    return "Usual cautions are shown; local rules and licensed practice come first. This tool records and "
           "compares "
           "numbers. It does not diagnose, clear or predict injury.";
}

} // namespace amentum
