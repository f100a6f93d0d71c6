#include "reports/verdicts.h"

#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <cassert>

namespace amentum {

EffectDirection verdict_of(double chance_more, double chance_less) {
    assert(chance_more >= 0 && chance_less >= 0 && chance_more + chance_less <= 1 + 1e-9);
    if (chance_more >= chance_said)
        return EffectDirection::more;
    if (chance_less >= chance_said)
        return EffectDirection::less;
    return EffectDirection::cannot_tell;
}

EffectDirection verdict_of(const Estimate& effect) {
    assert(effect.standard_error > 0);
    const double above = normal_cdf(effect.value / effect.standard_error);
    return verdict_of(above, 1 - above);
}

std::string said_by(EffectDirection verdict, const std::string& more, const std::string& less,
                    const std::string& cannot_tell) {
    return verdict == EffectDirection::more ? more : verdict == EffectDirection::less ? less : cannot_tell;
}

bool mostly_literature(double learned) {
    return learned < learned_enough;
}

std::string describe_whose_word(double learned) {
    assert(learned >= 0 && learned <= 1);
    const std::string share = format_fixed(100 * learned, 0) + " %";
    return mostly_literature(learned)
               ? "that is the literature's word more than these throwers': " + share + " is their own"
               : share + " of that is these throwers' own records";
}

std::string describe_no_comparison_group(int others, int fewest) {
    const std::string who = others == 0   ? "nobody"
                            : others == 1 ? "only one other"
                                          : "only " + std::to_string(others) + " others";
    return "No comparison group: " + who + " without a block " + (others > 1 ? "were" : "was") +
           " tested before and after over the same weeks (" + std::to_string(fewest) +
           " are needed). What moved everybody then, such as the season, getting used to the test or a new "
           "radar, cannot be "
           "told apart from the block.";
}

std::string describe_beside_forecast(const std::string& quality, double excess, Interval band,
                                     EffectDirection verdict, const ShownUnit& unit) {
    return quality + ": " + describe_difference(excess, band, unit) +
           " beside the forecast without the block: " +
           said_by(verdict, "more than forecast", "less than forecast",
                   "cannot tell whether it differs from the forecast") +
           ".";
}

} // namespace amentum
